package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.publish.SiteFile;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * What a teacher or technician asks of a class, each answered by one link of its page. Amounts and days are worked by hand: six
 * stations of 17.1 mL of limewater and as much for the spare sheet are made as the least, 250 mL; five working days before
 * Thursday 9 April 2026, over Easter, are Tuesday 31 March; five stations of 15 mL with 5 % to spare and 3 mL in each bottle are 94 mL.
 */
class ClassQuestionsTest {

    private static final String CLASS = "cases/tide-table/class-spring-course.html";
    private static Map<String, Document> pages;

    @BeforeAll
    static void read() {
        pages = DemoSite.made().files().stream().filter(file -> file.path().matches("cases/tide-table/class-.*\\.html"))
                .collect(Collectors.toMap(SiteFile::path, file -> Jsoup.parse(new String(file.bytes(), StandardCharsets.UTF_8))));
    }

    /** Where the only link of that text leads to. */
    private static Element answer(String course, String text) {
        Element link = pages.get(course).select("main a").stream().filter(one -> one.text().equals(text)).findFirst().orElseThrow();
        String[] parts = link.attr("href").split("#", 2);
        Document page = parts[0].isEmpty() ? pages.get(course) : pages.get("cases/tide-table/" + parts[0]);
        Element part = parts.length > 1 ? page.getElementById(parts[1]) : page.selectFirst("main");
        assertThat(part).as(link.attr("href")).isNotNull();
        return part;
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "How much to make of each liquid, and by when to begin      | Saturated limewater Thursday 9 April 2026, 11:01 15 min Friday 10 "
                + "April 2026, 11:01 250 mL",
        "What must be ordered by when                               | Ethanol, 96 % v/v 54.2 mL 30 mL 1 × 500 mL Tuesday 31 March 2026",
        "What is left over and where it goes                        | up to 130 mL 1 × 1 L, 90 % full Collect in the closed can for "
                + "solvents",
        "Whether the air of the room is good enough for all at once | If all did it at the same time Prewetting",
        "Who is released when, and what is looked at                | Prewetting: hold before misting the dry sheet in raking light, "
                + "with no loose dirt and its wax even on both faces, and the last test of its stamp, which left every blotter white",
        "What changed since the issue before                        | Ethanol and water for misting 94 mL 130 mL",
    })
    void a_question_is_one_link_away_from_its_answer(String question, String told) {
        assertThat(answer(CLASS, question).text().replaceAll("[\\p{Z}]", " ")).contains(told);
    }

    /** From its first minute, Tuesday 14 April 2026, 09:00, to its last, Friday 17 April 2026, 14:07, by the calendar. */
    @Test
    void a_plan_of_more_than_two_days_is_told_in_days() {
        assertThat(pages.get(CLASS).text().replaceAll("[\\p{Z}]", " ")).contains("Friday 17 April 2026, 14:07", "It takes 3 d 5 h 7 min.");
    }

    /** Work is judged against a drawing of a good result beside a bad one, of each step of the class that has one. */
    @ParameterizedTest
    @CsvSource({"spring-course, step-relax-wet-out step-wash-lifted", "tissue-and-paste, step-mend-result"})
    void the_assessor_sees_a_good_result_beside_a_bad_one(String course, String drawings) {
        Element results = pages.get("cases/tide-table/class-" + course + "-assessment.html").getElementById("results");
        assertThat(results.select("svg > title").eachAttr("id")).containsExactly(
                java.util.Arrays.stream(drawings.split(" ")).map(drawing -> drawing + "-title").toArray(String[]::new));
    }

    @Test
    void the_plan_tells_when_station_4_changes_its_third_blotter() {
        Element row = answer(CLASS, "When each station does what").select("tr").stream()
                .filter(one -> one.text().startsWith("Drying: blotter change 3")).findFirst().orElseThrow();
        assertThat(row.select("td").get(3).text()).matches("\\d\\d:\\d\\d");
    }

    /** Names and marks stand in the record alone, which is kept on the device; the site holds the empty form. */
    @Test
    void the_record_of_station_4_asks_who_did_the_mend_and_how_well() {
        String course = "cases/tide-table/class-tissue-and-paste.html";
        assertThat(answer(course, "Record of station 4").selectFirst("button").attr("data-station")).isEqualTo("4");
        Document form = pages.get("cases/tide-table/class-tissue-and-paste-record.html");
        assertThat(form.select("[name='mend//0/done by'], [name='mark/1/1/met'], [name='mark/1/1/help today']")).hasSize(3);
        assertThat(form.select("input[value]")).isEmpty();
    }
}
