package org.benchleaf.compose.chart;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.DemoSite;
import org.benchleaf.model.Term;
import org.benchleaf.model.TermDrawing;
import org.benchleaf.page.Chart;
import org.benchleaf.words.Words;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A drawing of the glossary tells in words what it shows, in every language, and keeps to its own room. */
class TermDrawingsTest {

    private static final List<String> LANGUAGES = List.of("en", "fr", "cy", "ar");

    @ParameterizedTest
    @EnumSource(TermDrawing.class)
    void each_drawing_has_a_text_in_every_language_and_all_its_labels(TermDrawing drawing) {
        for (String language : LANGUAGES) {
            Words words = Words.in(language);
            assertThat(words.has(TermDrawings.key(drawing))).as(language).isTrue();
            Chart.Drawing made = made(words, drawing);
            assertThat(made.description()).isNotBlank();
            assertThat(texts(made)).allMatch(label -> !label.isBlank());
        }
    }

    @ParameterizedTest
    @EnumSource(TermDrawing.class)
    void no_mark_lies_outside_the_drawing(TermDrawing drawing) {
        Chart.Drawing made = made(Words.in("en"), drawing);
        assertThat(made.marks()).hasSizeGreaterThan(1).allSatisfy(mark -> {
            assertThat(mark.x()).isBetween(0, DrawingPen.WIDTH);
            assertThat(mark.y()).isBetween(0, made.height());
        });
    }

    @Test
    void no_two_drawings_show_or_tell_the_same() {
        List<Chart.Drawing> all = Stream.of(TermDrawing.values()).map(drawing -> made(Words.in("en"), drawing)).toList();
        assertThat(all.stream().map(Chart.Drawing::marks)).doesNotHaveDuplicates();
        assertThat(all.stream().map(Chart.Drawing::description)).doesNotHaveDuplicates();
    }

    /** What a word of the glossary names stands in the text of its drawing or beside it. */
    @Test
    void the_demo_draws_each_of_them_once_at_a_term() {
        List<Term> drawn = DemoSite.made().library().glossary().stream().filter(term -> term.drawing().isPresent()).toList();
        assertThat(drawn.stream().map(term -> term.drawing().get())).containsExactlyInAnyOrder(TermDrawing.values());
        Set<String> ids = drawn.stream().map(term -> new TermDrawings(Words.in("en")).make(term.id(), term.term(),
                term.drawing().get()).id())
                .collect(Collectors.toSet());
        assertThat(ids).hasSameSizeAs(drawn);
    }

    @Test
    void a_word_names_its_drawing_and_no_other() {
        assertThat(Arrays.stream(TermDrawing.values()).map(TermDrawing::word).map(TermDrawing::of)).allMatch(Optional::isPresent);
        assertThat(TermDrawing.of("feathered edge")).contains(TermDrawing.FEATHERED_EDGE);
        assertThat(TermDrawing.of("feather")).isEmpty();
    }

    private static Chart.Drawing made(Words words, TermDrawing drawing) {
        return new TermDrawings(words).make("word", "word", drawing);
    }

    private static List<String> texts(Chart.Drawing drawing) {
        return drawing.marks().stream().filter(mark -> mark.kind().equals("text")).map(Chart.Mark::text).toList();
    }
}
