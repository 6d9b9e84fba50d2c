package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import java.util.zip.GZIPOutputStream;
import org.benchleaf.calculate.FormularyText;
import org.benchleaf.model.Formulary;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.benchleaf.script.PageCalculator;
import org.benchleaf.words.Words;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

/**
 * The sums of the page: what a form answers, and that every text is letter for letter that of the program, for the inputs
 * of every published value and for inputs made by chance. More of them: {@code mvn verify -Psums}.
 */
class SumsIT {

    private static final int EACH = Integer.getInteger("benchleaf.sums", 40);
    private static final int BATCH = 500;
    private static final Formulary FORMULARY = MethodReader.read();
    private static final String LOAD = """
            const done = arguments[arguments.length - 1];
            const script = name => new Promise((loaded, failed) => {
              const element = document.createElement('script');
              element.onload = loaded;
              element.onerror = () => failed(name);
              element.src = 'assets/' + name;
              document.head.append(element);
            });
            script('sums-data.js').then(() => {
              window.exports = window.underTest = {};
              return script('calculations.js');
            }).then(() => {
              delete window.exports;
              const data = window.BENCHLEAF_SUMS;
              window.underTest.load(data.formulary, data.speaks.mark, data.speaks.weeks, data.speaks.words, data.speaks.direction);
              done(['loaded']);
            }, name => done([name + ' is missing']));
            """;
    private static final String WORK = "return arguments[0].map(each => window.underTest.work(each[0], each[1]));";

    @BeforeAll
    static void load() {
        PageCalculator.load(FormularyText.of(FORMULARY), ".", Words.in("en").counted("unit.weeks").line(), "", "ltr");
    }

    @Test
    void chromium_works_every_sum_as_the_program_does() {
        Windows.lend(window -> {
            window.open("sums.html");
            assertThat(window.textsLater(LOAD)).containsExactly("loaded");
            agree((script, batch) -> window.texts(script, batch));
        });
    }

    @Test
    void firefox_works_every_sum_as_the_program_does() {
        Firefox.on(SiteUnderTest.demo().root()).ifPresentOrElse(firefox -> {
            try (firefox) {
                firefox.open("sums.html", 1280);
                assertThat(firefox.texts(LOAD, true)).containsExactly("loaded");
                agree((script, batch) -> firefox.texts(script, false, batch));
            }
        }, () -> System.out.println("Firefox is not on this machine and cannot be installed: no sums were worked in it."));
    }

    /** 90 kB packed is what a page may load for its sums, common practice for a slow phone, no source. */
    @Test
    void the_calculations_are_small_when_packed() throws IOException {
        byte[] script = Files.readAllBytes(SiteUnderTest.demo().root().resolve("assets/calculations.js"));
        ByteArrayOutputStream packed = new ByteArrayOutputStream();
        try (GZIPOutputStream zip = new GZIPOutputStream(packed)) {
            zip.write(script);
        }
        assertThat(packed.size()).isBetween(10_000, 90_000);
    }

    private static void agree(BiFunction<String, Object, List<String>> page) {
        List<SumRequests.Request> requests = Stream.of(SumRequests.published(CheckValueReader.read(FORMULARY)), SumRequests.blurred(),
                new SumRequests(20261127).byChance(FORMULARY, EACH).stream()).flatMap(some -> some).toList();
        List<String> inPage = new ArrayList<>();
        SumRequests.batches(requests, BATCH).forEach(batch -> inPage.addAll(page.apply(WORK, batch)));
        List<String> inProgram = requests.stream().map(each -> PageCalculator.work(each.calculation(), each.inputs())).toList();
        List<String> differing = new ArrayList<>();
        for (int at = 0; at < requests.size(); at++) {
            if (!inProgram.get(at).equals(inPage.get(at))) {
                differing.add(requests.get(at) + "\n" + inProgram.get(at) + "\n" + inPage.get(at));
            }
        }
        long worked = inProgram.stream().filter(text -> !text.startsWith("refused")).count();
        System.out.printf(Locale.ROOT, "sums: %d requests, %d worked, %d differ%n", requests.size(), worked, differing.size());
        assertThat(differing).isEmpty();
        assertThat(worked).as("a comparison of refusals alone says little").isGreaterThan(requests.size() / 3);
    }

