package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.benchleaf.model.PublicCare;
import org.junit.jupiter.api.Test;

/** What is told to readers outside the trade. */
class PublicCareTest {

    private static final PublicCare CARE = ReferenceReader.shipped().publicCare();

    private static Set<String> adviceFor(String... told) {
        return CARE.adviceFor(List.of(told)).stream().map(PublicCare.Advice::key).collect(Collectors.toSet());
    }

    @Test
    void every_piece_of_advice_has_a_source_that_is_listed_or_says_that_there_is_none() {
        assertThat(CARE.advice()).isNotEmpty().allSatisfy(advice -> assertThat(
                DemoSite.made().library().sources().containsKey(advice.source())
                        || advice.source().equals("common practice, no source")).as(advice.key()).isTrue());
    }

    /** US National Park Service, Conserve O Gram 19/9: the image fades in light and in alkaline (buffered) enclosures. */
    @Test
    void a_cyanotype_is_kept_from_light_and_from_board_with_chalk_and_another_sheet_is_not_told_so() {
        assertThat(adviceFor("plan", "Cyanotype")).contains("blue fades", "no chalk");
        assertThat(adviceFor("broadside", "letterpress")).doesNotContain("blue fades", "no chalk");
    }

    /** Northeast Document Conservation Center, leaflet 3.8: health risks, asthma, weak immunity. */
    @Test
    void mould_brings_its_caution_and_words_that_only_hold_it_do_not() {
        assertThat(adviceFor("mould")).contains("mould seen", "dry mould");
        assertThat(adviceFor("moulding")).doesNotContain("mould seen", "dry mould");
    }

    @Test
    void a_word_is_said_only_where_it_holds_for_every_reading() {
        assertThat(CARE.wordFor("pH", List.of(4.3, 4.6))).contains("acid");
        assertThat(CARE.wordFor("pH", List.of(6.4, 6.6))).isEmpty();
        assertThat(CARE.wordFor("pH", List.of())).isEmpty();
        assertThat(CARE.wordFor("gloss", List.of(4.3))).isEmpty();
    }
}
