package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.derive.ClassPlan;
import org.benchleaf.derive.Figure;
import org.benchleaf.derive.FigureKey;
import org.benchleaf.derive.Preparation;
import org.benchleaf.derive.Timeline;
import org.benchleaf.model.Step;

/** Tells the technician what a class needs, and at what time to begin. */
final class ClassSections {

    private final Sheet sheet;
    private final CaseDesk desk;

    ClassSections(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** A section for each class that works through the case. */
    List<Section> all() {
        return desk.worked().classes().stream().map(this::section).toList();
    }

    private Section section(ClassPlan plan) {
        Words words = sheet.words();
        String id = "class-" + Paths.slug(plan.source().id());
        List<Block> blocks = new ArrayList<>();
        blocks.add(new Facts(List.of(
                Fact.of(words.say("class.begins"), moment(plan.source().starts())),
                Fact.of(words.say("class.stations"), String.valueOf(plan.source().stations())),
                Fact.of(words.say("class.sheets"), String.valueOf(plan.sheets())),
                Fact.of(words.say("class.spare"), sheet.numbers().written(plan.source().stores().spare().liquids()).text()))));
        blocks.add(new Table(id + "-prepare", words.say("class.prepare-caption"), List.of(
                new Table.Column(words.say("class.what"), false), new Table.Column(words.say("class.begin-by"), false),
                new Table.Column(words.say("class.ready-for"), false),
                new Table.Column(words.say("class.amount"), true)), prepareRows(plan), Optional.empty()));
        plan.preparations().stream().map(preparation -> plan.figures().get(preparation.solution() + ".batch"))
                .filter(java.util.Objects::nonNull)
                .map(figure -> new WorkingMaker(sheet).make(renamed(figure, plan))).forEach(blocks::add);
        blocks.add(new Table(id + "-steps", words.say("class.steps-caption"), List.of(
                new Table.Column(words.say("class.step"), false), new Table.Column(words.say("class.from"), false),
                new Table.Column(words.say("class.to"), false)), stepRows(plan), Optional.empty()));
        return new Section(id, words.say("class.heading", "title", plan.source().title()),
                Optional.of(words.say("class.lead")), blocks);
    }

    /** A class's figure has the same id as that of the single sheet; on the page it needs an anchor of its own. */
    private Figure renamed(Figure figure, ClassPlan plan) {
        String solution = figure.key().of();
        return new Figure(FigureKey.ofClass(Paths.slug(plan.source().id()), solution, figure.key().name()),
                new HazardMaker(sheet, desk).name(solution) + ", " + figure.label(), figure.value(),
                figure.method(), figure.inputs(), figure.sources(), figure.notes());
    }

    private List<List<Html>> prepareRows(ClassPlan plan) {
        List<List<Html>> rows = new ArrayList<>();
        for (ClassPlan.Start start : plan.starts()) {
            Optional<Preparation> preparation = plan.preparations().stream()
                    .filter(one -> one.solution().equals(start.solution())).findFirst();
            rows.add(List.of(Html.ofText(new HazardMaker(sheet, desk).name(start.solution())),
                    Html.ofText(moment(start.begin())), Html.ofText(moment(start.readyFor())),
                    Html.ofText(preparation.map(one -> sheet.numbers().amount(one.batch()).text()
                            + (one.batches() > 1 ? sheet.words().say("bench.ready-times", "n", one.batches()) : ""))
                            .orElse(""))));
        }
        return rows;
    }

    private List<List<Html>> stepRows(ClassPlan plan) {
        List<List<Html>> rows = new ArrayList<>();
        for (Timeline.ClockedStep clocked : plan.timeline().days()) {
            String kind = desk.treatment().step(clocked.step()).map(Step::kind)
                    .map(known -> sheet.words().term("step-kind", known.word())).orElse(clocked.step());
            rows.add(List.of(Html.ofText(kind), Html.ofText(moment(clocked.earliestStart())),
                    Html.ofText(moment(clocked.latestEnd()))));
        }
        return rows;
    }

    private String moment(java.time.LocalDateTime time) {
        return sheet.words().say("class.moment", "day", sheet.numbers().weekday(time.toLocalDate()),
                "time", sheet.numbers().clock(time.toLocalTime()));
    }
}
