package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.model.AcuteRoute;
import org.benchleaf.model.MixtureRule;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Source;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.Substance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ReferenceReaderTest {

    private static final Reference SHIPPED = ReferenceReader.shipped();

    @TempDir
    private Path content;

    /** As texts on chemicals write such names (common practice, no source). */
    @Test
    void within_a_sentence_a_substance_begins_small_and_its_abbreviations_stay_large() {
        assertThat(SHIPPED.substances().values()).extracting(Substance::within)
                .contains("ethanol", "2-phenylphenol", "N-methyl-2-pyrrolidone", "mercury(I) chloride", "DDT")
                .contains("EDTA disodium salt, dihydrate", "dearomatised spirit C9 to C11", "lead compounds (white lead, red lead)")
                .contains("1,4-dichlorobenzene")
                .doesNotContain("Ethanol", "ddt");
    }

    @Test
    void every_statement_is_worded_as_the_regulation_in_force_has_it() throws IOException {
        Map<String, String> inForce = list("clp-statements.csv");

        SHIPPED.statements().forEach((code, statement) ->
                assertThat(statement.official()).as(code).isEqualTo(inForce.get(code)));
        assertThat(SHIPPED.statements().keySet()).containsAll(
                inForce.keySet().stream().filter(code -> !code.startsWith("P")).toList());
    }

    /** An independent list of an older edition: what it words otherwise must be known as reworded. */
    @Test
    void an_independent_list_has_the_same_words_where_they_were_not_changed_since() throws IOException {
        Map<String, String> older = list("ghs-statements.csv");
        Map<String, String> reworded = list("ghs-reworded.csv");

        SHIPPED.statements().forEach((code, statement) -> {
            if (older.containsKey(code)) {
                assertThat(statement.official()).as(code).isEqualTo(reworded.getOrDefault(code, older.get(code)));
            }
        });
        assertThat(reworded.keySet()).allSatisfy(code ->
                assertThat(older.get(code)).as(code + " is listed as reworded").isNotEqualTo(reworded.get(code)));
    }

    @Test
    void what_the_law_leaves_open_is_filled_in_and_the_rest_is_printed_as_it_stands() {
        assertThat(SHIPPED.statements().values()).allSatisfy(statement -> {
            assertThat(statement.text()).doesNotContain("…", "[", "]", "/.", "/ ").endsWith(".");
            String asItStands = Stream.of(statement.official().split("/?…|\\[[^\\]]*\\]")).map(Pattern::quote)
                    .collect(Collectors.joining(".*"));
            assertThat(statement.text()).as(statement.code()).matches(asItStands + ".*");
        });
        // The words are examples that the regulation itself or the suppliers' sheets give; see reference/blanks.yaml.
        assertThat(SHIPPED.statements().get("P310").text()).isEqualTo("Immediately call a POISON CENTER/doctor.");
        assertThat(SHIPPED.statements().get("P370+P378").text())
                .isEqualTo("In case of fire: Use alcohol-resistant foam, dry powder or carbon dioxide to extinguish.");
    }

    @Test
    void a_studio_fills_in_its_own_words_where_the_law_leaves_them_open_and_nowhere_else() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/blanks.yaml"), """
                P310: {words: [the number on the wall], source: house rule}
                P264: {words: [hands, arms], source: house rule}
                P280: {words: [nothing], source: house rule}
                """);
        Messages messages = new Messages();

        Map<String, Reference.Statement> statements = ReferenceReader.read(content, messages).statements();

        assertThat(statements.get("P310").text())
                .isEqualTo("Immediately call a POISON CENTER/doctor/the number on the wall.");
        assertThat(messages.all()).extracting(said -> said.code() + " " + said.place().line())
                .containsExactlyInAnyOrder("REF-002 2", "REF-002 3");
        assertThat(statements.get("P264")).isEqualTo(SHIPPED.statements().get("P264"));
        assertThat(statements.get("P280")).isEqualTo(SHIPPED.statements().get("P280"));
    }

    @Test
    void pictograms_and_signal_words_go_with_the_statements_as_in_the_published_list() throws IOException {
        Map<String, String> published = labels(1);

        SHIPPED.statements().values().stream().filter(statement -> published.containsKey(statement.code()))
                .forEach(statement -> assertThat(statement.pictogram().orElse("none") + " "
                        + statement.signal().orElse("none")).as(statement.code()).isEqualTo(published.get(statement.code())));
    }

    @Test
    void precautions_go_with_the_statements_as_in_the_published_list() throws IOException {
        Map<String, String> published = labels(2);

        SHIPPED.statements().values().stream().filter(statement -> published.containsKey(statement.code()))
                .forEach(statement -> assertThat(List.of(published.get(statement.code()).split(" ")))
                        .as(statement.code()).containsAll(statement.precautions()));
        assertThat(published.keySet()).containsAll(SHIPPED.statements().keySet().stream()
                .filter(code -> code.startsWith("H")).toList());
        // Words that only the supplier has (which treatment, at which temperature), and what is for those who deal with a leak.
        published.forEach((code, all) -> assertThat(SHIPPED.statements().get(code).precautions()).as(code).containsAll(
                Stream.of(all.split(" "))
                .filter(one -> !Set.of("P320", "P321", "P411", "P413", "P370+P376", "P377").contains(one)).toList()));
    }

    @Test
    void classes_go_with_the_statements_as_in_the_published_list() throws IOException {
        Map<String, String> published = labels(3);

        SHIPPED.substances().values().stream().flatMap(substance -> substance.classes().stream())
                .filter(one -> one.statement().startsWith("H")).forEach(one ->
                        assertThat(List.of(published.get(one.statement()).split(", ")))
                                .as(one.name() + " " + one.statement())
                                .contains(one.name().replaceFirst(" \\(.*", "")));
    }

    @Test
    void every_row_names_a_source_that_is_listed_or_says_that_there_is_none() {
        Set<String> keys = new HashSet<>(ReferenceReader.sources().stream().map(Source::key).toList());
        MethodReader.read().sources().forEach(source -> keys.add(source.key()));
        keys.add("common practice, no source");

        assertThat(sources().filter(source -> !keys.contains(source))).isEmpty();
        assertThat(ReferenceReader.sources()).allSatisfy(source -> assertThat(source.status())
                .isIn("read", "read in part", "secondary", "from memory"));
    }

    @Test
    void no_source_is_listed_twice() {
        List<String> keys = Stream.of("sources", "sources-trade", "sources-hazards")
                .flatMap(name -> OwnYaml.list("/reference/" + name + ".yaml").stream()).map(row -> row.text("key")).toList();

        assertThat(keys).hasSizeGreaterThan(150).doesNotHaveDuplicates();
    }

    @Test
    void nothing_in_the_tables_points_to_a_row_that_is_not_there() {
        Set<String> codes = SHIPPED.statements().keySet();
        Set<String> steps = Stream.of(StepKind.values()).map(StepKind::word).collect(Collectors.toSet());
        Set<String> parts = Set.of("preparation", "powder", "bath", "mist", "chamber", "blotters", "press", "mend", "heat",
                "support", "cleaning", "fixing", "weighing", "housing", "layer", "suction", "light", "gas", "tape", "ageing");

        assertThat(SHIPPED.statements().values()).allSatisfy(statement -> {
            assertThat(codes).containsAll(statement.precautions());
            statement.pictogram().ifPresent(code -> assertThat(SHIPPED.pictograms()).containsKey(code));
        });
        assertThat(SHIPPED.cautions().values()).allSatisfy(caution -> {
            assertThat(steps).containsAll(caution.when().steps());
            assertThat(parts).containsAll(caution.when().parts());
            assertThat(SHIPPED.substances().keySet()).containsAll(caution.when().substances());
        });
        assertThat(SHIPPED.waste().values()).allSatisfy(kind ->
                assertThat(SHIPPED.waste().keySet()).containsAll(kind.neverWith()));
        assertThat(SHIPPED.access()).allSatisfy(row -> {
            assertThat(SHIPPED.substances().keySet()).containsAll(row.substances());
            assertThat(row.ph() || !row.usedBy().isEmpty()
                    || row.substances().size() + row.statements().size() + row.groups().size() > 0).as(row.key()).isTrue();
            assertThat(row.why()).as(row.key()).isNotBlank();
        });
    }

    @Test
    void the_table_has_the_substances_of_the_trade_with_their_registry_numbers() {
        assertThat(SHIPPED.substances().values()).hasSizeGreaterThan(120).allSatisfy(substance ->
                substance.cas().ifPresent(cas -> assertThat(checkDigitHolds(cas)).as(substance.name()).isTrue()));
        assertThat(SHIPPED.substances().values().stream().filter(substance -> substance.cas().isEmpty()))
                .as("mixtures and dusts without a number").hasSizeLessThan(10);
        assertThat(SHIPPED.pictograms().keySet()).containsExactly("GHS01", "GHS02", "GHS03", "GHS04", "GHS05",
                "GHS06", "GHS07", "GHS08", "GHS09");
    }

    @Test
    void every_substance_says_what_waste_it_becomes_and_what_it_reacts_with_is_written_in_the_known_groups() {
        Set<String> groups = SHIPPED.incompatible().stream().flatMap(row -> row.between().stream())
                .collect(Collectors.toCollection(HashSet::new));
        // Named by the rules of mixtures, and what old bottles do, which no second substance is needed for.
        groups.addAll(Set.of("alkali", "alcohol", "phenol", "aldehyde", "surfactant", "peroxide former"));

        assertThat(SHIPPED.substances().values()).allSatisfy(substance -> {
            assertThat(substance.waste()).as(substance.key()).isPresent();
            assertThat(groups).as(substance.key()).containsAll(substance.reactsAs());
        });
        assertThat(SHIPPED.access()).allSatisfy(row -> assertThat(SHIPPED.substances().values().stream()
                .flatMap(substance -> substance.reactsAs().stream()).collect(Collectors.toSet()))
                .as(row.key()).containsAll(row.groups()));
    }

    /** Common practice, no source: nobody wears two pairs of gloves or two masks of different strictness. */
    @Test
    void of_several_of_one_kind_the_strictest_is_worn_once() {
        assertThat(SHIPPED.strictest(List.of("GLV", "GLL", "RSP", "EYE", "RSP3"))).containsExactly("EYE", "GLL", "RSP3");
        assertThat(SHIPPED.strictest(List.of("UVG", "EYE"))).containsExactly("EYE", "UVG");
    }

    @Test
    void every_hazard_statement_with_a_signal_word_brings_a_caution() {
        Set<String> cautioned = SHIPPED.cautions().values().stream().flatMap(row -> row.when().statements().stream())
                .collect(Collectors.toSet());

        assertThat(SHIPPED.statements().values().stream().filter(statement -> statement.signal().isPresent())
                .map(Reference.Statement::code).filter(code -> !code.contains("+"))).allSatisfy(code ->
                assertThat(cautioned).contains(code));
    }

    @Test
    void two_names_never_mean_two_substances() {
        Set<String> taken = new HashSet<>();
        SHIPPED.substances().values().forEach(substance -> Stream.concat(Stream.of(substance.key(), substance.name())
                .map(name -> name.toLowerCase(Locale.ROOT)).distinct(), substance.synonyms().stream()
                .map(name -> name.toLowerCase(Locale.ROOT)).filter(name -> !name.equals(substance.name()
                        .toLowerCase(Locale.ROOT)))).forEach(name -> assertThat(taken.add(name)).as(name).isTrue()));
    }

    @Test
    void no_word_of_the_tables_promises_safety() {
        Stream<String> words = Stream.of(SHIPPED.cautions().values().stream().map(row -> row.words() + row.doFirst()),
                SHIPPED.equipment().values().stream().map(Reference.Equipment::words),
                SHIPPED.waste().values().stream().map(Reference.WasteKind::words),
                SHIPPED.firstAid().stream().map(Reference.FirstAid::words)).flatMap(Function.identity());

        assertThat(words.filter(text -> text.matches("(?i).*\\bsafe(ly)?\\b.*"))).isEmpty();
    }

    @Test
    void a_studio_adds_rows_and_replaces_shipped_ones() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/equipment.yaml"), """
                GLV: {name: gloves, kind: hands, words: The blue gloves from the drawer., source: house rule}
                HAT: {name: hair net, kind: head, words: Hair tied back., source: house rule}
                """);
        Messages messages = new Messages();

        Reference reference = ReferenceReader.read(content, messages);

        assertThat(messages.all()).isEmpty();
        assertThat(reference.equipment().get("GLV").words()).contains("blue");
        assertThat(reference.equipment()).containsKeys("HAT", "EYE").hasSize(SHIPPED.equipment().size() + 1);
    }

    @Test
    void what_is_wrong_with_a_studios_row_is_said_at_its_place_and_the_shipped_row_stays() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/equipment.yaml"), """
                GLV: {name: gloves, kind: hands, source: house rule}
                EYE: {name: goggles, kind: eyes, words: Goggles., source: house rule, colour: red}
                COAT: coat
                """);
        Files.writeString(content.resolve("reference/waste.yaml"), """
                odd: {name: odd, statements: [H999], words: Ask., source: house rule}
                """);
        Messages messages = new Messages();

        Reference reference = ReferenceReader.read(content, messages);

        assertThat(messages.all()).extracting(Message::code)
                .containsExactlyInAnyOrder("REF-001", "REF-003", "REF-004", "REF-002");
        assertThat(messages.all()).allMatch(said -> said.place().line() > 0);
        assertThat(reference.equipment()).isEqualTo(SHIPPED.equipment());
        assertThat(reference.waste()).doesNotContainKey("odd");
    }

    @Test
    void a_substance_answers_known_none_or_unknown_and_never_leaves_it_open() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/substances.yaml"), """
                silent: {name: Silent, form: liquid, source: sheet, edition: 2026}
                empty: {name: Empty, form: liquid, hazards: known, source: sheet, edition: 2026}
                bare: {name: Bare, form: liquid, hazards: none, source: sheet, edition: 2026}
                wrong: {name: Wrong, form: liquid, hazards: harmless, source: sheet, edition: 2026}
                open: {name: Open, form: liquid, hazards: unknown, because: No sheet came with it., source: sheet, edition: 2026}
                """);
        Messages messages = new Messages();

        Reference reference = ReferenceReader.read(content, messages);

        assertThat(messages.all()).extracting(said -> said.code() + " " + said.place().line())
                .containsExactlyInAnyOrder("REF-001 1", "REF-002 2", "REF-001 3", "REF-002 4");
        assertThat(reference.substances()).containsKey("open").doesNotContainKeys("silent", "empty", "bare", "wrong");
        assertThat(reference.substances().get("open").hazards()).isEqualTo(Substance.Answer.UNKNOWN);
    }

    @Test
    void a_substance_is_found_by_key_name_synonym_and_number_in_any_letter_case() {
        for (String words : List.of("isopropanol", "ISOPROPANOL", "Propan-2-ol", "67-63-0")) {
            assertThat(SHIPPED.substanceCalled(words)).as(words).map(Substance::key).contains("isopropanol");
        }
        assertThat(SHIPPED.substanceCalled("isopropano")).isEmpty();
    }

    @Test
    void what_the_law_words_is_not_a_studios_to_change() throws IOException {
        Files.createDirectories(content.resolve("reference"));
        Files.writeString(content.resolve("reference/statements.yaml"),
                "H225: {text: Fine., rank: 1, source: us, edition: ours}\n");

        assertThat(ReferenceReader.read(content, new Messages()).statements()).isEqualTo(SHIPPED.statements());
    }

    private static Stream<String> sources() {
        return Stream.of(
                SHIPPED.substances().values().stream().flatMap(row -> Stream.concat(Stream.of(row.source()),
                        Stream.concat(row.classes().stream().map(one -> one.source()),
                                Stream.of(row.exposure().stream().map(Substance.ExposureLimit::source),
                                        Stream.of(row.density(), row.vapourPressure(), row.viscosity())
                                                .flatMap(Optional::stream).map(Substance.Measured::source),
                                        row.fire().stream().map(Substance.Fire::source),
                                        row.acidity().stream().map(Substance.Acidity::source),
                                        row.gloves().stream().map(Substance.Gloves::source))
                                        .flatMap(Function.identity())))),
                SHIPPED.statements().values().stream().map(Reference.Statement::source),
                SHIPPED.pictograms().values().stream().map(Reference.Pictogram::source),
                SHIPPED.equipment().values().stream().map(Reference.Equipment::source),
                SHIPPED.rules().stream().map(MixtureRule::source),
                SHIPPED.acute().stream().map(AcuteRoute::source),
                SHIPPED.precedence().values().stream().map(Precedence::source),
                SHIPPED.cautions().values().stream().map(Reference.Caution::source),
                SHIPPED.waste().values().stream().map(Reference.WasteKind::source),
                SHIPPED.incompatible().stream().map(Reference.Incompatible::source),
                SHIPPED.access().stream().map(Reference.Access::source),
                SHIPPED.firstAid().stream().map(Reference.FirstAid::source),
                SHIPPED.labels().stream().map(Reference.LabelSize::source),
                SHIPPED.claims().stream().map(Reference.ClaimWord::source)).flatMap(Function.identity());
    }

    /** The last digit of a registry number is the sum of the others, each times its place from the right, modulo 10. */
    private static boolean checkDigitHolds(String cas) {
        String digits = cas.replace("-", "");
        int sum = 0;
        for (int place = 1; place < digits.length(); place++) {
            sum += place * (digits.charAt(digits.length() - 1 - place) - '0');
        }
        return cas.matches("\\d{2,7}-\\d\\d-\\d") && sum % 10 == digits.charAt(digits.length() - 1) - '0';
    }

    private static Map<String, String> labels(int cell) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/check-values/ghs-labels.csv"));
        return lines.stream().skip(2).map(line -> line.split("\\|")).collect(Collectors.toMap(cells -> cells[0],
                cells -> cells[cell].strip()));
    }

    private static Map<String, String> list(String name) throws IOException {
        List<String> lines = Files.readAllLines(Path.of("src/test/resources/check-values", name));
        return lines.stream().skip(2).map(line -> line.split("\\|")).collect(Collectors.toMap(cells -> cells[0],
                cells -> cells[1]));
    }
}
