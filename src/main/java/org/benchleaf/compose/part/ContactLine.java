package org.benchleaf.compose.part;

import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;

/** A line that tells how a studio is reached, with each e-mail address in it as a link that opens a new message. */
public final class ContactLine {

    private static final String AROUND = "<>(),;:.\"'";

    private ContactLine() {
    }

    /** The line as it is written; a word with one @ between two parts, the second with a dot in it, is an address. */
    public static RichText of(String line) {
        RichText text = RichText.NOTHING;
        String between = "";
        for (String word : line.split(" ")) {
            String address = bare(word);
            text = text.then(between);
            if (isAddress(address)) {
                int from = word.indexOf(address);
                text = text.then(word.substring(0, from)).then(Inline.Hyperlink.to("mailto:" + address, address))
                        .then(word.substring(from + address.length()));
            } else {
                text = text.then(word);
            }
            between = " ";
        }
        return text;
    }

    private static String bare(String word) {
        int from = 0;
        int to = word.length();
        while (from < to && AROUND.indexOf(word.charAt(from)) >= 0) {
            from++;
        }
        while (from < to && AROUND.indexOf(word.charAt(to - 1)) >= 0) {
            to--;
        }
        return word.substring(from, to);
    }

    /** Only letters, digits and the signs that need no escape in an address (RFC 6068, section 2). */
    private static boolean isAddress(String word) {
        int at = word.indexOf('@');
        return at > 0 && at == word.lastIndexOf('@') && word.indexOf('.', at) > at + 1
                && word.chars().allMatch(sign -> sign == '@' || sign < 128 && Character.isLetterOrDigit(sign) || "._-+".indexOf(sign) >= 0);
    }
}
