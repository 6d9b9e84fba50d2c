package org.benchleaf.privacy;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.zip.DeflaterOutputStream;
import java.util.zip.GZIPOutputStream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.publish.SiteFile;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The fields that must not leave are those of the deny-list usual in the trade: common practice, no source. */
class PrivateScanTest {

    private static final PrivateScan SCAN = PrivateScan.ofCase("tide", new Confidential(List.of(
            secret("owner", "Zoë Brändreth-Voß"),
            secret("kept at", "Bay 7, shelf C3"),
            secret("value", "1450 in insurance papers"),
            secret("people", "Tam Lind"),
            secret("contact", "+44 1632 960123"),
            secret("code", "Q7"))), "");

    @ParameterizedTest
    @ValueSource(strings = {
        "<p>lent by Zoë Brändreth-Voß</p>",
        "<p>lent by ZOE BRANDRETH VOSS</p>",
        "<p>lent by Zoe\u0308 Bra\u0308ndreth\u2011Voß</p>",
        "<p>lent by Zo&euml; Br&auml;ndreth-Vo&szlig;</p>",
        "<p>lent by Zo&#235; Br&#xE4;ndreth-Vo&#223;</p>",
        "<p>lent by Zo&amp;euml; Br&amp;auml;ndreth-Vo&amp;szlig;</p>",
        "<p>lent by Zoë <b>Brändreth</b>-Voß</p>",
        "<p>lent by Zoë Bränd\u00ADreth-Voß</p>",
        "<p>lent by Zoë\n   Brändreth-\n   Voß</p>",
        "<p>lent by Zoë Bränd<wbr>reth-Voß</p>",
        "<img alt='Sheet of Brändreth-Voß, Zoë'>",
        "<a href='https://example.org/?q=Zo%C3%AB%20Br%C3%A4ndreth-Vo%C3%9F'>x</a>",
        "{\"a\": \"Zo\\u00EB Br\\u00e4ndreth-Vo\\u00df\"}",
        "{\"a\": \"Zo\\\\u00EB Br\\\\u00e4ndreth-Vo\\\\u00df\"}",
        "const ownerZoeBrandrethVoss = 1;",
        "Z. Brändreth-Voß",
        "Ms Brändreth-Voß",
        "the Brändreth-Voß collection",
        "kept in bay 7 (shelf C3)",
        "on shelf C3",
        "SHELF_C3",
        "T. Lind helped",
        "Dr Lind helped",
        "Lind, Tam",
        "valued at £1,450",
        "paid 1450.00 for it",
        "insured for 1 450 €",
        "call +44 (0)1632 960123 or +441632960123",
        "locker Q7",
    })
    void a_value_is_found_in_every_spelling(String text) {
        assertThat(scan(SiteFile.text("cases/tide/index.html", text))).isNotEmpty()
                .allMatch(said -> said.code().equals("LEAK-001") && said.severity() == Severity.ERROR);
    }

    /** Shared files are made ready once and searched for the values of many cases at once; a lost place stopped their publishing. */
    @Test
    void one_file_made_ready_is_searched_by_many_threads_at_once() {
        Searchable shared = Searchable.of(SiteFile.text("site.css", "a blind of bay 70, kind 7q\n".repeat(400) + "locker Q7\n"));
        assertThat(IntStream.range(0, 400).parallel().mapToObj(turn -> SCAN.scan(shared).stream().map(MessageText::of).toList()).toList())
                .allSatisfy(told -> assertThat(told).singleElement().asString().contains("site.css:401:8"));
    }

    /** ISO 32000-1, 7.5.2: a PDF begins with %PDF- and its version; its words stand in packed streams, its title in a plain one. */
    @Test
    void a_pdf_is_searched_as_bytes_and_not_as_text() {
        String head = "%PDF-1.7\n" + "% plain lines of the head\n".repeat(200);
        assertThat(scan(SiteFile.text("sheet.pdf", head + "stream\n\u00EA~Bay 7$\u00B7\nendstream"))).isEmpty();
        assertThat(scan(SiteFile.text("sheet.pdf", head + "<dc:title>lent by Zoë Brändreth-Voß</dc:title>"))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "<path d='M1 450L1,450 1450 90'/>",
        "The bath held 1450 mL of water.",
        "{\"value\": 0.1450}",
        "The tam was blind, and Lindau lies on a lake.",
        "Bay 70 and shelves C30",
        "SQ78",
        "A brandy and a vos.",
    })
    void what_only_looks_alike_is_let_through(String text) {
        assertThat(scan(SiteFile.text("cases/tide/index.html", text))).isEmpty();
    }

