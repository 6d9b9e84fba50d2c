package org.benchleaf.compose.part;

import java.util.Optional;
import org.benchleaf.model.Level;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Fact;
import org.benchleaf.words.Words;

/** Tells the level of a case, and for whom a sheet of that level is written. */
public final class LevelWords {

    private LevelWords() {
    }

    /** The level of a case with those whom it is for; none where a retold case leaves it open. */
    public static Optional<Fact> fact(Words words, TreatmentCase treatment) {
        return treatment.level().map(level -> Fact.of(words.say("fact.level"), of(words, level)));
    }

    private static String of(Words words, Level level) {
        return words.say("level.with-whom", "level", words.term("level", level.word()), "for", words.term("level-for", level.word()));
    }
}
