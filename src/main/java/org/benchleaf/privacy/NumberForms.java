package org.benchleaf.privacy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/** Makes the forms of telephone numbers, numbers of lists, and sums. */
final class NumberForms {

    static final int FEWEST_TELEPHONE_DIGITS = 7;
    private static final int MONEY_DIGITS = 2;
    private static final int OTHER_DIGITS = 4;
    private static final Pattern NUMBER = Pattern.compile("\\d(?:[\\d ,.'’\\u00A0\\u2009\\u202F]*\\d)?");
    /** Codes of countries of one or two digits; all others have three (ITU-T E.164). */
    private static final Pattern SHORT_COUNTRY_CODE = Pattern.compile(
            "[17]|2[07]|3[0-469]|4[013-9]|5[1-8]|6[0-6]|8[1246]|9[0-58]");
    /** Prefixes that are dialled inside a country and left out from abroad: 0 in most, 8 in Russia, 06 in Hungary, 1 in America. */
    private static final Pattern NO_DIGIT = Pattern.compile("\\D");
    /** Two digits with something else between them. */
    private static final Pattern PARTED = Pattern.compile("\\d\\D++\\d");
    private static final Pattern MONEY_SIGN = Pattern.compile("[£$€¥₽₹]");
    private static final Pattern MONEY_FIELD = Pattern.compile("value|price|paid|cost|valuation|estimate|insured");
    private static final Pattern TRUNK = Pattern.compile("^(?:06|0|8|1)");

    private final Confidential.Secret secret;
    private final Needles needles;

    NumberForms(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
    }

    void telephone(String written) {
        for (String national : national(written)) {
            if (national.length() >= FEWEST_TELEPHONE_DIGITS - 1) {
                needles.put(secret, national, true, NumberEvidence.TELEPHONE);
            }
        }
    }

    /** What the digits of the national number may be, without the code of the country and what is dialled before it. */
    private static Set<String> national(String written) {
        String plain = written.strip();
        String digits = Folded.letters(plain.replace("(0)", "")).replaceAll("\\D", "");
        if (plain.startsWith("+") || plain.startsWith("00")) {
            digits = digits.replaceFirst("^00", "");
            Matcher code = SHORT_COUNTRY_CODE.matcher(digits);
            return Set.of(digits.substring(code.lookingAt() ? code.end() : Math.min(3, digits.length())).replaceFirst("^0", ""));
        }
        Set<String> national = new LinkedHashSet<>(List.of(digits.replaceFirst("^0", "")));
        national.add(TRUNK.matcher(digits).replaceFirst(""));
        return national;
    }

    /** A number of a list or inventory, with and without the letters behind it. */
    void number(String text) {
        String letters = Folded.letters(text);
        String bare = letters.replaceFirst("(?<=\\d)[a-z]{1,2}$", "");
        for (String spelling : new LinkedHashSet<>(List.of(letters, bare))) {
            boolean hasLetters = NO_DIGIT.matcher(spelling).find();
            boolean telling = hasLetters || spelling.length() >= 5 && PARTED.matcher(text).find();
            needles.put(secret, spelling, spelling.length() >= Needle.LONG_ENOUGH,
                    telling ? Spot::isWhole : NumberEvidence.NUMBERED);
        }
    }

    /** Sums: of two digits and more where an amount stands, elsewhere of four and more. */
    void sums(String text, boolean money) {
        boolean amount = money || MONEY_SIGN.matcher(text).find()
                || MONEY_FIELD.matcher(secret.field().toLowerCase(Locale.ROOT)).find();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            String digits = Folded.letters(number.group().replaceFirst("[.,]00$", ""));
            if (digits.length() >= (amount ? MONEY_DIGITS : OTHER_DIGITS)) {
                needles.put(secret, digits, false, NumberEvidence.MONEY);
            }
        }
    }
}
