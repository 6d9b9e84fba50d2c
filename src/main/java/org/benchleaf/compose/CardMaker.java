package org.benchleaf.compose;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Damage;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Passage;
import org.benchleaf.model.Picture;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Makes the card of a case: what the site's own pages need of it. */
final class CardMaker {

    private CardMaker() {
    }

    static CaseCard card(CaseDesk desk, List<Page> pages) {
        TreatmentCase treatment = desk.treatment();
        boolean publicText = desk.clearance().allows(Clearance.Output.CASE_STUDY);
        Optional<Picture> picture = publicText ? standsForIt(desk.pictures()) : Optional.empty();
        return new CaseCard(treatment.id(), treatment.title(), publicText ? treatment.summary() : "", treatment.language(),
                treatment.level().word(), treatment.object().kind(), known(treatment.object().technique()),
                treatment.condition().stream().map(Damage::what).distinct().toList(),
                List.copyOf(Materials.used(desk.treatment(), desk.library())), desk.worked().substances(),
                treatment.steps().stream().map(step -> step.kind().word()).distinct().toList(),
                picture.map(Picture::id).orElse(""), picture.map(Picture::alt).orElse(""), sources(desk),
                texts(treatment, publicText, publicText || desk.clearance().strengths(),
                        ClassDesk.of(desk).stream().map(one -> one.course().title()).toList()), pages.stream().map(Page::path).toList(), List.of());
    }

    /** A word by which one may look for the case; nobody looks for what is not known. */
    private static String known(String word) {
        return MissingValue.read(word).isPresent() ? "" : word;
    }

    /** The sheet as it is now, for a library shows what was saved, not what was lost. */
    private static Optional<Picture> standsForIt(List<Picture> pictures) {
        return pictures.stream().filter(picture -> picture.moment().equals("after")).findFirst()
                .or(() -> pictures.stream().findFirst());
    }

    private static List<String> sources(CaseDesk desk) {
        Set<String> keys = new LinkedHashSet<>();
        desk.worked().figures().values().forEach(figure -> keys.addAll(figure.sources()));
        desk.treatment().solutions().forEach(solution -> solution.source().ifPresent(keys::add));
        desk.treatment().sources().all().map(Passage::source).forEach(keys::add);
        keys.retainAll(desk.library().sources().keySet());
        return new ArrayList<>(keys);
    }

    /** The words of steps and solutions are held against strengths where there is a public text; elsewhere they may tell them. */
    private static List<String> texts(TreatmentCase treatment, boolean publicText, boolean recipes, List<String> classes) {
        Set<String> texts = new LinkedHashSet<>();
        treatment.object().media().forEach(medium -> texts.add(medium.is()));
        texts.add(known(treatment.object().support().paper()));
        if (recipes) {
            treatment.solutions().stream().map(Solution::name).forEach(texts::add);
            treatment.steps().stream().map(Step::instruction).forEach(texts::add);
        }
        if (publicText) {
            treatment.story().sections().forEach(section -> texts.add(section.heading()));
        }
        texts.addAll(classes);
        texts.remove("");
        return new ArrayList<>(texts);
    }
}
