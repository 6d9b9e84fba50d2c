package org.benchleaf.privacy;

import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/** Makes the forms in which people write a sum of money: in digits, and with a word for thousands, millions or more. */
final class SumForms {

    private static final int MONEY_DIGITS = 2;
    private static final int OTHER_DIGITS = 4;
    private static final int MOST_DECIMALS = 3;
    private static final Pattern NUMBER = Pattern.compile("\\d(?:[\\d ,.'’\\u00A0\\u2009\\u202F]*\\d)?");
    private static final Pattern WORD_BEHIND = Pattern.compile("[ \\u00A0\\u202F-]?(\\p{L}{1,12})");
    private static final Pattern DECIMALS = Pattern.compile("^(\\d{1,9})[.,](\\d{1,3})$");
    private static final Pattern PENCE = Pattern.compile("[.,](?!00$)\\d\\d$");
    private static final Pattern MONEY_FIELD = Pattern.compile("value|price|paid|cost|valuation|estimate|insured");

    private final Confidential.Secret secret;
    private final Needles needles;

    SumForms(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
    }

    /**
     * Sums: of two digits and more where an amount stands, elsewhere of four and more.
     *
     * @param money whether the text is an amount
     */
    void read(String text, boolean money) {
        boolean amount = money || NumberEvidence.CURRENCY.matcher(text).find()
                || MONEY_FIELD.matcher(secret.field().toLowerCase(Locale.ROOT)).find();
        Matcher number = NUMBER.matcher(text);
        while (number.find()) {
            int zeros = amount ? zerosBehind(text, number.end()) : 0;
            String digits = zeros > 0 ? grown(number.group(), zeros) : Folded.letters(number.group().replaceFirst("[.,]00$", ""));
            if (digits.length() >= (amount ? MONEY_DIGITS : OTHER_DIGITS)) {
                needles.put(secret, digits, false, NumberEvidence.MONEY);
                if (amount && (zeros > 0 || !PENCE.matcher(number.group()).find())) {
                    shortened(digits);
                }
            }
        }
    }

    /** How many zeros the word behind a number stands for; none if it is another word. */
    private static int zerosBehind(String text, int end) {
        Matcher word = WORD_BEHIND.matcher(text).region(end, text.length());
        if (!word.lookingAt()) {
            return 0;
        }
        String behind = NameScripts.isEastAsian(word.group(1)) ? word.group(1).substring(0, 1) : word.group(1);
        return NameWords.ZEROS.getOrDefault(Folded.letters(behind), 0);
    }

    /** A number with as many more digits before its point. */
    private static String grown(String number, int zeros) {
        Matcher decimals = DECIMALS.matcher(number);
        if (!decimals.matches()) {
            return Folded.letters(number) + "0".repeat(zeros);
        }
        String behind = decimals.group(2);
        return Folded.letters(decimals.group(1)) + behind + "0".repeat(Math.max(0, zeros - behind.length()));
    }

    private void shortened(String digits) {
        for (Map.Entry<String, Integer> word : NameWords.ZEROS.entrySet()) {
            int whole = digits.length() - word.getValue();
            if (whole > 0) {
                String decimals = withoutLastZeros(digits.substring(whole));
                if (decimals.length() <= MOST_DECIMALS) {
                    String before = digits.substring(0, whole);
                    needles.put(secret, before + decimals + word.getKey(), false,
                            new ShortSum(decimals.isEmpty() ? before : before + "." + decimals));
                }
            }
        }
    }

    private static String withoutLastZeros(String digits) {
        int end = digits.length();
        while (end > 0 && digits.charAt(end - 1) == '0') {
            end--;
        }
        return digits.substring(0, end);
    }
}
