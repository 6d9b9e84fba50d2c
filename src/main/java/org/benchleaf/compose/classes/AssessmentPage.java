package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.chart.StepDrawings;
import org.benchleaf.compose.part.ClassPageName;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.page.Chart;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Page;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** A blank sheet on which an assessor marks what one trainee was seen doing, and how much help it took. */
public final class AssessmentPage implements ClassPageMaker {

    private static final ClassPageName NAME = new ClassPageName("class-assessment", "-assessment.html");

    @Override
    public ClassPageName name() {
        return NAME;
    }

    @Override
    public Page make(ClassDesk desk) {
        Sheet sheet = desk.sheet(NAME);
        Words words = sheet.words();
        sheet.add(desk.opening(sheet, NAME));
        sheet.add(new Section("who", words.say("class.assessed"), Optional.empty(), List.of(new Facts(List.of(
                blank(words, "class.name"), blank(words, "class.date"), blank(words, "class.assessor"))))));
        sheet.add(levels(words));
        sheet.add(outcomes(sheet, desk));
        results(sheet, desk).ifPresent(sheet::add);
        sheet.add(new Section("feedback", words.say("class.feedback"), Optional.of(words.say("class.feedback-lead")),
                List.of(new Facts(List.of(blank(words, "class.own-view"), blank(words, "class.keep"),
                        blank(words, "class.change-one"), blank(words, "class.next-step"))))));
        sheet.add(desk.papers(sheet));
        return desk.finish(sheet, NAME);
    }

    /** How much help was needed, in five levels. */
    static Section levels(Words words) {
        return new Section("levels", words.say("class.levels"), Optional.of(words.say("class.levels-lead")),
                List.of(new Facts(words.group("class-level").entrySet().stream()
                        .map(level -> Fact.of(level.getKey(), level.getValue())).toList())));
    }

    private static Fact blank(Words words, String key) {
        return Fact.of(words.say(key), words.say("class.line"));
    }

    /** What a good result looks like beside a bad one, of each step of which that can be drawn. */
    private static Optional<Section> results(Sheet sheet, ClassDesk desk) {
        List<Chart.Drawing> drawings = desk.plan().steps().stream()
                .flatMap(step -> new StepDrawings(sheet, desk.desk(), step).results().stream()).toList();
        return drawings.isEmpty() ? Optional.empty() : Optional.of(new Section("results", sheet.words().say("class.results-drawn"),
                Optional.of(sheet.words().say("class.results-drawn-lead")), List.of(new DrawingRow(drawings))));
    }

    private static Section outcomes(Sheet sheet, ClassDesk desk) {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>();
        for (ClassPapers.Outcome one : desk.course().papers().outcomes()) {
            rows.add(List.of(RichText.of(words.more(desk.step(sheet, one.at()), ClassPage.deed(words, one))),
                    RichText.of(one.metWhen().orElse(words.say("class.not-stated"))),
                    RichText.of(words.say("class.line")), RichText.of(words.say("class.line")),
                    RichText.of(words.say("class.line")), RichText.of(words.say("class.line"))));
        }
        return new Section("outcomes", words.say("class.outcomes"), Optional.of(words.say(rows.isEmpty()
                ? "class.no-outcomes" : "class.outcomes-lead")), rows.isEmpty() ? List.of() : List.of(new Table(
                        "assessment-table", words.say("class.assessment-caption"), words.columns("class.will",
                                "class.met-when", "class.met", "class.help-today", "class.help-next", "class.sign"), rows,
                        Optional.empty())));
    }
}
