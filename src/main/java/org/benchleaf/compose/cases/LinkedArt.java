package org.benchleaf.compose.cases;

import java.time.LocalDate;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.Materials;
import org.benchleaf.compose.part.WebAddress;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Material;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.Thesaurus;
import org.benchleaf.model.Thesaurus.Facet;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/**
 * The object, its condition and its treatment in the words of museums' linked data (Linked Art 1.0, after CIDOC CRM): what was
 * assessed, what was done with what, and who did it. A term has an identifier where the thesaurus gives it one, else its word alone.
 */
final class LinkedArt {

    private static final String CONTEXT = "https://linked.art/ns/v1/linked-art.json";
    /** What leaves the sheet as it is, and so modifies nothing. */
    private static final Set<StepKind> LOOKING = EnumSet.of(StepKind.EXAMINATION, StepKind.TESTING, StepKind.PHOTOGRAPHY,
            StepKind.MEASURING, StepKind.HOUSING);

    private final CaseDesk desk;
    private final TreatmentCase treatment;
    private final Thesaurus thesaurus;
    private final WebAddress web;

    private LinkedArt(CaseDesk desk, WebAddress web) {
        this.desk = desk;
        this.treatment = desk.treatment();
        this.thesaurus = desk.library().reference().thesaurus();
        this.web = web;
    }

    /** The record of a case; empty without an address on the web, or where the public text is not permitted. */
    static Optional<LinkedArt> of(CaseDesk desk) {
        return !desk.clearance().audience().isPublic() || !desk.clearance().allows(Clearance.Output.CASE_STUDY) ? Optional.empty()
                : WebAddress.of(desk.library().studio()).map(web -> new LinkedArt(desk, web));
    }

    /** The file beside the case study. */
    DataFile file() {
        PrintObject object = treatment.object();
        return new DataFile(desk.path(Paths.LINKED_ART), JsonText.script(JsonText.object("@context", CONTEXT,
                "id", web.to(desk.path(Paths.LINKED_ART)), "type", "HumanMadeObject", "_label", treatment.title(),
                "classified_as", List.of(typed("Type", Facet.OBJECT, object.kind())),
                "identified_by", List.of(named(treatment.title())), "referred_to_by", List.of(described(treatment.summary())),
                "dimension", dimensions(object), "made_of", materials(object), "produced_by", production(object),
                "attributed_by", treatment.condition().stream().filter(damage -> damage.of().isEmpty()).map(this::assessment).toList(),
                "modified_by", List.of(modification()), "subject_of", List.of(page()))) + "\n");
    }

    /** A term of a facet, with its identifier where it has one. */
    private Map<String, Object> typed(String type, Facet facet, String word) {
        return JsonText.object("id", thesaurus.conceptOf(facet, word), "type", type, "_label", word);
    }

    private Map<String, Object> named(String name) {
        return JsonText.object("type", "Name", "classified_as", List.of(typed("Type", Facet.RECORD, "primary name")), "content", name);
    }

    private Map<String, Object> described(String text) {
        Map<String, Object> description = typed("Type", Facet.RECORD, "description");
        description.put("classified_as", List.of(typed("Type", Facet.RECORD, "brief text")));
        return JsonText.object("type", "LinguisticObject", "classified_as", List.of(description), "content", text);
    }

    private List<Object> dimensions(PrintObject object) {
        return object.size().map(size -> List.<Object>of(dimension("height", size.height()), dimension("width", size.width())))
                .orElse(List.of());
    }

    /** No finer than the sheet was measured, as the page tells it. */
    private Object dimension(String name, Quantity length) {
        return JsonText.object("type", "Dimension", "classified_as", List.of(typed("Type", Facet.RECORD, name)),
                "value", Math.round(length.in(Unit.MILLIMETRE)), "unit", typed("MeasurementUnit", Facet.RECORD, "mm"));
    }

    private List<Object> materials(PrintObject object) {
        return Stream.concat(Stream.of(object.support().paper()), object.media().stream().map(medium -> medium.is()))
                .filter(LinkedArt::isKnown).distinct().map(word -> (Object) typed("Material", Facet.MATERIAL, word)).toList();
    }

