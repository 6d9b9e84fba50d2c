package org.benchleaf.compose;

import java.util.List;
import java.util.stream.Stream;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Inline;
import org.benchleaf.model.MaterialChoice;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;

/** What speaks for and against the materials that the steps bring to the sheet of a case; never which to take. */
final class ChoiceFacts {

    private final Sheet sheet;
    private final CaseDesk desk;

    ChoiceFacts(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /**
     * One fact for what speaks for each adhesive that is compared, one for what speaks against it; none where no source tells. Of tissues,
     * waters and erasers the results tell it, and a check, since it would take a sheet for the bench over its pages.
     */
    List<Fact> of(Step step) {
        return facts(choices(step).filter(choice -> choice.material().kind() == ComparedKind.ADHESIVE));
    }

    /** The same of every material of a preparation that a step of the case brings to its sheet. */
    List<Fact> of(Solution solution) {
        return facts(desk.treatment().steps().stream().flatMap(this::choices).filter(choice -> choice.id().equals(solution.id())));
    }

    /** The same of every material that the steps of the case bring to its sheet. */
    List<Fact> all() {
        return facts(desk.treatment().steps().stream().flatMap(this::choices));
    }

    private Stream<MaterialChoice> choices(Step step) {
        return MaterialChoice.of(step, desk.treatment(), desk.library()).stream();
    }

    private List<Fact> facts(Stream<MaterialChoice> choices) {
        List<String> told = SheetWords.tested(desk.treatment(), desk.library());
        return choices.flatMap(choice -> Stream.of(fact("bench-fact.speaks-for", choice, choice.arguments(told, true)),
                fact("bench-fact.speaks-against", choice, choice.arguments(told, false)))).flatMap(all -> all).distinct().toList();
    }

    private Stream<Fact> fact(String key, MaterialChoice choice, List<ComparedMaterial.Argument> arguments) {
        return arguments.isEmpty() ? Stream.empty() : Stream.of(new Fact(sheet.words().say(key, "material", choice.material().name()),
                RichText.joined(" ", arguments.stream().map(this::cited).toList())));
    }

    private RichText cited(ComparedMaterial.Argument argument) {
        return RichText.of(argument.says() + " ").then(sheet.cite(argument.source()).map(Citation::byNumber)
                .orElseGet(() -> new Inline.Text("(" + argument.source() + ")")));
    }
}
