package org.benchleaf.words;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.Picture;

/** Says of a picture before and one after whether they show the same view, and what makes comparing them unfair. */
public final class PairWords {

    private PairWords() {
    }

    public static String of(Words words, Picture before, Picture after) {
        List<String> sentences = new ArrayList<>();
        sentences.add(view(words, before, after));
        Stream.of(before.caution(), after.caution()).flatMap(Optional::stream).distinct()
                .forEach(caution -> sentences.add(words.say("comparison.care", "caution", caution)));
        return String.join(" ", sentences);
    }

    private static String view(Words words, Picture before, Picture after) {
        String side = words.term("side", before.side());
        String light = words.term("light", before.light());
        if (before.side().equals(after.side()) && before.light().equals(after.light())) {
            return words.say("comparison.alike", "side", side, "light", light);
        }
        return words.say("comparison.unlike", "side", side, "light", light,
                "sideAfter", words.term("side", after.side()), "lightAfter", words.term("light", after.light()));
    }
}
