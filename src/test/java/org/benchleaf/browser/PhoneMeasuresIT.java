package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentLinkedQueue;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What a hand at the bench needs of a phone of 360 × 640 px, measured. The limits are the house's own. */
@Execution(ExecutionMode.CONCURRENT)
class PhoneMeasuresIT {

    private static final ConcurrentLinkedQueue<String> MEASURED = new ConcurrentLinkedQueue<>();

    /** The briefing is ticked off, the step chosen, its clock started: three taps, besides the hold points that come first. */
    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void the_third_step_runs_after_three_taps_and_the_ways_stand_on_the_screen(String name) {
        Windows.lend(window -> {
            window.show(new Setting(360, Setting.Look.LIGHT));
            window.ask("Emulation.setDeviceMetricsOverride", Map.of("width", 360, "height", 640, "deviceScaleFactor", 1, "mobile", true));
            window.open("cases/" + name + "/steps.html");
            try {
                window.run("localStorage.clear();");
                window.again();
                List<Integer> words = window.texts(Scripts.plain("words-of-screens")).stream()
                        .map(screen -> Integer.valueOf(screen.split(" ", 2)[0])).toList();
                window.run("localStorage.clear();");
                window.again();
                List<String> told = window.texts(Scripts.plain("phone-measures"));
                MEASURED.add(name + ": first action " + told.get(1) + " px down, " + told.get(2) + " taps to '" + told.get(6) + "' past "
                        + told.get(3) + " hold points, at most " + words.stream().max(Integer::compare).orElseThrow() + " words on "
                        + words.size() + " screens, ways " + told.get(5) + " px below the screen");
                assertThat(told.get(0)).as("the bench view opens").isEqualTo("true");
                assertThat(Integer.parseInt(told.get(1))).as("px to the first action").isBetween(1, 200);
                assertThat(words).as("words on each screen").allSatisfy(count -> assertThat(count).isLessThanOrEqualTo(60));
                assertThat(Integer.parseInt(told.get(2))).as("taps").isLessThanOrEqualTo(3);
                assertThat(((Number) window.run("return parseFloat(getComputedStyle(document.querySelector('.screen__time')).rowGap);"))
                        .doubleValue()).as("px between Start and Step done below each other").isGreaterThanOrEqualTo(8);
                assertThat(told.get(4)).as("the clock runs").isEqualTo("true");
                assertThat(Integer.parseInt(told.get(5))).as("px by which Back and Next leave the screen").isZero();
            } finally {
                window.run("localStorage.clear();");
            }
        });
    }

    @AfterAll
    static void tell() {
        MEASURED.stream().sorted().forEach(System.out::println);
    }
}
