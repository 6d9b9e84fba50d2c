package org.benchleaf.compose.site;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.AllBlocks;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.PageMakers;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Library;
import org.benchleaf.model.MaterialChoice;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Rule;
import org.benchleaf.model.SheetWords;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.BenchStep;
import org.benchleaf.page.BenchStrip;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.page.Table;
import org.benchleaf.publish.WrittenText;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

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

    /**
     * University of Melbourne, Oriental Papermaking Fibres, summary table: paper mulberry 6 to 20 mm, gampi and mitsumata 2 to 4 mm,
     * abaca 2 to 12 mm. Bates, Bower and Smith 1956: saturated calcium hydroxide at 25 °C, pH 12.45, 0.0203 mol/L or 1.50 g/L.
     * ISO 3696, grade 3: pH 5.0 to 7.5, at most 5.0 µS/cm at 25 °C. CAMEO: one make of vinyl eraser, surface pH 7.66, free of sulfur.
     */
    @Test
    void what_is_said_of_tissues_waters_and_erasers_stands_in_its_source() {
        assertThat(named("Kozo tissue").of("fibre").orElseThrow().says()).contains("6 to 20 mm");
        assertThat(List.of(named("Gampi tissue"), named("Mitsumata tissue"))).allSatisfy(row ->
                assertThat(row.of("fibre").orElseThrow().says()).contains("2 to 4 mm"));
        assertThat(named("Abaca tissue").of("fibre").orElseThrow().says()).contains("2 to 12 mm");
        assertThat(named("Water with calcium hydroxide").of("ph").orElseThrow().says()).contains("12.45");
        assertThat(named("Water with calcium hydroxide").of("calcium").orElseThrow().says()).contains("1.5 g");
        assertThat(named("Water without salts").of("ph").orElseThrow().says()).contains("5.0 to 7.5");
        assertThat(named("Water without salts").of("conductivity").orElseThrow().says()).contains("5 µS/cm");
        assertThat(named("Vinyl eraser").of("ph").orElseThrow().says()).contains("7.66");
    }

    @ParameterizedTest
    @EnumSource(ComparedKind.class)
    void a_cell_without_a_source_is_not_known_and_every_other_one_names_its_source(ComparedKind kind) {
        long told = ROWS.stream().filter(row -> row.kind() == kind).mapToLong(row -> row.cells().size()).sum();
        List<String> cells = tables(kind).stream().filter(table -> !List.of("compared-used", "compared-fire").contains(table.id()))
                .flatMap(table -> table.rows().stream()).flatMap(row -> row.stream().skip(1)).map(WrittenText::of).toList();

        assertThat(cells.stream().filter("not known"::equals)).isNotEmpty();
        assertThat(cells.stream().filter(cell -> !cell.equals("not known"))).hasSize((int) told)
                .allMatch(cell -> cell.contains("sources.html#") || cell.endsWith("(common practice, no source)"));
    }

    /** IEC 60079-20-1 (from memory): flash points of toluene 4 °C and of n-hexane −22 °C. */
    @Test
    void solvents_stand_with_what_the_table_of_substances_has_of_their_fire() {
        Map<String, String> flash = tables(ComparedKind.SOLVENT).stream().filter(table -> table.id().equals("compared-fire"))
                .flatMap(table -> table.rows().stream())
                .collect(Collectors.toMap(row -> row.get(0).plain(), row -> WrittenText.of(row.get(1))));

        assertThat(flash).hasSameSizeAs(ROWS.stream().filter(row -> row.kind() == ComparedKind.SOLVENT).toList());
        assertThat(flash.get("Toluene")).matches("4.°C .*sources.html#.*");
        assertThat(flash.get("Hexane")).matches("−22.°C .*sources.html#.*");
    }

    @Test
    void a_rule_that_asks_about_the_same_is_one_of_the_rules_or_cells() {
        List<String> known = Stream.concat(LIBRARY.rules().stream().map(Rule::id), LIBRARY.matrix().rows().stream().flatMap(row ->
                LIBRARY.matrix().actions().stream().map(action -> Matrix.cellId(row, action)))).toList();

        assertThat(ROWS.stream().flatMap(row -> row.arguments().stream()).flatMap(one -> one.rule().stream())).isNotEmpty()
                .allMatch(known::contains);
    }

    @Test
    void a_thing_that_is_no_chemical_is_found_by_its_name() {
        assertThat(found("kozo-5")).containsExactly("Kozo tissue");
        assertThat(found("vinyl-eraser")).containsExactly("Vinyl eraser");
        assertThat(found("sponge")).containsExactly("Vulcanised rubber sponge");
        assertThat(found("blotter-300")).containsExactly("Blotting paper");
        assertThat(found("polyester-web")).containsExactly("Spun-bonded polyester web");
        assertThat(found("deionised-water")).containsExactly("Water without salts");
        assertThat(found("ethanol-96")).containsExactly("Water with ethanol", "Ethanol");
        assertThat(found("soft-brush")).isEmpty();
    }

    private static List<String> found(String material) {
        return ROWS.stream().filter(row -> row.isOf(LIBRARY.materials().get(material))).map(ComparedMaterial::name).toList();
    }

    /** Limewater was put into the tide table's bath, so that it is no longer water without salts. */
    @Test
    void a_step_chooses_its_water_by_what_was_put_into_it_and_its_mend_by_adhesive_and_tissue() {
        TreatmentCase tide = DemoSite.worked("tide-table", LIBRARY).source();

        assertThat(chosen(tide, "wash")).containsExactly("Water with calcium hydroxide", "Polyester film", "Spun-bonded polyester web");
        assertThat(chosen(tide, "mend"))
                .containsExactly("Wheat starch paste", "Kozo tissue", "Spun-bonded polyester web", "Blotting paper");
        assertThat(chosen(tide, "dry")).containsExactly("Blotting paper", "Spun-bonded polyester web", "Felt");
    }

    /**
     * What a case tells of the time after treatment speaks, from the sources named in the table: Brückle 1997 on dried films of paste
     * and of methyl cellulose; Getty AAT on mitsumata; BPG 2011 on acrylic dispersions that heat wakes; Smith 1984 on acetone;
     * PreservArt on blotters with about 3 % of calcium carbonate; Dwan 1992 on burnished papers dried on a membrane.
     */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            Wheat starch paste                | must stay flexible | false | distorts and contracts
            Wheat starch paste                | changing humidity  | false | distorts and contracts
            Methyl cellulose                  | must stay flexible | true  | Its film is flexible
            Methyl cellulose                  | changing humidity  | true  | Its film is flexible
            Mitsumata tissue                  | changing humidity  | false | shrinks and expands
            Acrylic dispersion, dried on tissue | heat-sensitive   | false | Heat or a solvent wakes it
            Acrylic dispersion, dried on tissue | must stay flexible | false | differs by product
            Acetone                           | printing ink       | false | printing inks and dyes
            Blotting paper                    | cyanotype          | false | calcium carbonate
            Vapour-permeable membrane         | burnished          | true  | keep their finish
            """)
    void what_a_case_tells_of_its_sheet_speaks_for_or_against(String name, String word, boolean favours, String says) {
        assertThat(named(name).argumentsFor(List.of(word))).anyMatch(one -> one.favours() == favours && one.says().contains(says));
        assertThat(named(name).argumentsFor(List.of("sound")).stream().map(ComparedMaterial.Argument::says))
                .noneMatch(told -> told.contains(says));
    }

    @Test
    void a_mist_chooses_its_solvent() {
        assertThat(chosen(DemoSite.worked("tide-table", LIBRARY).source(), "relax"))
                .containsExactly("Ethanol", "Polyester film", "Spun-bonded polyester web");
    }

    private static List<String> chosen(TreatmentCase treatment, String step) {
        return MaterialChoice.of(treatment.step(step).orElseThrow(), treatment, LIBRARY).stream().map(choice -> choice.material().name())
                .toList();
    }

    /** The letter's ink bled in water and held in ethanol; the tide table's stamp bleeds, is kept from the mend, and held in the bath. */
    @Test
    void what_moved_in_a_test_is_told_of_the_sheet_until_the_step_keeps_it_out_or_a_test_with_its_liquid_passes() {
        TreatmentCase letter = DemoSite.worked("ferry-letter", LIBRARY).source();
        TreatmentCase tide = DemoSite.worked("tide-table", LIBRARY).source();
        Step wash = tide.step("wash").orElseThrow();

        assertThat(SheetWords.tested(letter, LIBRARY)).contains("moves in water").doesNotContain("moves in ethanol");
        assertThat(SheetWords.tested(tide, LIBRARY)).contains("stamp-pad ink", "soluble", "moves in water");
        assertThat(SheetWords.open(tide.step("mend").orElseThrow(), "paste", tide, LIBRARY)).doesNotContain("stamp-pad ink", "soluble");
        assertThat(SheetWords.open(wash, "bath", tide, LIBRARY)).contains("stamp-pad ink").doesNotContain("soluble", "moves in water");
        assertThat(SheetWords.open(wash, "deionised-water", tide, LIBRARY)).contains("soluble", "moves in water");
    }

    /** Poster: a reason for 'choice-weighed' at its mend. Tide table: one for 'groundwood-alkali' at its bath, which
     * asks about the limewater. Lock plan: one for the blotters under a cyanotype. Letter: one for what its tissue is coated
     * with, and one for the alcohol that wakes it. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            flood-poster | Methyl cellulose             | the poster is kept cool and dry | 1
            tide-table   | Water with calcium hydroxide | only up to pH 8.5               | 1
            lock-plan    | Blotting paper               | of a kind without chalk         | 1
            ferry-letter | Ethanol                      | only as much is brushed on      | 2
            ferry-letter | Hydroxypropyl cellulose      | an adhesive that alcohol wakes  | 2
            """)
    void the_reason_of_the_case_stands_with_what_speaks_for_and_against_what_it_chose(String caseId, String material, String says,
            int reasons) {
        assertThat(weighed(caseId)).anySatisfy(fact -> {
            assertThat(fact.name()).isEqualTo(material + ": the reason in the case file");
            assertThat(fact.value().plain()).contains(says);
        });
        assertThat(weighed(caseId).stream().map(Fact::name)).filteredOn(one -> one.endsWith("the reason in the case file"))
                .hasSize(reasons);
    }

    /** The page of the letter tells of what holds its mend what the results tell, not only what speaks for it. */
    @Test
    void the_case_study_tells_what_speaks_against_what_a_mend_holds_with() {
        assertThat(facts("ferry-letter", "case-study")).anySatisfy(fact -> {
            assertThat(fact.name()).isEqualTo("Hydroxypropyl cellulose: what speaks against it here");
            assertThat(fact.value().plain()).startsWith("It discolours with age");
        }).anySatisfy(fact -> {
            assertThat(fact.name()).isEqualTo("Ethanol: what speaks against it here");
            assertThat(fact.value().plain()).contains("more iron moved out of the ink");
        });
    }

    private static List<Fact> weighed(String caseId) {
        return facts(caseId, "results");
    }

    private static List<Fact> facts(String caseId, String kind) {
        var worked = DemoSite.worked(caseId, LIBRARY);
        return PageComposer.compose(worked, LIBRARY, Clearance.on(DemoSite.DAY, worked.source().publication(), Audience.EVERYBODY))
                .pages().stream()
                .filter(page -> page.kind().equals(kind)).flatMap(AllBlocks::of).filter(Facts.class::isInstance).map(Facts.class::cast)
                .flatMap(facts -> facts.facts().stream()).toList();
    }

    @Test
    void the_page_leads_to_the_studios_own_material_and_back() {
        Table used = tables(ComparedKind.ADHESIVE).stream().filter(table -> table.id().equals("compared-used")).findFirst().orElseThrow();
        assertThat(used.rows()).anySatisfy(row -> assertThat(WrittenText.of(row.get(1))).contains("wheat-starch.html"))
                .anySatisfy(row -> assertThat(row.get(1).plain()).isEqualTo("not listed"));
        Page starch = pages().stream().filter(page -> page.path().equals("materials/wheat-starch.html")).findFirst().orElseThrow();
        assertThat(starch.blocks()).filteredOn(block -> block instanceof Section section && section.id().equals("compared")).hasSize(1);
    }

    /** The demo's entry of ethanol has "keeps: 52 wk"; that of kozo tissue has nothing of it. */
    @Test
    void every_material_tells_how_long_it_keeps_or_that_it_is_not_known() {
        assertThat(keeps("ethanol-96")).isEqualTo("52\u202Fwk, by the studio");
        assertThat(keeps("kozo-5")).isEqualTo("not known");
    }

    private static String keeps(String material) {
        return pages().stream().filter(page -> page.path().equals("materials/" + material + ".html")).flatMap(AllBlocks::of)
                .filter(Facts.class::isInstance).map(Facts.class::cast).flatMap(facts -> facts.facts().stream())
                .filter(fact -> fact.name().equals("Keeps, once opened")).map(fact -> fact.value().plain()).findFirst().orElseThrow();
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
        assertThat(ROWS).flatExtracting(ComparedMaterial::arguments)
                .allSatisfy(one -> assertThat(LIBRARY.sources().containsKey(one.source())
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

        assertThat(steps.stream().flatMap(step -> step.facts().stream())
                .filter(fact -> fact.name().startsWith("Wheat starch paste: what speaks against"))
                .map(fact -> fact.value().plain())).singleElement().asString().contains("a colour of this sheet dissolves");
    }

    private static List<Page> pages() {
        return new MaterialPages()
                .make(new SiteDesk(LIBRARY, List.of(), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY, PageMakers.NAMES));
    }

    private static List<Table> tables(ComparedKind kind) {
        Page page = pages().stream().filter(one -> one.path().equals(Paths.compared(kind.word()))).findFirst().orElseThrow();
        return page.blocks().stream().filter(Section.class::isInstance).map(Section.class::cast)
                .flatMap(section -> section.blocks().stream())
                .map(Table.class::cast).toList();
    }
}
