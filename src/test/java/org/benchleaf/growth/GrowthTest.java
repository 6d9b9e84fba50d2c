package org.benchleaf.growth;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.BiFunction;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every field that an author fills takes at most its share of work when what stands in it grows: a text of four times the
 * length may cost six times the work, never sixteen times. Work is counted in steps ({@link Work}), not in seconds.
 *
 * <p>What was counted stands in {@code target/growth-table.csv}. Usually every {@value #EACH}th field is tried;
 * {@code mvn test -Pgrowth} tries all of them, or every {@code -Dbenchleaf.growth.each=N}th.
 */
class GrowthTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final Path SCHEMAS = Path.of("src/main/resources/schema");
    private static final String CASE = "cases/tide/case.md";
    private static final int EACH = 61;
    /** Beyond every bound that the program sets to a field, so that a bound has shown itself. */
    private static final int SHORT = 3000;
    /** Enough to be taken as a long text is. */
    private static final int FEW = 200;
    private static final double MOST_GROWTH = 6;
    /** So much work a letter is no growth, however it is distributed. */
    private static final long FREE_STEPS_A_LETTER = 1500;

    /** What is repeated, each for as many letters as the others, or words that may stand anywhere. */
    private static final Map<String, List<String>> TEXTS = Map.of(
            "signs", List.of("1.", "[a", "(", "  a", "*a_", "a: ", "<a ", "{a", "1,000 ", "Aa-", "&#1", "- ", "[a]: b\n\n", "pH 1 to "),
            "words", List.of("a wet sheet of 12 mm, ", "Ines Hale and "));
    private static final Map<String, String> FILES = new LinkedHashMap<>(Map.of("case", CASE,
            "translation", "cases/tide/case.es.md", "class", "classes/spring.yaml", "studio", "studio.yaml",
            "glossary", "glossary.yaml", "materials", "materials/solids.yaml", "sources", "sources.yaml"));

    @TempDir
    private static Path folder;
    private static Path content;
    private static BiFunction<Path, Path, List<String>> line;
    private static final Path TABLE = Path.of("target/growth-table.csv");

    @BeforeAll
    @SuppressWarnings("unchecked")
    static void begin() throws IOException, ReflectiveOperationException {
        content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
        line = (BiFunction<Path, Path, List<String>>) new CountingLoader().loadClass("org.benchleaf.GrownContent")
                .getDeclaredConstructor().newInstance();
        // What is made once is made before anything is counted.
        line.apply(content, content.resolve(CASE).getParent());
        line.apply(content, content);
        Files.createDirectories(TABLE.getParent());
        Files.deleteIfExists(TABLE);
        write("file,field,text,steps at " + FEW + " letters,more at " + SHORT + " letters,at " + 2 * SHORT + ",at "
                + 4 * SHORT + ",growth");
    }

    /** Line by line, so that a run that is stopped leaves what it counted. */
    private static void write(String row) throws IOException {
        Files.writeString(TABLE, row + "\n", StandardOpenOption.CREATE, StandardOpenOption.APPEND);
    }

    @ParameterizedTest(name = "{0} {1} {2}")
    @MethodSource("fields")
    void work_grows_with_what_stands_in_a_field_and_not_faster(String schema, TextField field, String text) throws IOException {
        Path file = content.resolve(FILES.get(schema));
        String sound = Files.readString(file);
        try {
            long without = steps(file, sound, field, text(text, FEW));
            long[] grown = new long[3];
            for (int turn = 0; turn < grown.length; turn++) {
                grown[turn] = steps(file, sound, field, text(text, SHORT << turn)) - without;
            }
            double growth = (double) grown[2] / Math.max(1, grown[0]);
            String row = Stream.of(schema, field, text, without, grown[0], grown[1], grown[2], "%.1f".formatted(growth))
                    .map(String::valueOf).collect(Collectors.joining(","));
            write(row);
            assertThat(growth > MOST_GROWTH && grown[2] > FREE_STEPS_A_LETTER * 4 * SHORT).as(row).isFalse();
        } finally {
            Files.writeString(file, sound);
        }
    }

    static List<Object[]> fields() {
        List<Object[]> all = FILES.keySet().stream().sorted().flatMap(schema -> TextField.of(SCHEMAS.resolve(schema + ".schema.json"))
                .stream().flatMap(field -> TEXTS.keySet().stream().sorted().map(text -> new Object[] {schema, field, text}))).toList();
        int each = Integer.getInteger("benchleaf.growth.each", EACH);
        int first = Integer.getInteger("benchleaf.growth.first", 0);
        return IntStream.range(0, all.size()).filter(at -> at % each == first).mapToObj(all::get).toList();
    }

    private static long steps(Path file, String sound, TextField field, String text) throws IOException {
        Files.writeString(file, changed(sound, field, text));
        long before = Work.done();
        assertThat(line.apply(content, file.getParent())).isEmpty();
        return Work.done() - before;
    }

    private static String changed(String sound, TextField field, String text) {
        int end = sound.startsWith("---\n") ? sound.indexOf("\n---\n", 4) + 1 : sound.length();
        int start = sound.startsWith("---\n") ? 4 : 0;
        YamlTree tree = YamlTree.read(sound.substring(start, end));
        tree.set(field.way(), text);
        return sound.substring(0, start) + tree.text() + sound.substring(end);
    }

    private static String text(String kind, int length) {
        List<String> parts = TEXTS.get(kind);
        return parts.stream().map(part -> part.repeat(1 + length / parts.size() / part.length())).collect(Collectors.joining());
    }
}
