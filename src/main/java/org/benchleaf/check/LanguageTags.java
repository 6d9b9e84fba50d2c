package org.benchleaf.check;

import java.util.IllformedLocaleException;
import java.util.Locale;

/** Tells whether a text is a language tag of BCP 47. */
final class LanguageTags {

    private LanguageTags() {
    }

    static boolean isWellFormed(String tag) {
        try {
            String language = new Locale.Builder().setLanguageTag(tag).build().getLanguage();
            return language.length() >= 2 && language.length() <= 3;
        } catch (IllformedLocaleException wrong) {
            return false;
        }
    }
}
