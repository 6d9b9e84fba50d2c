package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Catalogue;
import org.benchleaf.message.Message;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.MaterialKind;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.PhKind;
import org.benchleaf.model.SourceLicence;
import org.benchleaf.model.TestWords;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.SourceLicenceReader;
import org.benchleaf.read.TestWordsReader;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** Every word of a closed list, in the schemas and in the tables that rules ask, stands on the pages "Writing a case file". */
class ClosedWordsTest {

    private static final DemoSite DEMO = DemoSite.made();
    private static final TestWords TEST_WORDS = TestWordsReader.read();
    private static final Pattern ASKED_TRAIT = Pattern.compile("traits\\(\\)\\.contains\\(\"([a-z -]+)\"\\)");
    private static String pages;

    @BeforeAll
    static void readPages() {
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        pages = DemoSite.pages(DEMO.cases(), DEMO.site()).stream().filter((Page page) -> page.path().startsWith("writing"))
                .map(page -> Jsoup.parse(new String(publisher.publish(page).bytes(), StandardCharsets.UTF_8)).text())
                .collect(Collectors.joining("\n")).replaceAll("\\h", " ");
    }

    @Test
    void every_word_of_the_schemas() throws IOException {
        List<String> words = new ArrayList<>();
        try (Stream<Path> files = Files.list(Path.of("src/main/resources/schema"))) {
            for (Path file : files.toList()) {
                new ObjectMapper().readTree(file.toFile()).findValues("enum").forEach(list ->
                        list.forEach((JsonNode word) -> words.add(word.asText())));
            }
        }
        assertThat(words).hasSizeGreaterThan(200);
        assertThat(lacking(words.stream())).isEmpty();
    }

    @Test
    void every_word_of_a_medium_or_support() {
        List<String> words = DEMO.library().matrix().rows().stream().map(Matrix.Row::also).flatMap(List::stream).toList();
        assertThat(words).hasSizeGreaterThan(50);
        assertThat(lacking(words.stream())).isEmpty();
    }

    @Test
    void every_substance() {
        assertThat(DEMO.library().reference().substances()).hasSizeGreaterThan(50);
        assertThat(lacking(DEMO.library().reference().substances().keySet().stream())).isEmpty();
    }

    /** Messages that refuse a word because it stands in no list, and where the words of that list come from. */
    private static final Map<String, Supplier<Collection<String>>> REFUSED = Map.of(
            "TEST-001", () -> TEST_WORDS.sets().stream().flatMap(set -> set.words().stream()).map(TestWords.Word::word).toList(),
            "FORM-015", () -> Stream.of(Unit.values()).map(Unit::symbol).filter(symbol -> Unit.spelled(symbol).isPresent()).toList(),
            "FORM-030", () -> Stream.concat(TEST_WORDS.indicators().stream(),
                    DEMO.library().reference().substances().keySet().stream()).toList(),
            "REF-005", () -> DEMO.library().reference().hazardClasses().keySet(),
            "RULES-002", () -> Stream.concat(Stream.of(CaseField.values()).map(CaseField::word),
                    Stream.of(BuildingBlock.values()).map(BuildingBlock::word)).toList());
    /** Messages of that form whose list stands in the schemas, or is made of what the author declares, numbers or names himself. */
    private static final Set<String> OTHERWISE = Set.of("FORM-001", "FORM-004", "FORM-052", "FORM-053", "FORM-063", "REASON-002",
            "REF-003", "RULES-004", "RULES-006", "RULES-007", "READ-001", "READ-003", "SITE-016");
    private static final Pattern REFUSES = Pattern.compile(
            "\\{known}|\\{words}|\\bnot in the list|\\bis not one of the words|^There is no (?:\\S+ )?'|\\bis not a unit");

    @Test
    void every_list_by_which_a_message_refuses_a_word() {
        List<String> refusing = Catalogue.all().stream()
                .filter(one -> REFUSES.matcher(one.what()).find() || REFUSES.matcher(one.fix()).find())
                .map(Message.Id::code).filter(code -> !OTHERWISE.contains(code)).toList();
        assertThat(refusing).containsExactlyInAnyOrderElementsOf(REFUSED.keySet());
        REFUSED.forEach((code, list) -> {
            assertThat(list.get()).as(code).hasSizeGreaterThan(5);
            assertThat(lacking(list.get().stream())).as(code).isEmpty();
        });
    }

    /** Words that are read where any may be written: one that is not known is taken for another thing, though nothing refuses it. */
    @Test
    void every_word_that_is_known_among_free_ones() {
        assertThat(SourceLicenceReader.known()).hasSizeGreaterThan(10);
        assertThat(lacking(SourceLicenceReader.known().stream().map(SourceLicence::words))).isEmpty();
        assertThat(DEMO.library().reference().waste()).hasSizeGreaterThan(5);
        assertThat(lacking(DEMO.library().reference().waste().keySet().stream())).isEmpty();
        assertThat(DEMO.library().reference().compared()).hasSizeGreaterThan(20);
        assertThat(lacking(DEMO.library().reference().compared().stream().flatMap(one -> Stream.concat(Stream.of(one.name()),
                Stream.concat(one.substances().stream(), one.named().stream()))))).isEmpty();
    }

    @Test
    void every_kind_of_material_and_of_pH_with_its_meaning() throws IOException {
        assertThat(known("materials", "/additionalProperties/properties/kind"))
                .containsExactlyElementsOf(Stream.of(MaterialKind.values()).map(MaterialKind::word).toList());
        assertThat(known("materials", "/additionalProperties/properties/traits")).containsAll(traitsInTheCode());
        assertThat(lacking(Stream.of(PhKind.values()).map(PhKind::word))).isEmpty();
    }

    private static List<String> known(String schema, String at) throws IOException {
        List<String> words = new ArrayList<>();
        new ObjectMapper().readTree(Path.of("src/main/resources/schema/" + schema + ".schema.json").toFile()).at(at).path("knownWords")
                .properties().forEach(word -> {
                    assertThat(word.getValue().asText()).as(word.getKey()).isNotBlank();
                    words.add(word.getKey());
                });
        assertThat(lacking(words.stream())).isEmpty();
        return words;
    }

    /** Traits that the program asks a material for by a word of its own. */
    private static List<String> traitsInTheCode() throws IOException {
        List<String> traits = new ArrayList<>();
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            for (Path file : files.filter(one -> one.toString().endsWith(".java")).toList()) {
                ASKED_TRAIT.matcher(Files.readString(file)).results().forEach(found -> traits.add(found.group(1)));
            }
        }
        assertThat(traits).isNotEmpty();
        return traits;
    }

    private static List<String> lacking(Stream<String> words) {
        return words.filter(word -> !pages.contains(word)).toList();
    }
}
