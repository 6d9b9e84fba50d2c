package org.benchleaf.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import org.benchleaf.calculate.Calculations;
import org.benchleaf.calculate.Outcome;
import org.benchleaf.calculate.Refusal;
import org.benchleaf.read.MethodReader;
import picocli.CommandLine.Command;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** Works out one figure from the command line; without a name, lists every calculation with its inputs. */
@Command(name = "calculate", mixinStandardHelpOptions = true,
        description = "Works out one figure, with its formula, range and sources. Without a name, lists them all.",
        footer = {"", "Example: calculate ethanol-mixture 'strength=70 %% v/v' 'volume=500 mL'"})
public final class CalculateCommand implements Callable<Integer> {

    private static final int DONE = 0;
    private static final int CONTENT_HAS_ERRORS = 1;
    private static final int COMMAND_IS_WRONG = 2;

    /** How results are printed. */
    enum Format { text, json }

    @Parameters(index = "0", arity = "0..1", paramLabel = "NAME", description = "The name of the calculation.")
    private String name;

    @Parameters(index = "1..*", paramLabel = "key=value", description = "The inputs, units always given.")
    private List<String> words = List.of();

    @Option(names = "--format", paramLabel = "text|json", description = "How to print (text).")
    private Format format = Format.text;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() {
        Calculations calculations = new Calculations(MethodReader.read());
        CalculationText text = new CalculationText(calculations.formulary());
        if (name == null) {
            out().println(format == Format.json ? text.listAsJson() : text.list());
            return DONE;
        }
        Map<String, String> inputs = new LinkedHashMap<>();
        List<String> slips = gather(inputs);
        slips.forEach(this::complain);
        if (!slips.isEmpty()) {
            return COMMAND_IS_WRONG;
        }
        Outcome outcome = calculations.work(name, inputs);
        if (outcome instanceof Outcome.Refused refused) {
            return tell(refused.refusals());
        }
        Outcome.Worked worked = (Outcome.Worked) outcome;
        out().println(format == Format.json ? text.resultAsJson(worked) : text.result(worked));
        return DONE;
    }

    /** Gathers key=value pairs; a word without '=' belongs to the value before it, which a shell has split. */
    private List<String> gather(Map<String, String> inputs) {
        List<String> slips = new ArrayList<>();
        String last = null;
        for (String word : words) {
            int equals = word.indexOf('=');
            if (equals > 0) {
                last = word.substring(0, equals).strip();
                if (inputs.put(last, word.substring(equals + 1).strip()) != null) {
                    slips.add("'" + last + "' is given twice");
                }
            } else if (last == null || equals == 0) {
                slips.add("'" + word + "' is not an input; write key=value");
            } else {
                inputs.merge(last, word, (value, more) -> (value + " " + more).strip());
            }
        }
        return slips;
    }

    private int tell(List<Refusal> refusals) {
        refusals.forEach(refusal -> complain(refusal.sentence()));
        return refusals.stream().map(Refusal::kind).anyMatch(CalculateCommand::isOfTheCommand)
                ? COMMAND_IS_WRONG : CONTENT_HAS_ERRORS;
    }

    private static boolean isOfTheCommand(Refusal.Kind kind) {
        return kind == Refusal.Kind.UNKNOWN_CALCULATION || kind == Refusal.Kind.UNKNOWN_INPUT;
    }

    private void complain(String sentence) {
        spec.commandLine().getErr().println("calculate: error: " + sentence);
    }

    private PrintWriter out() {
        return spec.commandLine().getOut();
    }
}
