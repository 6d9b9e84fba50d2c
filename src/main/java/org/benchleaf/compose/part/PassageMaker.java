package org.benchleaf.compose.part;

import org.benchleaf.model.Passage;
import org.benchleaf.page.Citation;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;

/** Words where a publication tells something: the publication by its number, the place in it, its own words in quotation marks. */
public final class PassageMaker {

    private final Sheet sheet;

    public PassageMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The passage as the page shows it; nothing of the publication's own words is changed. */
    public RichText make(Passage passage) {
        return passage.words().map(words -> place(passage).then(": ").then(quoted(words))).orElse(place(passage));
    }

    /** The publication by its number, and the place in it. */
    public RichText place(Passage passage) {
        return sheet.cite(passage.source()).map(Citation::link).map(RichText::of).orElse(RichText.NOTHING)
                .then(passage.where().map(where -> ", " + where).orElse(""));
    }

    /** Words of a publication, marked as such. */
    public static RichText quoted(String words) {
        return RichText.of(new Inline.Quotation(words));
    }
}
