package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Every class that a row may name reaches the label, and a label names substances and organs where they are known. */
class HazardClassesTest {

    private static final Path TABLE = Path.of("src/main/resources/reference/hazard-classes.yaml");

    @TempDir
    private Path content;

    /** The statements of each class as CLP Annex I tables its label elements: ghs-labels.csv, whose head names the tables read. */
    @Test
    void every_class_has_the_statements_that_the_tables_of_label_elements_give_it() throws IOException {
        Map<String, Set<String>> published = new TreeMap<>();
        Files.readAllLines(Path.of("src/test/resources/check-values/ghs-labels.csv")).stream().skip(2)
                .map(line -> line.split("\\|")).filter(cells -> !cells[0].contains("+"))
                .forEach(cells -> Stream.of(cells[3].split(", ")).forEach(name ->
                        published.computeIfAbsent(name.strip(), any -> new TreeSet<>()).add(cells[0])));
        Map<String, Set<String>> ours = new TreeMap<>();
        classes().forEach((name, codes) -> codes.stream().filter(code -> published.containsKey(bare(name)))
                .forEach(code -> ours.computeIfAbsent(bare(name), any -> new TreeSet<>()).add(code)));

        assertThat(ours).isEqualTo(published);
    }

    private static String bare(String name) {
        return name.replaceFirst(" \\(.*\\)$", "");
    }

    /** A class that no rule knows would be lost in silence: the pure substance must show it, or what covers it (CLP article 27). */
    @Test
    void every_class_is_shown_by_what_is_made_of_nothing_else() throws IOException {
        StringBuilder rows = new StringBuilder();
        Map<String, String> expected = new TreeMap<>();
        classes().forEach((name, codes) -> codes.forEach(code -> {
            String key = "class " + letters(expected.size());
            expected.put(key, code);
            rows.append("\"").append(key).append("\": {name: ").append(key).append(", form: liquid, hazards: known, classes: [{class: ")
                    .append(name).append(", statement: ").append(code).append(", source: rule}], source: rule, edition: rule}\n");
        }));
        Bottles bottles = with(rows.toString());

        expected.forEach((key, code) -> {
            List<String> told = ask(bottles, key).hazardStatements();
            assertThat(told.contains(code) || covers(told, code)).as(key + " " + told).isTrue();
        });
    }

    /** A name without digits, which a bottle would take for a share. */
    private static String letters(int number) {
        return "" + (char) ('a' + number / 26) + (char) ('a' + number % 26);
    }

    private static boolean covers(List<String> told, String code) {
        Precedence row = ReferenceReader.shipped().precedence().get(code);
        return row != null && told.stream().anyMatch(row.leftOutBeside()::contains);
    }

    /** Limonene, Skin Sens. 1B, is named from 0.1 % on, a tenth of the limit of 1 % (CLP Annex I, 3.4.3.3.2; Annex II, 2.8). */
    @Test
    void a_sensitiser_below_its_limit_is_named_on_the_label() {
        Hazards weak = ask(with(""), "d-limonene 0.2 % m/m; rest ethanol");

        assertThat(weak.hazardStatements()).contains("EUH208").doesNotContain("H317");
        assertThat(text("EUH208", weak)).isEqualTo("Contains d-limonene. May produce an allergic reaction.");
    }

    /** Annex VI names the nervous system for n-hexane; where it names nothing, the organ is not guessed. */
    @Test
    void organs_are_named_where_they_are_known() throws IOException {
        Bottles bottles = with("our solvent: {name: Our solvent, form: liquid, hazards: known, classes: [{class: STOT RE 1, statement: "
                + "H372, "
                + "source: sheet}], source: sheet, edition: '2026'}\n");

        assertThat(text("H372", ask(bottles, "n-hexane"))).contains("to organs (nervous system) through");
        assertThat(text("H372", ask(bottles, "our solvent"))).contains("to organs through");
        assertThat(text("H372", ask(bottles, "our solvent 50 % m/m; rest n-hexane")))
                .contains("to organs (nervous system, others not stated) through");
    }

    private static String text(String code, Hazards hazards) {
        return ReferenceReader.shipped().statements().get(code).naming(hazards.named());
    }

    private Bottles with(String rows) {
        try {
            Files.createDirectories(content.resolve("reference"));
            Files.writeString(content.resolve("reference/substances.yaml"), rows.isEmpty() ? "{}\n" : rows);
        } catch (IOException broken) {
            throw new java.io.UncheckedIOException(broken);
        }
        Messages messages = new Messages();
        Reference reference = ReferenceReader.read(content, messages);
        assertThat(messages.all()).isEmpty();
        return new Bottles(reference, MethodReader.read());
    }

    private static Hazards ask(Bottles bottles, String line) {
        return ((Bottles.Told) bottles.ask(line, Optional.empty())).hazards();
    }

    private static Map<String, List<String>> classes() throws IOException {
        Map<String, Map<String, Object>> rows = new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(TABLE));
        Map<String, List<String>> classes = new TreeMap<>();
        rows.forEach((name, row) -> classes.put(name, new ArrayList<>(((List<?>) row.get("statements")).stream()
                .map(String::valueOf).toList())));
        return classes;
    }
}
