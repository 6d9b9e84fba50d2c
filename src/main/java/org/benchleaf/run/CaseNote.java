package org.benchleaf.run;

import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.json.JsonRecords;

/**
 * What one run leaves with a case for the next, so that an unchanged case need be neither read nor made again.
 *
 * @param on the day for which it was checked, as ISO 8601
 * @param standing what the check and the permissions came to on that day; if another day comes to the same, the pages
 *     are the same
 * @param cards what the pages of each whole site need of the case
 * @param told what was said about it
 */
record CaseNote(String on, String standing, Map<Audience, CaseCard> cards, List<Told> told) {

    private static final JsonRecords<CaseNote> NOTES = new JsonRecords<>(CaseNote.class);

    CaseNote {
        cards = cards.isEmpty() ? Map.of() : Collections.unmodifiableMap(new EnumMap<>(cards));
        told = List.copyOf(told);
    }

    /** The sites in which the case has pages. */
    List<Audience> sites() {
        return cards.entrySet().stream().filter(card -> !card.getValue().pages().isEmpty()).map(Map.Entry::getKey).toList();
    }

    String text() {
        return NOTES.text(this);
    }

    /** The note in a text; empty if it is of another form, as an older version may have left. */
    static Optional<CaseNote> read(String text) {
        return NOTES.read(text);
    }
}