    @Test
    void a_file_name_is_searched_too() {
        assertThat(scan(SiteFile.text("assets/zoe_brandreth-voss-recto.html", "x"))).singleElement()
                .satisfies(said -> assertThat(said.what()).contains("file's name"));
        assertThat(scan(SiteFile.text("assets/ShelfC3.html", "x"))).isNotEmpty();
    }

    @Test
    void the_place_is_told_by_line_and_column_and_the_value_is_not_repeated() {
        List<Message> said = scan(SiteFile.text("a.html", "<p>one</p>\n<p>by Zoë Brändreth-Voß</p>\n"));

        assertThat(said).isNotEmpty().allSatisfy(message -> {
            assertThat(message.place().line()).isEqualTo(2);
            assertThat(MessageText.of(message)).startsWith("a.html:2:").doesNotContainIgnoringCase("brändreth")
                    .doesNotContainIgnoringCase("zoë");
        });
    }

    @Test
    void a_value_in_base64_is_found_whatever_stands_before_it() {
        for (String before : List.of("", "a", "ab", "abc")) {
            String encoded = Base64.getEncoder().encodeToString(
                    (before + "Zoë Brändreth-Voß, and more").getBytes(StandardCharsets.UTF_8));

            assertThat(scan(SiteFile.text("a.html", "<img src='data:x;base64," + encoded + "'>")))
                    .as("after '%s'", before).isNotEmpty();
        }
    }

    @Test
    void a_picture_inside_a_page_is_searched_as_a_picture() throws IOException {
        Random random = new Random(5);
        for (int picture = 0; picture < 20; picture++) {
            byte[] bytes = new byte[100_000];
            random.nextBytes(bytes);
            assertThat(scan(SiteFile.text("a.html", inPage(bytes)))).isEmpty();
        }
        assertThat(scan(SiteFile.text("a.html", inPage(("\0\1 Zoë Brändreth-Voß").getBytes(StandardCharsets.UTF_8))))).isNotEmpty();
        assertThat(scan(SiteFile.text("a.html", inPage("lent by Q7".getBytes(StandardCharsets.UTF_8))))).isNotEmpty();
    }

    @Test
    void what_only_passes_for_a_picture_inside_a_page_is_searched_as_it_stands() {
        assertThat(scan(SiteFile.text("a.html", "<img src='data:image/png;base64,ZoeBrandrethVoss=='>"))).isNotEmpty();
    }

    private static String inPage(byte[] picture) {
        return "<p>Words</p><img src='data:image/jpeg;base64," + Base64.getEncoder().encodeToString(picture) + "'>";
    }

    @ParameterizedTest
    @ValueSource(strings = {"UTF-8", "UTF-16LE", "UTF-16BE", "ISO-8859-1"})
    void a_value_is_found_inside_bytes_that_are_no_text(String charset) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        bytes.writeBytes(new byte[] {(byte) 0xFF, 0, 1, 2, 3, (byte) 0x80});
        bytes.writeBytes("Zoë Brändreth-Voß".getBytes(Charset.forName(charset)));
        bytes.writeBytes(new byte[] {0, 1, 2});