    /** Expected, by hand: (20 + 2 · 5) cm · (30 + 2 · 5) cm · 2 cm = 2400 cm³. */
    @Test
    void a_form_answers_with_unit_and_what_was_put_in_and_a_refusal_names_the_range() {
        Windows.lend(window -> {
            window.open("sums.html");
            assertThat(answer(window, "bath", "height", "200", "width", "300", "margin", "50", "depth", "20"))
                    .contains("2.4\u202FL").contains("200 mm (given)");
            assertThat(answer(window, "ethanol-mixture", "strength", "140", "volume", "500"))
                    .contains("Not worked out").contains("from 0 to 100 % v/v").contains("OIML R 22");
        });
    }

    /** Expected, by hand: a tray of 55 · 42 cm holds 5.775 L at a depth of 2.5 cm and 11.55 L at 5 cm. */
    @Test
    void a_working_of_a_sheet_is_worked_again_with_another_depth_and_marked_as_changed_until_its_own_values_are_back() {
        Windows.lend(window -> {
            window.open("cases/tide-table/steps.html");
            window.run("document.getElementById('working-wash-tray-volume').closest('details').open = true;");
            window.until("document.querySelector('.working__sum')");
            List<String> link = window.texts("return [document.querySelector('.working__sum').getAttribute('href')];");
            String hash = link.get(0).substring(link.get(0).indexOf('#'));
            window.open("sums.html", hash);
            assertThat(bath(window, "", "5.78\u202FL")).contains("With the values of the sheet");
            assertThat(bath(window, "const depth = sum.querySelector('[name=depth]'); depth.value = '50';"
                    + "depth.dispatchEvent(new Event('change', { bubbles: true }));", "11.6\u202FL"))
                    .contains("Changed at the bench").contains("on the sheet: 25 mm");
            assertThat(bath(window, "sum.querySelector('.sum__own button').click();", "5.78\u202FL"))
                    .doesNotContain("Changed at the bench");
            assertThat(window.texts("return [document.querySelector('.sum__back').getAttribute('href')];"))
                    .containsExactly("cases/tide-table/steps.html#working-wash-tray-volume");
        });
    }

    /** The texts of the sum of a bath, when it gives what something done to it is to give. */
    private static String bath(Window window, String done, String gives) {
        String sum = "document.querySelector(\"[data-sum='bath']\")";
        window.run("const sum = " + sum + ";" + done);
        window.until(sum + ".textContent.includes('" + gives + "')");
        return window.texts("return [" + sum + ".textContent];").get(0);
    }

    @Test
    void without_scripts_formulas_stand_and_no_form_does() {
        Windows.lend(window -> {
            window.letScriptsRun(false);
            try {
                window.open("sums.html");
                WrittenPage page = window.asItStands();
                assertThat(page.find(".sum")).hasSameSizeAs(FORMULARY.methods());
                assertThat(page.find(".sum__form")).allMatch(form -> form.hasAttr("hidden"));
                assertThat(page.find(".sum__formula")).hasSameSizeAs(FORMULARY.methods()).allMatch(one -> !one.text().isBlank());
            } finally {
                window.letScriptsRun(true);
            }
        });
    }

    private static String answer(Window window, String calculation, String... inputs) {
        return String.join("", window.textsLater("""
                const done = arguments[arguments.length - 1];
                const sum = document.querySelector(`[data-sum='${arguments[0]}']`);
                for (let at = 0; at < arguments[1].length; at += 2) {
                  sum.querySelector(`[name='${arguments[1][at]}']`).value = arguments[1][at + 1];
                }
                const answer = sum.querySelector('.sum__answer');
                new MutationObserver(() => {
                  if (answer.querySelector('.sum__title')) { done([answer.textContent]); }
                }).observe(answer, { childList: true });
                sum.querySelector('form').requestSubmit();
                """, calculation, List.of(inputs)));
    }
}
