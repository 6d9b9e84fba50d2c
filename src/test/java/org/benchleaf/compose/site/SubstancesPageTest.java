package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Materials;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Material;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CaseReader;
import org.junit.jupiter.api.Test;

/** The page of substances lists what the site's cases use, no more and no less. */
class SubstancesPageTest {

    private static final Path CONTENT = Path.of("content");

    /** Walks the demo's cases by their own words: what a recipe, step or spot test names, and the substance of that material. */
    @Test
    void every_substance_of_a_solution_material_part_and_spot_test_stands_there_and_no_other() {
        DemoSite demo = DemoSite.made();
        Set<String> named = new TreeSet<>();
        CaseReader.folders(CONTENT).stream().map(folder -> CaseChecker.check(CaseReader.read(CONTENT, folder), demo.library(),
                        DemoSite.DAY, new Deriver(demo.library())::ph).treatment().orElseThrow())
                .flatMap(treatment -> named(treatment).stream())
                .forEach(id -> Optional.ofNullable(demo.library().materials().get(id)).flatMap(Material::substance)
                        .ifPresent(named::add));
        // Spirit of 96 % holds water, whether or not a case names water.
        named.add("water");

        assertThat(listed(demo, demo.cases().stream().map(CasePages::card).toList()))
                .containsExactlyElementsOf(named.stream().map(key -> "substance-" + Paths.slug(key)).toList());
    }

    private static List<String> named(TreatmentCase treatment) {
        List<String> ids = new ArrayList<>();
        treatment.solutions().forEach(solution -> ids.addAll(solution.recipe().ingredients()));
        treatment.steps().forEach(step -> ids.addAll(Materials.of(step)));
        treatment.tests().forEach(test -> ids.add(test.with()));
        return ids;
    }

    @Test
    void what_no_published_case_uses_is_not_listed() {
        DemoSite demo = DemoSite.made();
        List<CaseCard> cards = demo.cases().stream().map(CasePages::card).toList();

        assertThat(listed(demo, List.of())).isEmpty();
        cards.forEach(card -> assertThat(listed(demo, List.of(card))).hasSize(card.substances().size()));
    }

    private static List<String> listed(DemoSite demo, List<CaseCard> cards) {
        Page page = SiteComposer.compose(demo.library(), cards, List.of(), AuthorGuideReader.read(), Audience.EVERYBODY).pages().stream()
                .filter(one -> one.path().equals(Paths.SUBSTANCES)).findFirst().orElseThrow();
        return page.blocks().stream().flatMap(block -> block instanceof Section section ? Stream.of(section.id())
                : Stream.empty()).filter(id -> id.startsWith("substance-")).toList();
    }
}