        assertThat(scan(new SiteFile("a.bin", bytes.toByteArray()))).isNotEmpty();
    }

    @Test
    void a_short_value_among_the_bytes_of_a_picture_is_chance() {
        Random random = new Random(3);
        for (int picture = 0; picture < 100; picture++) {
            byte[] bytes = new byte[100_000];
            random.nextBytes(bytes);

            assertThat(scan(new SiteFile("a.bin", bytes))).isEmpty();
        }
    }

    @Test
    void a_value_is_found_in_an_archive_and_in_a_compressed_file() throws IOException {
        ByteArrayOutputStream archive = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(archive)) {
            zip.putNextEntry(new ZipEntry("a.txt"));
            zip.write("on shelf C3, for Zoë Brändreth-Voß".repeat(40).getBytes(StandardCharsets.UTF_8));
        }
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream gzip = new GZIPOutputStream(packed)) {
            gzip.write("for Zoë Brändreth-Voß".repeat(40).getBytes(StandardCharsets.UTF_8));
        }

        assertThat(scan(new SiteFile("a.zip", archive.toByteArray()))).isNotEmpty();
        assertThat(scan(new SiteFile("a.gz", packed.toByteArray()))).isNotEmpty();
    }

    @Test
    void a_compressed_text_of_a_png_is_read() throws IOException {
        ByteArrayOutputStream body = new ByteArrayOutputStream();
        body.writeBytes("Comment\0\0".getBytes(StandardCharsets.ISO_8859_1));
        try (DeflaterOutputStream deflater = new DeflaterOutputStream(body)) {
            deflater.write("on shelf C3".getBytes(StandardCharsets.ISO_8859_1));
        }
        ByteArrayOutputStream png = new ByteArrayOutputStream();
        png.writeBytes(new byte[] {(byte) 0x89, 'P', 'N', 'G', 13, 10, 26, 10});
        png.writeBytes(new byte[] {0, 0, 0, (byte) body.size(), 'z', 'T', 'X', 't'});
        png.writeBytes(body.toByteArray());
        png.writeBytes(new byte[4]);

        assertThat(scan(new SiteFile("a.png", png.toByteArray()))).extracting(Message::code)
                .contains("LEAK-001", "LEAK-002");
    }

    @Test
    void camera_data_in_a_picture_is_refused_whatever_it_says() {
        byte[] jpeg = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xE1, 0, 10, 'E', 'x', 'i', 'f', 0, 0, 1, 2,
            (byte) 0xFF, (byte) 0xD9};
        byte[] comment = {(byte) 0xFF, (byte) 0xD8, (byte) 0xFF, (byte) 0xFE, 0, 5, 'a', 'b', 'c', (byte) 0xFF, (byte) 0xD9};

        assertThat(scan(new SiteFile("a.jpg", jpeg))).extracting(Message::code).containsExactly("LEAK-002");
        assertThat(scan(new SiteFile("b.jpg", comment))).extracting(Message::code).containsExactly("LEAK-002");
    }

    @Test
    void a_picture_cut_short_at_any_byte_does_not_stop_the_search() {
        Random random = new Random(7);
        for (int round = 0; round < 2000; round++) {
            byte[] bytes = new byte[random.nextInt(60)];
            random.nextBytes(bytes);
            byte[][] heads = {{(byte) 0xFF, (byte) 0xD8, (byte) 0xFF}, {(byte) 0x89, 'P', 'N', 'G'},
                "RIFF....WEBP".getBytes(StandardCharsets.US_ASCII), {'P', 'K', 3, 4}, {0x1F, (byte) 0x8B}};
            byte[] head = heads[random.nextInt(heads.length)];
            System.arraycopy(head, 0, bytes, 0, Math.min(head.length, bytes.length));

            assertThat(scan(new SiteFile("a.jpg", bytes))).isNotNull();
        }
    }

    @Test
    void a_name_hidden_at_random_in_random_text_is_always_found() {
        Random random = new Random(20260714);
        for (int round = 0; round < 300; round++) {
            String name = spelled("Zoë Brändreth-Voß", random);
            String text = noise(random) + " " + name + " " + noise(random);

            assertThat(scan(SiteFile.text("a.html", text))).as(text).isNotEmpty();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"owner", "number", "value", "contact", "telephone"})
    void a_value_of_signs_alone_is_looked_for_nowhere(String field) {
        PrivateScan scan = PrivateScan.ofCase("tide", new Confidential(List.of(secret(field, "—"))), "");

        assertThat(scan.scan(Searchable.of(SiteFile.text("a.html", "<p>— one — two</p>")))).isEmpty();
    }

    @Test
    void what_is_searched_by_itself_is_not_searched_again_inside_another_file() throws IOException {
        SiteFile style = SiteFile.text("assets/site.css", "a {\n}\n/* Zoë Brändreth-Voß */\n");
        SearchedFiles elsewhere = SearchedFiles.of(List.of(style));
        String page = "<style>" + style.text() + "</style>\n";

        assertThat(scan(style)).isNotEmpty();
        assertThat(SCAN.scan(Searchable.of(style, elsewhere))).as("by itself").isNotEmpty();
        assertThat(SCAN.scan(Searchable.of(SiteFile.text("a-whole.html", page), elsewhere))).isEmpty();
        assertThat(SCAN.scan(Searchable.of(zip(style.text()), elsewhere))).isEmpty();
        assertThat(SCAN.scan(Searchable.of(zip(style.text() + " "), elsewhere))).isNotEmpty();
        assertThat(SCAN.scan(Searchable.of(SiteFile.text("a-whole.html", page.replace("a {", "b {")), elsewhere))).isNotEmpty();
        assertThat(SCAN.scan(Searchable.of(SiteFile.text("a-whole.html", page + "<p>Zoë Brändreth-Voß</p>"), elsewhere)))
                .singleElement().extracting(message -> message.place().line()).isEqualTo(5);
    }

    /** Whatever a pack adds to files that were searched is searched: a name, another file, a byte more in any kind of file. */
    @Test
    void a_value_that_stands_only_in_what_a_pack_adds_is_found() throws IOException {
        String name = "Zoë Brändreth-Voß";
        List<SiteFile> searched = List.of(SiteFile.text("a.html", "<p>A sheet.</p>"), SiteFile.text("a.csv", "n,1\n"),
                new SiteFile("a.jpg", picture("a stamp")));
        SearchedFiles elsewhere = SearchedFiles.of(searched);
        assertThat(SCAN.scan(Searchable.of(zip(searched), elsewhere))).isEmpty();
        for (SiteFile added : List.of(SiteFile.text(name + ".txt", "A sheet."),
                SiteFile.text("book.opf", "<dc:title>" + name + "</dc:title>"),
                SiteFile.text("a.html", "<p>A sheet.</p><p>" + name + "</p>"), SiteFile.text("a.csv", "n,1\n" + name + ",2\n"),
                new SiteFile("a.jpg", picture("a stamp of " + name)))) {
            List<SiteFile> packed = new ArrayList<>(searched);
            packed.removeIf(file -> file.path().equals(added.path()));
            packed.add(added);
            assertThat(SCAN.scan(Searchable.of(zip(packed), elsewhere))).as(added.path()).isNotEmpty();
        }
    }

    /** What a pack holds as it stands is told once, where it stands by itself, whatever kind of file it is. */
    @Test
    void a_value_in_any_kind_of_part_is_told_where_the_part_is_searched_by_itself() throws IOException {
        String name = "Zoë Brändreth-Voß";
        for (SiteFile part : List.of(SiteFile.text("a.html", "<p>" + name + "</p>"), SiteFile.text("a.csv", name + ",1\n"),
                SiteFile.text("a.css", "/* " + name + " */"), new SiteFile("a.jpg", picture(name)))) {
            SearchedFiles elsewhere = SearchedFiles.of(List.of(part));
            assertThat(SCAN.scan(Searchable.of(part, elsewhere))).as(part.path()).isNotEmpty();
            assertThat(SCAN.scan(Searchable.of(zip(List.of(part)), elsewhere))).as(part.path()).isEmpty();
            assertThat(SCAN.scan(Searchable.of(zip(List.of(part)), SearchedFiles.none()))).as(part.path()).isNotEmpty();
        }
    }

    /** Bytes that are no text, with a text among them. */
    private static byte[] picture(String text) {
        return ("\0\1\2 " + text + " \0\1").getBytes(StandardCharsets.UTF_8);
    }

    private static SiteFile zip(String text) throws IOException {
        return zip(List.of(SiteFile.text("inside.css", text)));
    }

    private static SiteFile zip(List<SiteFile> files) throws IOException {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        try (ZipOutputStream zip = new ZipOutputStream(bytes)) {
            for (SiteFile file : files) {
                zip.putNextEntry(new ZipEntry(file.path()));
                zip.write(file.bytes());
            }
        }
        return new SiteFile("a.zip", bytes.toByteArray());
    }

    private static final PrivateScan IN_SHARED = PrivateScan.ofShared(Map.of("tide", new Confidential(List.of(
            secret("owner", "Halcyon Brandreth-Voss"), secret("people", "Ines Okonkwo-Hale"), secret("lender", "May Brown"),
            secret("former owner", "Will A. Stone")))), "");

    @ParameterizedTest
    @ValueSource(strings = {"Ms Brandreth", "Mr Voss", "Halcyon Brandreth", "Brandreth, Halcyon", "Lent by H. Brandreth.",
        "H. Voss", "Treated by Ines Okonkwo-Hale.", "Dr Hale", "Okonkwo-Hale, Ines", "Mrs Brown", "May Brown", "Brown, M.",
        "Will A. Stone", "W. A. Stone"})
    void a_person_is_found_in_what_cases_share(String text) {
        assertThat(IN_SHARED.scanSource(new SourceText("glossary.yaml", "mist: " + text))).isNotEmpty()
                .allMatch(said -> said.code().equals("LEAK-001") && said.place().line() == 1);
    }

    @ParameterizedTest
    @ValueSource(strings = {"paper may turn brown", "Brown's reagent", "the Stone collection", "Voss 1998", "A Brown spot",
        "Will the Stone hold", "A Stone floor", "a brandreth under the pot", "Hale and well"})
    void what_may_be_chance_is_let_through_in_what_cases_share(String text) {
        assertThat(IN_SHARED.scanSource(new SourceText("glossary.yaml", "mist: " + text))).isEmpty();
    }

    @Test
    void every_line_of_a_source_that_shows_a_field_is_told() {
        String text = "one: Zoë Brändreth-Voß\ntwo: x\nthree: Zo&euml; Br&auml;ndreth-Vo&szlig;\n"
                + "four: '<b>Zoë</b> Brändreth-Voß, Tam Lind'\n";
        assertThat(SCAN.scanSource(new SourceText("a.yaml", text))).extracting(said -> said.place().line())
                .containsExactlyInAnyOrder(1, 3, 4, 4);
    }

    @Test
    void of_very_many_lines_the_first_are_told_and_how_many_there_are_more() {
        List<Message> told = SCAN.scanSource(new SourceText("a.yaml", "at: shelf C3\n".repeat(50)));
        assertThat(told).hasSize(20);
        assertThat(told.get(19).place().line()).isEqualTo(20);
        assertThat(told.get(19).what()).contains("on 30 lines after this one");
        assertThat(told.get(18).what()).doesNotContain("after this one");
    }

    /** What is a comment: YAML 1.2.2, 6.6; in a block scalar (8.1) and in quotes (7.3) a number sign is text. */
    @ParameterizedTest
    @ValueSource(strings = {"summary: >-\n  Seen on the sheet:\n  # Tam Lind\n", "- summary: |2+\n    one # Tam Lind\n",
        "- >\n one\n # Tam Lind\n", "summary: \"one\n  # Tam Lind\"\n", "summary: 'it''s\n  one # Tam Lind'\n"})
    void a_number_sign_inside_a_text_begins_no_comment(String text) {
        assertThat(SCAN.scanSource(new SourceText("a.yaml", text))).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"# Tam Lind\n", "key: one # Tam Lind\n", "summary: >-\n  one\n# Tam Lind\nkey: x\n",
        "- summary: >\n    one\n  key: x # Tam Lind\n", "key: it is 5 > # Tam Lind\n  # Tam Lind\n",
        "key: |\n  one\n\n  two\nother: x # Tam Lind\n", "one: 'two' \n# Tam Lind\n"})
    void a_comment_is_not_searched(String text) {
        assertThat(SCAN.scanSource(new SourceText("a.yaml", text))).isEmpty();
    }

    @Test
    void without_private_values_nothing_is_found() {
        assertThat(PrivateScan.ofAll(Map.of(), "").scan(Searchable.of(SiteFile.text("a.html", "Zoë Brändreth-Voß, £1450")))).isEmpty();
    }

    private static Confidential.Secret secret(String field, String value) {
        return Confidential.Secret.plain(field, value, Place.file("case.md"));
    }

    private static String spelled(String name, Random random) {
        StringBuilder spelled = new StringBuilder();
        for (char c : name.toCharArray()) {
            switch (random.nextInt(5)) {
                case 0 -> spelled.append("&#").append((int) c).append(';');
                case 1 -> spelled.append(String.format("\\u%04x", (int) c));
                case 2 -> spelled.append(c).append('\u200B');
                case 3 -> spelled.append(Character.toUpperCase(c));
                default -> spelled.append(c);
            }
        }
        return spelled.toString();
    }

    private static String noise(Random random) {
        StringBuilder noise = new StringBuilder();
        for (int i = random.nextInt(30); i > 0; i--) {
            noise.append((char) ('a' + random.nextInt(26))).append(random.nextInt(5) == 0 ? " " : "");
        }
        return noise.toString();
    }

    private static List<Message> scan(SiteFile file) {
        return SCAN.scan(Searchable.of(file));
    }
}
