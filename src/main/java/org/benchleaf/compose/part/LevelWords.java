package org.benchleaf.compose.part;

import org.benchleaf.model.Level;
import org.benchleaf.words.Words;

/** Tells the level of a case, and for whom a sheet of that level is written. */
public final class LevelWords {

    private LevelWords() {
    }

    /** The level with those whom it is for. */
    public static String of(Words words, Level level) {
        return words.say("level.with-whom", "level", words.term("level", level.word()), "for", words.term("level-for", level.word()));
    }
}
