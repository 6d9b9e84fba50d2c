package org.benchleaf.demo;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowable;
import static org.assertj.core.api.Assertions.within;

import java.awt.image.BufferedImage;
import java.util.Arrays;
import java.util.function.BiFunction;
import java.util.function.IntFunction;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Compares drawings with one another: common practice asks that a before and an after show one sheet in one light. */
class DrawnSheetTest {
    private static final int SMALL = 160;
    /** As cover of one pixel of the small view; so far a torn flap still moves the edge 150 mm away from the tear. */
    private static final double A_TENTH_OF_A_MILLIMETRE = 0.05;

    static Stream<Arguments> sheets() {
        return Stream.of(sheet("tide table", TideTable::view, TideTable::sheet),
                sheet("ferry letter", FerryLetter::view, FerryLetter::sheet),
                sheet("lock plan", LockPlan::view, LockPlan::sheet),
                sheet("parish map", ParishMap::view, ParishMap::sheet),
                sheet("flood poster", FloodPoster::view, FloodPoster::sheet));
    }

    private static Arguments sheet(String name, IntFunction<View> view, BiFunction<Moment, View, Sheet> drawn) {
        return Arguments.of(name, view.apply(SMALL), drawn);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void a_sheet_keeps_its_outline_through_treatment_but_for_tears_and_losses(String name, View view,
            BiFunction<Moment, View, Sheet> drawn) {
        Sheet before = drawn.apply(Moment.BEFORE, view);
        Sheet after = drawn.apply(Moment.AFTER, view);
        double pixel = view.mmPerPixel();
        int compared = 0;
        for (double y = 0.5; y < before.outline().high(); y += 3) {
            for (double x = 0.5; x < before.outline().wide(); x += 3) {
                if (farFromDamage(before, x, y)) {
                    assertThat(after.at(x, y, pixel).cover()).as("%s at %s, %s", name, x, y)
                            .isEqualTo(before.at(x, y, pixel).cover(), within(A_TENTH_OF_A_MILLIMETRE));
                    compared++;
                }
            }
        }
        assertThat(compared).isGreaterThan(3000);
    }

    private static boolean farFromDamage(Sheet sheet, double x, double y) {
        boolean torn = sheet.tears().stream().anyMatch(t -> t.near(x, y).distance() > -8 && t.near(x, y).distance() < 150);
        boolean lost = sheet.outline().losses().stream()
                .anyMatch(l -> StrictMath.hypot(x - l.x(), y - l.y()) < 2 * l.radius());
        return !torn && !lost;
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("sheets")
    void an_open_tear_shows_the_ground_and_a_mended_one_does_not(String name, View view,
            BiFunction<Moment, View, Sheet> drawn) {
        View close = View.of(0, 0, 40, 30, 400);
        Sheet before = drawn.apply(Moment.BEFORE, view);
        Sheet after = drawn.apply(Moment.AFTER, view);
        for (int i = 0; i < before.tears().size(); i++) {
            Tear open = before.tears().get(i);
            double[] p = open.point(0.35);
            Tear.Near near = open.near(p[0], p[1]);
            double half = open.gap(near) / 2;
            double x = p[0] + near.acrossX() * half;
            double y = p[1] + near.acrossY() * half;
            assertThat(before.at(x, y, close.mmPerPixel()).cover()).as("%s, open tear %s", name, i).isLessThan(0.1);
            assertThat(after.at(x, y, close.mmPerPixel()).cover()).as("%s, mended tear %s", name, i).isEqualTo(1);
        }
    }

    @Test
    void two_runs_draw_the_same_pixels() {
        Picture picture = TideTable.pictures().get(0);
        assertThat(pixels(picture.drawn(SMALL))).isEqualTo(pixels(picture.drawn(SMALL)));
    }

    @Test
    void every_picture_can_be_drawn_small_and_no_two_are_alike() {
        assertThat(DrawDemoPictures.all()).hasSize(19)
                .extracting(p -> Arrays.hashCode(pixels(p.drawn(60)))).doesNotHaveDuplicates();
    }

    @Test
    void a_letter_that_was_never_drawn_is_named_in_the_complaint() {
        assertThat(catchThrowable(() -> Letterforms.of('@')))
                .isInstanceOf(IllegalArgumentException.class).hasMessageContaining("'@'");
    }

    private static int[] pixels(BufferedImage image) {
        return image.getRGB(0, 0, image.getWidth(), image.getHeight(), null, 0, image.getWidth());
    }
}
