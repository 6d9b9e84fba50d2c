package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;

/** The two pictures laid over each other: a native slider in steps of five and three buttons, none needed to see both. */
@Execution(ExecutionMode.CONCURRENT)
class ComparisonIT {

    private static final String CASE = "cases/tide-table/index.html";
    private static final String LETTERS = "*.woff2";
    private static final int RIGHT_ARROW = 39;

    @Test
    void the_buttons_show_one_picture_the_other_and_half_of_each() {
        Windows.lend(window -> {
            window.open(CASE);
            assertThat(shown(window, "Before")).isEqualTo("0 % after");
            double before = after(window);
            assertThat(shown(window, "After")).isEqualTo("100 % after");
            double all = after(window);
            assertThat(shown(window, "Half")).isEqualTo("50 % after");
            assertThat(after(window)).isStrictlyBetween(before, all);
            assertThat(window.texts("return [...document.querySelectorAll('[data-compare] [aria-pressed=true]')]"
                    + ".map(button => button.textContent);")).containsExactly("Half");
        });
    }

    @Test
    void the_slider_goes_by_keys_in_steps_of_five() {
        Windows.lend(window -> {
            window.open(CASE);
            window.run("document.querySelector('[data-compare] input').focus();");
            window.press("ArrowRight", RIGHT_ARROW);
            window.press("ArrowRight", RIGHT_ARROW);
            assertThat(window.run("return document.querySelector('[data-compare] input').getAttribute('aria-valuetext');"))
                    .isEqualTo("60 % after");
        });
    }

    @Test
    void on_paper_and_without_scripts_both_pictures_stand_side_by_side() {
        Windows.lend(window -> {
            window.show(new Setting(768, Setting.Look.PRINT));
            window.open(CASE);
            List<String> printed = pictures(window);
            assertThat(printed).hasSize(2).doesNotHaveDuplicates();
            window.letScriptsRun(false);
            try {
                window.show(Setting.DESK);
                window.open(CASE);
                assertThat(pictures(window)).isEqualTo(printed);
                assertThat(desk(window)).isEqualTo(0.0);
            } finally {
                window.letScriptsRun(true);
            }
        });
    }

    @Test
    void the_desk_has_its_room_before_its_script_comes() {
        Windows.lend(window -> {
            for (int width : new int[] {320, 412, 1280}) {
                window.show(new Setting(width, Setting.Look.LIGHT));
                window.ask("Network.enable", Map.of());
                // Letters that come too late for the first opening and in time for the second would move what is compared.
                window.ask("Network.setBlockedURLs", Map.of("urls", List.of("*/compare.js", LETTERS)));
                try {
                    window.open(CASE);
                    List<String> waiting = places(window);
                    window.ask("Network.setBlockedURLs", Map.of("urls", List.of(LETTERS)));
                    window.open(CASE);
                    assertThat(waiting).as("at " + width + " px").isEqualTo(places(window));
                    assertThat(desk(window)).isPositive();
                } finally {
                    window.ask("Network.setBlockedURLs", Map.of("urls", List.of()));
                }
            }
        });
    }

    /** What a button makes the slider tell. */
    private static String shown(Window window, String button) {
        return (String) window.run("const home = document.querySelector('[data-compare]');"
                + "[...home.querySelectorAll('button')].find(one => one.textContent === arguments[0]).click();"
                + "return home.querySelector('input').getAttribute('aria-valuetext');", button);
    }

    /** How much of the later picture can be seen, from 0 to 1, by the edge that cuts it. */
    private static double after(Window window) {
        return ((Number) window.run(Scripts.named("later-picture-seen"))).doubleValue();
    }

    private static double desk(Window window) {
        return ((Number) window.run("return document.querySelector('.comparison__desk').getBoundingClientRect().height;"))
                .doubleValue();
    }

    private static List<String> places(Window window) {
        return window.texts("return [...document.querySelectorAll('.comparison, .comparison__pair img, .section')]"
                + ".map(one => { const box = one.getBoundingClientRect(); return [box.x, box.y, box.width, box.height].join(' '); });");
    }

    private static List<String> pictures(Window window) {
        return window.texts(Scripts.named("pictures-of-the-pair"));
    }
}
