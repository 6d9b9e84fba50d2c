package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.derive.hazard.Bottles;
import org.benchleaf.message.Place;
import org.benchleaf.model.Library;
import org.benchleaf.model.Material;
import org.benchleaf.model.Substance;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.read.AuthorGuideReader;
import org.junit.jupiter.api.Test;

/** A material's own page tells what becomes of it no milder than what is known of it bears; common practice, no source. */
class SubstanceMakerTest {

    private static final Library DEMO = DemoSite.made().library();
    private static final String UNKNOWN = DEMO.reference().wordings().get("waste-unknown").words();

    @Test
    void the_waste_of_what_is_not_known_is_not_known_whatever_kind_its_row_names() {
        Map<String, Substance> rows = DEMO.reference().substances();
        Map<String, String> waste =
                waste(rows.keySet().stream().map(key -> material(key, "liquid", Optional.of(key), Optional.empty())).toList());
        Bottles bottles = new Bottles(DEMO.reference(), DEMO.formulary());

        rows.forEach((key, row) -> {
            boolean known = ((Bottles.Told) bottles.ask(key + " 100 % m/m", Optional.empty())).hazards().known();
            if (row.hazards() == Substance.Answer.UNKNOWN || !known) {
                assertThat(waste.get(key)).as(key).startsWith(UNKNOWN);
            }
            if (row.hazards() != Substance.Answer.NONE || !known) {
                assertThat(waste.get(key)).as(key).doesNotContain("to the drain", "Scrape into the bin");
            }
        });
        assertThat(rows.values()).anyMatch(row -> row.hazards() == Substance.Answer.UNKNOWN && row.waste().isPresent());
    }

    @Test
    void a_chemical_without_a_substance_and_one_of_unknown_rest_are_collected_apart() {
        Map<String, String> waste = waste(List.of(material("mystery", "liquid", Optional.empty(), Optional.empty()),
                material("thinned", "liquid", Optional.of("acetone"), Optional.of("50 % m/m")),
                material("acetone", "liquid", Optional.of("acetone"), Optional.empty()),
                material("water", "liquid", Optional.of("water"), Optional.empty()),
                material("brush", "tool", Optional.empty(), Optional.empty())));

        assertThat(waste.get("mystery")).startsWith(UNKNOWN);
        assertThat(waste.get("thinned")).startsWith(UNKNOWN);
        assertThat(waste.get("acetone")).contains("closed can for solvents");
        assertThat(waste.get("water")).contains("to the drain");
        assertThat(waste.get("brush")).isEmpty();
    }

    private static Material material(String id, String kind, Optional<String> substance, Optional<String> strength) {
        Optional<Quantity> strong = strength.map(text -> QuantityReader.read(text, Dimension.MASS_FRACTION).quantity().orElseThrow());
        return new Material(id, id, kind, "One.", substance, strong, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(), Place.file("materials/all.yaml"));
    }

    /** The words about waste on the page of each material of a library, by its id; empty where there are none. */
    private static Map<String, String> waste(List<Material> materials) {
        Map<String, Material> all = new LinkedHashMap<>();
        materials.forEach(material -> all.put(material.id(), material));
        Library library = new Library(DEMO.studio(), all, DEMO.glossary(), DEMO.sources(), DEMO.methods(), List.of(), DEMO.reference(),
                DEMO.rules(), DEMO.matrix(), DEMO.formulary(), DEMO.translations(), DEMO.phrases());
        Map<String, Page> pages = new LinkedHashMap<>();
        SiteComposer.compose(library, List.of(), List.of(), AuthorGuideReader.read(), Audience.EVERYBODY).pages()
                .forEach(page -> pages.put(page.path(), page));
        Map<String, String> waste = new LinkedHashMap<>();
        all.keySet().forEach(id -> waste.put(id, waste(pages.get(Paths.material(id)))));
        return waste;
    }

    private static String waste(Page page) {
        return page.blocks().stream().filter(Section.class::isInstance).flatMap(section -> ((Section) section).blocks().stream())
                .filter(Facts.class::isInstance).flatMap(facts -> ((Facts) facts).facts().stream())
                .filter(fact -> fact.name().equals("Waste")).map(fact -> fact.value().plain()).findFirst().orElse("");
    }
}
