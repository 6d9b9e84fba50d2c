package org.benchleaf.words;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.model.Picture;
import org.junit.jupiter.api.Test;

/** The words under a pair: matching light and side are the honest test, and what does not match is said. */
class PairWordsTest {

    private static final Words ENGLISH = Words.in("en");

    @Test
    void a_pair_that_is_alike_is_called_the_same_view() {
        assertThat(PairWords.of(ENGLISH, picture("before", "recto", "normal", ""), picture("after", "recto", "normal", "")))
                .startsWith("Both pictures show").doesNotContain("Compare with care");
    }

    @Test
    void another_light_or_side_is_said_and_so_is_the_authors_caution_once() {
        String caution = "The lamp stood lower after treatment.";
        assertThat(PairWords.of(ENGLISH, picture("before", "recto", "normal", caution),
                picture("after", "recto", "raking from the left", caution)))
                .startsWith("Not the same view").contains("normal", "raking").doesNotContain("same view twice")
                .containsOnlyOnce("Compare with care: " + caution);
        assertThat(PairWords.of(ENGLISH, picture("before", "recto", "normal", ""), picture("after", "verso", "normal", "")))
                .startsWith("Not the same view").contains("recto", "verso");
    }

    @Test
    void a_caution_on_one_picture_alone_is_printed_too() {
        assertThat(PairWords.of(ENGLISH, picture("before", "recto", "normal", ""),
                picture("after", "recto", "normal", "Another camera."))).endsWith("Compare with care: Another camera.");
    }

    private static Picture picture(String moment, String side, String light, String caution) {
        return new Picture(moment, moment + ".jpg", moment, side, light, "A sheet.", "A sheet.", "Nobody", "CC0-1.0",
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.of(caution).filter(text -> !text.isEmpty()), Optional.empty(), Place.file("case.md"));
    }
}
