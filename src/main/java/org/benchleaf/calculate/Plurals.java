package org.benchleaf.calculate;

import java.util.List;

/** The plural forms of languages for whole numbers, by the rules of the Unicode CLDR, release 49 ({@code plurals.xml}). */
public final class Plurals {

    private static final long MILLION = 1_000_000;

    private Plurals() {
    }

    /** The form for a number: {@code zero}, {@code one}, {@code two}, {@code few}, {@code many} or {@code other}. */
    public static String form(String language, long number) {
        return is(language, "ar") ? arabic(number) : is(language, "cy") ? welsh(number) : is(language, "fr") ? french(number)
                : number == 1 ? "one" : "other";
    }

    /** Every form that a language has. */
    public static List<String> forms(String language) {
        return is(language, "fr") ? List.of("one", "many", "other")
                : is(language, "cy") || is(language, "ar") ? List.of("zero", "one", "two", "few", "many", "other")
                : List.of("one", "other");
    }

    /** Whether a tag is of a language, whatever its region. */
    private static boolean is(String tag, String language) {
        return tag.startsWith(language) && (tag.length() == language.length() || tag.charAt(language.length()) == '-');
    }

    private static String french(long number) {
        return number == 0 || number == 1 ? "one" : number % MILLION == 0 ? "many" : "other";
    }

    private static String welsh(long number) {
        return number == 0 ? "zero" : number == 1 ? "one" : number == 2 ? "two" : number == 3 ? "few" : number == 6 ? "many" : "other";
    }

    private static String arabic(long number) {
        long lastTwo = number % 100;
        return number == 0 ? "zero" : number == 1 ? "one" : number == 2 ? "two" : lastTwo >= 3 && lastTwo <= 10 ? "few"
                : lastTwo >= 11 ? "many" : "other";
    }
}
