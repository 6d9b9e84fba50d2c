package org.benchleaf.compose.part;

import java.util.List;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.Stream;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.MaterialChoice;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;

/** What speaks for and against the materials that the steps bring to the sheet of a case; never which to take. */
public final class ChoiceFacts {

    /** With what a mend holds. */
    private static final Set<ComparedKind> MEANS = Set.of(ComparedKind.ADHESIVE, ComparedKind.SOLVENT);

    private final Sheet sheet;
    private final CaseDesk desk;

    public ChoiceFacts(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /**
     * One fact for what speaks for each adhesive that is compared, one for what speaks against it, one for the case's own reason; none
     * where nothing is told. Of tissues, waters and erasers the results tell it, and a check, since it would take a sheet for the bench
     * over its pages.
     */
    public List<Fact> of(Step step) {
        return facts(step, choice -> choice.material().kind() == ComparedKind.ADHESIVE).distinct().toList();
    }

    /** The same of every material of a preparation that a step of the case brings to its sheet. */
    List<Fact> of(Solution solution) {
        return facts(choice -> choice.id().equals(solution.id()));
    }

    /** The same of every material that the steps of the case bring to its sheet. */
    public List<Fact> all() {
        return facts(any -> true);
    }

    /** What speaks against what a step mends with: the adhesive and what makes it stick again. */
    public List<Fact> against(Step step) {
        List<String> told = SheetWords.tested(desk.treatment(), desk.library());
        return MaterialChoice.of(step, desk.treatment(), desk.library()).stream().filter(choice -> MEANS.contains(choice.material().kind()))
                .flatMap(choice -> fact("bench-fact.speaks-against", choice, choice.arguments(told, false))).distinct().toList();
    }

    private List<Fact> facts(Predicate<MaterialChoice> wanted) {
        return desk.treatment().steps().stream().flatMap(step -> facts(step, wanted)).distinct().toList();
    }

    private Stream<Fact> facts(Step step, Predicate<MaterialChoice> wanted) {
        List<String> told = SheetWords.tested(desk.treatment(), desk.library());
        return MaterialChoice.of(step, desk.treatment(), desk.library()).stream().filter(wanted).flatMap(choice -> Stream.of(
                fact("bench-fact.speaks-for", choice, choice.arguments(told, true)),
                fact("bench-fact.speaks-against", choice, choice.arguments(told, false)), reasons(step, choice, told)).flatMap(all -> all));
    }

    private Stream<Fact> reasons(Step step, MaterialChoice choice, List<String> told) {
        return desk.treatment().reasons().stream().filter(reason -> reason.past().isEmpty() && choice.isWeighedBy(reason, told)
                && (reason.step().isEmpty() || reason.step().get().equals(step.id()))).map(reason ->
                        new Fact(name("bench-fact.reason", choice), sheet.linked(reason.why())));
    }

    private String name(String key, MaterialChoice choice) {
        return sheet.words().say(key, "material", choice.material().name());
    }

    private Stream<Fact> fact(String key, MaterialChoice choice, List<ComparedMaterial.Argument> arguments) {
        return arguments.isEmpty() ? Stream.empty() : Stream.of(new Fact(name(key, choice),
                RichText.joined(" ", arguments.stream().map(this::cited).toList())));
    }

    private RichText cited(ComparedMaterial.Argument argument) {
        return RichText.of(argument.says() + " ").then(sheet.cite(argument.source()).map(Citation::byNumber)
                .orElseGet(() -> new Inline.Text("(" + sheet.words().say("rules.common-practice") + ")")));
    }
}
