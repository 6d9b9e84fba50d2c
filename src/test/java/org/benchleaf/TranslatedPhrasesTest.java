package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageTree;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.json.JsonTree;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Translation;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.PhrasesReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.LdcInsnNode;

/** What the program itself says on the pages of a case is told in each language that has words for it. */
class TranslatedPhrasesTest {

    private static final Path TRANSLATED = Path.of("src/main/resources/reference/translated");
    private static final Pattern HOLE = Pattern.compile("\\{[a-z][a-zA-Z]*}");
    private static final Pattern WORDS = Pattern.compile("\\p{L}{3,}+ \\p{L}{2,}+");

    private static Library library;
    private static WorkedCase worked;
    private static CasePages pages;

    @BeforeAll
    static void publish(@TempDir Path content) throws IOException {
        ChangedContent.copy(Path.of("content"), content);
        Files.writeString(content.resolve("words.fr.yaml"), "Deionised water: Eau déionisée\n");
        CheckedLibrary read = LibraryChecker.check(LibraryReader.read(content));
        library = read.library();
        Checked checked = WholeLine.checked(content, content.resolve("cases/tide-table"), read);
        worked = new Deriver(library).derive(checked.treatment().orElseThrow(), checked.findings()).worked();
        pages = PageComposer.compose(worked, library, Clearance.on(LocalDate.of(2026, 6, 1), checked.treatment().get().publication(),
                Audience.EVERYBODY).of(worked));
    }

    private static List<String> languages() throws IOException {
        try (Stream<Path> files = Files.list(TRANSLATED)) {
            return files.map(file -> file.getFileName().toString().replace(".yaml", "")).sorted().toList();
        }
    }

    @Test
    void no_text_is_translated_that_the_program_does_not_say() throws IOException {
        Set<String> said = said();
        for (String language : languages()) {
            Set<String> unsaid = new TreeSet<>(PhrasesReader.in(language).words().keySet());
            unsaid.removeAll(said);
            assertThat(unsaid).as(language).isEmpty();
        }
    }

    @Test
    void every_hole_of_a_text_stands_in_its_translation() throws IOException {
        for (String language : languages()) {
            PhrasesReader.in(language).words().forEach((english, words) -> assertThat(holes(words)).as(english).isEqualTo(holes(english)));
        }
    }

    @Test
    void a_statement_of_hazard_is_never_translated_freely() throws IOException {
        Set<String> official = library.reference().statements().values().stream().map(one -> one.text()).collect(Collectors.toSet());
        for (String language : languages()) {
            Phrases phrases = PhrasesReader.in(language);
            assertThat(phrases.words().keySet()).as(language).doesNotContainAnyElementsOf(official);
            assertThat(phrases.statements().keySet()).as(language).isSubsetOf(library.reference().statements().keySet());
        }
    }

    /**
     * "mention d'avertissement": "danger" and "attention", Regulation (EC) No 1272/2008, French edition, Article 2(4); the signal words of
     * the Globally Harmonized System, Arabic edition, 1.4.10.5.2; both from memory. Welsh has no official edition of either.
     */
    @Test
    void a_signal_word_is_that_of_the_official_edition_or_english() throws IOException {
        Map<String, Set<String>> official = Map.of("fr", Set.of("Danger", "Attention"), "ar", Set.of("خطر", "تحذير"),
                "cy", Set.of("Danger", "Warning"));
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        pages.translated().forEach(one -> assertThat(one.pages().stream().flatMap(page -> Jsoup.parse(text(publisher, page))
                .select(".hazard__signal").eachText().stream()).collect(Collectors.toSet()))
                .as(one.language()).isNotEmpty().isSubsetOf(official.get(one.language())));
    }

    @Test
    void a_figure_is_the_same_number_in_every_language() {
        for (Translation translation : worked.source().translations()) {
            Library there = LibraryTexts.in(translation.phrases(), library);
            Map<String, Figure> told = new Deriver(there).told(worked, translation).figures();
            assertThat(told.keySet()).containsExactlyElementsOf(worked.figures().keySet());
            told.forEach((id, figure) -> {
                assertThat(figure.value()).as(id).isEqualTo(worked.figures().get(id).value());
                assertThat(figure.sources()).as(id).isEqualTo(worked.figures().get(id).sources());
            });
        }
    }

    @Test
    void no_hazard_is_lost_or_changed_by_a_translation() {
        for (Translation translation : worked.source().translations()) {
            WorkedCase told = new Deriver(LibraryTexts.in(translation.phrases(), library)).told(worked, translation);
            assertThat(told.hazards().keySet()).isEqualTo(worked.hazards().keySet());
            told.hazards().forEach((id, hazard) -> assertThat(shape(hazard)).as(id).isEqualTo(shape(worked.hazards().get(id))));
            assertThat(told.care().values().stream().map(TranslatedPhrasesTest::shape).toList())
                    .isEqualTo(worked.care().values().stream().map(TranslatedPhrasesTest::shape).toList());
        }
    }

    /** All of it that is no words. */
    private static List<Object> shape(Hazards one) {
        return List.of(one.parts(), one.unknown().size(), one.signal(), one.pictograms(), one.hazardStatements(), one.named(),
                one.precautions(), one.grounds().stream().map(Hazards.Ground::statement).toList(), one.waste().group(),
                one.waste().drain(), one.access().trainee(), one.access().withheld(), one.firstAid(), one.wear(), one.cautions(),
                one.subjects(), one.incompatible().size());
    }

    private static List<Object> shape(StepCare one) {
        return List.of(one.step(), one.wear(), one.cautions(), one.subjects(), one.materials(), one.exposure(), one.chemical(),
                one.access().keySet());
    }

