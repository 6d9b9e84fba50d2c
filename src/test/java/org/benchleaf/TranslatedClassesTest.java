package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.cases.TranslatedPages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.compose.part.ForeignWords;
import org.benchleaf.compose.part.PageTree;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Translation;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/** The classes of a case stand in each of its languages, with the studio's words, and with the same numbers. */
class TranslatedClassesTest {

    private static final Path CONTENT = Path.of("content");
    private static final String FOLDER = "fr/cases/tide-table/";

    private static Library library;
    private static WorkedCase worked;
    private static CasePages pages;

    @BeforeAll
    static void compose() {
        CheckedLibrary read = LibraryChecker.check(LibraryReader.read(CONTENT));
        library = read.library();
        Checked checked = WholeLine.checked(CONTENT, CONTENT.resolve("cases/tide-table"), read);
        worked = new Deriver(library).derive(checked.treatment().orElseThrow(), checked.findings()).worked();
        pages = PageComposer.compose(worked, library, Clearance.on(LocalDate.of(2026, 6, 1), checked.treatment().get().publication(),
                Audience.EVERYBODY).of(worked));
    }

    @Test
    void every_paper_of_a_class_stands_in_each_language_of_its_case() {
        Set<String> own = pages.pages().stream().map(Page::path).collect(Collectors.toCollection(TreeSet::new));
        assertThat(own).contains("cases/tide-table/class-spring-course.html", "cases/tide-table/class-spring-course-record.html");
        for (TranslatedPages translated : pages.translated()) {
            assertThat(translated.pages().stream().map(page -> page.path().substring(translated.language().length() + 1)))
                    .as(translated.language()).containsExactlyInAnyOrderElementsOf(own);
        }
    }

    @Test
    void what_a_class_says_is_told_in_the_words_of_the_studio() {
        Document page = page(FOLDER + "class-spring-course.html");
        assertThat(page.selectFirst("h1").text()).isEqualTo("Laver une feuille cassante, cours de printemps");
        assertThat(page.text()).contains("descend une feuille brumisée sur son support dans le bain", "six postes au lieu de cinq",
                "formateur du cours");
        assertThat(page(FOLDER + "class-spring-course-stations.html").text())
                .contains("Lavage\u202f: changement de bain 2", "stagiaire du poste 2");
    }

    @Test
    void no_words_of_the_studio_stay_in_its_own_language_on_the_papers_of_a_class() {
        for (TranslatedPages translated : pages.translated()) {
            Set<String> left = translated.pages().stream().filter(page -> page.path().contains("/class-"))
                    .flatMap(page -> page(page.path()).select("main [lang=en]").stream().map(Element::wholeText).map(String::strip))
                    .filter(text -> text.indexOf(' ') > 0).collect(Collectors.toCollection(TreeSet::new));
            left.retainAll(LibraryTexts.ofStudio(library));
            assertThat(left).as(translated.language()).isEmpty();
        }
    }

    @Test
    void a_paper_leads_to_the_same_paper_in_the_other_languages() {
        Document page = page(FOLDER + "class-spring-course-orders.html");
        assertThat(page.select("link[rel=alternate][hreflang]").eachAttr("hreflang")).contains("en", "cy", "ar");
        assertThat(page.select("a[hreflang=en]").eachAttr("href")).contains("../../../cases/tide-table/class-spring-course-orders.html");
        assertThat(page.select("#papers a").eachAttr("href")).contains("class-spring-course.html", "steps.html");
        assertThat(text(pages.pages(), "cases/tide-table/class-spring-course.html"))
                .contains("../../fr/cases/tide-table/class-spring-course.html");
        assertThat(page(FOLDER + "class-spring-course.html").select("a[href$=.ics]").eachAttr("href"))
                .allMatch(href -> href.startsWith("../../../cases/tide-table/"));
    }

    @Test
    void numbers_times_and_the_mark_of_an_issue_are_those_of_the_class() {
        for (Translation translation : worked.source().translations()) {
            WorkedCase there = new Deriver(LibraryTexts.in(translation.phrases(), library)).told(worked, translation);
            for (int at = 0; at < worked.classes().size(); at++) {
                ClassPlan own = worked.classes().get(at);
                ClassPlan told = there.classes().get(at);
                assertThat(told.papers()).isEqualTo(own.papers());
                assertThat(told.starts()).isEqualTo(own.starts());
                assertThat(values(told).keySet()).isEqualTo(values(own).keySet());
                values(own).forEach((id, value) -> assertThat(values(told).get(id)).as(id).isEqualTo(value));
                assertThat(told.schedule().map(ScheduleReading::new).map(ScheduleReading::turns))
                        .isEqualTo(own.schedule().map(ScheduleReading::new).map(ScheduleReading::turns));
                assertThat(told.supplies().layOut().stream().map(item -> List.of(item.kind(), item.all(), item.station())).toList())
                        .isEqualTo(own.supplies().layOut().stream().map(item -> List.of(item.kind(), item.all(), item.station())).toList());
            }
        }
    }

    private static Map<String, Object> values(ClassPlan plan) {
        return plan.figures().values().stream().collect(Collectors.toMap(Figure::id, Figure::value));
    }

    /** A finished page of a translation, with its marks. */
    private static Document page(String path) {
        TranslatedPages there = pages.translated().stream().filter(one -> path.startsWith(one.language() + "/")).findFirst().orElseThrow();
        Page page = there.pages().stream().filter(one -> one.path().equals(path)).findFirst().orElseThrow();
        return Jsoup.parse(there.marked(text(List.of(page), path),
                ForeignWords.Original.of(PageTree.of(text(pages.pages(), there.originalOf(page))))).html());
    }

    private static String text(List<Page> all, String path) {
        Page page = all.stream().filter(one -> one.path().equals(path)).findFirst().orElseThrow();
        return new String(SitePublisher.with(Path.of("templates"), Pictures.none()).publish(page).bytes(), StandardCharsets.UTF_8);
    }
}
