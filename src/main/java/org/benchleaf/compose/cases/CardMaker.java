package org.benchleaf.compose.cases;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.CaseReference;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Evidence;
import org.benchleaf.compose.part.LinkPicture;
import org.benchleaf.compose.part.Materials;
import org.benchleaf.compose.part.RecipeMaker;
import org.benchleaf.model.Citing;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Level;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Passage;
import org.benchleaf.model.Picture;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** Makes the card of a case: what the site's own pages need of it. */
public final class CardMaker {

    private CardMaker() {
    }

    public static CaseCard card(CaseDesk desk, List<String> paths, List<CaseCard.Translated> translated) {
        TreatmentCase treatment = desk.treatment();
        boolean publicText = desk.clearance().allows(Clearance.Output.CASE_STUDY);
        Optional<Picture> picture = publicText ? LinkPicture.standsForIt(desk.pictures()) : Optional.empty();
        return new CaseCard(treatment.id(), treatment.title(), publicText ? treatment.summary() : "", treatment.language(),
                treatment.level().map(Level::word).orElse(""), treatment.object().kind(), known(treatment.object().technique()),
                treatment.condition().stream().map(Damage::what).distinct().toList(),
                List.copyOf(Materials.used(desk.treatment(), desk.library())), desk.worked().substances(),
                steps(treatment, publicText),
                picture.map(Picture::id).orElse(""), picture.map(Picture::alt).orElse(""), sources(desk),
                List.of(), paths, List.of(), known(treatment.object().support().paper()), evidence(desk, paths), made(desk, paths),
                publicText ? lastChange(desk) : CaseCard.LastChange.NONE, translated,
                publicText ? treatment.sources().retelling().map(retelling -> retelling.passage().source()).orElse("") : "");
    }

    /** The kinds of its steps; of a step of its own kind its name, where words of the case may be told, and never the kind it is like. */
    private static List<String> steps(TreatmentCase treatment, boolean publicText) {
        return treatment.steps().stream().flatMap(step -> step.named().isEmpty() ? Stream.of(step.kind().word())
                : step.named().filter(name -> publicText).map(Words::capital).stream()).distinct().toList();
    }

    /**
     * The words of a card in another language of its case.
     *
     * @param told the case in that language
     * @param paths of its pages there
     */
    public static CaseCard.Translated translated(CaseDesk told, CaseDesk desk, List<String> paths) {
        TreatmentCase there = told.treatment();
        boolean publicText = desk.clearance().allows(Clearance.Output.CASE_STUDY);
        Optional<String> shown = publicText ? LinkPicture.standsForIt(desk.pictures()).map(Picture::id) : Optional.empty();
        return new CaseCard.Translated(there.language(), there.title(), publicText ? there.summary() : "", there.object().kind(),
                known(there.object().technique()), there.condition().stream().map(Damage::what).distinct().toList(),
                there.pictures().stream().filter(picture -> shown.filter(picture.id()::equals).isPresent()).map(Picture::alt).findFirst()
                        .orElse(""), List.of(), paths, made(told, paths.stream().map(told.folder()::plain).toList()),
                publicText ? lastChange(told).what() : "");
    }

    private static List<Evidence> evidence(CaseDesk desk, List<String> paths) {
        return paths.contains(Paths.results(desk.treatment().id())) ? ResultsPage.evidence(desk) : List.of();
    }

    private static List<CaseCard.Made> made(CaseDesk desk, List<String> paths) {
        if (!desk.clearance().strengths() || !paths.contains(Paths.preparation(desk.treatment().id()))) {
            return List.of();
        }
        RecipeMaker recipes = new RecipeMaker(desk.sheet(PreparationPage.NAME), desk);
        return desk.treatment().solutions().stream().flatMap(solution -> recipes.strength(solution).stream()
                .flatMap(told -> solution.recipe().ingredients().stream().distinct().filter(desk.library().materials()::containsKey)
                        .map(material -> new CaseCard.Made(material, told)))).toList();
    }

    private static CaseCard.LastChange lastChange(CaseDesk desk) {
        List<Citing.Version> versions = desk.treatment().publication().citing().versions();
        return CaseReference.of(desk).day().map(day -> new CaseCard.LastChange(day.toString(), versions.stream()
                .filter(version -> version.on().equals(day)).map(Citing.Version::changed).findFirst().orElse(""), versions.size()))
                .orElse(CaseCard.LastChange.NONE);
    }

    /** A word by which one may look for the case; nobody looks for what is not known. */
    private static String known(String word) {
        return MissingValue.read(word).isPresent() ? "" : word;
    }

    private static List<String> sources(CaseDesk desk) {
        Set<String> keys = new LinkedHashSet<>();
        desk.worked().figures().values().forEach(figure -> keys.addAll(figure.sources()));
        desk.treatment().solutions().forEach(solution -> solution.source().ifPresent(keys::add));
        desk.treatment().sources().all().map(Passage::source).forEach(keys::add);
        keys.retainAll(desk.library().sources().keySet());
        return new ArrayList<>(keys);
    }
}
