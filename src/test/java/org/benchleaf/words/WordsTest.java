package org.benchleaf.words;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.Month;
import java.time.format.TextStyle;
import java.util.List;
import java.util.Locale;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Plurals;
import org.benchleaf.compose.PageMakers;
import org.benchleaf.compose.site.Facets;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds the files of words against the code that asks for them and against each other. */
class WordsTest {

    private static final Path FOLDER = Path.of("src/main/resources/words");
    private static final Path SOURCES = Path.of("src/main/java/org/benchleaf/compose");
    private static final Pattern SAID = Pattern.compile("\\bsay\\(\\s*\"([a-zA-Z0-9.-]+)\"");
    private static final Pattern COUNTED = Pattern.compile("\\bcount\\(\\s*\"([a-zA-Z0-9.-]+)\"");
    private static final Pattern GROUPED = Pattern.compile("\\bgroup\\(\"([a-zA-Z0-9.-]+)\"\\)");

    private static final Pattern HOLE = Pattern.compile("[{][a-zA-Z]+[}]|\\[[a-z]+\\]");

    private static Properties read(Path file) throws IOException {
        Properties words = new Properties();
        try (Reader reader = Files.newBufferedReader(file, StandardCharsets.UTF_8)) {
            words.load(reader);
        }
        return words;
    }

    private static List<String> asked(Pattern pattern) throws IOException {
        TreeSet<String> keys = new TreeSet<>();
        try (Stream<Path> files = Files.walk(SOURCES)) {
            for (Path file : files.filter(path -> path.toString().endsWith(".java")).toList()) {
                Matcher matcher = pattern.matcher(Files.readString(file));
                while (matcher.find()) {
                    // A key that ends in a hyphen or dot is finished by the program: see the tests of those pages.
                    if (!matcher.group(1).matches(".*[.-]")) {
                        keys.add(matcher.group(1));
                    }
                }
            }
        }
        return List.copyOf(keys);
    }

    @Test
    void every_key_that_the_program_asks_for_is_there() throws IOException {
        Words english = Words.in("en");
        assertThat(asked(SAID)).isNotEmpty().allMatch(english::has);
        assertThat(asked(COUNTED)).isNotEmpty().allMatch(key -> english.has(key + ".one") && english.has(key + ".other"));
        assertThat(asked(GROUPED)).isNotEmpty().allSatisfy(group -> assertThat(english.group(group)).isNotEmpty());
    }

    @Test
    void every_kind_of_step_and_of_page_has_a_name() {
        Words english = Words.in("en");
        assertThat(StepKind.values()).allSatisfy(kind ->
                assertThat(english.has("step-kind." + kind.word().replace(' ', '-'))).as(kind.word()).isTrue());
        assertThat(PageMakers.CASE).allSatisfy(page -> assertThat(english.has("case-page." + page.name().kind())).isTrue());
        assertThat(PageMakers.SITE).allSatisfy(page -> assertThat(english.has("way." + page.name().kind())).isTrue());
        assertThat(Facets.values()).allSatisfy(facet -> {
            assertThat(english.has("browse.by-" + facet.word())).isTrue();
        });
    }

    /** The keys that a language must have: those of English, with the plural forms of the language where English has its two. */
    private static Set<String> keysOf(String language, Properties english) {
        Set<String> keys = new TreeSet<>();
        for (String key : english.stringPropertyNames()) {
            String stem = key.replaceFirst("[.](?:one|other)$", "");
            boolean counted = english.containsKey(stem + ".one") && english.containsKey(stem + ".other");
            keys.addAll(counted ? Plurals.forms(language).stream().map(form -> stem + "." + form).toList() : List.of(key));
        }
        return keys;
    }

    static List<String> languages() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(file -> file.getFileName().toString().replaceAll("interface_|[.]properties", "")).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("languages")
    void every_language_has_every_key_and_no_other(String language) throws IOException {
        Properties english = read(FOLDER.resolve("interface_en.properties"));
        Properties own = read(FOLDER.resolve("interface_" + language + ".properties"));
        assertThat(own.stringPropertyNames()).containsExactlyInAnyOrderElementsOf(keysOf(language, english));
        assertThat(own.values()).noneMatch(text -> text.toString().isEmpty());
    }

    /** A plural form that names its number in words, such as one of zero, needs no hole for it; it may use no other hole. */
    @ParameterizedTest
    @MethodSource("languages")
    void no_language_loses_a_hole_or_has_one_more(String language) throws IOException {
        Properties english = read(FOLDER.resolve("interface_en.properties"));
        Properties own = read(FOLDER.resolve("interface_" + language + ".properties"));
        for (String key : own.stringPropertyNames()) {
            String stem = key.replaceFirst("[.](?:zero|one|two|few|many|other)$", "");
            boolean counted = english.containsKey(stem + ".one") && english.containsKey(stem + ".other");
            Set<String> holes = holes(own.getProperty(key));
            Set<String> wanted = holes(english.getProperty(counted ? stem + ".other" : key));
            if (counted) {
                holes.remove("{n}");
                wanted.remove("{n}");
            }
            assertThat(holes).as(key).isEqualTo(wanted);
        }
    }

