package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Severity;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Two invented publications, retold as someone did who had read nothing but the README and "Writing a case file": what they do not
 * tell stays unknown, and no page says what nobody gave. What is expected was read off the case files by hand.
 */
class NewcomerCasesTest {

    private static final Path CONTENT = Path.of("src/test/resources/newcomer");
    private static final LocalDate DAY = LocalDate.of(2026, 11, 27);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());

    @TempDir
    private Path folder;

    private int copies;

    private record Told(Map<String, String> pages, Map<String, String> files, List<Message> messages) {

        String page(String name) {
            return pages.entrySet().stream().filter(page -> page.getKey().endsWith("/" + name)).findFirst().orElseThrow().getValue();
        }

        String file(String name) {
            return files.entrySet().stream().filter(file -> file.getKey().endsWith("/" + name)).findFirst().orElseThrow().getValue();
        }

        List<String> whats() {
            return messages.stream().map(Message::what).toList();
        }
    }

    private static Told told(Path content, String id) {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Checked checked = WholeLine.checked(content, content.resolve("cases").resolve(id), library);
        List<Message> messages = new ArrayList<>(checked.messages().all());
        assertThat(messages).filteredOn(message -> message.severity() == Severity.ERROR).map(MessageText::of).isEmpty();
        Derived derived = new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings());
        messages.addAll(derived.messages().all());
        Clearance clearance = Clearance.on(DAY, checked.treatment().get().publication(), Audience.EVERYBODY).of(derived.worked());
        messages.addAll(clearance.told());
        Map<String, String> pages = new TreeMap<>();
        for (Page page : PageComposer.compose(derived.worked(), library.library(), clearance).pages()) {
            pages.put(page.path(), Jsoup.parse(new String(PUBLISHER.publish(page).bytes(), StandardCharsets.UTF_8)).select("main").text()
                    .replaceAll("\\h", " "));
        }
        Map<String, String> files = new TreeMap<>();
        for (DataFile file : PageComposer.compose(derived.worked(), library.library(), clearance).files()) {
            files.put(file.path(), file.text());
        }
        return new Told(pages, files, messages);
    }

    /** The same content with one text of a case changed. */
    private Path changed(String id, String from, String to) throws IOException {
        Path content = folder.resolve(String.valueOf(++copies));
        ChangedContent.copy(CONTENT, content);
        Path file = content.resolve("cases").resolve(id).resolve("case.md");
        String text = Files.readString(file);
        assertThat(text).contains(from);
        Files.writeString(file, text.replace(from, to));
        return content;
    }

    /** A trial of two baths, with some more keys of it. */
    private static String trial(String keys) {
        return """
                trials:
                  - id: baths
                    question: Which bath whitens more?
                    of: test sheets
                    what: strips
                    varies: Bath
                    arms: [{id: plain, is: water, control: yes}, {id: lime, is: limewater}]
                """ + keys.indent(4) + "\n";
    }

    /** The cuttings with that trial. */
    private Path withTrial(String keys) throws IOException {
        return changed("cuttings", "results:\n", trial(keys) + "results:\n");
    }

    /** Nobody told whether the strips were made for the test; so no step on the object is to be named. */
    @Test
    void on_what_a_trial_and_ageing_were_done_may_be_not_known_or_not_read() throws IOException {
        Map<String, String> told = Map.of("not known", "not recorded", "not read", "not read by who tells it",
                "not read (methods)", "not read by who tells it: methods");
        for (Map.Entry<String, String> one : told.entrySet()) {
            Path content = changed("cuttings", "results:\n", """
                      - id: age
                        kind: ageing
                        do: Age the strips.
                        takes: not read
                        ageing: {of: test sheets, temperature: not read, humidity: not read, time: not read}

                    """ + trial("found: Both did.") + "results:\n");
            Path file = content.resolve("cases/cuttings/case.md");
            Files.writeString(file, Files.readString(file).replace("of: test sheets", "of: " + one.getKey()));
            Told page = told(content, "cuttings");
            assertThat(page.page("index.html")).as(one.getKey()).contains("What is aged: " + one.getValue(),
                    "Tried on strips (test sheets, a sample or the object: " + one.getValue() + ")");
            Files.writeString(file, Files.readString(file).replaceAll("(?m)^source:\\n(  .*\\n)+", "")
                    .replaceAll("(?m)^  source licence:.*\\n", ""));
            Checked own = WholeLine.checked(content, content.resolve("cases/cuttings"), LibraryChecker.check(LibraryReader.read(content)));
            assertThat(own.messages().all()).filteredOn(message -> message.code().equals("FORM-027"))
                    .filteredOn(message -> message.what().startsWith("'of'")).hasSize(2);
        }
    }

    /** A gel, a poultice and a paste bring their liquid to the sheet; a powder brings none. */
    @Test
    void a_gel_a_poultice_and_a_paste_are_liquids_of_a_step() throws IOException {
        String brush = "    do: Deacidify it in a bath of calcium hydroxide in water.\n    takes: not known\n    uses: [%s]\n";
        for (String kind : List.of("gel", "poultice", "paste", "powder")) {
            Path content = changed("cuttings", "    kind: alkalization\n" + brush.formatted("calcium-hydroxide, ion-exchanged-water"),
                    "    kind: gel cleaning\n" + brush.formatted("carbopol"));
            Files.writeString(content.resolve("materials/more.yaml"),
                    "carbopol: {name: Carbopol, kind: " + kind + ", plain: It thickens.}\n");
            Told told = told(content, "cuttings");
            assertThat(told.whats().stream().anyMatch(what -> what.contains("names no liquid"))).as(kind).isEqualTo(kind.equals("powder"));
            assertThat(told.page("index.html").contains("Used: Carbopol.")).as(kind).isNotEqualTo(kind.equals("powder"));
        }
    }

    /** The notes of the publication were not read; what the case leaves out may stand there. */
    @Test
    void what_is_left_out_of_a_partly_read_publication_is_not_said_to_be_unrecorded() throws IOException {
        String keys = "results: [{measure: look, method: seen, readings: [{arm: lime, after: rather limited}]}]";
        Path content = withTrial(keys);
        Path file = content.resolve("cases/cuttings/case.md");
        String partly = Files.readString(file).replace("control: yes", "control: no").replaceFirst("takes: not known", "takes: 2 h");
        Files.writeString(file, partly);
        Told told = told(content, "cuttings");
        assertThat(told.page("index.html")).contains("When it was done is not in what was read.",
                "Alike in every arm not in what was read", "Compared with no control in what was read");
        assertThat(told.page("results.html")).contains("limewater not in what was read rather limited",
                "water not in what was read not in what was read");
        assertThat(told.file("trial-baths-1.csv")).doesNotContain("recorded");
        assertThat(told.pages().values()).noneMatch(page -> page.contains("not on record"));
        Files.writeString(file, partly.replace("not read: the notes", "not read: nothing"));
        Told whole = told(content, "cuttings");
        assertThat(whole.page("index.html")).contains("When it was done is not on record.", "Alike in every arm not recorded",
                "Compared with no control is on record");
        assertThat(whole.page("results.html")).contains("limewater not recorded rather limited");
    }

    /** What the publication may tell of the baths and the paper was not read: no sentence says that nobody recorded it. */
    @Test
    void sentences_of_rules_and_figures_do_not_call_unrecorded_what_was_not_read() throws IOException {
        Path content = changed("cuttings", "not known", "not read");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("paper: newsprint, features: [groundwood]", "paper: not read")
                .replace("    mend:", "    mist: {of: ion-exchanged-water, amount: not read}\n    housing: {materials: [folder], buffered:"
                        + " not read (methods)}\n    mend:"));
        Told told = told(content, "cuttings");
        assertThat(told.pages().values()).noneMatch(page -> page.replace("it does not tell stands as not recorded", "")
                .contains("not recorded")).noneMatch(page -> page.contains("not on record"));
        assertThat(told.whats()).noneMatch(what -> what.contains("not recorded") || what.contains("not on record"));
    }

    /** "6 days" is one number: nobody told that it was at least or at most so long. */
    @Test
    void one_time_is_not_told_as_its_two_ends() throws IOException {
        Path content = changed("cuttings", "takes: not known\n    bath", "takes: 6 d\n    bath");
        assertThat(told(content, "cuttings").page("results.html")).contains("1. Washing 6 d 2.").doesNotContain("at least", "at most");
        assertThat(told(content, "cuttings").file("times.csv")).doesNotContain("at least", "8640");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replaceFirst("takes: not known", "takes: 1 h to 2 h"));
        assertThat(told(content, "cuttings").page("results.html")).contains("1. Washing 6 d as given as given 2.", "1 h 2 h");
    }

    @Test
    void hazards_that_are_not_known_of_several_liquids_of_a_step_are_told_in_one_message() throws IOException {
        Path content = changed("cuttings", "uses: [calcium-hydroxide, ion-exchanged-water]", "uses: [one, two, ion-exchanged-water]");
        Files.writeString(content.resolve("materials/more.yaml"), """
                one: {name: Gel one, kind: gel, plain: A gel.}
                two: {name: Gel two, kind: gel, plain: A gel.}
                """);
        assertThat(told(content, "cuttings").messages()).filteredOn(message -> message.code().equals("HAZ-020")).singleElement()
                .satisfies(message -> assertThat(message.what()).isEqualTo("The hazards of 'one', 'two' in step 'alkalize' are not known:"
                        + " What is in 'Gel one' is not known. What is in 'Gel two' is not known."));
    }

    /** Nobody told that a gel lay on the sheet itself, that nothing was cleaned before it, or that the arms differ in one thing alone. */
    @Test
    void what_the_publication_leaves_open_of_order_contact_and_arms_is_not_said_of_it() throws IOException {
        Path content = withTrial("found: Both did.");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("    kind: alkalization", "    kind: gel cleaning"));
        Told told = told(content, "cuttings");
        assertThat(told.page("results.html")).contains("The step uses a poultice or gel; no look for residue, no rinse and no interleaf is"
                + " told.", "The step brings moisture, and no surface cleaning is told before it.")
                .doesNotContain("on the sheet itself", "is the first to bring");
        assertThat(told.page("index.html")).contains("Arms side by side").doesNotContain("differ in one thing");
    }

    @Test
    void strengths_that_nobody_wrote_are_not_said_to_be_no() throws IOException {
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", "steps:\n  - id: clean\n    uses: [thin-kozo]\n");
        Path file = content.resolve("cases/long-drawing/case.md");
        String yes = Files.readString(file);
        for (String written : List.of("is 'no'", "is not written, which counts as 'no'")) {
            Files.writeString(file, yes.replace("  strengths for the public: yes\n", written.equals("is 'no'")
                    ? "  strengths for the public: no\n" : ""));
            assertThat(told(content, "long-drawing").messages()).filteredOn(message -> message.code().equals("CONS-010"))
                    .singleElement().satisfies(message -> assertThat(message.what())
                            .contains("'strengths for the public' " + written + ", and this site"));
        }
    }

    /** How warm each was when it was saturated decides how strong it is; a test with the one is none with the other. */
    @Test
    void solutions_of_which_it_is_not_told_how_they_were_made_are_not_taken_for_alike() throws IOException {
        for (boolean known : List.of(true, false)) {
            String recipe = "saturate: {solid: calcium-hydroxide, in: ion-exchanged-water, at: " + (known ? "20 °C" : "not known") + "}";
            Path content = changed("cuttings", "steps:\n  - id: wash", "tests:\n"
                    + "  - {of: text, with: one, result: stable, dwell: 1 h}\n\nsolutions:\n  one: {name: One, " + recipe
                    + "}\n  two: {name: Two, " + recipe + "}\n\nsteps:\n  - id: wash");
            Path file = content.resolve("cases/cuttings/case.md");
            Files.writeString(file, Files.readString(file).replace("uses: [calcium-hydroxide, ion-exchanged-water]", "uses: [two]"));
            assertThat(ofStep(told(content, "cuttings"), "alkalize").stream().anyMatch(what -> what.contains("'two' touches 'text', and no"
                    + " test has this composition"))).as(recipe).isNotEqualTo(known);
        }
    }

    /** Calcium hydroxide that is told beside its water was dissolved in it, and is as alkaline as a solution of it. */
    @Test
    void a_dry_alkali_beside_its_water_is_asked_what_its_solution_is_asked() throws IOException {
        List<String> asked = List.of("is above pH 9.5, or holds a hydroxide", "brings alkali to groundwood paper",
                "means alkali above pH 7.5");
        List<String> dry = ofStep(told(CONTENT, "cuttings"), "alkalize");
        assertThat(asked).allMatch(question -> dry.stream().anyMatch(what -> what.contains(question)));
        List<String> water = ofStep(told(changed("cuttings", "uses: [calcium-hydroxide, ion-exchanged-water]",
                "uses: [ion-exchanged-water]"), "cuttings"), "alkalize");
        assertThat(asked).noneMatch(question -> water.stream().anyMatch(what -> what.contains(question)));
    }

    /** A case without sheets for the bench needs nobody for whom they would be written. */
    @Test
    void the_level_of_a_retold_case_may_be_left_open_and_is_then_told_nowhere() throws IOException {
        assertThat(told(CONTENT, "cuttings").page("index.html")).contains("Level of training Advanced");
        Path content = changed("cuttings", "level: advanced", "level: not known");
        assertThat(told(content, "cuttings").pages().values()).noneMatch(page -> page.contains("Level of training"));
        Path own = own(changed("long-drawing", "level: ", "level: not read # "));
        Checked open = WholeLine.checked(own, own.resolve("cases/long-drawing"), LibraryChecker.check(LibraryReader.read(own)));
        assertThat(open.messages().all()).filteredOn(message -> message.code().equals("FORM-027"))
                .anyMatch(message -> message.what().startsWith("'level'"));
    }

    /** The abstract gives a colour difference and a rank, and no colour before or after. */
    @Test
    void a_difference_and_a_rank_among_the_arms_are_told_by_themselves() throws IOException {
        Path content = withTrial("""
                answers: [find which bath]
                results:
                  - measure: total colour difference ΔE
                    method: not read
                    unit: none
                    readings: [{arm: lime, difference: 26.17, rank: highest of all}]
                  - measure: strength
                    method: pulling
                    unit: MPa
                    readings: [{arm: lime, after: 61.8, rank: highest of all}, {arm: plain, rank: not read}]
                """);
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file)
                .replaceFirst("\ntrials:", "\nproposal:\n  aims: [find which bath whitens more]\n\ntrials:"));
        Told told = told(content, "cuttings");
        assertThat(told.page("results.html")).contains("Arm Difference Among the arms water not in what was read not in what was read"
                + " limewater 26.17 highest of all", "Arm Before After Among the arms water not in what was read not in what was read"
                + " not read by who tells it limewater not in what was read 61.8 MPa highest of all");
        assertThat(told.file("trial-baths-1.csv")).contains("arm,difference,rank\r\n", "limewater,26.17,highest of all");
        assertThat(told.page("index.html")).contains("Total colour difference ΔE, limewater: a difference of 26.17, highest of all");
    }

    @Test
    void nothing_is_said_of_what_a_bath_carries_unless_the_case_tells_it() throws IOException {
        assertThat(told(CONTENT, "cuttings").page("results.html")).doesNotContain("neither calcium nor magnesium");
        assertThat(told(changed("cuttings", "uses: [calcium-hydroxide, ion-exchanged-water]", "uses: [ion-exchanged-water]"), "cuttings")
                .page("results.html")).doesNotContain("neither calcium nor magnesium").contains("what the liquid carried is not given");
    }

    @Test
    void a_last_bath_of_pure_water_is_still_told_to_carry_neither() throws IOException {
        Path content = changed("cuttings", "uses: [calcium-hydroxide, ion-exchanged-water]", "uses: [ion-exchanged-water]");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("kind: alkalization", "kind: rinsing"));
        assertThat(told(content, "cuttings").page("results.html")).contains("neither calcium nor magnesium");
    }

    @Test
    void a_bath_and_an_adhesive_of_which_nothing_is_known_can_be_told() {
        Told told = told(CONTENT, "cuttings");
        assertThat(told.page("index.html"))
                .contains("number of baths not given", "Laid down with: not recorded").doesNotContain("1 bath");
        assertThat(told.pages().keySet()).noneMatch(path -> path.endsWith("steps.html") || path.endsWith("preparation.html"));
    }

    /** One rule asks whether the ink was tested with the water of the wash; the publication tells of a test and not of its liquid. */
    @Test
    void a_test_whose_liquid_is_not_named_is_told_and_leaves_open_what_is_judged_by_it() throws IOException {
        String steps = "steps:\n  - id: wash";
        Told untested = told(CONTENT, "cuttings");
        assertThat(untested.whats()).anyMatch(what -> what.contains("'ion-exchanged-water' touches 'text'") && what.contains("no test"));
        String test = "tests:\n  - {of: text, with: not known (no liquid is named), result: stable}\n\n";
        Told told = told(changed("cuttings", steps, test + steps), "cuttings");
        assertThat(told.page("results.html")).contains("printing ink not recorded: no liquid is named not in what was read stable");
        assertThat(told.whats()).noneMatch(what -> what.contains("no test"))
                .anyMatch(what -> what.contains("the liquid of a test of 'text' is not given"));
    }

    /** The cover bears a stamp and is not washed; the leaf is washed and bears the text. Only the text meets the water. */
    @Test
    void a_medium_of_one_item_is_not_charged_to_steps_on_another() throws IOException {
        String items = """
                  items:
                    - {id: leaf, is: The leaf}
                    - {id: cover, is: The cover}
                  media:
                    - {id: text, is: printing ink, state: not known, of: [leaf]}
                    - {id: stamp, is: stamp-pad ink, state: not known, of: [cover]}
                """;
        String media = "  media:\n    - {id: text, is: printing ink, state: not known}\n";
        Path content = changed("cuttings", media, items);
        assertThat(told(content, "cuttings").whats()).anyMatch(what -> what.contains("touches 'stamp'"));
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replaceAll("(?m)^(    kind: (washing|alkalization|lining))$", "$1\n    of: [leaf]"));
        Told told = told(content, "cuttings");
        assertThat(told.whats()).anyMatch(what -> what.contains("touches 'text'")).noneMatch(what -> what.contains("'stamp'"));
        assertThat(told.page("index.html")).contains("stamp-pad ink, on: The cover");
    }

    @Test
    void what_is_asked_of_a_step_of_its_own_kind_says_of_which_kind_it_is_asked() throws IOException {
        Told told = told(changed("cuttings", "kind: alkalization\n",
                "kind: other\n    named: laying on a gel\n    nearest: alkalization\n"), "cuttings");
        assertThat(ofStep(told, "alkalize")).anyMatch(what -> what.startsWith(
                "Asked of step 'alkalize' as of alkalization, to which it is nearest: step 'alkalize' bathes the sheet"));
        assertThat(told.page("results.html")).contains("Asked of it as of alkalization, to which it is nearest: the step bathes the sheet")
                .doesNotContain("Laying on a gel: The step bathes the sheet");
    }

    /** Tetrahydrofuran is a solvent without water; what the ink does in it is judged as what it does in other solvents. */
    @Test
    void what_is_said_of_water_is_not_said_of_a_bath_or_mist_of_a_solvent() throws IOException {
        Path content = changed("cuttings", "is: printing ink", "is: stamp-pad ink");
        Files.writeString(content.resolve("materials/more.yaml"),
                "thf: {name: Tetrahydrofuran, kind: liquid, plain: A solvent., substance: tetrahydrofuran}\n");
        Path file = content.resolve("cases/cuttings/case.md");
        assertThat(ofStep(told(content, "cuttings"), "wash")).anyMatch(what -> what.startsWith("The water of the bath"))
                .anyMatch(what -> what.contains("means immersion in water")).noneMatch(what -> what.contains("another solvent"));
        String solvent = Files.readString(file).replace("bath: {of: ion-exchanged-water", "bath: {of: thf")
                .replace("mend: {damages", "mist: {of: thf, amount: not known}\n    mend: {damages");
        Files.writeString(file, solvent);
        Told told = told(content, "cuttings");
        assertThat(ofStep(told, "wash")).noneMatch(what -> what.contains("water")).noneMatch(what -> what.contains("calcium"))
                .anyMatch(what -> what.contains("means alcohol or another solvent for 'text'"));
        assertThat(ofStep(told, "line")).noneMatch(what -> what.contains("wetting without"))
                .anyMatch(what -> what.contains("means alcohol or another solvent for 'text'"));
    }

    /** What a wet sheet holds and what rinsing leaves follow from water; of tetrahydrofuran nobody has told either. */
    @Test
    void a_bath_of_a_solvent_gives_no_figure_of_water() throws IOException {
        Path content = changed("cuttings", "margin: not known, depth: not known, baths: not known, each: not known", "margin: 20 mm,"
                + " depth: 20 mm, baths: 2, each: 10 min");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("size: not known", "size: {height: 200 mm, width: 100 mm}")
                .replace("{paper: newsprint,", "{paper: newsprint, grammage: 50 g/m²,"));
        assertThat(figures(content)).contains("wash.volume", "wash.held", "wash.liquor");
        Files.writeString(content.resolve("materials/more.yaml"),
                "thf: {name: Tetrahydrofuran, kind: liquid, plain: A solvent., substance: tetrahydrofuran}\n");
        Files.writeString(file, Files.readString(file).replace("bath: {of: ion-exchanged-water", "bath: {of: thf"));
        assertThat(figures(content)).contains("wash.volume").doesNotContain("wash.held", "wash.liquor");
    }

    private static Set<String> figures(Path content) {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        Checked checked = WholeLine.checked(content, content.resolve("cases/cuttings"), library);
        return new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings()).worked().figures().keySet();
    }

    private static List<String> ofStep(Told told, String step) {
        return told.whats().stream().filter(what -> what.contains("tep '" + step + "'")).toList();
    }

    /** A solvent that nobody named can do anything; what it was and how strong is told as not recorded. */
    @Test
    void an_unknown_solvent_and_unknown_proportions_of_a_solution_are_told_as_not_recorded() throws IOException {
        String steps = """
                solutions:
                  size: {name: Size, dissolve: {solid: cellulose, in: not known, strength: 1 % m/v}, make: 100 mL}
                  weak: {name: Weak size, dilute: {stock: size, with: not known, one in: 3}, make: 100 mL}
                  joined: {name: Joined, mix: {spirit: not known, rest: ion-exchanged-water}, make: 100 mL}
                  paste: {name: Paste, parts: {first: cellulose, second: ion-exchanged-water, parts: 1 + 5, by: not known}, make: 100 mL}
                  drops: {name: Drops, parts: {first: spirit, second: ion-exchanged-water, parts: not known, by: volume}, make: 100 mL}
                steps:
                  - id: clean
                    uses: [size, weak, joined, paste, drops]
                """;
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", steps);
        Files.writeString(content.resolve("materials/more.yaml"), """
                cellulose: {name: Methyl cellulose, kind: adhesive, plain: A powder., substance: methyl cellulose}
                spirit: {name: Ethanol, kind: liquid, plain: Alcohol., substance: ethanol, strength: 96 % v/v}
                """);
        Told told = told(content, "long-drawing");
        assertThat(told.page("index.html")).contains("Size (1 % m/v methyl cellulose in a liquid that is not recorded); ",
                "Weak size (1 part Size made up to 3 parts with a liquid that is not recorded, by volume); ",
                "Paste (1 part of methyl cellulose, to 5 parts of ion-exchanged water; whether by mass or by volume is not recorded); ",
                "Drops (ethanol, ion-exchanged water, in proportions that are not given)").doesNotContain("not known");
        assertThat(told.whats()).filteredOn(what -> what.contains("cannot be worked out, because of what the solution")).hasSize(2);
        assertThat(told.whats()).filteredOn(what -> what.contains("because in which proportions the solution")).hasSize(2);
        assertThat(told.pages().values()).noneMatch(page -> page.contains("No hazard class"));
        Checked own = WholeLine.checked(own(content), content.resolve("cases/long-drawing"),
                LibraryChecker.check(LibraryReader.read(content)));
        assertThat(own.messages().all()).filteredOn(message -> message.code().equals("FORM-027")).hasSize(4);
    }

    /** How much water came to the limewater, and how warm it was when it was made, nobody wrote down. */
    @Test
    void a_stock_thinned_to_a_ph_and_one_saturated_at_an_unknown_temperature_are_told_as_written() throws IOException {
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", """
                solutions:
                  lime: {name: Limewater, saturate: {solid: calcium-hydroxide, in: ion-exchanged-water, at: not known}, make: 1 L}
                  weak: {name: Weak limewater, adjust: {liquid: lime, with: ion-exchanged-water, to: pH 9.3}, make: 1 L}
                  other: {name: Other limewater, adjust: {liquid: ion-exchanged-water, with: lime, to: about pH 9}}
                  fourth: {name: Fourth of it, dilute: {stock: lime, with: ion-exchanged-water, one in: 4}, make: 1 L}
                  water: {name: Pure, adjust: {liquid: ion-exchanged-water, with: ion-exchanged-water, to: pH 9}}
                  beyond: {name: Beyond, adjust: {liquid: lime, with: ion-exchanged-water, to: pH 13.5}}
                steps:
                  - id: clean
                    uses: [lime, weak, other, fourth, water, beyond]
                """);
        Told told = told(content, "long-drawing");
        assertThat(told.page("index.html")).contains(
                "Limewater (saturated; how strong cannot be worked out, because the temperature is not recorded)",
                "Weak limewater (Limewater brought to pH 9.3 with ion-exchanged water)",
                "Other limewater (ion-exchanged water brought to pH about 9 with Limewater)");
        assertThat(told.whats()).filteredOn(what -> what.contains("does not change a pH")).hasSize(2)
                .noneMatch(what -> what.contains("9.3"));
        assertThat(told.whats()).anyMatch(what -> what.equals("'lime.strength' cannot be worked out, because the temperature at which"
                + " 'lime' was saturated is not given."));
        Path file = content.resolve("cases/long-drawing/case.md");
        Files.writeString(file, Files.readString(file).replace("at: not known", "at: not read (chapter one)"));
        assertThat(told(content, "long-drawing").page("index.html"))
                .contains("because the temperature is not read by who tells it: chapter one)");
        Files.writeString(file, Files.readString(file).replace("at: not read (chapter one)", "at: 20 °C").replace("  beyond:", "  # ")
                .replace(", beyond]", "]"));
        assertThat(told(content, "long-drawing").page("index.html")).contains("Limewater (saturated at 20 °C)");
    }

    @Test
    void a_liquid_that_is_no_bath_is_not_called_one() throws IOException {
        Path content = changed("cuttings", "steps:\n", "steps:\n  - id: spray\n    kind: local wet treatment\n    do: Spray it.\n"
                + "    takes: not known\n    uses: [calcium-hydroxide, ion-exchanged-water]\n");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("steps:\n", "solutions:\n  lime: {name: Lime, dissolve: {solid:"
                + " calcium-hydroxide, in: ion-exchanged-water, strength: not known}}\nsteps:\n")
                .replace("uses: [calcium-hydroxide, ion-exchanged-water]\n  - id: wash", "uses: [lime]\n  - id: wash"));
        assertThat(ofStep(told(content, "cuttings"), "spray"))
                .anyMatch(what -> what.contains("A liquid of step 'spray' is above pH 10.5"))
                .noneMatch(what -> what.contains("bath"));
    }

    /** Chelation has no part that tells how its liquid came to the sheet; a step of its own kind is asked as what it is nearest to. */
    @Test
    void a_step_that_says_that_it_was_brushed_is_told_so_and_is_asked_nothing_of_a_bath() throws IOException {
        String alkalize = "    kind: alkalization\n    do: Deacidify it in a bath of";
        for (String kind : List.of("alkalization", "chelation", "other\n    named: brushing on\n    nearest: washing")) {
            Path content = changed("cuttings", alkalize, "    kind: " + kind + "\n    applied: brush\n    do: Brush on");
            Path file = content.resolve("cases/cuttings/case.md");
            Files.writeString(file, Files.readString(file).replace("is: printing ink", "is: gouache"));
            Told told = told(content, "cuttings");
            assertThat(told.page("index.html")).as(kind).contains("Applied: with a brush");
            assertThat(ofStep(told, "alkalize")).as(kind).noneMatch(what -> what.contains("bathes") || what.contains("immersion")
                    || what.contains("of the bath")).anyMatch(what -> what.contains("wetting without a bath (mist, brush, swab)"));
        }
        assertThat(ofStep(told(CONTENT, "cuttings"), "alkalize")).anyMatch(what -> what.contains("bathes"));
        Told dipped = told(changed("cuttings", alkalize, "    kind: chelation\n    applied: immersion\n    do: Deacidify it in a bath of"),
                "cuttings");
        assertThat(ofStep(dipped, "alkalize")).anyMatch(what -> what.contains("bathes"));
    }

    @Test
    void dilution_to_a_ph_leads_to_the_way_it_is_written() throws IOException {
        for (String key : List.of("strength", "to")) {
            Path content = changed("long-drawing", "steps:\n  - id: clean\n", "solutions:\n  weak: {name: Weak, dilute: {stock:"
                    + " calcium-hydroxide, with: ion-exchanged-water, " + key + ": pH 9.3}}\nsteps:\n  - id: clean\n    uses: [weak]\n");
            assertThat(WholeLine.checked(content, content.resolve("cases/long-drawing"), LibraryChecker.check(LibraryReader.read(content)))
                    .messages().all()).map(Message::fix).contains("Write 'adjust: {liquid: calcium-hydroxide, with: ion-exchanged-water,"
                            + " to: pH 9.3}' in its place.");
        }
    }

    /** The same case, told as a treatment of the studio. */
    private static Path own(Path content) throws IOException {
        Path file = content.resolve("cases/long-drawing/case.md");
        Files.writeString(file, Files.readString(file).replaceAll("(?m)^source:\\n(  .*\\n)+", "")
                .replaceAll("(?m)^  source licence:.*\\n", ""));
        return content;
    }

    @Test
    void a_test_with_an_unknown_liquid_is_refused_in_a_case_that_is_not_retold() throws IOException {
        Path content = folder.resolve("own");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Path file = content.resolve("cases/tide/case.md");
        String text = Files.readString(file);
        assertThat(text).contains("with: bath");
        Files.writeString(file, text.replaceFirst("with: bath", "with: not known"));
        Checked checked = WholeLine.checked(content, content.resolve("cases/tide"), LibraryChecker.check(LibraryReader.read(content)));
        assertThat(checked.messages().all()).extracting(Message::code).contains("FORM-027");
    }

    @Test
    void how_to_cite_a_retold_case_names_its_publication() {
        assertThat(told(CONTENT, "cuttings").page("index.html")).containsPattern(
                "Version [0-9a-f]{8}\\. Retold from An invented institute: Cuttings that had browned a scrapbook\\. two pages\\.");
    }

    @Test
    void heat_mist_and_layer_are_told_though_nobody_recorded_how_warm_how_much_and_how_thick() throws IOException {
        Told told = told(changed("cuttings", "    after: [alkalize]\n", """
                    after: [alkalize]
                    heat: {tool: not known, temperature: not known, time: not known}
                    mist: {of: ion-exchanged-water, amount: not known}
                    layer: {of: ion-exchanged-water, thickness: not known}
                """), "cuttings");
        assertThat(told.page("index.html")).contains("Temperature: not recorded", "Thickness: not recorded",
                "How much liquid to make cannot be worked out, because the amount of mist is not given.",
                "Tissue and adhesive cannot be worked out, because the width or the lap of the strips is not given.");
    }

    /** The room of this studio, at 20 °C, is not the one in which others worked. */
    @Test
    void nothing_is_worked_out_of_a_chamber_with_the_temperature_of_another_room() throws IOException {
        Told told = told(changed("cuttings", "    after: [alkalize]\n", """
                    after: [alkalize]
                    chamber: {of: ion-exchanged-water, volume: 100 L, humidity: 90 % RH}
                """), "cuttings");
        assertThat(told.page("index.html")).contains("The water that the air of the chamber takes up cannot be worked out");
        assertThat(told.pages().values()).noneMatch(page -> page.contains("20 °C"));
        assertThat(told.files().values()).noneMatch(file -> file.contains("line.water"));
    }

    @Test
    void a_per_cent_of_which_nobody_recorded_the_kind_stands_as_it_was_given() throws IOException {
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", """
                solutions:
                  size: {name: Size, dissolve: {solid: cellulose, in: ion-exchanged-water, strength: 1 %}, make: 100 mL}
                  weak: {name: Weak size, dilute: {stock: size, with: ion-exchanged-water, strength: 0.5 %}, make: 100 mL}
                  joined: {name: Joined, mix: {spirit: 20 %, rest: ion-exchanged-water}, make: 100 mL}
                steps:
                  - id: clean
                    uses: [size, weak, joined]
                """);
        Files.writeString(content.resolve("materials/more.yaml"), """
                cellulose: {name: Methyl cellulose, kind: adhesive, plain: A powder., substance: methyl cellulose}
                spirit: {name: Ethanol, kind: liquid, plain: Alcohol., substance: ethanol, strength: 96 % v/v}
                """);
        Told told = told(content, "long-drawing");
        assertThat(told.page("index.html"))
                .contains("Size (1 % (kind of per cent not given) methyl cellulose in ion-exchanged water)")
                .contains("0.5 % (kind of per cent not given)", "20 % (kind of per cent not given)");
        assertThat(told.whats()).filteredOn(what -> what.contains("because the kind of per cent")).hasSize(3);
    }

    @Test
    void an_unknown_liquid_is_refused_in_a_case_that_is_not_retold() throws IOException {
        Path content = changed("cuttings", "title: Acid", "title: Other acid");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replaceAll("(?m)^source:\\n(  .*\\n)+", "")
                .replaceAll("(?m)^  source licence:.*\\n", ""));
        Checked checked = WholeLine.checked(content, content.resolve("cases/cuttings"), LibraryChecker.check(LibraryReader.read(content)));
        assertThat(checked.messages().all()).extracting(Message::code).contains("FORM-027").doesNotContain("FORM-030");
    }

    @Test
    void numbers_stand_as_they_were_given() {
        Told cuttings = told(CONTENT, "cuttings");
        for (String page : List.of("index.html", "results.html")) {
            assertThat(cuttings.page(page)).as(page).contains("4.0 to 4.5", "7.3").doesNotContain("4–4.5").doesNotContain("4.25")
                    .doesNotContain("± 0.1").doesNotContain("95 %");
        }
        assertThat(cuttings.files().values()).anySatisfy(file -> assertThat(file).contains("4.0 to 4.5", "mean 7.3"));
        Told drawing = told(CONTENT, "long-drawing");
        drawing.pages().values().forEach(page -> assertThat(page).doesNotContain("2 h 30 min").doesNotContain("3 h 30 min"));
        assertThat(drawing.page("index.html")).contains("about 3 h");
        assertThat(drawing.file("times.csv").replaceAll("\\h", " ")).contains("about 3 h").doesNotContain("150").doesNotContain("210");
    }

    @Test
    void a_cited_reading_stands_with_the_words_that_it_was_given_with() throws IOException {
        assertThat(told(CONTENT, "cuttings").page("index.html")).contains("from pH 4.0 to 4.5 to pH 7.3 (mean).");
        Map<String, String> given = Map.of("about 8", "about 8", "less than 5", "less than 5", "more than 9", "more than 9",
                "6 to 7", "6 to 7", "mean 7.2, n = 5, sd 0.1", "7.2 (mean, n = 5, standard deviation 0.1)", "reported 8.1", "8.1",
                "light green", "light green");
        for (Map.Entry<String, String> one : given.entrySet()) {
            Told told = told(changed("cuttings", "after: mean 7.3", "after: " + one.getKey()), "cuttings");
            assertThat(told.page("index.html")).as(one.getKey()).contains("to pH " + one.getValue() + ".");
        }
    }

    /** A permission until December 2026 ends with its first day; one given in November 2026 holds when that month is over. */
    @Test
    void a_month_of_a_permission_never_holds_longer_than_was_meant() throws IOException {
        String licence = "  source licence: CC-BY-3.0-AU\n";
        String permission = "  source licence: all rights reserved\n  permissions:\n"
                + "    - {for: [text], from: publisher, on: 2026-10, until: %s}\n";
        assertThat(told(changed("cuttings", licence, permission.formatted("2026-12")), "cuttings").pages().keySet())
                .anyMatch(path -> path.endsWith("index.html"));
        assertThat(told(changed("cuttings", licence, permission.formatted("2026-11")), "cuttings").pages().keySet())
                .noneMatch(path -> path.endsWith("index.html"));
        assertThat(told(changed("cuttings", licence, permission.formatted("2027").replace("on: 2026-10", "on: 2026-11")), "cuttings")
                .pages().keySet()).noneMatch(path -> path.endsWith("index.html"));
    }

    @Test
    void the_days_of_readings_are_told_as_far_as_they_are_known() throws IOException {
        Told told = told(changed("cuttings", "    before: 4.0 to 4.5\n",
                "    read: {before: 2011, after: 2012-06}\n    before: 4.0 to 4.5\n"), "cuttings");
        assertThat(told.page("results.html")).contains("Read on before: 2011, after: June 2012");
    }

    @Test
    void methods_and_boxes_of_which_nothing_is_known_can_be_told() throws IOException {
        Told told = told(changed("long-drawing", "housing: {materials: [folder], buffered: unknown, temperature: 10 °C}",
                "housing: {materials: not known, buffered: not known, temperature: not known}"), "long-drawing");
        assertThat(told.page("index.html")).doesNotContain("not known");
        assertThat(told(changed("cuttings", "method: strip", "method: not known"), "cuttings").page("results.html"))
                .contains("Method not recorded");
    }

    @Test
    void a_trial_answers_an_aim_as_a_result_does() throws IOException {
        Path content = changed("cuttings", "results:\n", "proposal:\n  aims: [find which bath whitens more]\n\n" + trial("""
                answers: [find which bath]
                results:
                  - measure: whiteness
                    method: not known
                    unit: "%"
                    readings: [{arm: plain, after: about 35}, {arm: lime, after: more than 56}]
                """) + "results:\n");
        assertThat(told(content, "cuttings").page("index.html")).contains("Find which bath whitens more",
                "In the trial “Which bath whitens more?”: Whiteness, water: about 35 %; whiteness, limewater: more than 56 %.");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("    results:\n", "    found: Limewater did.\n    results:\n"));
        assertThat(told(content, "cuttings").page("index.html")).contains("In the trial “Which bath whitens more?”: Limewater did.");
    }

    /** The publication measured it; only its abstract was read. */
    @Test
    void what_was_measured_and_not_read_is_not_told_as_not_recorded() throws IOException {
        Told told = told(changed("cuttings", "  - measure: pH\n", """
                  - measure: yellowness
                    method: colorimeter
                    unit: none
                    before: not read
                    after: not read (measured; only the abstract was read)
                  - measure: pH
                """), "cuttings");
        assertThat(told.page("results.html")).contains("Before not read by who tells it",
                "not read by who tells it: measured; only the abstract was read");
    }

    /** Who retells it read the abstract alone: of none of this may a page say that the publication is silent. */
    @Test
    void what_was_not_read_is_nowhere_told_as_not_recorded() throws IOException {
        Path content = changed("cuttings", "results:\n  - measure", """
                  - id: age
                    kind: ageing
                    do: Age the strips.
                    takes: not read
                    ageing: {of: test sheets, temperature: not read (methods), humidity: not read, time: not read (methods)}

                """ + trial("""
                alike: not read
                results:
                  - {measure: look, method: seen, readings: [{arm: plain, after: not read (figures)}, {arm: lime, after: good}]}
                """).replace("control: yes}", "control: yes, n: not read}").replace("is: limewater}", "is: limewater, n: 3}")
                + "results:\n  - measure");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replaceFirst("support: \\{paper: newsprint,",
                "items: [{id: one, is: The leaf, size: not read (methods), condition: not read}]\n"
                        + "  support: {paper: newsprint, grammage: not read, thickness: not read,")
                .replace("takes: not known", "takes: not read")
                .replace("is: printing ink, state: not known", "is: printing ink, state: not read (methods)"));
        Told told = told(content, "cuttings");
        assertThat(told.page("index.html")).contains("Size: not read by who tells it: methods", "grammage not read by who tells it",
                "thickness not read by who tells it").contains("Condition: not read by who tells it");
        assertThat(told.page("results.html")).contains("water not in what was read not read by who tells it: figures");
        assertThat(told.page("results.html")).contains("water control not read by who tells it", "Washing not read by who tells it");
        assertThat(told.file("trial-baths-1.csv")).contains("not read by who tells it: figures");
        assertThat(told.file("trial-baths-arms.csv")).isEqualTo("arm,role,n,n-missing\r\nwater,control,,not read by who tells it\r\n"
                + "limewater,treated,3,\r\n");
        assertThat(told.file("trial-baths-arms.csv-metadata.json")).contains("n-missing");
        assertThat(told.page("index.html")).contains("printing ink, state not read by who tells it: methods",
                "Temperature: not read by who tells it: methods", "Aged for: not read by who tells it: methods");
    }

    /** The hazards of the reagent are not known; how strong the publication made it is no recipe for the bench. */
    @Test
    void the_strength_that_a_publication_gives_stands_with_its_solution_and_the_liquid_at_its_step() throws IOException {
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", """
                solutions:
                  salt: {name: Salt solution, dissolve: {solid: reagent, strength: 0.03 mol/L, in: ion-exchanged-water}}
                steps:
                  - id: clean
                    uses: [salt, ion-exchanged-water, thin-kozo]
                """);
        Files.writeString(content.resolve("materials/more.yaml"), "reagent: {name: Reagent X, kind: powder, plain: A powder.}\n");
        Told told = told(content, "long-drawing");
        assertThat(told.page("index.html")).contains("Salt solution (0.03 mol/L", "Liquids: Salt solution, Ion-exchanged water");
        assertThat(told.pages().keySet()).noneMatch(path -> path.endsWith("steps.html") || path.endsWith("preparation.html"));
        Path file = content.resolve("cases/long-drawing/case.md");
        Files.writeString(file, Files.readString(file).replace("strengths for the public: yes", "strengths for the public: no"));
        assertThat(told(content, "long-drawing").page("index.html")).doesNotContain("0.03 mol/L");
    }

    @Test
    void only_what_the_parts_count_is_said_not_to_be_recorded_where_the_parts_are() throws IOException {
        Path content = changed("long-drawing", "steps:\n  - id: clean\n", """
                solutions:
                  paste: {name: Paste, parts: {first: thin-kozo, second: ion-exchanged-water, parts: 2 + 1, by: not known}}
                steps:
                  - id: clean
                    uses: [paste]
                """);
        assertThat(told(content, "long-drawing").whats())
                .anyMatch(what -> what.contains("Whether the parts of 'paste' count mass or volume is not given"))
                .noneMatch(what -> what.contains("In which proportions"));
        Path file = content.resolve("cases/long-drawing/case.md");
        Files.writeString(file, Files.readString(file).replace("strengths for the public: yes", "strengths for the public: no"));
        assertThat(told(content, "long-drawing").page("index.html"))
                .contains("Paste (whether by mass or by volume is not recorded)").doesNotContain("in full");
    }

    @Test
    void words_of_a_trial_stand_without_a_unit_or_with_none() throws IOException {
        Told told = told(withTrial("results: [{measure: look, method: seen, unit: none, readings: [{arm: lime, after: rather limited}]}]"),
                "cuttings");
        assertThat(told.page("results.html")).contains("limewater not in what was read rather limited");
    }

    /** A strength takes no 'less than': what is to be written instead is told with the words that were written. */
    @Test
    void a_quantity_that_is_refused_is_not_asked_for_in_the_form_that_was_refused() throws IOException {
        Path content = changed("cuttings", "title: Acid", "title: Old");
        Files.writeString(content.resolve("materials/more.yaml"), "weak: {name: Weak, kind: liquid, plain: A liquid., substance: ethanol,"
                + " strength: less than 0.012 mol/L, rest: water}\n");
        assertThat(LibraryChecker.check(LibraryReader.read(content)).messages().all()).filteredOn(one -> one.code().equals("FORM-018"))
                .hasSize(1).allSatisfy(one -> assertThat(one.fix()).contains("not known (less than 0.012 mol/L)")
                        .doesNotContain("'about'"));
    }

    /** The publication has a figure; of the readings nothing was read but how the sheets were aged and in what it was measured. */
    @Test
    void unit_method_after_and_ageing_of_a_result_in_words_are_told() throws IOException {
        String trial = trial("results: [{measure: chain, method: viscometry, unit: g/mol, readings: [{arm: lime, after: not read}]}]");
        Told told = told(changed("cuttings", "results:\n  - measure", trial + """
                results:
                  - measure: molar mass
                    method: size exclusion
                    method after: viscometry
                    unit: g/mol
                    aged: 8 d at 80 °C
                    before: not read (figures)
                    after: not read (figures)
                  - measure: strength
                    method: by hand
                    aged: 3 wk in the light
                    before: weak
                    after: rather good
                  - measure"""), "cuttings");
        assertThat(told.page("results.html")).contains("Unit g/mol", "Method after treatment viscometry",
                "Aged before it was measured 8 d at 80 °C", "Aged before it was measured 3 wk in the light",
                "chain in each arm, viscometry, in g/mol");
    }

    @Test
    void a_study_on_test_sheets_is_told_as_what_the_publication_tells() throws IOException {
        Path content = changed("cuttings", "kind: newspaper cuttings", "kind: test sheets");
        Path file = content.resolve("cases/cuttings/case.md");
        Files.writeString(file, Files.readString(file).replace("  media:\n", "  items:\n    - {id: one, is: Those washed}\n"
                + "    - {id: two, is: Those lined}\n  media:\n").replace("    kind: washing\n", "    kind: washing\n    of: [one]\n")
                .replace("    kind: lining\n", "    kind: lining\n    of: [two]\n").replace("    kind: alkalization\n",
                "    kind: alkalization\n    of: [one]\n").replace("    after: [alkalize]\n", ""));
        assertThat(told(content, "cuttings").page("index.html")).contains("These pages tell what a publication tells.",
                "steps on different sheets need not follow one another", "If you have a sheet of paper at home")
                .doesNotContain("what was done to one sheet").doesNotContain("In this order").doesNotContain("a sheet like this")
                .doesNotContain("Decision");
    }

    /** Washing and alkalization of one leaf follow one another; nobody told whether the other leaf was lined before or after. */
    @Test
    void steps_on_different_items_whose_order_is_not_told_have_no_numbers() throws IOException {
        Path content = changed("cuttings", "  media:\n",
                "  items:\n    - {id: one, is: The first}\n    - {id: two, is: The second}\n  media:\n");
        assertThat(told(content, "cuttings").page("index.html")).contains("In this order", "1. Washing", "3. Lining");
        Path file = content.resolve("cases/cuttings/case.md");
        String parted = Files.readString(file).replaceAll("(?m)^(    kind: (washing|alkalization))$", "$1\n    of: [one]")
                .replace("    kind: lining\n", "    kind: lining\n    of: [two]\n");
        Files.writeString(file, parted);
        assertThat(told(content, "cuttings").page("index.html")).contains("In this order", "1. Washing", "3. Lining");
        Files.writeString(file, parted.replace("    after: [alkalize]\n", ""));
        assertThat(told(content, "cuttings").page("index.html")).doesNotContain("In this order").doesNotContainPattern("\\d\\. (Wash|Lin)")
                .contains("need not follow one another");
    }

    @Test
    void what_a_retold_case_leaves_open_of_many_liquids_has_one_line() throws IOException {
        StringBuilder solutions = new StringBuilder("solutions:\n");
        for (String id : List.of("a", "b", "c", "d")) {
            solutions.append("  ").append(id).append(": {name: ").append(id)
                    .append(", dissolve: {solid: calcium-hydroxide, strength: not known,"
                    + " in: ion-exchanged-water}}\n");
        }
        Told told = told(changed("cuttings", "steps:\n", solutions + "steps:\n  - id: brush\n    kind: washing\n    do: Wash.\n"
                + "    takes: not known\n    uses: [a, b, c, d]\n"), "cuttings");
        assertThat(told.whats()).filteredOn(what -> what.contains("Nothing says how much of")).hasSize(1)
                .allMatch(what -> what.contains("'a', 'b', 'c', 'd'"));
        assertThat(told.whats()).filteredOn(what -> what.contains("'brush'") && what.contains("no test has this composition")).hasSize(1)
                .allMatch(what -> what.contains("The same is to be said of 3 more there."));
    }

    @Test
    void it_is_told_how_a_material_leaves_open_of_what_its_per_cent_is() throws IOException {
        Path content = changed("cuttings", "title: Acid", "title: Old");
        Path more = content.resolve("materials/more.yaml");
        String spirit = "spirit: {name: Spirit, kind: liquid, plain: Alcohol., substance: ethanol, strength: %s, rest: water}\n";
        Files.writeString(more, spirit.formatted("96 %"));
        assertThat(LibraryChecker.check(LibraryReader.read(content)).messages().all()).filteredOn(one -> one.code().equals("FORM-011"))
                .hasSize(1).allSatisfy(one -> assertThat(one.fix()).contains("write 'strength: not known (96 %)'"));
        Files.writeString(more, spirit.formatted("not known (96 %)"));
        assertThat(LibraryChecker.check(LibraryReader.read(content)).messages().hasErrors()).isFalse();
    }

    @Test
    void a_method_after_that_nobody_recorded_is_no_other_method() {
        assertThat(told(CONTENT, "cuttings").page("results.html")).contains("How it was read after is not given")
                .doesNotContain("different methods");
    }

    @Test
    void a_count_is_told_with_what_was_counted() throws IOException {
        assertThat(told(CONTENT, "long-drawing").page("index.html")).contains("2 strips");
        assertThat(told(changed("long-drawing", "extent: 2 strips", "extent: 2"), "long-drawing").page("index.html"))
                .contains("2 in number");
    }

    @Test
    void a_slip_in_a_unit_is_no_count() throws IOException {
        for (String slip : List.of("64 mn", "64 inches")) {
            Path content = changed("long-drawing", "extent: 2 strips", "extent: " + slip);
            Checked checked = WholeLine.checked(content, content.resolve("cases/long-drawing"),
                    LibraryChecker.check(LibraryReader.read(content)));
            assertThat(checked.messages().hasErrors()).as(slip).isTrue();
        }
    }

    /** SPDX License List: CC-BY-3.0-AU is the identifier of the Australian licence. */
    @Test
    void a_licence_of_a_country_is_known_and_an_unknown_one_is_told_once() throws IOException {
        assertThat(told(CONTENT, "cuttings").pages()).isNotEmpty();
        assertThat(told(changed("cuttings", "CC-BY-3.0-AU", "not known"), "cuttings").messages())
                .filteredOn(message -> message.code().equals("CONS-021")).hasSize(1);
    }

    @Test
    void a_true_fact_of_the_object_is_never_to_be_deleted_and_a_retold_case_answers_for_nobody() {
        Told told = told(CONTENT, "long-drawing");
        assertThat(told.messages()).extracting(Message::code).doesNotContain("FORM-032");
        assertThat(told.messages()).extracting(Message::fix).noneMatch(fix -> fix.contains("say why it was done"));
        assertThat(told.whats()).noneMatch(what -> what.contains("'state:'") && what.contains("is not given"));
    }

    @Test
    void pages_say_each_thing_once_and_in_whole_words() {
        Told told = told(CONTENT, "long-drawing");
        assertThat(told.page("index.html")).doesNotContain("red ink, red").doesNotContain("Removed with by hand")
                .doesNotContain("another order").doesNotContain("dirt, both,").doesNotContain("if it is not brittle yet")
                .doesNotContain("with all readings")
                .contains("both sides", "Stored at: 10 °C", "Adhesive of the tape: still sticky",
                        "Before: two strips. After: none; some staining is left");
        assertThat(told.page("results.html")).doesNotContain("red red ink");
        assertThat(told(CONTENT, "cuttings").page("index.html")).contains("groundwood");
    }
}
