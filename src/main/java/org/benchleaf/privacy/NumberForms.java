package org.benchleaf.privacy;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import org.benchleaf.model.Confidential;

/** Makes the forms of numbers of lists and inventories: whole, without what is behind, and the number of the group they belong to. */
final class NumberForms {

    private static final int FEWEST_SIGNS = 3;
    /** A number as short as "P.12" is a page as well: it counts only as it is written, or beside a word for a number. */
    private static final int FEWEST_TELLING_SIGNS = 5;
    private static final Pattern NO_DIGIT = Pattern.compile("\\D");
    /** Two digits with something else between them. */
    private static final Pattern PARTED = Pattern.compile("\\d\\D++\\d");
    private static final Pattern LETTERS_BEHIND = Pattern.compile("(?<=\\d)\\p{L}{1,2}$");
    private static final Pattern WORD_BEFORE = Pattern.compile("^(?:no|nr|num|number|inv|invno)(?=\\d)");
    private static final Pattern LAST_PART = Pattern.compile("(?<=\\d\\p{L}{0,2})\\s?[/.,:–-]\\s?[\\p{L}\\d]{1,8}$");

    private final Confidential.Secret secret;
    private final Needles needles;

    NumberForms(Confidential.Secret secret, Needles needles) {
        this.secret = secret;
        this.needles = needles;
    }

    void read(String text) {
        String letters = Folded.letters(text);
        String bare = LETTERS_BEHIND.matcher(letters).replaceFirst("");
        Set<String> spellings = new LinkedHashSet<>(List.of(letters, bare));
        spellings.forEach(spelling -> {
            boolean telling = NO_DIGIT.matcher(spelling).find() || spelling.length() >= FEWEST_TELLING_SIGNS && PARTED.matcher(text).find();
            needles.put(secret, spelling, spelling.length() >= Needle.LONG_ENOUGH, telling ? Spot::isWhole : NumberEvidence.NUMBERED);
        });
        if (WORD_BEFORE.matcher(bare).find()) {
            needles.put(secret, WORD_BEFORE.matcher(bare).replaceFirst(""), false, NumberEvidence.NUMBERED);
        }
        group(LAST_PART.matcher(text.strip()).replaceFirst(""), text.strip());
    }

    /** The number without its last part, as "MS 1234" of "MS 1234/7". */
    private void group(String group, String text) {
        String letters = Folded.letters(group);
        if (group.equals(text) || letters.length() < FEWEST_SIGNS) {
            return;
        }
        boolean telling = letters.length() >= FEWEST_TELLING_SIGNS && NO_DIGIT.matcher(letters).find();
        needles.put(secret, letters, false, spot -> spot.isWhole() && (telling || spot.written().equals(group))
                || NumberEvidence.NUMBERED.counts(spot));
    }
}
