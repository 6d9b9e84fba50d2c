package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What a stranger finds who has every file of the public site of a studio that publishes apart and keeps its strengths in: no
 * private value, no strength, no sheet, however it is encoded. Looks at the bytes, by no means of the program's own.
 */
class StrangerTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    /** Strengths that no handbook value and no size of a picture is by chance. */
    private static final Map<String, String> STRENGTHS = Map.of("ethanol: 40 % v/v", "ethanol: 37.2518 % v/v",
            "parts: 1 + 5, by", "parts: 1 + 5.8517, by");
    /** Of {@code private} in the sound case, each also as a part that tells who or where it is. */
    private static final List<String> PRIVATE = List.of("Halcyon", "Brandreth-Voss", "Brandreth", "Bay 7", "shelf C3",
            "1450 in insurance", "Okonkwo", "Lindqvist");
    private static final List<String> SHEETS = List.of("steps.html", "preparation.html", "figures.json", "site-training",
            "Not for the public.", "37.2518", "37,2518", "5.8517", "5,8517");

    /** How the withheld mixture is made, by its strength and its steps. */
    private static final List<String> RECIPE = List.of("37.2518", "Measure the ethanol under extraction", "Add the water to it and swirl");
    /** Pages, data, search, feeds, what programs read, and what is taken along. */
    private static final List<String> KINDS = List.of(".html", ".csv", "search.js", "-sentences.js", "feed.xml", "feed.json", "sitemap.xml",
            "linked-art.json", "manifest.json", "reference.bib", ".epub", ".xhtml", ".zip", "sw.js");

    private static final Pattern MIST =
            Pattern.compile("\"id\": \"mist\\.[^\"]++\",\\s++\"label\": \"[^\"]*+\",\\s++\"value\": ([0-9.]++)");
    /** Signs of an amount with its point that no other number of the site shares by chance. */
    private static final int LEAST_ODD = 7;

    @TempDir
    private Path folder;

    @BeforeEach
    void copy() throws IOException {
        ChangedContent.copy(SOUND, folder.resolve("content"));
        change("studio.yaml", "\ndemo: yes", "\ndemo: yes\npublishing: apart");
        change("cases/tide/case.md", "strengths for the public: yes", "strengths for the public: no");
        for (Map.Entry<String, String> strength : STRENGTHS.entrySet()) {
            change("cases/tide/case.md", strength.getKey(), strength.getValue());
        }
    }

    @Test
    void no_byte_of_the_public_site_tells_what_is_kept_in() throws IOException {
        assertThat(run("publish")).as("published").startsWith("0");
        Map<String, byte[]> open = files(folder.resolve("site"));
        Map<String, byte[]> taught = files(folder.resolve("site-training"));
        assertThat(found(taught, SHEETS)).as("what the walk would find").hasSizeGreaterThan(3);
        assertThat(open).hasSizeGreaterThan(50);
        assertThat(found(open, Stream.concat(PRIVATE.stream(), SHEETS.stream()).toList())).isEmpty();
        assertThat(found(taught, PRIVATE)).isEmpty();
        assertThat(found(files(folder.resolve(".site.edition")), PRIVATE)).isEmpty();
    }

    /** Some recipes are not for the public whatever owner and author agree to; of one site the sheets stay away altogether. */
    @ParameterizedTest
    @ValueSource(strings = {"publishing: apart", "publishing: one site"})
    void no_byte_of_the_public_site_tells_a_recipe_that_the_table_withholds(String publishing) throws IOException {
        change("studio.yaml", "publishing: apart", publishing);
        change("cases/tide/case.md", "strengths for the public: no", "strengths for the public: yes");
        Path access = folder.resolve("content/reference/access.yaml");
        Files.createDirectories(access.getParent());
        Files.writeString(access, """
                spirit of this studio:
                  substances: [ethanol]
                  trainee: allowed
                  public: withheld
                  why: The studio keeps its mixture for misting to itself.
                  source: common practice, no source
                """);
        boolean apart = publishing.endsWith("apart");
        change("studio.yaml", "\ndemo: yes",
                "\ndemo: yes\nweb: https://studio.example/cases\ntake along: [one file, pdf, epub, zip, installed]");
        String told = run("publish");
        assertThat(told).startsWith("0");
        assertThat(told.contains("CONS-011")).as("sheets held back, which is told").isEqualTo(!apart);
        Map<String, byte[]> open = files(folder.resolve("site"));
        assertThat(open.keySet()).as("one file of each kind").allSatisfy(path -> assertThat(path).doesNotEndWith(".pdf"));
        KINDS.forEach(ending -> assertThat(open.keySet()).as(ending).anyMatch(path -> path.endsWith(ending)));
        assertThat(found(open, List.of("application/ld+json"))).isNotEmpty();
        assertThat(found(open, Stream.concat(SHEETS.stream(), RECIPE.stream()).toList())).isEmpty();
        if (apart) {
            Map<String, byte[]> taught = files(folder.resolve("site-training"));
            assertThat(found(taught, RECIPE)).as("what the walk would find").hasSizeGreaterThan(RECIPE.size());
            assertThat(found(open, amounts(taught))).isEmpty();
        }
    }

    /** The amounts of the withheld mixture as the sheets' file of figures has them, but round ones, which stand in any text. */
    private static List<String> amounts(Map<String, byte[]> taught) {
        List<String> amounts = MIST.matcher(signs(taught.get("cases/tide/figures.json"))).results().map(found -> found.group(1))
                .filter(amount -> amount.length() >= LEAST_ODD).map(amount -> amount.substring(0, LEAST_ODD)).distinct().toList();
        assertThat(amounts).as("amounts of the mixture").isNotEmpty();
        return amounts;
    }

    @Test
    void the_walk_finds_a_value_in_every_encoding() {
        for (String value : List.of("Brandreth-Voss", "37.2518", "Bay 7")) {
            encodings(value).forEach(bytes ->
                    assertThat(found(Map.of("a.html", ("<p>" + signs(bytes)).getBytes(StandardCharsets.ISO_8859_1)),
                            List.of(value))).hasSize(1));
            for (String before : List.of("", "x", "xy", "xyz")) {
                byte[] base64 = Base64.getEncoder().encode((before + value + " y").getBytes(StandardCharsets.UTF_8));
                assertThat(found(Map.of("a.js", base64), List.of(value))).hasSize(1);
            }
            assertThat(found(Map.of(value + ".jpg", new byte[0]), List.of(value))).hasSize(1);
        }
    }

    /** The glossary is for everybody, whatever a case keeps in; what names no case is no recipe of one. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "In \"A tide table that had met the tide\" a sheet lay in gum of 12.5 % m/v.|1",
                "See cases/tide/index.html, where gum of 12.5 % m/v was used.|1",
        "Gum of 12.5 % m/v is thick.|0", "In \"A tide table that had met the tide\" a sheet lay in gum.|0"})
    void a_strength_in_an_entry_of_the_glossary_that_names_the_case_is_told(String words, String exit) throws IOException {
        change("glossary.yaml", "plain: Bathing a sheet in water.", "plain: '" + words + "'");
        String told = run("check");
        assertThat(told).startsWith(exit);
        assertThat(told.contains("glossary.yaml:") && told.contains("CLAIM-006")).isEqualTo(exit.equals("1"));
    }

    /** Fields whose words public pages or data print, beside those that are prose. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "evidence: the year of the tables|evidence: made up in 12.5 % m/v gum, the year of the tables",
        "is: printing ink, colour: black|is: printing ink, colour: black after 12.5 % m/v",
        "is: stamp-pad ink, colour: violet, where: lower right|is: stamp-pad ink, colour: violet, where: wetted by 12.5 % m/v",
        "method: surface, flat electrode|method: 'surface, flat electrode, in 12.5 % m/v'",
        "places: [margin head|places: [margin head in 12.5 % m/v",
        "at: foot margin|at: foot margin in 12.5 % m/v",
        "method: steel rule against a flat table|method: steel rule over 12.5 % m/v",
        "not measured: no sample could be taken|not measured: only in 12.5 % m/v",
        "credit: Benchleaf demo|credit: Benchleaf demo in 12.5 % m/v",
        "alt: A brown tide table|alt: A 12.5 % m/v brown tide table",
        "title: A tide table|title: 12.5 % m/v on a tide table",
        "why: The wax keeps|why: In 12.5 % m/v the wax keeps"})
    void a_strength_in_words_that_the_public_site_prints_is_told(String before, String after) throws IOException {
        change("cases/tide/case.md", before, after);
        assertThat(run("check")).startsWith("1").contains("CLAIM-006", "12.5 % m/v");
    }

    /** A workshop is often called after who works in it; an owner's name on every page is a leak however it came there. */
    @ParameterizedTest
    @CsvSource({"Tam Lindqvist Paper Studio, 0", "Lindqvist Paper Studio, 0", "Brandreth-Voss Paper Studio, 1",
            "Okonkwo-Hale and Lindqvist, 0"})
    void a_worker_whose_name_the_studio_bears_is_not_looked_for_in_it(String name, String exit) throws IOException {
        change("studio.yaml", "Tarn Quay Paper Studio", name);
        assertThat(run("publish")).startsWith(exit);
    }

    private void change(String file, String before, String after) throws IOException {
        Path path = folder.resolve("content").resolve(file);
        String text = Files.readString(path);
        assertThat(text).contains(before);
        Files.writeString(path, text.replace(before, after));
    }

    /** The exit code, and all that was told. */
    private String run(String command) {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        List<String> arguments = new ArrayList<>(List.of(command, "--content", folder.resolve("content").toString()));
        if (command.equals("publish")) {
            arguments.addAll(List.of("--site", folder.resolve("site").toString(), "--on", "2026-06-01"));
        }
        return Main.run(out, out, arguments.toArray(String[]::new)) + "\n" + told;
    }

    /** Files by their paths; what is packed in an archive is a file too. */
    private static Map<String, byte[]> files(Path root) throws IOException {
        Map<String, byte[]> files = new LinkedHashMap<>();
        try (Stream<Path> all = Files.walk(root)) {
            for (Path file : all.filter(Files::isRegularFile).sorted().toList()) {
                byte[] bytes = Files.readAllBytes(file);
                String path = root.relativize(file).toString();
                files.put(path, bytes);
                if (bytes.length > 1 && bytes[0] == 'P' && bytes[1] == 'K') {
                    unpack(path, bytes, files);
                }
            }
        }
        return files;
    }

    private static void unpack(String path, byte[] bytes, Map<String, byte[]> files) throws IOException {
        try (ZipInputStream archive = new ZipInputStream(new ByteArrayInputStream(bytes))) {
            for (ZipEntry entry = archive.getNextEntry(); entry != null; entry = archive.getNextEntry()) {
                files.put(path + "!" + entry.getName(), archive.readAllBytes());
            }
        }
    }

    /** Where which value stands, in the path or the bytes. */
    private static List<String> found(Map<String, byte[]> files, List<String> values) {
        List<String> found = new ArrayList<>();
        for (String value : values) {
            List<String> small = encodings(value).map(StrangerTest::signs).map(signs -> signs.toLowerCase(Locale.ROOT)).toList();
            List<String> exact = inBase64(value).toList();
            files.forEach((path, bytes) -> {
                String signs = path + '\n' + signs(bytes);
                String smallSigns = signs.toLowerCase(Locale.ROOT);
                if (small.stream().anyMatch(smallSigns::contains) || exact.stream().anyMatch(signs::contains)) {
                    found.add(path + ": " + value);
                }
            });
        }
        return found;
    }

    /** As text, in UTF-16, and escaped as addresses, pages and scripts escape; in any case of the letters. */
    private static Stream<byte[]> encodings(String value) {
        Stream<byte[]> texts = Stream.of(StandardCharsets.UTF_8, StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)
                .map(value::getBytes);
        Stream<byte[]> escapes = Stream.of("%%%02x", "&#%d;", "&#x%x;", "\\u%04x", "\\x%02x", "%02x")
                .map(form -> value.chars().mapToObj(sign -> String.format(form, sign)).collect(Collectors.joining()))
                .map(text -> text.getBytes(StandardCharsets.UTF_8));
        return Stream.concat(texts, Stream.concat(Stream.of(value.replace(" ", "%20"), value.replace(" ", "&nbsp;"),
                value.replace(' ', '\u00A0'), value.replace(' ', '\u202F'), value.replace(' ', '-'))
                .map(text -> text.getBytes(StandardCharsets.UTF_8)), escapes));
    }

    /** The signs of base64 (RFC 4648) that depend on the value alone, for each of the three places at which it may begin. */
    private static Stream<String> inBase64(String value) {
        return IntStream.range(0, 3).mapToObj(before -> {
            byte[] bytes = (" ".repeat(before) + value).getBytes(StandardCharsets.UTF_8);
            return Base64.getEncoder().encodeToString(bytes).substring((before * 8 + 5) / 6, bytes.length * 8 / 6);
        });
    }

    private static String signs(byte[] bytes) {
        return new String(bytes, StandardCharsets.ISO_8859_1);
    }
}
