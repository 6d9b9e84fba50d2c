package org.benchleaf.privacy;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.benchleaf.message.LeakMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Confidential;

/** Collects what is looked for of one case, and what its author is asked. */
final class Needles {

    private static final String ORDINARY_WORDS = "ordinary words";
    private static final String ALWAYS_NAMES = "always names";
    /** Scripts without letters for sounds begin here: a name of two signs is as telling there as one of six letters elsewhere. */
    private static final char FIRST_IDEOGRAPH = 0x2E80;

    private final String caseId;
    private final Set<String> ordinary = new LinkedHashSet<>();
    private final Set<String> always = new LinkedHashSet<>();
    private final Messages messages = new Messages();
    private final List<Needle> spellings = new ArrayList<>();
    private final Map<String, String> texts = new LinkedHashMap<>();

    /** Begins with the author's answers. */
    Needles(String caseId, Confidential confidential) {
        this.caseId = caseId;
        confidential.secrets().forEach(this::answer);
    }

    private void answer(Confidential.Secret secret) {
        String word = Folded.letters(secret.parts().getOrDefault("word", secret.parts().getOrDefault("", "")));
        if (secret.field().equals(ORDINARY_WORDS)) {
            ordinary.add(word);
        } else if (secret.field().equals(ALWAYS_NAMES)) {
            always.add(word);
        }
    }

    /** Whether a field holds answers and no private value. */
    static boolean isAnswer(Confidential.Secret secret) {
        return secret.field().equals(ORDINARY_WORDS) || secret.field().equals(ALWAYS_NAMES);
    }

    /** Folded spellings, in the order of the case file. */
    List<Needle> spellings() {
        return spellings;
    }

    /** Whole values by the field they stand in, looked for in UTF-16. */
    Map<String, String> texts() {
        return texts;
    }

    /** What the author has to answer or to write otherwise. */
    Messages messages() {
        return messages;
    }

    void put(Confidential.Secret secret, String letters, boolean whole, Needle.Evidence evidence) {
        // A value of signs alone, such as a dash for "none", has no letters to look for.
        if (!letters.isEmpty()) {
            spellings.add(new Needle(letters, caseId, secret.field(), whole, evidence));
        }
    }

    void text(Confidential.Secret secret, String text) {
        texts.put(text.strip(), secret.field());
    }

    void refuse(Confidential.Secret secret) {
        messages.add(LeakMessages.NOT_NAMES.at(secret.place(), "field", secret.field()));
    }

    /** Whether the author has said what a word is. */
    boolean isAnswered(String letters) {
        return always.contains(letters) || ordinary.contains(letters);
    }

    /** Whether a name by itself counts; asks the author if it is an ordinary word too and was not answered for. */
    boolean isLookedForAlone(Confidential.Secret secret, String letters, boolean isSingle) {
        if (always.contains(letters)) {
            return true;
        }
        if (ordinary.contains(letters)) {
            return false;
        }
        if (NameWords.isOrdinary(letters)) {
            messages.add(LeakMessages.ORDINARY_WORD.at(secret.place(), "field", secret.field()));
            return true;
        }
        return letters.length() > 2 || letters.length() == 2 && letters.charAt(0) > FIRST_IDEOGRAPH
                || isSingle && letters.length() > 1;
    }
}
