package org.benchleaf.privacy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/** Makes the forms of the telephone numbers in a text: with any codes before them, and the part dialled inside a town. */
final class TelephoneForms {

    static final int FEWEST_DIGITS = 7;
    private static final int FEWEST_LOCAL_DIGITS = 5;
    private static final int MOST_LOCAL_DIGITS = 8;
    private static final int SHORTEST_CODE = 2;
    private static final Pattern APART = Pattern.compile("[,;|&\\n]|(?<!\\p{L})(?:or|and|oder|und|ou|et|o|y|или|и)(?!\\p{L})");
    private static final Pattern EXTENSION = Pattern.compile(
            "(?iu)[ ,]{0,3}(?:#|(?<!\\p{L})(?:extension|extn|ext|x|poste|durchwahl|dw|int|доб))[ .:]{0,3}\\d{1,6}(?!\\d)");
    private static final Pattern NO_DIGIT = Pattern.compile("\\D");
    /** Codes of countries of one or two digits; all others have three (ITU-T E.164). */
    private static final Pattern SHORT_COUNTRY_CODE = Pattern.compile(
            "[17]|2[07]|3[0-469]|4[013-9]|5[1-8]|6[0-6]|8[1246]|9[0-58]");
    /** Prefixes that are dialled inside a country and left out from abroad: 0 in most, 8 in Russia, 06 in Hungary, 1 in America. */
    private static final Pattern TRUNK = Pattern.compile("^(?:06|0|8|1)");

    private final Confidential.Secret secret;
    private final Needles needles;

    TelephoneForms(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
    }

    /** One number or several; a stroke parts two only behind a whole number, since many write one behind the code of a town. */
    void read(String written) {
        String before = "";
        for (String group : APART.split(EXTENSION.matcher(written).replaceAll(""))) {
            String[] pieces = group.split("/");
            boolean several = dialled(pieces.length == 0 ? "" : pieces[0]).length() >= FEWEST_DIGITS;
            for (String piece : several ? List.of(pieces) : List.of(group)) {
                before = one(before, dialled(piece));
            }
        }
    }

    /** A whole number, or the last digits of another that has the others in common with the one before. */
    private String one(String before, String dialled) {
        if (dialled.isEmpty()) {
            return before;
        }
        boolean isRest = dialled.length() < FEWEST_DIGITS && before.length() > dialled.length();
        String whole = isRest ? before.substring(0, before.length() - dialled.length()) + dialled : dialled;
        if (whole.length() < FEWEST_DIGITS - 1) {
            needles.put(secret, whole, false, NumberEvidence.SHORT_TELEPHONE);
        }
        for (String national : national(whole)) {
            if (national.length() >= FEWEST_DIGITS - 1) {
                needles.put(secret, national, true, NumberEvidence.TELEPHONE);
                local(national);
            }
        }
        return whole;
    }

    private void local(String national) {
        int most = Math.min(MOST_LOCAL_DIGITS, national.length() - SHORTEST_CODE);
        for (int digits = FEWEST_LOCAL_DIGITS; digits <= most; digits++) {
            needles.put(secret, national.substring(national.length() - digits), false,
                    digits < FEWEST_DIGITS ? NumberEvidence.SHORT_TELEPHONE : NumberEvidence.LOCAL_TELEPHONE);
        }
    }

    /** The digits, behind a plus if one stands before them, without the zero in brackets that is not dialled from abroad. */
    private static String dialled(String written) {
        String digits = NO_DIGIT.matcher(Folded.letters(written.replace("(0)", ""))).replaceAll("");
        return written.indexOf('+') >= 0 && !digits.isEmpty() ? "+" + digits : digits;
    }

    /** What the digits of the national number may be, without the code of the country and what is dialled before it. */
    private static Set<String> national(String dialled) {
        if (dialled.startsWith("+") || dialled.startsWith("00")) {
            String digits = dialled.replaceFirst("^(?:\\+|00)", "").replaceFirst("^00", "");
            Matcher code = SHORT_COUNTRY_CODE.matcher(digits);
            return Set.of(digits.substring(code.lookingAt() ? code.end() : Math.min(3, digits.length())).replaceFirst("^0", ""));
        }
        Set<String> national = new LinkedHashSet<>(List.of(dialled.replaceFirst("^0", "")));
        national.add(TRUNK.matcher(dialled).replaceFirst(""));
        return national;
    }
}
