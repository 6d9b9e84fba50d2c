package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Plants private values where they do not belong, and looks for them in everything that is published. */
class CanariesTest {

    private static final Path SOUND = Path.of("src/test/resources/sound/base");
    private static final String CASE = "cases/tide/case.md";

    @TempDir
    private Path folder;
    private Path content;

    @BeforeEach
    void copy() throws IOException {
        content = folder.resolve("content");
        ChangedContent.copy(SOUND, content);
    }

    @Test
    void twenty_canaries_in_fields_comments_file_names_and_pictures_reach_no_file_of_the_site() throws IOException {
        List<String> canaries = new ArrayList<>();
        StringBuilder fields = new StringBuilder();
        for (String field : List.of("owner", "agent", "address", "telephone", "price paid", "valuation", "insurer",
                "shelf", "alarm", "object number")) {
            fields.append("\n    ").append(field).append(": ").append(canary(canaries, "F"));
        }
        // Comments beside values, on lines of their own and in the story.
        fields.append(" # ").append(canary(canaries, "C"));
        change("    owner: Halcyon Brandreth-Voss", "    # " + canary(canaries, "C") + fields);
        change("## Why this sheet was brown", "<!-- " + canary(canaries, "H") + " -->\n\n## Why this sheet was brown");
        Path pictures = content.resolve("cases/tide/pictures");
        String named = canary(canaries, "N").toLowerCase(Locale.ROOT);
        Files.move(pictures.resolve("during-mend.jpg"), pictures.resolve(named + ".jpg"));
        change("file: during-mend.jpg", "file: " + named + ".jpg");
        Path picture = pictures.resolve("before-recto.jpg");
        Files.write(picture, withSegments(Files.readAllBytes(picture),
                segment(0xE1, exif("GPS " + canary(canaries, "G"))),
                segment(0xE1, exif("BodySerialNumber " + canary(canaries, "S"))),
                segment(0xE1, "http://ns.adobe.com/xap/1.0/\0<x:xmpmeta>" + canary(canaries, "X") + "</x:xmpmeta>"),
                segment(0xED, "Photoshop 3.0\0" + canary(canaries, "I")),
                segment(0xFE, canary(canaries, "K")),
                segment(0xEC, canary(canaries, "D"))));
        assertThat(canaries).hasSizeGreaterThanOrEqualTo(20);

        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isZero();
        assertThat(found(canaries)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "Halcyon Brandreth-Voss", "HALCYON BRANDRETH-VOSS", "'Brandreth-Voss, Halcyon'", "Halcyon Brandreth Voss",
        "Hálcyon Brandreth–Voss", "Halcyon&nbsp;Brandreth-Voss",
    })
    void a_name_written_into_the_story_stops_the_edition(String name) throws IOException {
        change("The sheet was printed on paper", name + " owns it. The sheet was printed on paper");
        StringWriter told = new StringWriter();
        int code = publish(told);
        assertThat(code).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("LEAK-001");
        assertThat(folder.resolve("site/index.html")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "title: A tide table that had met the tide, title: A tide table of Halcyon Brandreth-Voss",
        "'caption: \"Drawing made for the demo: bridges', 'caption: \"For Halcyon Brandreth-Voss: bridges'",
        "'alt: The back of the sheet, close;', 'alt: Halcyon Brandreth-Voss, close;'",
        "'do: Measure pH', 'do: For Halcyon Brandreth-Voss measure pH'",
        "'see: The strip turns clear', 'see: In Bay 7, shelf C3, the strip turns clear'",
        "credit: Benchleaf demo, credit: Halcyon Brandreth-Voss",
    })
    void a_private_value_in_any_field_that_is_shown_stops_the_edition(String sound, String leaking) throws IOException {
        change(sound, leaking);
        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("LEAK-001");
        assertThat(folder.resolve("site/index.html")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource({
        "glossary.yaml, plain: A brown edge, plain: Halcyon Brandreth-Voss says it is a brown edge",
        "sources.yaml, 'title: ', 'title: Papers of Brandreth-Voss, Halcyon. '",
        "materials/papers.yaml, 'plain: ', 'plain: As in Bay 7, shelf C3. '",
    })
    void a_private_value_in_what_all_cases_share_stops_the_edition(String file, String sound, String leaking)
            throws IOException {
        Path shared = content.resolve(file);
        String text = Files.readString(shared);
        assertThat(text).contains(sound);
        Files.writeString(shared, text.replaceFirst(Pattern.quote(sound), leaking));

        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("LEAK-001");
        assertThat(folder.resolve("site/index.html")).doesNotExist();
    }

    @Test
    void what_stands_in_the_words_of_a_case_is_told_beside_a_slip_that_stops_it() throws IOException {
        change("The sheet was printed on paper", "Halcyon Brandreth-Voss owns it. The sheet was printed on paper");
        change("level: foundation", "level: easy");
        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("easy", "LEAK-001");
        assertThat(folder.resolve("site/index.html")).doesNotExist();
    }

    /** Who gave a permission is named by right; the same name anywhere else in the file is not exempt. */
    @Test
    void only_the_permissions_may_name_whom_the_private_fields_name() throws IOException {
        change("from: owner", "from: Halcyon Brandreth-Voss");
        assertPublished();
        change("level: foundation", "level: foundation # Halcyon Brandreth-Voss");
        assertPublished();
        change("## Why this sheet was brown", "publication: Halcyon Brandreth-Voss\n\n## Why this sheet was brown");
        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("LEAK-001");
    }

    @Test
    void the_owner_of_one_case_in_the_words_of_another_stops_the_edition() throws IOException {
        addCase("other", "Corwen Assheton-Pryce");
        assertPublished();
        change("The sheet was printed on paper", "Corwen Assheton-Pryce has another. The sheet was printed on paper");
        assertStoppedByCase("other");
    }

    @Test
    void a_new_private_value_that_an_unchanged_case_already_names_stops_the_edition() throws IOException {
        change("The sheet was printed on paper", "Corwen Assheton-Pryce has another. The sheet was printed on paper");
        addCase("other", "Somebody Else-Again");
        assertPublished();
        addCase("third", "Corwen Assheton-Pryce");
        assertStoppedByCase("third");
        assertStoppedByCase("third");
    }

    /** Days, and the conservator's own name, stand in many cases by right. */
    @Test
    void what_one_case_keeps_private_and_is_nobody_s_secret_may_stand_in_another() throws IOException {
        change("The sheet was printed on paper", "On 2026-02-03 it came in. The sheet was printed on paper");
        addCase("other", "Corwen Assheton-Pryce\n    received: 2026-02-03");
        assertPublished();
    }

    @Test
    void a_studio_may_bear_the_name_of_who_worked_on_the_object() throws IOException {
        Path studio = content.resolve("studio.yaml");
        Files.writeString(studio, Files.readString(studio).replace("name: Tarn Quay Paper Studio",
                "name: Ines Okonkwo-Hale Paper Studio"));
        assertPublished();
        change("The sheet was printed on paper", "Tam Lindqvist helped. The sheet was printed on paper");
        assertStoppedByCase("tide");
    }

    private void addCase(String id, String owner) throws IOException {
        ChangedContent.copy(SOUND.resolve("cases/tide"), content.resolve("cases").resolve(id));
        Path file = content.resolve("cases").resolve(id).resolve("case.md");
        Files.writeString(file, Files.readString(file).replace("owner: Halcyon Brandreth-Voss", "owner: " + owner)
                .replace("    kept at: Bay 7, shelf C3\n", ""));
    }

    private void assertPublished() {
        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isZero();
    }

    private void assertStoppedByCase(String id) {
        StringWriter told = new StringWriter();
        assertThat(publish(told)).as(told::toString).isEqualTo(1);
        assertThat(told.toString()).contains("LEAK-001", "of the case '" + id + "'");
    }

    private static String canary(List<String> canaries, String kind) {
        String canary = "CANARY" + kind + "X" + (1000 + canaries.size() * 37) + "Q";
        canaries.add(canary);
        return canary;
    }

    private void change(String from, String to) throws IOException {
        String text = Files.readString(content.resolve(CASE));
        assertThat(text).contains(from);
        Files.writeString(content.resolve(CASE), text.replace(from, to));
    }

    private int publish(StringWriter told) {
        PrintWriter out = new PrintWriter(told, true);
        return Main.run(out, out, "publish", "--content", content.toString(), "--site",
                folder.resolve("site").toString(), "--on", "2026-06-01");
    }

    /** Which canaries stand in a file's name or bytes, in plain letters, UTF-16 or base64. */
    private List<String> found(List<String> canaries) throws IOException {
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.walk(folder.resolve("site"))) {
            files.filter(Files::isRegularFile).forEach(file -> {
                try {
                    String bytes = Files.readString(file, StandardCharsets.ISO_8859_1) + "\n" + file;
                    for (String canary : canaries) {
                        for (String form : forms(canary)) {
                            if (bytes.toLowerCase(Locale.ROOT).contains(form.toLowerCase(Locale.ROOT))) {
                                found.add(canary + " in " + file);
                            }
                        }
                    }
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            });
        }
        return found;
    }

    private static List<String> forms(String canary) {
        return List.of(canary, new String(canary.getBytes(Charset.forName("UTF-16LE")), StandardCharsets.ISO_8859_1),
                Base64.getEncoder().encodeToString(canary.getBytes(StandardCharsets.UTF_8)).substring(0, 12));
    }

    private static byte[] withSegments(byte[] jpeg, byte[]... segments) throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(jpeg, 0, 2);
        for (byte[] segment : segments) {
            out.write(segment);
        }
        out.write(jpeg, 2, jpeg.length - 2);
        return out.toByteArray();
    }

    private static byte[] segment(int marker, String text) {
        byte[] body = text.getBytes(StandardCharsets.ISO_8859_1);
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(0xFF);
        out.write(marker);
        out.write((body.length + 2) >> 8);
        out.write(body.length + 2);
        out.writeBytes(body);
        return out.toByteArray();
    }

    /** A camera's block without entries, the text behind its head. */
    private static String exif(String text) {
        return "Exif\0\0II*\0\u0008\0\0\0\0\0\0\0\0\0" + text;
    }
}
