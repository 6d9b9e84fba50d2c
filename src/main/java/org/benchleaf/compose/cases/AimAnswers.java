package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.compose.part.TrialTables;
import org.benchleaf.derive.figure.WorkedResult;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Result;
import org.benchleaf.model.Trial;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.text.RichText;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** Tells beside each aim of a treatment what the results that the case ties to it say, or that none tells of it. */
final class AimAnswers {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final PlainResults plain;
    /** The sentences of the results that answer an aim, where they have one. */
    private final Map<WorkedResult, RichText> sentences = new IdentityHashMap<>();

    AimAnswers(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.plain = new PlainResults(sheet, desk.treatment().object());
        desk.worked().results().stream().filter(result -> isTied(result.source()))
                .forEach(result -> plain.sentence(result).ifPresent(sentence -> sentences.put(result, sentence)));
    }

    /** The aims with their answers, in the order of the proposal; empty where the case ties no result to any. */
    Optional<Facts> facts() {
        Proposal proposal = desk.treatment().proposal();
        return proposal.isAnswered() ? Optional.of(new Facts(proposal.aims().stream().map(this::answer).toList())) : Optional.empty();
    }

    /** The sentences for the results that no aim is answered by, with the numbers of the answers at most three. */
    List<RichText> otherSentences() {
        return plain.sentences(desk.worked().results().stream().filter(result -> !isTied(result.source())).toList(),
                sentences.size());
    }

    /** The results that no aim is answered by. */
    List<Result> others() {
        return desk.treatment().results().stream().filter(result -> !isTied(result)).toList();
    }

    private boolean isTied(Result result) {
        return desk.treatment().proposal().isAnsweredBy(result);
    }

    private Fact answer(Proposal.Aim aim) {
        List<RichText> told = new ArrayList<>();
        for (WorkedResult result : desk.worked().results()) {
            aim.answer(result.source()).ifPresent(answer -> {
                told(result).ifPresent(told::add);
                answer.howFar().map(WholeSentence::of).map(sheet::linked).ifPresent(told::add);
            });
        }
        desk.treatment().trials().stream().filter(trial -> aim.isAnsweredBy(trial)).map(this::told).forEach(told::add);
        String none = aim.answers().isEmpty() ? "study.aim-open" : "study.not-compared";
        return new Fact(WholeSentence.of(aim.words()), told.isEmpty() ? RichText.of(sheet.words().say(none))
                : RichText.joined(" ", told));
    }

    /** What was found in a trial; where no answer is drawn, what was read of its arms. */
    private RichText told(Trial trial) {
        String read = trial.results().stream().flatMap(measure -> trial.arms().stream().flatMap(arm -> measure.of(arm).stream()
                .map(reading -> sheet.words().say("study.aim-arm", "measure", measure.measure(), "arm", arm.is(), "after",
                        new TrialTables(sheet, desk, trial).read(measure, reading)))))
                .collect(Collectors.joining("; "));
        return RichText.of(sheet.words().say("study.aim-trial", "question", trial.question())).then(" ")
                .then(sheet.linked(WholeSentence.of(trial.found().orElse(read))));
    }

    /** The sentence of a result, else what it says in words. */
    private Optional<RichText> told(WorkedResult result) {
        return Optional.ofNullable(sentences.get(result)).or(() -> inWords(result.source()));
    }

    /** A result that was not measured is told without its name: the aim above it says what is meant. */
    private Optional<RichText> inWords(Result result) {
        return new ResultNumbers(sheet, desk).inWords(result)
                .map(fact -> result instanceof Result.NotMeasured ? fact.value() : named(fact));
    }

    private RichText named(Fact fact) {
        RichText told = RichText.of(sheet.words().say("study.aim-told", "measure", Words.capital(fact.name()))).then(" ")
                .then(fact.value());
        return told.plain().endsWith(".") ? told : told.then(".");
    }
}
