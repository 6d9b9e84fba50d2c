package org.benchleaf.calculate;

import java.util.List;

/** The plural forms of languages for whole numbers, by the rules of the Unicode CLDR, release 49 ({@code plurals.xml}). */
public final class Plurals {

    private static final long MILLION = 1_000_000;

    private Plurals() {
    }

    /** The form for a number: {@code zero}, {@code one}, {@code two}, {@code few}, {@code many} or {@code other}. */
    public static String form(String language, long number) {
        return switch (bare(language)) {
            case "fr" -> french(number);
            case "cy" -> welsh(number);
            case "ar" -> arabic(number);
            default -> number == 1 ? "one" : "other";
        };
    }

    /** Every form that a language has. */
    public static List<String> forms(String language) {
        return switch (bare(language)) {
            case "fr" -> List.of("one", "many", "other");
            case "cy", "ar" -> List.of("zero", "one", "two", "few", "many", "other");
            default -> List.of("one", "other");
        };
    }

    private static String bare(String language) {
        int end = language.indexOf('-');
        return end < 0 ? language : language.substring(0, end);
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
