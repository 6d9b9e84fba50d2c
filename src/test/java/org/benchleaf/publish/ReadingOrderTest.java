package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.text.Normalizer;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import org.benchleaf.DemoSite;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageTree;
import org.benchleaf.page.Page;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.TextNode;
import org.jsoup.select.NodeTraversor;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * ISO 14289-1, 7.1 and 7.2: the tags of a sheet follow the order in which its content is read. The order that is expected is that of
 * the page itself, for every kind of sheet, from left to right and from right to left.
 */
class ReadingOrderTest {

    /** What only a browser can use, formulas, which the line below them says in words, and drawings, which are figures on paper. */
    private static final String OF_SCREENS =
            "script, style, nav, [hidden], button, select, .skip, .masthead__name, .bench-desk, .formula, .not-printed, svg, img";
    private static final Pattern SIGNS = Pattern.compile("[\\s\\p{Cf}\u00a0\u202f\u2009_()\\[\\]«»<>]+");
    private static final Pattern WORD = Pattern.compile("\\p{L}");
    private static final Pattern MIXED = Pattern.compile("\\p{IsArabic}.*[\\p{IsLatin}\\p{Nd}]|[\\p{IsLatin}\\p{Nd}].*\\p{IsArabic}");

    private static String bare(String text) {
        return SIGNS.matcher(Normalizer.normalize(text, Normalizer.Form.NFKC)).replaceAll("");
    }

    private static Document page(String language, String name) {
        CasePages pages = DemoSite.made().cases().stream().filter(one -> one.pages().stream()
                .anyMatch(page -> page.path().equals("cases/tide-table/steps.html"))).findFirst().orElseThrow();
        Page original = pages.pages().stream().filter(page -> page.path().endsWith(name + ".html")).findFirst().orElseThrow();
        if (language.equals("en")) {
            return Jsoup.parse(html(original));
        }
        TranslatedPages there = pages.translated().stream().filter(one -> one.language().equals(language)).findFirst().orElseThrow();
        Page told = there.pages().stream().filter(page -> page.path().endsWith(name + ".html")).findFirst().orElseThrow();
        return Jsoup.parse(there.marked(html(told), ForeignWords.Original.of(PageTree.of(html(original)))).html());
    }

    private static String html(Page page) {
        return new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(page).bytes(), StandardCharsets.UTF_8);
    }

    private static byte[] file(Document page, String language) throws IOException {
        Document printed = page.clone();
        printed.select("img, image, [hidden], .bench-desk, script").remove();
        TakenStyles styles = new TakenStyles("", Files.readString(Path.of("templates/paper/sheet.css")), "");
        PrintedSheet sheet = new PrintedSheet("cases/tide-table/steps.html", new FinishedPage("cases/tide-table/steps.html", printed),
                Map.of(), styles);
        return sheet.file(new Book("Tide table", "Studio", language, language.equals("ar") ? "rtl" : "ltr", "tide-table",
                LocalDate.of(2026, 1, 1), "", Map.of(), List.of(), Optional.empty())).bytes();
    }

    /** The texts of a page in its order; what holds both scripts is set in an order of its own within its line. */
    private static List<String> said(Document page) {
        Document read = page.clone();
        read.select(OF_SCREENS).remove();
        List<String> said = new ArrayList<>();
        NodeTraversor.traverse((node, depth) -> {
            if (node instanceof TextNode text && WORD.matcher(text.getWholeText()).find() && !MIXED.matcher(text.getWholeText()).find()) {
                said.add(bare(text.getWholeText()));
            }
        }, read.body());
        return said;
    }

    private static List<String> outOfOrder(List<String> said, String read) {
        List<String> missing = new ArrayList<>();
        int at = 0;
        for (String text : said) {
            int found = read.indexOf(text, at);
            if (found < 0) {
                missing.add(text);
            } else {
                at = found + text.length();
            }
        }
        return missing;
    }

    @ParameterizedTest
    @CsvSource({"en, steps", "en, preparation", "en, class-spring-course-stations", "en, class-spring-course-preparation",
        "ar, steps", "ar, preparation", "ar, class-spring-course-stations", "ar, class-spring-course-preparation"})
    void tags_are_read_in_the_order_of_the_page(String language, String name) throws IOException {
        Document page = page(language, name);
        byte[] file = file(page, language);
        String read = bare(String.join("", TagReading.of(file)));
        List<String> said = said(page);
        assertThat(said).hasSizeGreaterThan(200);
        assertThat(outOfOrder(said, read)).isEmpty();
    }

    /** A figure that nothing but the end of the file names was left out of its place. */
    @ParameterizedTest
    @CsvSource({"en, preparation", "ar, preparation"})
    void no_drawing_is_read_behind_the_foot_of_the_page(String language, String name) throws IOException {
        Document page = page(language, name);
        assertThat(page.select(".label__pictogram")).isNotEmpty();
        List<String> read = TagReading.of(file(page, language)).stream().filter(text -> !bare(text).isEmpty()).toList();
        assertThat(read.get(read.size() - 1)).doesNotStartWith("[");
        assertThat(read.stream().filter(text -> text.startsWith("["))).isNotEmpty();
    }
}
