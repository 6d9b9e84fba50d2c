package org.benchleaf.compose.cases;

import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.MaterialChoice;
import org.benchleaf.model.Medium;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells with what the mends of a case can be taken off again, by what sources say of their adhesives, and what stands against it. */
final class TakingOff {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Words words;

    TakingOff(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.words = sheet.words();
    }

    /** A line for each adhesive that these steps brought to the sheet; none where no adhesive of it is known. */
    List<Fact> facts(List<Step> steps) {
        List<ComparedMaterial> adhesives = steps.stream()
                .flatMap(step -> MaterialChoice.of(step, desk.treatment(), desk.library()).stream()).map(MaterialChoice::material)
                .filter(material -> material.kind() == ComparedKind.ADHESIVE).distinct().toList();
        return adhesives.stream().map(adhesive -> new Fact(words.say("off.question"), told(adhesive))).toList();
    }

    private RichText told(ComparedMaterial adhesive) {
        Optional<ComparedMaterial.Cell> removed = adhesive.of("removed");
        return removed.map(cell -> RichText.of(words.say("off.with", "material", adhesive.name(), "says", cell.says()) + " ")
                        .then(sheet.cite(cell.source()).map(Citation::byNumber)
                                .orElseGet(() -> new Inline.Text("(" + words.say("rules.common-practice") + ")")))
                        .then(risks(cell)).then(held(cell)).then(" " + words.say("off.untried")))
                .orElseGet(() -> RichText.of(words.say("off.not-known", "material", adhesive.name())));
    }

    /** What a colour did in a test with a liquid that takes the adhesive off. */
    private String risks(ComparedMaterial.Cell removed) {
        List<String> tested = SheetWords.tested(desk.treatment(), desk.library());
        List<String> moved = removed.with().stream().filter(substance -> tested.contains(SheetWords.moving(substance)))
                .map(substance -> sheet.library().reference().substances().get(substance).name())
                .map(sheet.library().phrases()::of).toList();
        return moved.isEmpty() ? "" : " " + words.say("off.moves", "substances", words.list(moved));
    }

    /** Liquids that hold what takes the adhesive off, and in which no ink and no colour of the sheet moved when each was tested. */
    private String held(ComparedMaterial.Cell removed) {
        List<String> liquids = desk.treatment().tests().stream().filter(SpotTest::isLiquidNamed).map(SpotTest::with).distinct()
                .filter(liquid -> holdsOneOf(removed.with(), liquid) && desk.treatment().object().media().stream()
                        .allMatch(medium -> stayed(medium, liquid)))
                .map(new HazardMaker(sheet, desk)::name).toList();
        return liquids.isEmpty() ? "" : " " + words.say("off.held", "liquids", words.list(liquids));
    }

    private boolean holdsOneOf(Collection<String> substances, String liquid) {
        return desk.library().substances(desk.treatment().matter(liquid)).anyMatch(substances::contains);
    }

    /** A medium that was tested under a fixative alone, or not at all, has not been seen to stay. */
    private boolean stayed(Medium medium, String liquid) {
        List<SpotTest> tests = desk.treatment().tests().stream().filter(test -> test.medium().equals(medium.id())
                && test.with().equals(liquid) && test.after().isEmpty()).toList();
        return !tests.isEmpty() && tests.stream().allMatch(test -> test.result().isPassed());
    }
}