    private Optional<Object> production(PrintObject object) {
        List<Object> technique = isKnown(object.technique()) && !object.technique().isBlank()
                ? List.of(typed("Type", Facet.PROCESS, object.technique())) : List.of();
        Optional<Object> timespan = object.made().map(made -> JsonText.object("type", "TimeSpan", "identified_by", List.of(named(made))));
        return technique.isEmpty() && timespan.isEmpty() ? Optional.empty()
                : Optional.of(JsonText.object("type", "Production", "technique", technique, "timespan", timespan));
    }

    private static boolean isKnown(String word) {
        return MissingValue.read(word).isEmpty();
    }

    /** Linked Art, "Condition Assessment": the kind of damage is assigned to the object as one of its types. */
    private Object assessment(Damage damage) {
        String where = Stream.of(damage.where(), damage.side(), damage.degree()).flatMap(Optional::stream)
                .reduce((one, other) -> one + ", " + other).orElse("");
        return JsonText.object("type", "AttributeAssignment", "_label", damage.what(), "assigned_property", "classified_as",
                "assigned", List.of(typed("Type", Facet.CONDITION, damage.what())),
                "referred_to_by", where.isEmpty() ? List.of() : List.of(described(where)), "carried_out_by", doers());
    }

    /** Linked Art, "Conservation Activities": the treatment as a whole, and in it each step that changed the object. */
    private Object modification() {
        return JsonText.object("type", "Modification", "_label", treatment.title(),
                "classified_as", List.of(typed("Type", Facet.PROCESS, "conservation")), "timespan", days(),
                "carried_out_by", doers(),
                "part", treatment.steps().stream().filter(step -> !LOOKING.contains(step.kind())).map(this::step).toList());
    }

    /** The first and the last day on which a step on record may have been done; empty where there are not two. */
    private Optional<Object> days() {
        List<LocalDate> days = treatment.steps().stream().flatMap(step -> Stream.concat(step.firstDay().stream(),
                step.lastDay().stream())).sorted().distinct().toList();
        return days.size() < 2 ? Optional.empty() : Optional.of(JsonText.object("type", "TimeSpan",
                "begin_of_the_begin", days.get(0) + "T00:00:00Z", "end_of_the_end", days.get(days.size() - 1) + "T23:59:59Z"));
    }

    private Object step(Step step) {
        Words words = Words.in(treatment.language());
        return JsonText.object("type", "Modification", "_label", new StepTitle(words, treatment).of(step),
                "technique", List.of(typed("Type", Facet.PROCESS, step.named().orElse(step.kind().word()))),
                "used_specific_object",
                used(step).stream().map(material -> JsonText.object("type", "HumanMadeObject", "_label", material.name(),
                        "made_of", List.of(typed("Material", Facet.MATERIAL, material.substance().orElse(material.name()))))).toList());
    }

    /** The studio's materials in a step, those of its solutions too; tools are made of nothing that counts here. */
    private List<Material> used(Step step) {
        Map<String, Material> materials = desk.library().materials();
        return Materials.of(step).stream().flatMap(treatment::matter).distinct().filter(materials::containsKey).map(materials::get)
                .filter(material -> !material.kind().equals("tool")).toList();
    }

    /** Who looked at the object and treated it; empty where a publication is retold, since that was not this studio. */
    private List<Object> doers() {
        return treatment.sources().retelling().isEmpty() ? List.of(studio()) : List.of();
    }

    private Object studio() {
        return JsonText.object("id", web.root(), "type", "Group", "_label", desk.library().studio().name());
    }

    private Object page() {
        return JsonText.object("type", "LinguisticObject", "_label", treatment.title(), "digitally_carried_by", List.of(
                JsonText.object("type", "DigitalObject", "_label", treatment.title(), "format", "text/html",
                        "access_point", List.of(JsonText.object("id", web.to(desk.path("index.html")), "type", "DigitalObject")))));
    }
}