    private static Set<String> holes(String text) {
        return HOLE.matcher(text).results().map(MatchResult::group).collect(Collectors.toCollection(TreeSet::new));
    }

    /** Unicode CLDR, plurals.xml: the sample numbers of each form (release 42 and later have the same for these languages). */
    @ParameterizedTest
    @CsvSource({"en, one, 1", "en, other, 0 2 16 100 1000000", "fr, one, 0 1", "fr, many, 1000000 2000000", "fr, other, 2 17 100 100000",
        "cy, zero, 0", "cy, one, 1", "cy, two, 2", "cy, few, 3", "cy, many, 6", "cy, other, 4 5 7 20 100 1000000",
        "ar, zero, 0", "ar, one, 1", "ar, two, 2", "ar, few, 3 10 103 110 1003", "ar, many, 11 26 111 1011",
        "ar, other, 100 102 200 1000000"})
    void the_plural_form_is_that_of_the_unicode_data(String language, String form, String numbers) {
        assertThat(numbers.split(" ")).allMatch(number -> Plurals.form(language, Long.parseLong(number)).equals(form));
        assertThat(Plurals.forms(language)).contains(form);
    }

    /**
     * Unicode CLDR: days and weeks in words. A count of one may add the word for one, as "حالة واحدة" does in a list.
     */
    @ParameterizedTest
    @CsvFileSource(resources = "/languages/cldr-units.csv", numLinesToSkip = 2)
    void units_of_time_are_those_of_the_unicode_data(String language, String unit, int number, String text) {
        Words words = Words.in(language);
        String told = unit.equals("day") ? words.count("record-days.days", number)
                : NumberText.in(words).duration(Quantity.of(number, Unit.WEEK)).text();
        if (unit.equals("day") || number >= 2) {
            assertThat(told.replace(Amount.UNIT_SPACE, ' ').replaceFirst(" واحد$", "")).isEqualTo(text);
        }
    }

    /** Unicode CLDR, ar.xml: the forms one and two name their number by themselves, "دقيقة" and "دقيقتان"; no sign of it stands there. */
    @Test
    void arabic_names_one_and_two_in_words() throws IOException {
        Properties arabic = read(FOLDER.resolve("interface_ar.properties"));
        Properties english = read(FOLDER.resolve("interface_en.properties"));
        assertThat(arabic.stringPropertyNames()).filteredOn(key -> key.matches(".*[.](?:one|two)")
                && english.containsKey(key.replaceFirst("[^.]*$", "other"))).isNotEmpty()
                .allSatisfy(key -> assertThat(arabic.getProperty(key)).doesNotContain("{n}"));
    }

    /** Unicode CLDR, cy.xml: after two the noun has the soft mutation, "2 ddiwrnod", "2 funud". */
    @ParameterizedTest
    @CsvSource({"bench.baths, 2 faddon", "plain.of-places, ar gyfartaledd o 2 le", "results.readings-each, 2 ddarlleniad ar bob smotyn",
        "rules.in-theme, 2 reol", "class.portions, 2 ddogn", "evidence.values, 2 rif", "record-days.days, 2 ddiwrnod"})
    void welsh_softens_the_noun_after_two(String key, String text) {
        assertThat(Words.in("cy").count(key, 2)).isEqualTo(text);
    }

    /** Against the CLDR data that come with the JDK of the build. */
    @ParameterizedTest
    @ValueSource(strings = {"en", "fr", "cy", "ar"})
    void months_and_days_are_those_of_the_unicode_data(String language) {
        Words words = Words.in(language);
        Locale locale = Locale.forLanguageTag(language);
        assertThat(Month.values()).allMatch(month ->
                words.say("month." + month.getValue()).equals(month.getDisplayName(TextStyle.FULL, locale)));
        assertThat(DayOfWeek.values()).allMatch(day ->
                words.say("weekday." + day.getValue()).equals(day.getDisplayName(TextStyle.FULL, locale)));
    }

    @Test
    void a_language_without_words_of_its_own_gets_the_english_ones() {
        assertThat(Words.in("tlh").language()).isEqualTo("en");
        assertThat(Words.in("en-ZA").say("way.library")).isEqualTo("Cases");
    }

    @Test
    void a_missing_key_and_an_open_hole_stop_the_program() {
        assertThatThrownBy(() -> Words.in("en").say("no.such-key")).hasMessageContaining("no.such-key");
        assertThatThrownBy(() -> Words.in("en").say("size", "height", "1")).hasMessageContaining("{width}");
    }
}
