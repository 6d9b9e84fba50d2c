package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.domain.JavaField;
import com.tngtech.archunit.core.domain.JavaModifier;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Field;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.quantity.QuantityReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * No pattern of the program takes more than its share of work on a long text. Work is counted in letters that the
 * matcher asks for, so that the machine's speed has no part in it: a text of four times the length may cost six times
 * the work, never sixteen times.
 */
class PatternWorkTest {

    /** Longer than the bound of any pattern that says how far it looks, so that such a bound has shown itself. */
    private static final int SHORT = 400;
    private static final double MOST_GROWTH = 6;
    /** So much work a letter is no growth, however it is distributed. */
    private static final long FREE_WORK_A_LETTER = 60;

    /** What is repeated: what the patterns look for, begun and never ended. */
    private static final List<String> PUMPS = List.of("1", "1.", "1.1", "1,", "1 ", "1,1 ", "12.5 ", "1:", "1e", "1+1", " ", "\t",
            "\n", "a", "a ", "A.", "Aa ", "Aa-", "-", "--", "- ", ".", ",", "a,", "{", "{a", "{#a", "[", "[a", "(", "<", "<!--",
            "<a ", "/*", "&", "&#", "&#1", "%", "%4", "\\", "\\u0", "#", "/", "a/", "a=", "a:", "pH ", "pH 1", "to ", "1 to ",
            "1 – ", "1 ± ", "% ", "1 % ", "v/v", "£", "£1", "£1,000", "é", "e\u0301", "\u00A0", "\u200B", "|", "`", "con.", "0");
    private static final List<String> ENDS = List.of("", "!", "\n", "}");

    /** Patterns that are steep, and the test that their texts are kept short: by QuantityReader, to 200 letters. */
    private static final Set<String> BOUNDED = Set.of("org.benchleaf.quantity.QuantityReader.RANGE",
            "org.benchleaf.quantity.QuantityReader.TOLERANCE");

    @Test
    void a_text_longer_than_any_quantity_is_refused_before_a_steep_pattern_sees_it() {
        QuantityReader.Reading reading = QuantityReader.read("1." + "0".repeat(70_000) + " to x");
        assertThat(reading.slip()).contains(QuantityReader.Slip.NOT_A_NUMBER);
        assertThat(reading.found()).hasSizeLessThan(300);
        assertThat(QuantityReader.read("0." + "1".repeat(190) + " mL").quantity()).isPresent();
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("patterns")
    void work_grows_with_the_text_and_not_faster(String name, Pattern pattern) {
        List<String> steep = new ArrayList<>();
        for (String pump : PUMPS) {
            for (String end : ENDS) {
                if (!steep.isEmpty()) {
                    break;
                }
                long small = work(pattern, text(pump, end, SHORT));
                long large = work(pattern, text(pump, end, 4 * SHORT));
                if (large > MOST_GROWTH * small && large > FREE_WORK_A_LETTER * 4 * SHORT) {
                    steep.add("'" + pump + "'… '" + end + "': " + small + " → " + large);
                }
            }
        }
        assertThat(steep).isEmpty();
    }

    static Stream<Object[]> patterns() {
        JavaClasses classes = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.benchleaf");
        return classes.stream().flatMap(each -> each.getFields().stream())
                .filter(field -> field.getRawType().isEquivalentTo(Pattern.class))
                .filter(field -> field.getModifiers().contains(JavaModifier.STATIC))
                .filter(field -> !BOUNDED.contains(field.getFullName()))
                .map(field -> new Object[] {field.getFullName(), pattern(field)})
                .sorted((a, b) -> a[0].toString().compareTo(b[0].toString()));
    }

    private static Pattern pattern(JavaField each) {
        try {
            Field field = each.reflect();
            field.setAccessible(true);
            return (Pattern) field.get(null);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    private static String text(String pump, String end, int length) {
        return pump.repeat(length / pump.length()) + end;
    }

    private static long work(Pattern pattern, String text) {
        Counted counted = new Counted(text, new long[1]);
        pattern.matcher(counted).matches();
        Matcher found = pattern.matcher(counted);
        while (found.find()) {
            // Each place counts.
        }
        return counted.asked()[0];
    }

    /** A text that counts how often a letter is asked for. */
    private record Counted(String text, long[] asked) implements CharSequence {

        @Override
        public int length() {
            return text.length();
        }

        @Override
        public char charAt(int index) {
            asked[0]++;
            return text.charAt(index);
        }

        @Override
        public CharSequence subSequence(int start, int end) {
            return text.substring(start, end);
        }

        @Override
        public String toString() {
            return text;
        }
    }
}
