package org.benchleaf.compose;

import org.benchleaf.model.Inline;
import org.benchleaf.model.Passage;

/** Words where a publication tells something: the publication by its number, the place in it, its own words in quotation marks. */
final class PassageMaker {

    private final Sheet sheet;

    PassageMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The passage as the page shows it; nothing of the publication's own words is changed. */
    RichText make(Passage passage) {
        return passage.words().map(words -> place(passage).then(": ").then(quoted(words))).orElse(place(passage));
    }

    /** The publication by its number, and the place in it. */
    RichText place(Passage passage) {
        return sheet.cite(passage.source()).map(Citation::link).map(RichText::of).orElse(RichText.NOTHING)
                .then(passage.where().map(where -> ", " + where).orElse(""));
    }

    /** Words of a publication, marked as such. */
    static RichText quoted(String words) {
        return RichText.of(new Inline.Quotation(words));
    }
}
