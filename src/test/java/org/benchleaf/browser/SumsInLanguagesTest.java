package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.calculate.FormularyText;
import org.benchleaf.compose.site.SumsPage;
import org.benchleaf.json.JsonTree;
import org.benchleaf.model.Formulary;
import org.benchleaf.page.DataFile;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.PhrasesReader;
import org.benchleaf.script.PageCalculator;
import org.benchleaf.words.Words;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What a sum answers on a page of another language: the same digits, and no sentence in English. */
class SumsInLanguagesTest {

    private static final Formulary FORMULARY = MethodReader.read();
    /** Words that every English sentence of the calculations has one of, and none of the other languages has. */
    private static final Pattern ENGLISH = Pattern.compile("(?i)(?<![\\p{L}'‘«])(?:the|of|found|allowed|than|which|with|be|is|more|given"
            + "|usual|such|share|mass of|least|yes)(?![\\p{L}’])");
    private static final Pattern KEYS = Pattern.compile("^(?:(?:number|word|withheld|refused)\t[^\t]*|given|note)\t");
    private static final Pattern QUOTED = Pattern.compile("[‘«][^’»]*[’»]|NIOSH Pocket Guide, Ethyl alcohol|[a-z]+(?:-[a-z]+)+");

    @AfterEach
    void speakEnglish() {
        PageCalculator.load(FormularyText.of(FORMULARY), ".", Words.in("en").counted("unit.weeks").line(), "", "ltr");
    }

    private static void speak(String language) throws IOException {
        DataFile words = SumsPage.data("en", FORMULARY, List.of(PhrasesReader.in(language))).get(1);
        assertThat(words.path()).isEqualTo("assets/sums-words." + language + ".js");
        JsonTree signs = JsonTree.read(words.text().replace("window.BENCHLEAF_SUMS.speaks = ", "").replaceFirst(";\\s*$", ""));
        PageCalculator.load(FormularyText.of(FORMULARY), signs.at("mark").text(), signs.at("weeks").text(), signs.at("words").text(),
                signs.at("direction").text());
    }

    @ParameterizedTest
    @ValueSource(strings = {"fr", "cy", "ar"})
    void no_answer_refusal_or_note_is_english(String language) throws IOException {
        List<SumRequests.Request> requests = Stream.concat(SumRequests.published(CheckValueReader.read(FORMULARY)),
                new SumRequests(20261128).byChance(FORMULARY, 20).stream()).toList();
        speak(language);
        List<String> english = new ArrayList<>();
        int refused = 0;
        for (SumRequests.Request each : requests) {
            String answer = PageCalculator.work(each.calculation(), each.inputs());
            refused += answer.startsWith("refused") ? 1 : 0;
            answer.lines().map(SumsInLanguagesTest::sentences)
                    .filter(text -> ENGLISH.matcher(text).find()).forEach(english::add);
        }
        assertThat(english.stream().distinct()).isEmpty();
        assertThat(refused).as("refusals are the longest sentences").isGreaterThan(100);
    }

    /** Without keys, what somebody put in, and titles of publications. */
    private static String sentences(String cells) {
        return QUOTED.matcher(KEYS.matcher(cells).replaceFirst("")).replaceAll(" ");
    }

    /** (20 + 2 · 5) cm · (30 + 2 · 5) cm · 2.5 cm = 3000 cm³, worked by hand; the decimal comma of French (CLDR 49, fr). */
    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
            fr | 200 mm | 300 mm | 50 mm | 2,5 cm | 3.00
            ar | ٢٠٠ mm | 300 mm | 50 mm | 2٫5 cm | 3.00
            cy | 200 mm | 300 mm | 50 mm | 2.5 cm | 3.00
            """)
    void what_is_typed_in_the_language_is_worked(String language, String height, String width, String margin, String depth, String litres)
            throws IOException {
        speak(language);
        assertThat(PageCalculator.work("bath", "height\t" + height + "\nwidth\t" + width + "\nmargin\t" + margin + "\ndepth\t" + depth)
                .replace(',', '.')).contains("\t" + litres.replace(".00", "") + "\tL");
    }
}
