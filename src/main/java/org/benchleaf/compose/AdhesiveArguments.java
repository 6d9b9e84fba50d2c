package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Part;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;

/** What speaks for and against the adhesive of a mend on the sheet of a case; never which to take. */
final class AdhesiveArguments {

    private final Sheet sheet;
    private final CaseDesk desk;

    AdhesiveArguments(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** One fact for what speaks for each adhesive of the step, one for what speaks against it; none where no source tells. */
    List<Fact> of(Step step) {
        List<Fact> facts = new ArrayList<>();
        List<String> told = HomeAdvice.told(desk.treatment());
        adhesives(step).forEach(adhesive -> Stream.of(true, false).forEach(favours -> {
            List<ComparedMaterial.Argument> arguments = adhesive.argumentsFor(told).stream()
                    .filter(one -> one.favours() == favours).toList();
            if (!arguments.isEmpty()) {
                facts.add(new Fact(sheet.words().say(favours ? "bench-fact.speaks-for" : "bench-fact.speaks-against", "adhesive",
                        adhesive.name()), new Html(arguments.stream().map(this::cited).collect(Collectors.joining(" ")))));
            }
        }));
        return facts;
    }

    private List<ComparedMaterial> adhesives(Step step) {
        Set<String> ids = new LinkedHashSet<>();
        step.part(Part.Mend.class).ifPresent(mend -> {
            ids.add(mend.with());
            desk.treatment().solution(mend.with()).map(Solution::recipe).ifPresent(recipe -> ids.addAll(recipe.ingredients()));
        });
        return ids.stream().map(id -> Optional.ofNullable(desk.library().materials().get(id))).flatMap(Optional::stream)
                .flatMap(material -> desk.library().reference().compared().stream().filter(row -> row.isOf(material))).distinct().toList();
    }

    private String cited(ComparedMaterial.Argument argument) {
        return Html.escape(argument.says()) + " " + sheet.cite(argument.source()).map(citation -> "<a href=\""
                + Html.escape(citation.href()) + "\">[" + citation.number() + "]</a>")
                .orElseGet(() -> "(" + Html.escape(argument.source()) + ")");
    }
}
