package org.benchleaf.command;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.CaseCard;

/**
 * What one run leaves with a case for the next, so that an unchanged case need be neither read nor made again.
 *
 * @param on the day for which it was checked, as ISO 8601
 * @param standing what the check and the permissions came to on that day; if another day comes to the same, the pages
 *     are the same
 * @param card what the site's own pages need of the case
 * @param told what was said about it
 */
record CaseNote(String on, String standing, CaseCard card, List<Told> told) {

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final ObjectWriter WRITER = JSON.writerFor(CaseNote.class);
    private static final ObjectReader READER = JSON.readerFor(CaseNote.class);

    CaseNote {
        told = List.copyOf(told);
    }

    String text() {
        try {
            return WRITER.writeValueAsString(this);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a note holds only words and numbers", impossible);
        }
    }

    /** The note in a text; empty if it is of another form, as an older version may have left. */
    static Optional<CaseNote> read(String text) {
        try {
            return Optional.of(READER.readValue(text));
        } catch (JsonProcessingException otherForm) {
            return Optional.empty();
        }
    }
}