    @Test
    void the_studio_s_own_words_are_told_as_its_file_has_them() {
        Phrases phrases = worked.source().translations().stream().filter(one -> one.language().equals("fr")).findFirst().orElseThrow()
                .phrases();
        assertThat(phrases.of("Deionised water")).isEqualTo("Eau déionisée");
        assertThat(marked("fr")).doesNotContain("Deionised water");
        // Hazards are found by the names of materials.
        assertThat(LibraryTexts.in(phrases, library).materials()).isEqualTo(library.materials());
    }

    @Test
    void words_for_a_text_that_was_changed_since_are_not_shown() {
        Phrases phrases = new Phrases("fr", Map.of("mean {when}", "moyenne {when}"), Map.of(), Set.of());
        assertThat(phrases.say("mean {when}", "when", "avant")).isEqualTo("moyenne avant");
        assertThat(phrases.say("average {when}", "when", "avant")).isEqualTo("average avant");
    }

    @Test
    void nothing_that_the_program_says_of_the_tide_table_stays_english_where_the_language_has_words() throws IOException {
        Set<String> said = said().stream().filter(text -> WORDS.matcher(text).find()).collect(Collectors.toSet());
        Set<String> official = library.reference().statements().values().stream().map(one -> one.text()).collect(Collectors.toSet());
        said.removeAll(official);
        said.removeAll(LibraryTexts.ofStudio(library));
        for (String language : languages()) {
            Set<String> left = marked(language);
            left.retainAll(said);
            assertThat(left).as(language).isEmpty();
        }
    }

    @Test
    void the_result_of_a_spot_test_is_told_in_the_words_of_the_closed_list() throws IOException {
        for (String language : languages()) {
            assertThat(marked(language)).as(language).doesNotContain("stable", "bleeds").noneMatch(text -> text.startsWith("takes in"));
        }
    }

    @Test
    void every_page_shows_the_same_digits_in_every_language() throws IOException {
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        Map<String, Page> originals = pages.pages().stream().collect(Collectors.toMap(Page::path, page -> page));
        Map<String, Integer> compared = new TreeMap<>();
        pages.translated().forEach(one -> one.pages().forEach(page -> {
            String original = text(publisher, originals.get(one.originalOf(page)));
            String marked = one.marked(text(publisher, page), ForeignWords.Original.of(PageTree.of(original))).html();
            assertThat(digits(marked)).as(page.path()).isEqualTo(digits(original));
            compared.merge(one.language(), digits(original).size(), Integer::sum);
        }));
        // Pages without any figure would compare nothing; the tide table has more than a hundred.
        assertThat(compared).hasSize(languages().size()).allSatisfy((language, many) -> assertThat(many).isGreaterThan(100));
    }

    /** The digits of each figure that was worked out, in their order. */
    private static List<String> digits(String html) {
        return Jsoup.parse(html).select("main .working__digits").stream().map(each -> each.text().replaceAll("\\D", "")).toList();
    }

    /** The texts on the pages of the tide table that stand in its own language. */
    private static Set<String> marked(String language) {
        SitePublisher publisher = SitePublisher.with(Path.of("templates"), Pictures.none());
        Map<String, Page> originals = pages.pages().stream().collect(Collectors.toMap(Page::path, page -> page));
        return pages.translated().stream().filter(one -> one.language().equals(language)).flatMap(one -> one.pages().stream()
                .flatMap(page -> Jsoup.parse(one.marked(text(publisher, page), ForeignWords.Original.of(PageTree.of(
                        text(publisher, originals.get(one.originalOf(page)))))).html())
                        .select("main [lang=en]").stream().map(Element::wholeText).map(String::strip)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(SitePublisher publisher, Page page) {
        return new String(publisher.publish(page).bytes(), StandardCharsets.UTF_8);
    }

    /** The texts of the tables, the names of vessels and the constants of the stage that works figures out. */
    private static Set<String> said() throws IOException {
        Set<String> said = new TreeSet<>(LibraryTexts.of(library));
        library.formulary().table("glassware").rows().forEach(row -> said.add(row.get("vessel")));
        library.reference().needs().forEach(need -> said.add(need.name()));
        try (Stream<Path> schemas = Files.list(Path.of("src/main/resources/schema"))) {
            for (Path file : schemas.toList()) {
                said.add(JsonTree.read(Files.readString(file)).at("title").text());
            }
        }
        said.addAll(constantsOf("derive"));
        said.addAll(ofSums());
        return said;
    }

    /** The constants of the packages whose sentences a page's script says too. */
    private static Set<String> ofSums() throws IOException {
        Set<String> said = new TreeSet<>();
        for (String room : List.of("calculate", "science", "quantity")) {
            said.addAll(constantsOf(room));
        }
        return said;
    }

    private static Set<String> constantsOf(String room) throws IOException {
        Set<String> said = new TreeSet<>();
        try (Stream<Path> files = Files.walk(Path.of("target/classes/org/benchleaf", room))) {
            files.filter(file -> file.toString().endsWith(".class")).forEach(file -> said.addAll(constants(file)));
        }
        return said;
    }

    private static List<String> constants(Path file) {
        try {
            ClassNode type = new ClassNode();
            new ClassReader(Files.readAllBytes(file)).accept(type, 0);
            return Stream.concat(type.fields.stream().map(field -> field.value), type.methods.stream()
                    .flatMap(method -> Stream.of(method.instructions.toArray())).filter(LdcInsnNode.class::isInstance)
                    .map(instruction -> ((LdcInsnNode) instruction).cst)).filter(String.class::isInstance).map(String.class::cast).toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static Set<String> holes(String text) {
        return HOLE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }
}
