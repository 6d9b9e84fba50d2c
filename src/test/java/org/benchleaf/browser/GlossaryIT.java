package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** A word of the glossary is explained where it stands; the meanings are those of the studio's glossary file. */
@Execution(ExecutionMode.CONCURRENT)
class GlossaryIT {

    private static final String D65 = "document.querySelector(\"a.term[href$='#term-d65']\")";

    @Test
    void a_word_opens_beside_itself_and_closes_again() {
        Windows.lend(window -> {
            window.open("cases/tide-table/results.html");
            window.run(D65 + ".click();");
            window.until("document.querySelector('.term__meaning')");
            assertThat(window.texts("return [" + D65 + ".nextElementSibling.textContent];")).containsExactly(
                    " (A standard light, close to daylight, for which a colour is worked out. Glossary)");
            assertThat((String) window.run("return location.href;")).endsWith("/cases/tide-table/results.html");

            window.run(D65 + ".click();");
            assertThat(window.texts("return [...document.querySelectorAll('.term__meaning')].map(one => one.textContent);")).isEmpty();
        });
    }

    @Test
    void a_page_in_another_language_explains_it_in_that_language() {
        Windows.lend(window -> {
            window.open("fr/cases/tide-table/index.html");
            window.run("document.querySelector('a.term').click();");
            window.until("document.querySelector('.term__meaning a')");
            assertThat((String) window.run("return document.querySelector('.term__meaning a').href;")).contains("/fr/glossary.html#term-");
        });
    }

    /** A page taken away by itself has no such file beside it. */
    @Test
    void without_its_file_the_link_leads_to_the_glossary() {
        Windows.lend(window -> {
            window.open("cases/tide-table/results.html");
            window.run("const link = " + D65 + "; link.href = link.href.replace('#term-d65', '#term-nothing'); link.click();");
            window.until("location.pathname.endsWith('/glossary.html')");
            assertThat((String) window.run("return location.hash;")).isEqualTo("#term-nothing");
        });
    }
}
