package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringReader;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Holds every sentence of harmlessness to a closed list with the condition of each: a new one fails until it is listed, and
 * none appears where its condition fails. The list stands in harmlessness/sentences.txt.
 */
class HarmlessSentencesTest {

    private static final Path REFERENCE = Path.of("src/main/resources/reference");
    private static final Path WORDS = Path.of("src/main/resources/words/interface_en.properties");
    private static final Path LISTED = Path.of("src/test/resources/harmlessness");
    private static final Pattern HARMLESS =
            Pattern.compile("(?i)\\bno (?:\\w+ ){0,2}(?:hazard|class|classes|caution|flash|danger|risk|harm)"
            + "|not (?:\\w+ )?(?:classified|classify|classed|dangerous|hazardous|poisonous|corrosive|flammable)|\\bneutral|\\bdrain"
            + "|\\bsink\\b|\\bbin\\b|limit is 60|\\bharmless|(?:low|little) reserve|gives no|nothing can|\\btake[sn]? (?:them )?off"
            + "|\\bbelow\\b|lies above|above the last|too slowly|has lost|the class is one of the dry|\\bweak\\b|not hands|no harm"
            + "|Water has|burns less|rules out");
    private static final Set<String> TABLES = Set.of("hazard-words", "waste", "access", "cautions", "first-aid", "incompatible",
            "substances", "substances-water", "substances-solvents", "substances-adhesives", "substances-residues", "limits",
            "equipment", "pictograms", "blanks");
    /** What names a thing and says nothing of it. */
    private static final Set<String> NAMES = Set.of("source", "is", "waste", "edition", "because");

    /** One line of the list. */
    record Listed(String file, String key, String words, List<String> with, List<String> without) {

        static Listed of(String line) {
            String[] cells = line.split("\\s\\|\\s");
            return new Listed(cells[0].strip(), cells[1].strip(), cells[2].strip(), bottles(cells[4]), bottles(cells[5]));
        }

        private static List<String> bottles(String cell) {
            return cell.strip().equals("-") ? List.of() : Stream.of(cell.split("//")).map(String::strip).toList();
        }
    }

    static Stream<Listed> withBottles() throws IOException {
        return listed().filter(one -> !one.words().equals("-") && !one.with().isEmpty());
    }

    private static Stream<Listed> listed() throws IOException {
        return Files.readAllLines(LISTED.resolve("sentences.txt")).stream().filter(line -> !line.startsWith("#")).map(Listed::of);
    }

    @Test
    void every_sentence_of_harmlessness_is_listed_and_nothing_else() throws IOException {
        Set<String> found = new TreeSet<>();
        sentences().forEach((key, text) -> {
            if (HARMLESS.matcher(text).find()) {
                found.add(key);
            }
        });

        assertThat(found).containsExactlyElementsOf(listed().filter(one -> !one.file().equals("code"))
                .map(one -> one.file() + " | " + one.key()).collect(Collectors.toCollection(TreeSet::new)));
    }

    /** The words that are looked for are those of the sentence, so that a reworded one is looked at again. */
    @Test
    void the_words_of_the_list_are_those_of_the_sentences() throws IOException {
        Map<String, String> sentences = sentences();
        assertThat(withBottles().filter(one -> !one.file().equals("code"))).allSatisfy(one ->
                assertThat(sentences.get(one.file() + " | " + one.key())).contains(one.words()));
    }

    @ParameterizedTest
    @MethodSource("withBottles")
    void a_sentence_appears_under_its_condition_and_not_where_that_fails(Listed one) {
        assertThat(one.without()).isNotEmpty();
        one.with().forEach(bottle -> assertThat(told(bottle)).as(bottle).contains(one.words()));
        one.without().forEach(bottle -> assertThat(told(bottle)).as(bottle).isNotEmpty().doesNotContain(one.words()));
    }

    /** "none" needs what shows it; the sentence on the page of a material stands on nothing else. */
    @Test
    void every_row_that_answers_none_says_what_shows_it() throws IOException {
        for (String table : TABLES.stream().filter(name -> name.startsWith("substances")).toList()) {
            rows(table).forEach((key, row) -> {
                if ("none".equals(String.valueOf(row.get("hazards")))) {
                    assertThat(String.valueOf(row.get("because"))).as(key).hasSizeGreaterThan(20);
                    assertThat(String.valueOf(row.get("source"))).as(key).isNotBlank();
                }
                assertThat(row.containsKey("because")).as(key).isEqualTo(!"known".equals(String.valueOf(row.get("hazards"))));
            });
        }
    }

    private static String told(String written) {
        String bottle = written.replaceFirst("^label:", "").strip();
        List<String> line = new ArrayList<>(List.of("hazards", bottle.replaceFirst("\\s*@.*$", ""), "--content", LISTED.toString()));
        if (bottle.contains("@")) {
            line.addAll(List.of("--ph", bottle.substring(bottle.indexOf('@') + 1).strip()));
        }
        if (written.startsWith("label:")) {
            line.add("--label");
        }
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        Main.run(new PrintWriter(out), new PrintWriter(err), line.toArray(String[]::new));
        assertThat(err.toString()).as(bottle).isEmpty();
        return out.toString();
    }

    private static Map<String, String> sentences() throws IOException {
        Map<String, String> sentences = new TreeMap<>();
        Properties words = new Properties();
        words.load(new StringReader(Files.readString(WORDS)));
        words.forEach((key, text) -> sentences.put("words | " + key, String.valueOf(text)));
        for (String table : TABLES) {
            rows(table).forEach((key, row) -> put(sentences, table + " | " + key, row));
        }
        return sentences;
    }

    private static void put(Map<String, String> sentences, String key, Object value) {
        if (value instanceof Map<?, ?> map) {
            map.forEach((inner, text) -> {
                if (!NAMES.contains(String.valueOf(inner))) {
                    put(sentences, key + " / " + inner, text);
                }
            });
        } else if (value instanceof List<?> list) {
            list.forEach(item -> put(sentences, key, item));
        } else {
            sentences.merge(key, String.valueOf(value), (one, other) -> one + "\n" + other);
        }
    }

    private static Map<String, Map<String, Object>> rows(String table) throws IOException {
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(Files.readString(REFERENCE.resolve(table + ".yaml")));
    }
}
