package org.benchleaf.check;

import static org.benchleaf.quantity.Dimension.TIME;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.Practice;
import org.benchleaf.model.SheetMaking;
import org.benchleaf.read.Node;
import org.benchleaf.read.PracticeReader;
import org.benchleaf.read.UnseenVerbsReader;

/** Reads what a class is for, and how its papers are issued. */
final class ClassPapersForm {

    private static final Pattern CODE = Pattern.compile("[\\p{L}\\p{N}]{1,3}");

    private final Fields fields;
    private final LocalDate starts;

    /** Of a class that begins on that day. */
    ClassPapersForm(Fields fields, LocalDate starts) {
        this.fields = fields;
        this.starts = starts;
    }

    /**
     * The papers.
     *
     * @param places how many trainees there are places for
     * @param issued what was handed out before
     */
    ClassPapers read(int places, List<ClassPapers.Issued> issued) {
        Optional<Fields> sheets = fields.group("sheets");
        Optional<ClassPapers.Issue> issue = fields.group("issue").map(this::issue);
        List<ClassPapers.Outcome> outcomes = fields.groups("outcomes").stream().map(this::outcome).toList();
        return new ClassPapers(fields.yes("publish", false), fields.texts("aims"),
                sheets.flatMap(group -> group.word("are", ClassPapers.Sheets::of)).orElse(ClassPapers.Sheets.PRACTICE),
                sheets.flatMap(group -> group.text("like")), sheets.flatMap(this::making), issue,
                fields.texts("changes"), outcomes, trainees(places), practice(), issued,
                fields.text("marked by"));
    }

    /** How practice sheets come to be, where the class says anything of it. */
    private Optional<SheetMaking> making(Fields group) {
        if (Stream.of("bought ready", "bought as", "delivery days", "go through", "how", "made by").noneMatch(group::has)) {
            return Optional.empty();
        }
        SheetMaking making = new SheetMaking(group.yes("bought ready", false), group.text("bought as"), group.whole("delivery days"),
                group.texts("go through"), group.text("how"), group.positive("takes each", TIME),
                group.word("made by", ClassDay.Doer::of).orElse(ClassDay.Doer.TECHNICIAN),
                group.place());
        if (making.bought() && making.isWork()) {
            fields.messages().add(ClassMessages.SHEETS_BOUGHT_AND_MADE.at(group.place("bought ready")));
        }
        if (making.how().isPresent() && making.takesEach().isEmpty()) {
            fields.messages().add(ClassMessages.SHEETS_WITHOUT_TIME.at(group.place("how")));
        }
        return Optional.of(making);
    }

    /** The usual rule, with the class's own numbers in its place. */
    private Practice practice() {
        Practice usual = PracticeReader.usual();
        return fields.group("practised when").map(own -> new Practice(own.whole("times").orElse(usual.times()),
                own.whole("help next time").orElse(usual.help()))).orElse(usual);
    }

    private ClassPapers.Issue issue(Fields group) {
        ClassPapers.Issue issue = new ClassPapers.Issue(group.need(group.whole("number"), "number", 1),
                group.needDate("on"), group.whole("replaces"), group.date("valid until"), group.text("prepared by"),
                group.text("approved by"), group.place("number"));
        issue.replaces().filter(before -> before >= issue.number()).ifPresent(before -> fields.messages().add(
                ClassMessages.ISSUE_NOT_HIGHER.at(issue.place(), "number", issue.number(), "replaces", before)));
        issue.validUntil().filter(until -> until.isBefore(starts)).ifPresent(until -> fields.messages().add(
                ClassMessages.ISSUE_OUT_OF_DATE.at(group.place("valid until"), "until", until, "starts", starts)));
        if (issue.isDraft()) {
            fields.messages().add(ClassMessages.NOT_APPROVED.at(issue.place(), "number", issue.number()));
        }
        return issue;
    }

    private ClassPapers.Outcome outcome(Fields group) {
        ClassPapers.Outcome outcome = new ClassPapers.Outcome(group.needText("at"), group.needText("will"),
                group.text("met when"), group.text("not yet"), group.yes("must", false), group.place("at"));
        if (UnseenVerbsReader.beginsWithOne(outcome.will())) {
            fields.messages().add(ClassMessages.UNSEEN_OUTCOME.at(group.place("will"), "will", outcome.will()));
        }
        if (outcome.metWhen().isEmpty()) {
            fields.messages().add(ClassMessages.OUTCOME_WITHOUT_CRITERION.at(group.place("will"),
                    "will", outcome.will()));
        }
        return outcome;
    }

    private List<String> trainees(int places) {
        List<Node.Scalar> codes = fields.scalars("trainees");
        codes.stream().filter(code -> !CODE.matcher(code.text().strip()).matches()).forEach(code ->
                fields.messages().add(ClassMessages.NAME_FOR_CODE.at(code.place(), "found", code.text())));
        if (!codes.isEmpty() && codes.size() != places) {
            fields.messages().add(ClassMessages.CODES_AND_PLACES.at(fields.place("trainees"),
                    "codes", codes.size(), "places", places));
        }
        return codes.stream().map(code -> code.text().strip()).toList();
    }
}
