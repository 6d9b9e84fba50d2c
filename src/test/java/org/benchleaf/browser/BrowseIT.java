package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The lists of cases by what they are, what had happened to them and what was done, opened from a folder. */
@Execution(ExecutionMode.CONCURRENT)
class BrowseIT {

    /** Read in the case files of the demo: technique, damages, kinds of steps, level and measures. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            technique-letterpress | A tide table
            object-map            | A parish map
            damage-tear           | A blue plan; A poster; A tide table; The letter
            damage-crease         | A parish map; A tide table
            damage-water-damage   | A poster
            step-humidification   | A blue plan; A parish map
            step-washing          | A tide table
            step-mould-removal    | A poster
            """)
    void a_list_has_the_cases_of_its_word_and_the_page_before_it_tells_how_many(String list, String cases) {
        List<String> expected = List.of(cases.split("; "));
        String count = expected.size() == 1 ? "1 case" : expected.size() + " cases";
        Windows.lend(window -> {
            window.open("browse/index.html");
            String link = "document.querySelector('main a[href=\"" + list + ".html\"]')";
            assertThat((String) window.run("return " + link + ".closest('li').textContent;")).contains(count);
            window.run(link + ".click();");
            window.until("location.pathname.endsWith('/" + list + ".html') && document.readyState === 'complete'");
            List<String> shown = window.texts("return [...document.querySelectorAll('.case-list__title')].filter(one => "
                    + "one.checkVisibility())"
                    + ".map(one => one.textContent);");
            assertThat(shown).hasSameSizeAs(expected);
            assertThat(expected).allSatisfy(one -> assertThat(shown).anyMatch(title -> title.startsWith(one)));
            assertThat(window.run("return document.querySelector('#cases-heading').textContent;")).isEqualTo(count);
        });
    }
}
