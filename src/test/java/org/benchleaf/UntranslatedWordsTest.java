package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Phrases;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.PhrasesReader;
import org.benchleaf.read.TestWordsReader;
import org.benchleaf.words.Words;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.nodes.Node;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeTraversor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * No page of another language says anything of the program's own in English: neither marked as English, unless it is among what
 * stays so, nor unmarked, which is told by words that English has and the language does not.
 */
class UntranslatedWordsTest {

    private static final Path STAYS = Path.of("src/test/resources/untranslated/stays.txt");
    private static final Pattern WORD = Pattern.compile("\\p{L}[\\p{L}\\p{M}]{2,}+");
    /** An address, the name of a file, the id of a rule or of a figure. */
    private static final Pattern NAME = Pattern.compile(
            "Version [0-9a-f]{8}|https?://\\S+|\\S+@\\S+|[a-z0-9-]+\\.[a-z-]+|[a-z]+(?:-[a-z]+)+");
    private static final Pattern ENDS = Pattern.compile("^\\s*(?:\\d+\\. )?|[\\s.,;:]+$");
    private static final Pattern PIECES = Pattern.compile("[,;:()]");
    private static final Pattern BLANKS = Pattern.compile("[\\s\u00a0\u202f]++");
    private static final List<String> SPOKEN = List.of("aria-label", "title", "alt", "placeholder");
    private static final List<String> TITLES = Stream.concat(DemoSite.made().cases().stream().map(one -> one.card().title()),
            Stream.of(Unit.values()).map(Unit::symbol).filter(symbol -> symbol.length() > 2)).toList();
    private static final Library LIBRARY = DemoSite.made().library();

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void nothing_of_the_program_is_marked_as_english(String language) throws IOException {
        Map<String, String> left = new TreeMap<>();
        Predicate<String> stays = stays(language);
        pages(language).forEach(page -> Jsoup.parse(page.text()).body().select("[lang=en]").stream()
                .filter(element -> element.parents().stream().noneMatch(above -> above.attr("lang").equals("en")))
                .filter(element -> element.closest("a[href*=sources.html]") == null)
                .map(element -> plain(element.wholeText())).filter(text -> WORD.matcher(text).find()).filter(stays.negate())
                .forEach(text -> left.putIfAbsent(text, page.path())));
        assertThat(left).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void no_english_of_the_program_stands_unmarked(String language) throws IOException {
        Map<String, String> left = left(language, own(language, PhrasesReader.in(language)));
        assertThat(left).isEmpty();
    }

    /** A case names an indicator in the words of the schema, which are the program's and not the case's. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "cy", "ar"})
    void every_indicator_has_a_word(String language) {
        assertThat(TestWordsReader.read().indicators()).isNotEmpty().allSatisfy(indicator ->
                assertThat(Words.in(language).has("indicator." + indicator.replace(' ', '-'))).as(indicator).isTrue());
    }

    private static Map<String, String> left(String language, Set<String> own) throws IOException {
        Set<String> english = english();
        english.removeAll(listed());
        Map<String, String> left = new TreeMap<>();
        // Where a case is told in part, a link cuts its untranslated sentences into pieces of one word, which nothing can tell.
        pages(language).stream().filter(page -> !page.path().contains("/ferry-letter/"))
                .forEach(page -> spoken(Jsoup.parse(page.text())).forEach(text -> words(bare(text)).stream()
                .filter(word -> english.contains(word) && !own.contains(word))
                .forEach(word -> left.putIfAbsent(word, page.path() + ": " + text))));
        return left;
    }

    /** Without names of files, rules and figures, units, and titles of cases and of pages for authors, which a label tells as they are. */
    private static String bare(String text) {
        String left = NAME.matcher(text).replaceAll(" ");
        for (String title : TITLES) {
            left = left.replace(title, " ");
        }
        return left;
    }

    private static List<SiteFile> pages(String language) {
        List<SiteFile> pages = DemoSite.made().files().stream().filter(SiteFile::isPage)
                .filter(file -> file.path().startsWith(language + "/")).toList();
        assertThat(pages).hasSizeGreaterThan(10);
        return pages;
    }

    /** What is read or heard on a page and not marked as of another language. */
    private static List<String> spoken(Document page) {
        List<String> texts = new ArrayList<>();
        NodeTraversor.traverse((node, depth) -> {
            if (node instanceof TextNode text && isOfThePage(text.parent())) {
                texts.add(plain(text.getWholeText()));
            } else if (node instanceof Element element && isOfThePage(element)) {
                SPOKEN.forEach(name -> texts.add(plain(element.attr(name))));
            }
        }, (Node) page.body());
        return texts;
    }

    private static boolean isOfThePage(Element element) {
        return element != null && element.closest("script, style, code, pre, math, [lang]:not(html), a[href*=sources.html]") == null;
    }

    /** Every word of the program's English texts. */
    private static Set<String> english() {
        Stream<String> texts = Stream.concat(Words.in("en").all().stream(), LibraryTexts.of(LIBRARY).stream());
        return texts.flatMap(text -> words(text).stream()).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Every word that the language has: of the program, of the studio and of the cases that are told in it. */
    private static Set<String> own(String language, Phrases phrases) {
        return Stream.concat(ownTexts(language, phrases), cases(language)).flatMap(text -> words(text).stream())
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Stream<String> ownTexts(String language, Phrases phrases) {
        return Stream.of(Words.in(language).all().stream(), phrases.words().values().stream(),
                LIBRARY.translations().get(language).words().values().stream()).flatMap(each -> each);
    }

    private static Stream<String> cases(String language) {
        try (Stream<Path> files = Files.walk(Path.of("content/cases"))) {
            return files.filter(file -> file.endsWith("case." + language + ".md")).map(UntranslatedWordsTest::read).toList().stream();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String read(Path file) {
        try {
            return Files.readAllLines(file).stream().filter(line -> !line.strip().startsWith("#en:")).collect(Collectors.joining("\n"));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Whether nothing is left of a text when what stays as it is has been taken out: statements of hazard without an official wording
     * and names of classes, what cases and the studio say themselves and nobody has translated, and the lines of {@code stays.txt}.
     */
    private static Predicate<String> stays(String language) throws IOException {
        Set<String> said = Stream.concat(Words.in("en").all().stream(), LibraryTexts.of(LIBRARY).stream()).map(UntranslatedWordsTest::plain)
                .map(text -> text.toLowerCase(Locale.ROOT)).collect(Collectors.toSet());
        String ofCases = ofCases().toLowerCase(Locale.ROOT);
        Set<String> own = ownTexts(language, PhrasesReader.in(language)).map(text -> plain(text).toLowerCase(Locale.ROOT))
                .collect(Collectors.toSet());
        List<String> taken = Stream.of(LIBRARY.reference().statements().values().stream().map(one -> one.text()),
                LIBRARY.reference().hazardClasses().keySet().stream()
                        .flatMap(name -> Stream.of(name, name.replaceFirst("\\.? ?\\d.*", ""))),
                Stream.of(LIBRARY.studio().name())).flatMap(each -> each).map(UntranslatedWordsTest::plain)
                .sorted(Comparator.comparingInt(String::length).reversed()).toList();
        Set<String> listed = listed();
        Predicate<String> others = piece -> own.contains(piece) || !said.contains(piece) && ofCases.contains(piece);
        return text -> {
            String whole = ENDS.matcher(text).replaceAll("").toLowerCase(Locale.ROOT);
            if (listed.contains(text) || others.test(whole)) {
                return true;
            }
            String left = text;
            for (String one : taken) {
                left = left.replace(one, " ");
            }
            List<String> pieces = PIECES.splitAsStream(NAME.matcher(left).replaceAll(" ").toLowerCase(Locale.ROOT))
                    .map(piece -> ENDS.matcher(piece).replaceAll("").strip()).filter(WORD.asPredicate()).toList();
            return pieces.stream().allMatch(others) || pieces.size() > 1 && pieces.stream().allMatch(ofCases::contains);
        };
    }

    private static Set<String> listed() throws IOException {
        return Files.readAllLines(STAYS).stream().filter(line -> !line.startsWith("#")).map(line -> line.split(" \\| ")[0])
                .collect(Collectors.toSet());
    }

    /** What the demo's cases say in their own files. */
    private static String ofCases() throws IOException {
        try (Stream<Path> files = Files.walk(Path.of("content/cases"))) {
            return plain(files.filter(file -> file.endsWith("case.md") || file.toString().endsWith(".csv"))
                    .map(UntranslatedWordsTest::read).collect(Collectors.joining(" ")));
        }
    }

    private static Set<String> words(String text) {
        return WORD.matcher(text).results().map(MatchResult::group).map(word -> word.toLowerCase(Locale.ROOT))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static String plain(String text) {
        return BLANKS.matcher(text).replaceAll(" ").strip();
    }
}
