package org.benchleaf.run;

import java.util.Optional;
import org.benchleaf.json.JsonRecords;

/**
 * What one run leaves with the pages of a whole site for the next.
 *
 * @param privateValues the mark of the private values that all files of the edition were searched for
 * @param found what the search took from the pages
 */
record SiteNote(String privateValues, WholeSite.Found found) {

    private static final JsonRecords<SiteNote> NOTES = new JsonRecords<>(SiteNote.class);

    String text() {
        return NOTES.text(this);
    }

    /** The note in a text; empty if it is of another form, as an older version may have left. */
    static Optional<SiteNote> read(String text) {
        return text.isEmpty() ? Optional.empty() : NOTES.read(text);
    }
}
