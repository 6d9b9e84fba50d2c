package org.benchleaf.compose;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.benchleaf.DemoSite;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Library;
import org.junit.jupiter.api.Test;

/** Materials of one kind beside each other. */
class ComparedPageTest {

    private static final Library LIBRARY = DemoSite.made().library();
    private static final List<ComparedMaterial> ROWS = LIBRARY.reference().compared();

    private static ComparedMaterial named(String name) {
        return ROWS.stream().filter(row -> row.name().equals(name)).findFirst().orElseThrow();
    }

    @Test
    void every_cell_has_a_source_that_is_listed_or_says_that_there_is_none() {
        assertThat(ROWS).isNotEmpty().allSatisfy(row -> assertThat(row.cells().values()).isNotEmpty().allSatisfy(cell -> assertThat(
                LIBRARY.sources().containsKey(cell.source()) || cell.source().equals("common practice, no source"))
                .as(row.name() + ": " + cell.source()).isTrue()));
    }

    @Test
    void every_substance_is_one_of_the_table_so_that_materials_and_their_hazards_are_found() {
        assertThat(ROWS).allSatisfy(row -> assertThat(LIBRARY.reference().substances().keySet()).containsAll(row.substances()));
    }

    /**
     * Museum of Fine Arts, Boston, CAMEO: gelatin, pH 4.5 to 5.0 in water, melting point 32 °C, absorbs up to ten times its weight
     * of cold water; cellulose ethers after Feller and Wilt 1990: methyl and carboxymethyl cellulose very good, hydroxypropyl
     * cellulose not for long-term use.
     */
    @Test
    void what_a_cell_says_stands_in_its_source() {
        assertThat(named("Gelatine").of("ph").orElseThrow().says()).contains("4.5 to 5.0");
        assertThat(named("Gelatine").of("sets").orElseThrow().says()).contains("32 °C");
        assertThat(named("Gelatine").of("swelling").orElseThrow().says()).contains("ten times");
        assertThat(named("Methyl cellulose").of("tests").orElseThrow().says()).contains("Very good");
        assertThat(named("Sodium carboxymethyl cellulose").of("tests").orElseThrow().says()).contains("Very good");
        assertThat(named("Hydroxypropyl cellulose").of("tests").orElseThrow().says()).contains("Not advised for long use");
    }

    @Test
    void a_cell_without_a_source_is_not_known_and_every_other_one_names_its_source() {
        List<Table> tables = tables();
        long told = ROWS.stream().mapToLong(row -> row.cells().size()).sum();
        List<String> cells = tables.stream().filter(table -> !table.id().equals("compared-used")).flatMap(table -> table.rows().stream())
                .flatMap(row -> row.stream().skip(1)).map(Html::markup).toList();

        assertThat(cells.stream().filter("not known"::equals)).isNotEmpty();
        assertThat(cells.stream().filter(cell -> !cell.equals("not known"))).hasSize((int) told)
                .allMatch(cell -> cell.contains("sources.html#") || cell.endsWith("(common practice, no source)"));
    }

    @Test
    void the_page_leads_to_the_studios_own_material_and_back() {
        Table used = tables().stream().filter(table -> table.id().equals("compared-used")).findFirst().orElseThrow();
        assertThat(used.rows()).anySatisfy(row -> assertThat(row.get(1).markup()).contains("wheat-starch.html"))
                .anySatisfy(row -> assertThat(row.get(1).markup()).isEqualTo("not listed"));
        Page starch = pages().stream().filter(page -> page.path().equals("materials/wheat-starch.html")).findFirst().orElseThrow();
        assertThat(starch.blocks()).filteredOn(block -> block instanceof Section section && section.id().equals("compared")).hasSize(1);
    }

    /** University of Edinburgh, 2015: water of an aqueous adhesive moves iron out of iron-gall ink into the paper around. */
    @Test
    void what_speaks_for_and_against_follows_from_what_is_told_of_the_sheet() {
        ComparedMaterial paste = named("Wheat starch paste");

        assertThat(paste.argumentsFor(List.of("letter", "iron-gall ink"))).singleElement().satisfies(one -> {
            assertThat(one.favours()).isFalse();
            assertThat(one.says()).contains("carries iron");
        });
        assertThat(paste.argumentsFor(List.of("poster", "printing ink", "sound"))).isEmpty();
        assertThat(ROWS).flatExtracting(ComparedMaterial::arguments).allSatisfy(one -> assertThat(LIBRARY.sources().containsKey(one.source())
                || one.source().equals("common practice, no source")).as(one.says()).isTrue());
    }

    /** The tide table has a stamp that is soluble, and its tears are bridged with wheat starch paste. */
    @Test
    void the_step_sheet_tells_what_speaks_against_the_adhesive_of_a_mend() {
        List<BenchStep> steps = PageComposer.compose(DemoSite.worked("tide-table", LIBRARY), LIBRARY, Clearance.on(DemoSite.DAY,
                DemoSite.worked("tide-table", LIBRARY).source().publication(), Audience.EVERYBODY)).pages().stream()
                .filter(page -> page.kind().equals("step-sheet")).flatMap(page -> page.blocks().stream())
                .filter(Section.class::isInstance).flatMap(section -> ((Section) section).blocks().stream())
                .filter(BenchStrip.class::isInstance).flatMap(strip -> ((BenchStrip) strip).steps().stream()).toList();

        assertThat(steps.stream().flatMap(step -> step.facts().stream()).filter(fact -> fact.name().contains("speaks against"))
                .map(fact -> fact.value().markup())).singleElement().asString().contains("a colour of this sheet dissolves");
    }

    private static List<Page> pages() {
        return new MaterialPages().make(new SiteDesk(LIBRARY, List.of(), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY, PageMakers.NAMES));
    }

    private static List<Table> tables() {
        Page page = pages().stream().filter(one -> one.path().equals("materials/compared--adhesive.html")).findFirst().orElseThrow();
        return page.blocks().stream().filter(Section.class::isInstance).map(Section.class::cast).flatMap(section -> section.blocks().stream())
                .map(Table.class::cast).toList();
    }
}
