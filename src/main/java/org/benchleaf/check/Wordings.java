package org.benchleaf.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Place;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Part;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Step;
import org.benchleaf.model.Story;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Trial;
import org.benchleaf.text.TextBlock;

/** Gathers the words of a case that its pages print, in each of its languages. */
final class Wordings {

    private final List<Wording> all = new ArrayList<>();
    private final String language;
    private final Place place;

    private Wordings(String language, Place place) {
        this.language = language;
        this.place = place;
    }

    /** The words of a case and of its translations. */
    static List<Wording> of(TreatmentCase source) {
        Wordings own = new Wordings(source.language(), source.place());
        own.head(source.title(), source.summary());
        own.object(source);
        source.solutions().forEach(solution -> {
            own.open("Solution '" + solution.id() + "'", solution.place(), solution.name());
            own.sheet("Solution '" + solution.id() + "'", solution.place(), String.join(". ", solution.how()));
        });
        source.steps().forEach(own::step);
        source.pictures().forEach(picture -> own.open("Picture '" + picture.id() + "'", picture.place(), picture.alt(),
                picture.caption(), picture.caution().orElse("")));
        source.reasons().forEach(reason -> own.open("The reason for '" + reason.rule() + "'", reason.place(),
                reason.why()));
        own.sources(source);
        source.trials().forEach(own::trial);
        own.story(source.story());
        return Stream.concat(own.all.stream(), source.translations().stream().flatMap(Wordings::of)).toList();
    }

    /** The words of facts that public pages and data print as they stand, beside those of {@link #of(TreatmentCase)}. */
    static List<Wording> ofFacts(TreatmentCase source) {
        Wordings own = new Wordings(source.language(), source.place());
        PrintObject object = source.object();
        object.items().forEach(item -> own.open("The item '" + item.id() + "'", object.place(),
                joined(List.of(Optional.of(item.is()), item.condition(), item.decision()))));
        own.open("The object", object.place(), joined(List.of(object.made(), object.madeEvidence(), object.support().sizing())));
        object.consultation().forEach(matter -> own.open("The consultation on '" + matter.matter() + "'", object.place(),
                joined(List.of(matter.outcome()))));
        object.media().forEach(medium -> own.open("The medium '" + medium.id() + "'", medium.place(),
                joined(List.of(medium.colour(), medium.where()))));
        source.steps().forEach(step -> step.part(Part.Bath.class).ifPresent(bath -> bath.readings().forEach(reading ->
                own.open("Step '" + step.id() + "'", step.place(), joined(List.of(reading.colour()))))));
        source.results().forEach(result -> own.open("The result '" + result.measure().word() + "'", result.place(),
                String.join(". ", result.ask(new ResultTexts()))));
        source.pictures().forEach(picture -> own.open("Picture '" + picture.id() + "'", picture.place(), picture.credit()));
        return own.all;
    }

    private static Stream<Wording> of(Translation translation) {
        Wordings own = new Wordings(translation.language(), translation.place());
        translation.texts().forEach((address, text) -> {
            if (CaseTexts.isOfStory(address)) {
                return;
            }
            String where = "The text '" + address + "'";
            if (address.startsWith("steps.") && !address.endsWith(".do") || address.contains(".how.")) {
                own.sheet(where, own.place, text);
            } else {
                own.open(where, own.place, text);
            }
        });
        own.story(translation.story());
        return own.all.stream();
    }

    private void head(String title, String summary) {
        open("The title", place, title);
        open("The summary", place, summary);
    }

    private void object(TreatmentCase source) {
        source.condition().forEach(damage -> open("The damage '" + damage.what() + "'", damage.place(),
                joined(List.of(damage.where(), damage.note()))));
        Place proposal = source.proposal().place();
        source.proposal().aims().forEach(aim -> open("An aim", proposal, aim.words()));
        source.proposal().options().forEach(option -> open("An option", proposal, option.option(), option.whyNot()));
    }

    private void step(Step step) {
        String where = "Step '" + step.id() + "'";
        open(where, step.place(), step.instruction(), joined(List.of(step.named(), step.aim())));
        sheet(where, step.place(), joined(List.of(step.see(), step.watch(), step.ifNot(), step.until(), step.edge(),
                step.instead(), step.hold().flatMap(Step.Hold::look), step.hold().flatMap(Step.Hold::meanwhile),
                step.resize().flatMap(Step.Decision::why))));
    }

    private void sources(TreatmentCase source) {
        source.sources().retelling().ifPresent(retelling -> open("The source", retelling.passage().place(), retelling.by(),
                retelling.read(), retelling.notRead()));
        source.sources().all().forEach(passage -> open("The source", passage.place(), joined(List.of(passage.where(), passage.words()))));
    }

    private void trial(Trial trial) {
        open("The trial '" + trial.id() + "'", trial.place(), Stream.of(Stream.of(trial.question(), trial.what(), trial.varies()),
                trial.alike().stream(), trial.arms().stream().map(Trial.Arm::is), trial.found().stream(),
                trial.results().stream().flatMap(result -> Stream.of(result.measure(), result.method())))
                .flatMap(texts -> texts).toArray(String[]::new));
    }

    private void story(Story story) {
        story.sections().forEach(section -> open("The story", section.place(), section.heading(), TextBlock.plain(section.text())));
    }

    private static String joined(List<Optional<String>> texts) {
        return texts.stream().flatMap(Optional::stream).collect(Collectors.joining(". "));
    }

    private void open(String where, Place at, String... texts) {
        add(where, String.join(". ", texts), true, at);
    }

    private void sheet(String where, Place at, String text) {
        add(where, text, false, at);
    }

    private void add(String where, String text, boolean onPublicPage, Place at) {
        if (!text.isBlank()) {
            all.add(new Wording(where, text, language, onPublicPage, at));
        }
    }
}
