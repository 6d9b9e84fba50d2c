package org.benchleaf.run;

import java.time.LocalDate;
import java.util.List;
import java.util.function.UnaryOperator;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.json.JsonRecords;

/**
 * The marks of the files of a whole site.
 *
 * @param seed of all that decides over them besides the cases
 * @param day of the edition, which decides over the files to be taken away alone
 */
record SiteMarks(String seed, LocalDate day) {

    private static final JsonRecords<CaseCard> CARDS = new JsonRecords<>(CaseCard.class);

    /** What decides over the pages: all of the cards but what the search alone takes from them. */
    String ofPages(Audience audience, List<CaseCard> cards) {
        return mark(audience, cards, CaseCard::withoutSearch);
    }

    /** What decides over the index of the search. */
    String ofSearch(Audience audience, List<CaseCard> cards) {
        return mark(audience, cards, card -> card);
    }

    private String mark(Audience audience, List<CaseCard> cards, UnaryOperator<CaseCard> part) {
        return ContentHash.of(seed + audience, cards.stream().map(part).map(CARDS::text));
    }
}
