package org.benchleaf.privacy;

import java.util.List;
import java.util.Locale;
import java.util.Random;
import net.datafaker.Faker;

/**
 * A language whose common names facts are made of. The lists of names are those of Datafaker (Apache License 2.0); titles and
 * particles are common usage, from memory.
 */
enum SampleLanguage {
    ENGLISH("en-GB", List.of("Mr", "Mrs", "Dr", "Prof.", "Lady"), List.of("de ", "St "), " and "),
    GERMAN("de", List.of("Herr", "Frau", "Dr.", "Prof. Dr.", "Herrn"), List.of("von ", "von der ", "zu "), " und "),
    FRENCH("fr", List.of("M.", "Mme", "Dr", "Maître", "Mlle"), List.of("de ", "de la ", "d'", "du "), " et "),
    SPANISH("es", List.of("Sr.", "Sra.", "Dr.", "Don", "Doña"), List.of("de ", "de la ", "del "), " y "),
    ITALIAN("it", List.of("Sig.", "Signora", "Dott.", "Prof.", "Dott.ssa"), List.of("di ", "della ", "de "), " e "),
    DUTCH("nl", List.of("dhr.", "mevr.", "Dr.", "Prof.", "de heer"), List.of("van der ", "van ", "ten ", "de "), " en "),
    POLISH("pl", List.of("Pan", "Pani", "dr", "Prof.", "Mr"), List.of("von ", "de "), " i "),
    SWEDISH("sv", List.of("Herr", "Fru", "Dr", "Prof.", "Mr"), List.of("af ", "von "), " och "),
    TURKISH("tr", List.of("Bay", "Bayan", "Dr.", "Prof.", "Sayın"), List.of(""), " ve "),
    RUSSIAN("ru", List.of("г-н", "г-жа", "д-р", "проф.", "господин"), List.of("фон "), " и "),
    GREEK("el-GR", List.of("κ.", "κα", "Δρ.", "κος", "κυρία"), List.of(""), " και "),
    ARABIC("ar", List.of("السيد", "السيدة", "الدكتور", "الشيخ", "الأستاذ"), List.of(""), " و "),
    HEBREW("he", List.of("מר", "גברת", "ד\"ר", "פרופ'", "הרב"), List.of("בן "), " & "),
    JAPANESE("ja", List.of("様", "さん", "氏", "先生", "博士"), List.of(""), " と "),
    CHINESE("zh-CN", List.of("先生", "女士", "博士", "小姐", "太太"), List.of(""), " 和 "),
    KOREAN("ko", List.of("씨", "님", "선생님", "박사", "여사"), List.of(""), " 및 ");

    private final Locale locale;
    private final List<String> titles;
    private final List<String> particles;
    private final String and;

    SampleLanguage(String tag, List<String> titles, List<String> particles, String and) {
        this.locale = Locale.forLanguageTag(tag);
        this.titles = titles;
        this.particles = particles;
        this.and = and;
    }

    Faker names(Random random) {
        return new Faker(locale, random);
    }

    List<String> titles() {
        return titles;
    }

    List<String> particles() {
        return particles;
    }

    String and() {
        return and;
    }

    /** Whether the family's name stands first, without a space behind it, and titles stand last. */
    boolean isFamilyFirst() {
        return this == JAPANESE || this == CHINESE || this == KOREAN;
    }

    /** Whether a possessive of English and capitals make sense. */
    boolean isLatin() {
        return ordinal() <= TURKISH.ordinal();
    }
}
