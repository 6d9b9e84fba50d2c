package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.BiConsumer;
import org.benchleaf.command.RecordsCommand;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import picocli.CommandLine;

/**
 * What the step sheet of the tide table does for a trainee with wet hands. What is expected comes from the timer rules of
 * WCAG 2.2 (2.2.1, 4.1.3) as the house reads them: an end time and not ticks, several at once, pause, extend to ten times
 * the length, survive a reload, at zero count on, six spoken messages at most. Times are those that the case file writes:
 * baths of 20 min each, blotter changes after 15 min and 30 min more.
 */
@Execution(ExecutionMode.CONCURRENT)
class BenchDeskIT {

    private static final String SHEET = "cases/tide-table/steps.html";
    private static final String BATH = "timer-wash-bath-1";
    private static final String SECOND_BATH = "timer-wash-bath-2";
    private static final String IN = "Lowered: start";
    private static final String CLEANING = "timer-surface-clean-whole";
    private static final String CHANGE = "timer-dry-change-1";

    @Test
    void a_timer_goes_by_its_end_time_even_where_nothing_ticked_between() {
        whereAllIsReleased((window, clock) -> {
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            pressed(window, BATH, IN);
            clock.set(61);
            assertThat(digits(window, BATH)).isEqualTo("18:59");
            clock.set(20 * 60 - 1);
            assertThat(digits(window, BATH)).isEqualTo("00:01");
            clock.set(20 * 60 + 90);
            assertThat(digits(window, BATH)).isEqualTo("+01:30");
        });
    }

    @Test
    void several_timers_run_at_once() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(60);
            pressed(window, CHANGE, "Start");
            clock.set(180);
            assertThat(digits(window, BATH)).isEqualTo("17:00");
            assertThat(digits(window, CHANGE)).isEqualTo("13:00");
        });
    }

    @Test
    void a_paused_timer_waits_and_goes_on_from_where_it_was() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(300);
            pressed(window, BATH, "Pause");
            clock.set(4000);
            assertThat(digits(window, BATH)).isEqualTo("15:00");
            pressed(window, BATH, "Go on");
            clock.set(4060);
            assertThat(digits(window, BATH)).isEqualTo("14:00");
        });
    }

    /** A wet finger taps twice: a second tap within a second is none, and what is paused is not forgotten. */
    @Test
    void a_second_tap_at_once_does_not_pause_and_the_head_of_the_bench_view_tells_what_is_paused() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            window.run("document.querySelector('[data-timer=timer-wash-bath-1] .button').click();");
            clock.set(60);
            assertThat(digits(window, BATH)).isEqualTo("19:00");
            pressed(window, BATH, "Pause");
            assertThat(heads(window)).containsExactly("paused: Bath 1");
        });
    }

    @Test
    void a_timer_that_runs_goes_back_to_its_start_only_when_that_is_asked_for_twice_and_not_by_a_double_tap() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(600);
            pressed(window, BATH, "Reset");
            pressed(window, BATH, "Press again: back to the start");
            assertThat(digits(window, BATH)).isEqualTo("10:00");
            clock.set(603);
            pressed(window, BATH, "Press again: back to the start");
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            assertThat(heads(window)).isEmpty();
        });
    }

    @Test
    void a_running_timer_can_be_made_longer_up_to_ten_times_its_length() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            pressed(window, BATH, "1 min longer");
            assertThat(digits(window, BATH)).isEqualTo("21:00");
            reset(window, clock, BATH, 0);
            setMinutes(window, BATH, "199");
            pressed(window, BATH, IN);
            pressed(window, BATH, "1 min longer");
            pressed(window, BATH, "1 min longer");
            assertThat(digits(window, BATH)).isEqualTo("3:20:00");
        });
    }

    @Test
    void a_timer_can_be_set_to_another_length_and_back() {
        whereAllIsReleased((window, clock) -> {
            setMinutes(window, BATH, "25");
            assertThat(digits(window, BATH)).isEqualTo("25:00");
            pressed(window, BATH, IN);
            clock.set(60);
            assertThat(digits(window, BATH)).isEqualTo("24:00");
            reset(window, clock, BATH, 60);
            assertThat(digits(window, BATH)).isEqualTo("20:00");
        });
    }

    @Test
    void the_field_for_another_length_comes_when_it_is_asked_for_and_takes_the_focus() {
        atTheBench((window, clock) -> {
            assertThat(window.run("return document.querySelectorAll('.timer input').length;")).isEqualTo(0L);
            pressed(window, BATH, "Other length");
            assertThat(window.texts("const field = document.activeElement; return [field.closest('.timer').dataset.timer,"
                    + "field.value, field.getAttribute('aria-label')];")).containsExactly(BATH, "20", "Minutes: Bath 1, 7. Washing");
        });
    }

    @Test
    void running_and_paused_timers_survive_a_reload() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            pressed(window, CHANGE, "Start");
            clock.set(120);
            pressed(window, CHANGE, "Pause");
            clock.set(600);
            window.again();
            assertThat(digits(window, BATH)).isEqualTo("10:00");
            assertThat(digits(window, CHANGE)).isEqualTo("13:00");
            clock.set(660);
            assertThat(digits(window, BATH)).isEqualTo("09:00");
            assertThat(digits(window, CHANGE)).isEqualTo("13:00");
        });
    }

    @Test
    void a_timer_speaks_at_its_start_half_five_minutes_one_minute_and_end_and_then_is_silent() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            assertThat(said(window, BATH)).isEqualTo("Bath 1: started, 20:00.");
            clock.set(10 * 60);
            assertThat(said(window, BATH)).isEqualTo("Bath 1: half the time has passed.");
            clock.set(15 * 60);
            assertThat(said(window, BATH)).isEqualTo("Bath 1: 5 minutes left.");
            clock.set(19 * 60);
            assertThat(said(window, BATH)).isEqualTo("Bath 1: 1 minute left.");
            clock.set(20 * 60);
            assertThat(said(window, BATH)).isEqualTo("Bath 1: time is up.");
            Fault.none(LiveRules.TIMERS_SPEAK_LITTLE.faults(window).stream());
        });
    }

    @Test
    void ticks_and_timers_stay_on_the_device_until_they_are_cleared() {
        whereAllIsReleased((window, clock) -> {
            String ticks = "return [...document.querySelectorAll('.tick input:checked')].map(box => box.id);";
            window.run("document.querySelectorAll('.tick input')[1].click(); document.querySelectorAll('.tick input')[3].click();");
            List<String> ticked = window.texts(ticks);
            pressed(window, BATH, IN);
            window.again();
            assertThat(window.texts(ticks)).hasSize(3).isEqualTo(ticked);
            window.run("const clear = document.querySelector('[data-desk=clear]'); clear.click(); clear.click();");
            assertThat(window.texts(ticks)).isEqualTo(ticked);
            assertThat(window.run("return [...document.querySelectorAll('.bench-desk__buttons button')].pop().textContent;"))
                    .isEqualTo("Save first");
            clock.set(3);
            window.run("document.querySelector('[data-desk=clear]').click();");
            assertThat(window.texts(ticks)).isEmpty();
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            window.again();
            assertThat(window.texts(ticks)).isEmpty();
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            assertThat(window.texts("return Object.keys(localStorage);")).isEmpty();
        });
    }

    @Test
    void a_hold_point_is_not_passed_by_next_until_someone_released_it() {
        atTheBench((window, clock) -> {
            atStep(window, "step-relax");
            forward(window);
            assertThat(screen(window)).contains("Hold point");
            initialled(window);
            release(window);
            assertThat(told(window)).isEqualTo("Not marked as done: 1–5.");
            assertThat(window.run("return document.querySelector('.screen--hold:not([hidden]) .screen__release button')"
                    + ".getAttribute('aria-disabled');")).isEqualTo("true");
            release(window);
            forward(window);
            assertThat(screen(window)).contains("Hold point");
            clock.set(3);
            release(window);
            assertThat(told(window)).startsWith("Released").contains("by AB. Not marked as done: 1–5.");
            forward(window);
            assertThat(screen(window)).isEqualTo("6. Prewetting");
        });
    }

    /** A hold released too early is stopped again, by two taps that are no double tap. */
    @Test
    void a_release_clears_what_was_said_before_and_can_be_taken_back() {
        atTheBench((window, clock) -> {
            atStep(window, "step-relax");
            forward(window);
            assertThat(heard(window)).startsWith("Not yet");
            initialled(window);
            release(window);
            clock.set(3);
            release(window);
            assertThat(heard(window)).isEmpty();
            assertThat(releases(window)).isEqualTo("Take back");
            release(window);
            clock.set(6);
            release(window);
            assertThat(releases(window)).isEqualTo("Released now");
            assertThat(told(window)).isEmpty();
            forward(window);
            assertThat(screen(window)).contains("Hold point");
        });
    }

    @Test
    void a_timer_of_the_sheet_waits_for_the_briefing_and_the_hold_points_and_says_which() {
        atTheBench((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(60);
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            assertThat(said(window, BATH)).startsWith("Read the briefing first");
            window.run("document.getElementById('tick-briefing').checked = true;");
            pressed(window, BATH, IN);
            clock.set(120);
            assertThat(digits(window, BATH)).isEqualTo("20:00");
            assertThat(said(window, BATH)).isEqualTo("Not yet: the hold point at 6. Prewetting has to be released first.");
            pressed(window, CLEANING, "Start");
            assertThat(said(window, CLEANING)).isEqualTo("Not marked as done: 1, 2. Begin all the same?");
            clock.set(130);
            pressed(window, CLEANING, "Start");
            clock.set(190);
            assertThat(digits(window, CLEANING)).isEqualTo("19:00");
        });
    }

    /** Who chooses the step is asked as they come to it: the tap that starts the clock is the answer. */
    @Test
    void a_step_past_others_that_are_not_done_asks_once_and_tells_which() {
        atTheBench((window, clock) -> {
            atStep(window, "step-surface-clean");
            assertThat(heard(window)).isEqualTo("Not marked as done: 1, 2. Begin all the same? Go on");
            window.run("document.querySelector('.screen:not([hidden]) .timer__run .button').click();");
            clock.set(60);
            assertThat(digits(window, CLEANING)).isEqualTo("19:00");
            assertThat(heard(window)).doesNotContain("Begin");
            atStep(window, "step-look");
            atStep(window, "step-surface-clean");
            assertThat(heard(window)).doesNotContain("Not marked");
            atStep(window, "step-look");
            assertThat(heard(window)).as("the first step").doesNotContain("Not marked");
        });
    }

    /** The mist is tried on both inks; what became of the violet one is the answer that decides over the treatment. */
    @Test
    void each_drop_has_a_field_for_what_became_of_it_and_the_case_file_gets_it_in_a_remark() {
        atTheBench((window, clock) -> {
            atStep(window, "step-tests");
            window.run("const write = [...document.querySelectorAll('[data-screen=step-tests] .screen__write')]"
                    + ".find(one => one.closest('.screen').textContent.includes('misting')); write.open = true;");
            window.until("document.querySelector('[data-screen=step-tests] .screen__fields input')");
            assertThat(window.texts("const fields = [...document.querySelectorAll('[data-screen=step-tests] .screen__fields label')];"
                    + "const box = fields[1].querySelector('input'); box.value = 'comes off'; box.dispatchEvent(new Event('change'));"
                    + "return fields.map(field => field.textContent);")).containsExactly("black printing ink", "violet stamp-pad ink");
            assertThat(frontMatter(saved(window))).contains("- id: tests")
                    .contains("# tested Ethanol and water for misting: violet stamp-pad ink: comes off");
        });
    }

    /**
     * The tide table's used baths were read at pH 7.2 or more, its fresh ones are brought to pH 8.5, of which a meter may read 0.1
     * more; a bath of 5.8 L takes between 0.42 mL of limewater, as pure water does, and 5.5 mL, as its sheet says.
     */
    @Test
    void a_used_bath_and_what_is_added_to_it_have_a_range_and_the_stock_its_name() {
        atTheBench((window, clock) -> {
            written(window, "step-wash", "8,5");
            assertThat(window.texts("return [...document.querySelectorAll('[data-screen=step-wash] .screen__fields label')].map(field =>"
                    + "field.textContent.replace(/\\s/g, ' '));")).contains("pH, used (pH 7.2–8.6)")
                    .anyMatch(field -> field.matches("Saturated limewater added, mL \\(0\\.42.*–5\\.5.*\\)"));
            assertThat(window.texts("const fields = [...document.querySelectorAll('[data-screen=step-wash] .screen__fields input')];"
                    + "[[1, '9.9'], [4, '900']].forEach(([place, value]) => { fields[place].value = value;"
                    + "fields[place].dispatchEvent(new Event('change')); }); return [1, 4].map(place =>"
                    + "fields[place].closest('label').nextElementSibling.textContent.slice(0, 5));")).containsExactly("above", "above");
        });
    }

    /** The poster's second step, in which it dries in the air, has no timer. */
    @Test
    void a_step_without_timers_leads_to_the_bench_view_from_its_head_and_after_its_action_as_one_with_timers_does() {
        Windows.lend(window -> {
            window.open("cases/flood-poster/steps.html");
            assertThat(window.texts("return [...document.querySelectorAll('.strip__step')].map(step =>"
                    + "step.querySelectorAll('.strip__bench').length);")).allSatisfy(links ->
                            assertThat(Integer.parseInt(links)).isGreaterThanOrEqualTo(2));
        });
    }

    /** As the case says: between web, blotters and felt under 4 kg of boards, from the first on. */
    @Test
    void drying_says_that_the_weight_is_laid_on_at_once_and_again_after_each_change() {
        atTheBench((window, clock) -> {
            assertThat(window.texts("return [...document.querySelectorAll('[data-screen=step-dry] .screen__amount')].map(line =>"
                    + "line.textContent.replace(/\\s+/g, ' ').trim());")).hasSize(5).startsWith(
                            "board and weight: now, again after each change 4 kg", "then the weight again 4 kg");
        });
    }

    @Test
    void a_hold_point_is_released_by_initials_and_the_enter_key() {
        atTheBench((window, clock) -> {
            atStep(window, "step-relax");
            forward(window);
            window.run("document.querySelector('.screen:not([hidden]) input').focus();");
            window.type("AB");
            window.press("Enter", 13);
            clock.set(3);
            window.press("Enter", 13);
            assertThat(screen(window)).contains("Hold point");
            assertThat(told(window)).contains("AB");
            forward(window);
            assertThat(screen(window)).isEqualTo("6. Prewetting");
        });
    }

    /** What a hand reads at arm's length: the house's own measure, on a phone of 360 px, without what is opened by a tap. */
    @Test
    void no_screen_has_more_than_sixty_words_at_rest_while_its_clocks_run_or_at_a_hold_point() {
        Windows.lend(window -> {
            window.show(new Setting(360, Setting.Look.LIGHT));
            for (String name : List.of("ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table")) {
                window.open("cases/" + name + "/steps.html");
                List<String> screens = window.texts(Scripts.plain("words-of-screens"));
                window.run("localStorage.clear();");
                assertThat(screens).as(name).hasSizeGreaterThan(8).anyMatch(screen -> screen.endsWith(", running"))
                        .allSatisfy(words -> assertThat(Integer.valueOf(words.split(" ", 2)[0])).as(words).isBetween(5, 60));
            }
        });
    }

    /** Dwells as the case file lists its tests. */
    @Test
    void each_liquid_of_a_test_has_its_screen_with_a_clock_for_each_ink_and_the_cautions_of_the_step_without_links() {
        atTheBench((window, clock) -> {
            atStep(window, "step-tests");
            forward(window);
            forward(window);
            assertThat(screen(window)).isEqualTo("2. Testing: what each liquid does Ethanol and water for misting");
            window.run("document.querySelector('.screen:not([hidden]) [data-face=timer-tests-drop-3] button').click();");
            clock.set(30);
            assertThat(window.texts("return [...document.querySelectorAll('.screen:not([hidden]) .screen__time')].map(one =>"
                    + "one.querySelector('b').textContent + ' ' + one.querySelector('.timer__digits').textContent);"))
                    .containsExactly("black printing ink 20:00", "violet stamp-pad ink 00:30");
            window.run("document.querySelector('.screen:not([hidden]) .screen__care').open = true;");
            clock.set(31);
            assertThat(window.texts("const care = document.querySelector('.screen:not([hidden]) .screen__care'); return ["
                    + "care.textContent.includes('The vapour burns and runs along the bench'), care.querySelectorAll('a').length];"))
                    .containsExactly("true", "0");
        });
    }

    /** A wet hand drags across the screen without meaning anything by it. */
    @Test
    void a_finger_that_is_drawn_across_the_screen_changes_nothing() {
        atTheBench((window, clock) -> {
            atStep(window, "step-look");
            window.run("const touch = (kind, x) => { const at = new Touch({identifier: 1,"
                    + "target: document.querySelector('.bench__screens'),"
                    + "clientX: x, clientY: 300}); at.target.dispatchEvent(new TouchEvent(kind, {touches: kind === 'touchend' ? [] : [at],"
                    + "changedTouches: [at], bubbles: true})); }; touch('touchstart', 300); touch('touchend', 150);");
            assertThat(screen(window)).isEqualTo("1. Examination");
        });
    }

    @Test
    void a_later_step_is_not_reached_past_a_hold_point_of_what_comes_before_it() {
        atTheBench((window, clock) -> {
            atStep(window, "step-dry");
            assertThat(screen(window)).contains("6. Prewetting").contains("Hold point");
            assertThat(heard(window)).startsWith("Not yet");
            atStep(window, "step-test-again");
            assertThat(screen(window)).contains("5. Testing");
        });
    }

    /** As the case says: until the mass changes by less than 0.5 % in a day; and a wet sheet is weighed before it is dry. */
    @Test
    void drying_begins_with_its_weighing_and_does_not_end_with_the_last_change_of_blotters() {
        atTheBench((window, clock) -> {
            List<String> screens = window.texts("return [...document.querySelectorAll('.screen[data-screen=step-dry]')]"
                    + ".map(one => one.textContent.replace(/\\s+/g, ' ') + one.querySelectorAll('[data-part=weighing]').length);");
            assertThat(screens.get(0)).endsWith("3");
            assertThat(screens.get(screens.size() - 1)).contains("less than 0.5 % in a day").endsWith("0");
        });
    }

    /** Drying takes 3 d and measuring waits 8 wk: neither they nor what follows them is a matter of this day's clock. */
    @Test
    void what_begins_on_another_day_stands_under_its_date_or_under_no_time() {
        atTheBench((window, clock) -> {
            window.run("window.benchleaf.state().started = Date.now(); window.benchleaf.keep();");
            window.again();
            atStep(window, "step-look");
            assertThat(when(window, "step-surface-clean")).startsWith("earliest");
            assertThat(List.of(when(window, "step-mend"), when(window, "step-measure"), when(window, "step-house"))).containsOnly("");
            window.run("const bench = window.benchleaf; const state = bench.state();"
                    + "state.record = state.record || bench.begun({ steps: {} }, document.querySelector('[data-issue]').dataset.issue);"
                    + "['step-relax', 'step-wash'].forEach(one => { state.record.steps[one] = { released: { at: 1, by: 'AB' } }; });"
                    + "state.record.steps['step-mend'] = { began: Date.now(), ended: Date.now() }; bench.keep();");
            window.again();
            atStep(window, "step-look");
            assertThat(when(window, "step-measure")).as("56 days after 2 March").isEqualTo("earliest 27 Apr");
            atStep(window, "step-measure");
            assertThat(heard(window)).startsWith("Not marked as done: 1–8. 10. Measuring, earliest 27 Apr, ")
                    .endsWith("Begin all the same? Go on");
        });
    }

    private static String when(Window window, String step) {
        return (String) window.run("return document.querySelector('[data-stage=' + arguments[0] + '] .screen__when').textContent;", step);
    }

    /** Escape, and the gesture for going back on a phone, close a dialog: a bath must not run on unheard for that. */
    @Test
    void a_ring_that_a_key_closed_rings_again_a_minute_later() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(20 * 60);
            window.press("Escape", 27);
            assertThat(rings(window)).isFalse();
            clock.set(20 * 60 + 59);
            assertThat(rings(window)).isFalse();
            clock.set(21 * 60);
            assertThat(rings(window)).isTrue();
        });
    }

    /** On a phone of 360 × 640 px; a bath of 20 min, a change after 15 min and a cleaning of 20 min that was begun first. */
    @Test
    void of_several_rings_the_one_that_waits_longest_stands_first_at_the_top_and_a_finger_already_coming_down_answers_none() {
        whereAllIsReleased((window, clock) -> {
            window.show(new Setting(360, Setting.Look.LIGHT));
            pressed(window, CHANGE, "Start");
            pressed(window, BATH, IN);
            clock.set(10);
            pressed(window, CLEANING, "Start");
            clock.set(30 * 60);
            window.run("document.querySelector('dialog[open] button').click();");
            assertThat(window.texts("return [...document.querySelectorAll('dialog[open] .ring__what')].map(one => one.textContent);"))
                    .satisfiesExactly(first -> assertThat(first).startsWith("Blotter change 1"),
                            second -> assertThat(second).startsWith("Bath 1"), third -> assertThat(third).contains("3. Surface cleaning"));
            assertThat(((Number) window.run("const bell = document.querySelector('dialog[open]');"
                    + "return bell.scrollTop + bell.querySelector('.ring__what').getBoundingClientRect().top;"))
                    .doubleValue()).isBetween(0.0, 60.0);
            clock.set(30 * 60 + 2);
            window.run("document.querySelector('dialog[open] button').click();");
            assertThat(window.texts("return [...document.querySelectorAll('dialog[open] .ring__what')].map(one => one.textContent);"))
                    .hasSize(2);
        });
    }

    /** The tide table's change 2 comes 30 min after change 1, from when that one is made: the blotters are changed before. */
    @Test
    void a_timer_that_ended_unseen_rings_says_how_long_ago_and_the_next_one_begins_when_the_blotters_are_changed() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, CHANGE, "Start");
            clock.set(18 * 60);
            window.again();
            window.run(Scripts.plain("do-again"));
            assertThat(window.texts("const bell = document.querySelector('dialog[open]'); return [bell.getAttribute('role'),"
                    + "bell.querySelector('.ring__when').textContent];")).containsExactly("alertdialog", "03:00 ago");
            clock.set(18 * 60 + 2);
            answered(window, "Change now");
            assertThat(rings(window)).isFalse();
            clock.set(18 * 60 + 2 + 5);
            assertThat(heads(window)).containsExactly("to start: Blotter change 2");
            assertThat(digits(window, "timer-dry-change-2")).isEqualTo("30:00");
            pressed(window, "timer-dry-change-2", "Start");
            clock.set(19 * 60 + 2 + 5);
            assertThat(digits(window, "timer-dry-change-2")).isEqualTo("29:00");
        });
    }

    /** A bath of 20 min that rang, got a minute more 5 min later and rings again was due 6 min ago. */
    @Test
    void a_minute_more_does_not_change_when_it_was_due() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            String stamp = stamped(window, BATH);
            clock.set(20 * 60);
            clock.set(25 * 60);
            answered(window, "1 min more");
            assertThat(stamped(window, BATH)).isEqualTo(stamp);
            clock.set(26 * 60);
            assertThat(window.texts("return [document.querySelector('dialog[open] .ring__when').textContent];"))
                    .containsExactly("06:00 ago");
        });
    }

    @Test
    void the_begin_of_the_day_is_not_replaced_by_one_tap() {
        whereAllIsReleased((window, clock) -> {
            String now = "document.querySelector('[data-bench=now]').click();";
            String begun = "return document.querySelector('[data-bench=started]').value;";
            atStep(window, "step-look");
            window.run(now);
            Object begin = window.run(begun);
            clock.set(15 * 3600);
            window.run(now + now);
            assertThat(window.run(begun)).isEqualTo(begin);
            clock.set(15 * 3600 + 3);
            window.run(now);
            assertThat(window.run(begun)).isNotEqualTo(begin);
        });
    }

    /** The surface cleaning of the tide table takes 20 to 40 min: after 20 one looks, and it is done or goes on. */
    @Test
    void when_the_least_time_of_a_step_is_over_one_is_asked_to_look_and_ends_it_or_goes_on() {
        whereAllIsReleased((window, clock) -> {
            String rung = "return [document.querySelector('dialog[open] .ring__what').textContent];";
            pressed(window, CLEANING, "Start");
            clock.set(20 * 60);
            assertThat(window.texts(rung)).containsExactly("3. Surface cleaning: 20 min are over. Look.");
            clock.set(20 * 60 + 2);
            answered(window, "Go on: ring in 05:00");
            clock.set(25 * 60);
            assertThat(rings(window)).isFalse();
            clock.set(25 * 60 + 2);
            assertThat(window.texts(rung)).containsExactly("3. Surface cleaning: 25 min are over. Look.");
            clock.set(25 * 60 + 4);
            answered(window, "Step done");
            assertThat(rings(window)).isFalse();
            assertThat(stamped(window, CLEANING)).contains("stopped");
            assertThat(window.run("return document.querySelector('[data-stage=step-surface-clean] .screen__when').textContent;")).asString()
                    .startsWith("Done ");
        });
    }

    /** The misted sheet of the tide table is looked at after 5 min and lies 15 min at most: limp and evenly damp is what one should see. */
    @Test
    void a_step_with_a_screen_to_look_at_is_looked_at_before_it_is_done() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-relax");
            forward(window);
            window.run("document.querySelector('.screen:not([hidden]) .timer__run .button').click();");
            assertThat(window.run("return document.querySelector('.screen:not([hidden])').innerText;")).asString()
                    .containsPattern("At most\\h15\\hmin");
            clock.set(5 * 60);
            clock.set(5 * 60 + 2);
            answered(window, "Go there");
            assertThat(rings(window)).isFalse();
            assertThat(window.run("return document.querySelector('.screen:not([hidden])').innerText;")).asString()
                    .contains("evenly damp");
            assertThat(when(window, "step-relax")).startsWith("Begun ");
        });
    }

    /** Misting goes on 15 min at most, by the case file of the tide table: by then no more time is offered, and the waiting is counted. */
    @Test
    void a_step_that_has_taken_as_long_as_it_may_is_stopped_and_not_gone_on_with() {
        whereAllIsReleased((window, clock) -> {
            String rung = "return [...document.querySelectorAll('dialog[open] .ring__what, dialog[open] button')]"
                    + ".map(one => one.textContent);";
            atStep(window, "step-relax");
            forward(window);
            window.run("document.querySelector('.screen:not([hidden]) .timer__run .button').click();");
            clock.set(5 * 60);
            clock.set(5 * 60 + 2);
            answered(window, "Go on: ring in 05:00");
            clock.set(10 * 60 + 2);
            clock.set(10 * 60 + 4);
            answered(window, "Go on: ring in 04:58");
            clock.set(15 * 60);
            assertThat(window.texts(rung)).containsExactly(
                    "6. Prewetting: it may take no longer. Stop: see what to do if it goes otherwise.", "Go there");
            clock.set(15 * 60 + 2);
            answered(window, "Go there");
            atStep(window, "step-wash");
            assertThat(latest(window)).startsWith("By ");
        });
    }

    /** Misting takes 5 min at least and 15 min at most: who does not hear the ring is late from then on, and is offered no more time. */
    @Test
    void a_ring_that_nobody_answers_offers_no_more_time_once_the_step_may_take_no_longer() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-relax");
            forward(window);
            window.run("document.querySelector('.screen:not([hidden]) .timer__run .button').click();");
            clock.set(5 * 60);
            clock.set(5 * 60 + 2);
            answered(window, "Go on: ring in 05:00");
            clock.set(10 * 60 + 2);
            clock.set(12 * 60 + 2);
            String rung = "return [...document.querySelectorAll('dialog[open] .ring__when, dialog[open] button')]"
                    + ".map(one => one.textContent);";
            assertThat(window.texts(rung)).startsWith("02:00 ago").hasSize(3);
            clock.set(16 * 60 + 7);
            assertThat(window.texts(rung)).containsExactly("06:05 ago", "Go there");
        });
    }

    /** The tide table lies between blotters for 3 days, so from Monday 2 March until Thursday. */
    @Test
    void a_step_of_days_counts_to_its_day_and_is_done_before_only_when_that_is_asked_for_twice() {
        whereAllIsReleased((window, clock) -> {
            String done = "[...document.querySelector('[data-screen=step-dry][data-last]').querySelectorAll('.screen__time > button')]"
                    + ".pop().click();";
            pressed(window, CHANGE, "Start");
            assertThat(when(window, "step-dry")).matches("Begun \\d\\d:\\d\\d, until Thu, \\d\\d:\\d\\d");
            clock.set(4 * 3600);
            atStep(window, "step-dry");
            window.run(done);
            assertThat(heard(window)).matches("8\\. Drying until Thu, \\d\\d:\\d\\d\\. Done all the same\\? Go on");
            assertThat(when(window, "step-dry")).startsWith("Begun");
            clock.set(4 * 3600 + 2);
            window.run("document.querySelector('.bench__said button').click();");
            assertThat(when(window, "step-dry")).startsWith("Done");
            assertThat(heard(window)).isEmpty();
            assertThat(window.run("return [...document.querySelectorAll('#step-dry .tick input')].pop().checked;")).isEqualTo(true);
        });
    }

    /** A wet hand touches where the button was: what is said goes, its place stays. */
    @Test
    void nothing_moves_when_the_page_was_touched_so_that_it_can_ring() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-surface-clean");
            pressed(window, CLEANING, "Start");
            window.again();
            atStep(window, "step-surface-clean");
            window.again();
            window.run("document.querySelector('[data-desk=bench]').click();");
            window.again();
            String place = "return [document.querySelector('.bench__screens').offsetHeight];";
            window.run("document.body.classList.add('at-bench'); document.getElementById('bench').hidden = false;"
                    + "document.querySelector('.bench__said').textContent = 'Tap once, so that it can ring.';");
            List<String> before = window.texts(place);
            window.press("Shift", 16);
            assertThat(heard(window)).isEmpty();
            assertThat(window.texts(place)).isEqualTo(before);
        });
    }

    @Test
    void what_is_being_written_and_initials_that_release_nothing_yet_survive_a_reload() {
        atTheBench((window, clock) -> {
            atStep(window, "step-wash");
            window.run("document.querySelectorAll('[data-screen=step-wash] .screen__write')[0].open = true;");
            window.until("document.querySelector('[data-screen=step-wash] .screen__fields input')");
            window.run("[[document.querySelector('[data-screen=step-wash] .screen__fields input'), '8,4'],"
                    + "[document.querySelector('[data-screen=step-relax] .screen__release input'), 'CD']].forEach(([box, text]) => {"
                    + "box.value = text; box.dispatchEvent(new Event('input')); });");
            window.again();
            assertThat(saved(window)).contains("\"pH fresh\": \"pH 8.4\"");
            assertThat(window.run("return document.querySelector('[data-screen=step-relax] .screen__release input').value;"))
                    .isEqualTo("CD");
        });
    }

    /** What is released on the evening of 2 March has its date on the morning after. */
    @Test
    void a_release_that_was_not_made_today_is_dated_and_what_still_runs_is_named() {
        atTheBench((window, clock) -> {
            atStep(window, "step-surface-clean");
            pressed(window, CLEANING, "Start");
            atStep(window, "step-relax");
            initialled(window);
            release(window);
            assertThat(told(window)).matches("Not marked as done: 1, 2, 3 \\(due \\d\\d:\\d\\d\\), 4, 5\\.");
            clock.set(1);
            release(window);
            assertThat(told(window)).startsWith("Released 0").contains("by AB");
            clock.set(24 * 3600);
            assertThat(told(window)).startsWith("Released 2 Mar, ");
        });
    }

    /** As the case says: if colour leaves the stamp, the carrier is lifted out and the stamp blotted at once. */
    @Test
    void a_look_that_shows_what_was_not_expected_halts_the_clock_and_tells_what_to_do_and_each_look_is_kept_with_its_minute() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-wash");
            pressed(window, BATH, IN);
            clock.set(60);
            clock.set(63);
            answered(window, "As expected");
            clock.set(5 * 60);
            clock.set(6 * 60 + 3);
            clock.set(6 * 60 + 5);
            answered(window, "Not as expected");
            assertThat(window.texts("return [document.querySelector('dialog[open] .ring__what').textContent];")).singleElement()
                    .asString().startsWith("If colour leaves the stamp, lift the carrier out");
            clock.set(8 * 60);
            assertThat(digits(window, BATH)).isEqualTo("13:55");
            answered(window, "Go there");
            assertThat(screen(window)).isEqualTo("7. Washing Bath 1");
            window.run("const write = document.querySelector('.screen:not([hidden]) .screen__write'); write.open = true;"
                    + "write.dispatchEvent(new Event('toggle')); const box = [...write.querySelectorAll('label')]"
                    + ".find(one => one.textContent.includes('5 min')).querySelector('input'); box.value = 'violet at the edge';"
                    + "box.dispatchEvent(new Event('input'));");
            assertThat(frontMatter(saved(window))).containsPattern("# looked Bath 1: Look colour at 1 min, [-0-9]+ [0-9:]+: As expected")
                    .containsPattern("# looked Bath 1: Look colour at 5 min, [-0-9]+ [0-9:]+: violet at the edge");
        });
    }

    /** The tide table is weighed before it is misted, when it is dry, and on each of its 3 days between blotters. */
    @Test
    void the_dry_sheet_is_weighed_before_it_is_wetted_and_on_each_day_of_its_drying() {
        whereAllIsReleased((window, clock) -> {
            String write = "const write = document.querySelector('.screen:not([hidden]) .screen__write'); write.open = true;"
                    + "write.dispatchEvent(new Event('toggle')); const labels = [...write.querySelectorAll('label')];";
            atStep(window, "step-relax");
            forward(window);
            window.run(write + "const box = labels[0].querySelector('input'); box.value = '9,6'; box.dispatchEvent(new Event('input'));");
            pressed(window, CHANGE, "Start");
            clock.set(2 * 24 * 3600);
            atStep(window, "step-dry");
            assertThat(window.texts(write + "return [labels[0].textContent, labels[0].querySelector('input').value];"))
                    .containsExactly("Dry sheet, g", "9,6");
            window.run("document.querySelector('.screen[data-screen=step-dry][data-last] .screen__write').open = true;");
            window.until("document.querySelector('.screen[data-screen=step-dry][data-last] .screen__fields input')");
            assertThat(window.texts("const labels = [...document.querySelectorAll("
                    + "'.screen[data-screen=step-dry][data-last] .screen__fields label')].slice(0, 3);"
                    + "const box = labels[0].firstElementChild;"
                    + "box.value = '10.4'; box.dispatchEvent(new Event('input')); return labels.map(label => label.textContent);"))
                    .containsExactly("3 Mar, g", "4 Mar, g", "Thu, g");
            assertThat(frontMatter(saved(window))).contains("# weighed 2026-03-03: 10.4 g").contains("weighing: {dry: 9.6 g}");
        });
    }

    /** The case keeps the cleaning of its surface away from the stamp. */
    @Test
    void what_is_kept_away_from_stands_on_the_screen_before_its_clock_runs() {
        atTheBench((window, clock) -> {
            atStep(window, "step-surface-clean");
            assertThat(window.run("return document.querySelector('.screen:not([hidden])').innerText;")).asString()
                    .contains("Keep away from").contains("stamp");
        });
    }

    @Test
    void what_is_done_begins_again_only_when_that_is_asked_for_twice() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, CLEANING, "Start");
            clock.set(10);
            window.run("[...document.querySelector('[data-screen=step-surface-clean][data-last]').querySelectorAll("
                    + "'.screen__time > button')].pop().click();");
            clock.set(20);
            reset(window, clock, CLEANING, 20);
            pressed(window, CLEANING, "Start");
            assertThat(said(window, CLEANING)).startsWith("Marked as done ").endsWith(": press again to begin it once more.");
            clock.set(26);
            pressed(window, CLEANING, "Start");
            clock.set(86);
            assertThat(digits(window, CLEANING)).isEqualTo("19:00");
        });
    }

    /** Beside the timer stands what comes next, for the head of the screen names the change that is being made. */
    @Test
    void the_screen_of_a_change_of_blotters_says_when_the_next_one_is() {
        whereAllIsReleased((window, clock) -> {
            assertThat(window.texts("return ['change-1', 'change-2'].map(one => { const face = document.querySelector("
                    + "'[data-face=timer-dry-' + one + ']'); return face.closest('.screen').querySelector('.screen__name').textContent"
                    + " + ': ' + face.querySelector('b').textContent; });"))
                    .containsExactly("8. Drying: Next change in", "8. Drying Blotter change 1: Next change in");
        });
    }

    @Test
    void the_head_of_the_bench_view_tells_what_is_until_when_and_at_once_after_a_tap() {
        whereAllIsReleased((window, clock) -> {
            String heads = "return [...document.querySelectorAll('.bench__due li')].map(one => one.textContent.replace(/\\d+:\\d+/, 'T'));";
            pressed(window, "timer-dry-change-4", "Start");
            assertThat(window.texts(heads)).containsExactly("Blotter change 4 at T");
            clock.set(10);
            pressed(window, CLEANING, "Start");
            assertThat(window.texts(heads)).containsExactly("3. Surface cleaning until T", "Blotter change 4 at T");
            clock.set(20);
            pressed(window, CLEANING, "Pause");
            assertThat(window.texts(heads)).containsExactly("paused: 3. Surface cleaning", "Blotter change 4 at T");
        });
    }

    /** The clock of these checks begins on 2 March 2026. */
    @Test
    void a_time_of_another_day_carries_its_date() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-look");
            pressed(window, "timer-look-whole", "Start");
            window.run("document.querySelector('[data-stage=step-look] button').click();"
                    + "[...document.querySelector('.screen:not([hidden]) .screen__time').children].pop().click();");
            String when = "return document.querySelector('[data-stage=step-look] .screen__when').textContent;";
            assertThat((String) window.run(when)).matches("Done \\d\\d:\\d\\d");
            clock.set(2 * 24 * 3600);
            assertThat((String) window.run(when)).matches("Done 2 Mar, \\d\\d:\\d\\d");
        });
    }

    /** The sheet is lifted, drained and carried before it lies in the next bath: its 20 min begin there. */
    @Test
    void the_next_bath_begins_when_the_sheet_is_in_it_and_not_when_it_is_lifted_out() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-wash");
            forward(window);
            pressed(window, BATH, IN);
            assertThat(window.run("return document.querySelector('.screen:not([hidden])').innerText.replace(/\\s+/g, ' ');")).asString()
                    .containsPattern("Look colour at 1 min, \\d\\d:\\d\\d").contains("If it goes otherwise").doesNotContain("at 5 min");
            assertThat(window.run("const otherwise = document.querySelector('.screen:not([hidden]) > details.screen__watch');"
                    + "otherwise.open = true; return otherwise.innerText;")).asString().contains("blot the stamp at once");
            clock.set(20 * 60 + 2);
            clock.set(20 * 60 + 4);
            answered(window, "Lift out now");
            assertThat(screen(window)).isEqualTo("7. Washing Bath 1: look");
            forward(window);
            assertThat(screen(window)).isEqualTo("7. Washing Bath 2");
            clock.set(26 * 60);
            assertThat(heads(window)).as("what its own screen counts").isEmpty();
            window.run("document.querySelector('[data-bench=steps]').click();");
            assertThat(heads(window)).containsExactly("to start: Bath 2");
            assertThat(digits(window, SECOND_BATH)).isEqualTo("20:00");
            pressed(window, SECOND_BATH, IN);
            clock.set(27 * 60);
            assertThat(digits(window, SECOND_BATH)).isEqualTo("19:00");
        });
    }

    /** As the sheet counts them: bath 1 is over 23 min, bath 2 48 min and bath 3 73 min after the start, each 20 min long. */
    @Test
    void the_head_of_the_bench_view_counts_the_changes_between_baths() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            assertThat(heads(window).stream().map(line -> line.replaceAll(".*?(\\d\\d):(\\d\\d).*", "$1 $2").split(" "))
                    .map(time -> Integer.parseInt(time[0]) * 60 + Integer.parseInt(time[1])).toList())
                    .satisfies(ends -> assertThat(List.of(ends.get(1) - ends.get(0), ends.get(2) - ends.get(1))).containsExactly(5, 25));
        });
    }

    /** The tide table plans three baths and a fourth if it is still needed. */
    @Test
    void after_the_last_planned_bath_one_looks_and_can_say_that_it_is_enough() {
        whereAllIsReleased((window, clock) -> {
            atStep(window, "step-wash");
            pressed(window, "timer-wash-bath-3", IN);
            clock.set(20 * 60);
            clock.set(20 * 60 + 2);
            answered(window, "Lift out now");
            assertThat(rings(window)).isFalse();
            assertThat(screen(window)).startsWith("7. Washing Bath 3");
            assertThat(window.run("return document.querySelector('.screen:not([hidden])').innerText;")).asString()
                    .contains("Two baths in a row stay as clear");
            window.run("[...document.querySelectorAll('.screen:not([hidden]) button')].find(one => one.textContent === 'No further bath')"
                    + ".click();");
            assertThat(screen(window)).startsWith("8. ");
            assertThat(window.run("return document.querySelector('[data-stage=step-wash] .screen__when').textContent;")).asString()
                    .startsWith("Done ");
        });
    }

    /** Wetting takes 5 min, three baths 73 min and the changes 4 h 15 min: begun at 9 they end before 17:30, begun at 15 after it. */
    @Test
    void the_hold_point_before_wetting_says_that_the_day_is_too_short_for_the_last_change_of_blotters() {
        atTheBench((window, clock) -> {
            String day = "const day = document.querySelector('.screen--hold:not([hidden]) .screen__day'); return day.checkVisibility() ? "
                    + "day.textContent : '';";
            atStep(window, "step-relax");
            assertThat(window.run(day)).isEqualTo("");
            long three = ((Number) window.run("const at = new Date(Date.now()); const now = at.getTime();"
                    + "return (at.setHours(15, 6, 0, 0) - now) / 1000;")).longValue();
            clock.set(three);
            assertThat(window.run(day))
                    .isEqualTo("Last blotter change 20:39, after closing.");
        });
    }

    /** The misted sheet of the tide table may wait 15 min at the hold point before the bath. */
    @Test
    void a_sheet_that_waits_too_long_at_a_hold_point_rings_once_and_that_it_did_stays_to_be_read() {
        atTheBench((window, clock) -> {
            atStep(window, "step-relax");
            initialled(window);
            release(window);
            clock.set(3);
            release(window);
            window.run("[...document.querySelector('[data-screen=step-relax][data-last]').querySelectorAll('.screen__time > button')].pop()"
                    + ".click();");
            atStep(window, "step-wash");
            assertThat(latest(window)).startsWith("By ");
            clock.set(3 + 15 * 60);
            assertThat(rings(window)).isFalse();
            clock.set(4 + 15 * 60);
            assertThat(window.texts("return [document.querySelector('dialog[open] .ring__what').textContent];"))
                    .containsExactly("7. Washing: the sheet waits too long.");
            assertThat(latest(window)).startsWith("Waits too long");
            assertThat(window.run("return document.querySelector('[data-stage=step-wash] .screen__when').textContent;")).asString()
                    .contains("Waits too long").doesNotContain("earliest");
            clock.set(10 + 15 * 60);
            answered(window, "Go there");
            assertThat(rings(window)).isFalse();
            assertThat(screen(window)).contains("7. Washing").contains("Hold point");
            window.again();
            clock.set(20 * 60);
            assertThat(rings(window)).isFalse();
            initialled(window);
            release(window);
            clock.set(20 * 60 + 3);
            release(window);
            assertThat(latest(window)).startsWith("Waits too long");
        });
    }

    /** Browsers let a page sound only after it was touched (HTML, user activation): a page loaded again says so while a timer runs. */
    @Test
    void a_page_loaded_again_says_that_it_must_be_touched_to_ring_while_a_timer_runs() {
        whereAllIsReleased((window, clock) -> {
            window.again();
            assertThat(status(window)).isEmpty();
            atStep(window, "step-surface-clean");
            pressed(window, CLEANING, "Start");
            window.again();
            assertThat(status(window)).isEqualTo("Tap once, so that it can ring.");
            assertThat(heard(window)).isEqualTo("Tap once, so that it can ring.");
            window.press("Shift", 16);
            assertThat(status(window)).doesNotContain("Tap");
            assertThat(heard(window)).isEmpty();
        });
    }

    @Test
    void where_a_timer_is_started_stands_that_a_locked_phone_may_not_ring_and_while_it_runs_few_words() {
        whereAllIsReleased((window, clock) -> {
            String warned = "return document.querySelector('.screen:not([hidden]) .screen__promise').checkVisibility();";
            String press = "document.querySelector('.screen:not([hidden]) .timer__run .button').click();";
            atStep(window, "step-surface-clean");
            assertThat(window.run(warned)).isEqualTo(true);
            window.run(press);
            assertThat(window.run(warned)).isEqualTo(false);
            assertThat(window.texts("const screen = document.querySelector('.screen:not([hidden])'); const shown = what => screen"
                    + ".querySelector(what).checkVisibility(); const words = screen.querySelector('details.screen__watch');"
                    + "words.open = true; return [shown('.screen__do'), shown('details.screen__watch'), shown('.screen__care'),"
                    + "words.textContent.includes('Brush both sides')];")).containsExactly("false", "true", "true", "true");
            clock.set(10);
            window.run(press);
            assertThat(window.run(warned)).as("paused").isEqualTo(true);
        });
    }

    /** The tide table looks for colour 1, 5 and 15 min after the sheet was laid in; its first bath lasts 20 min. */
    @Test
    void a_bath_rings_once_at_each_look_while_its_clock_goes_on_and_a_missed_look_says_how_long_ago_it_was_due() {
        whereAllIsReleased((window, clock) -> {
            String rung = "return [...document.querySelectorAll('dialog[open] .ring__one')].map(one => one.querySelector('.ring__what')"
                    + ".textContent.replace(/\\s/g, ' ') + ' | ' + one.querySelector('.ring__when').textContent);";
            pressed(window, BATH, IN);
            clock.set(59);
            assertThat(rings(window)).isFalse();
            clock.set(60);
            assertThat(window.texts(rung)).containsExactly("Bath 1, 7. Washing: Look colour at 1 min | now");
            assertThat(digits(window, BATH)).isEqualTo("19:00");
            clock.set(63);
            answered(window, "As expected");
            clock.set(240);
            assertThat(rings(window)).isFalse();
            clock.set(6 * 60);
            window.again();
            window.run(Scripts.plain("do-again"));
            assertThat(window.texts(rung)).containsExactly("Bath 1, 7. Washing: Look colour at 5 min | 01:00 ago");
            assertThat(digits(window, BATH)).isEqualTo("14:00");
            clock.set(6 * 60 + 3);
            window.press("Escape", 27);
            assertThat(rings(window)).isFalse();
            clock.set(7 * 60 + 4);
            assertThat(window.texts(rung)).as("rings again when a key closed it")
                    .containsExactly("Bath 1, 7. Washing: Look colour at 5 min | 02:04 ago");
            clock.set(7 * 60 + 7);
            answered(window, "As expected");
            window.again();
            clock.set(7 * 60 + 10);
            assertThat(rings(window)).isFalse();
        });
    }

    @Test
    void nobody_comes_to_the_bench_who_has_not_ticked_off_the_briefing() {
        atTheBench((window, clock) -> {
            window.run("document.querySelector('[data-desk=bench]').click();");
            assertThat(window.run("return document.getElementById('bench').hidden;")).isEqualTo(true);
            assertThat(window.texts("return [document.activeElement.textContent, document.activeElement.nextElementSibling.textContent,"
                    + "Math.abs(document.activeElement.getBoundingClientRect().top) < 60];"))
                    .containsExactly("Before the first step", "Read the briefing first, and tick that off.", "true");
            window.run("document.getElementById('tick-briefing').click(); document.querySelector('[data-desk=bench]').click();");
            assertThat(window.run("return document.getElementById('bench').hidden;")).isEqualTo(false);
        });
    }

    @Test
    void what_is_not_marked_as_done_is_named_when_a_hold_is_released_and_a_done_step_has_no_timer_left() {
        atTheBench((window, clock) -> {
            atStep(window, "step-surface-clean");
            window.run("const screen = document.querySelector('[data-screen=step-surface-clean][data-last]');"
                    + "screen.querySelector('.timer__run .button').click();"
                    + "[...screen.querySelectorAll('.screen__time > button')].pop().click();");
            assertThat(window.run("return document.querySelectorAll('.bench__due li').length;")).isEqualTo(0L);
            atStep(window, "step-relax");
            initialled(window);
            release(window);
            assertThat(told(window)).isEqualTo("Not marked as done: 1, 2, 4, 5.");
        });
    }

    @Test
    void a_timer_stopped_by_step_done_says_so_and_goes_on_where_it_would_be_if_that_is_taken_back() {
        atTheBench((window, clock) -> {
            atStep(window, "step-surface-clean");
            String run = "document.querySelector('[data-screen=step-surface-clean] .timer__run .button').click();";
            String done = "[...document.querySelector('[data-screen=step-surface-clean][data-last]').querySelectorAll("
                    + "'.screen__time > button')].pop().click();";
            window.run(run);
            clock.set(600);
            window.run(done);
            assertThat(stamped(window, CLEANING)).startsWith("started ").contains("stopped ").doesNotContain("due");
            clock.set(900);
            assertThat(digits(window, CLEANING)).isEqualTo("10:00");
            window.again();
            window.run(done);
            assertThat(digits(window, CLEANING)).isEqualTo("05:00");
            assertThat(stamped(window, CLEANING)).contains("due ");
            clock.set(1200);
            assertThat(rings(window)).isTrue();
        });
    }

    @Test
    void what_was_written_down_survives_a_reload_and_is_saved_as_the_program_reads_it() {
        atTheBench((window, clock) -> {
            written(window, "step-wash", "8,5");
            window.again();
            window.run("document.getElementById('tick-briefing').checked = true; document.querySelector('[data-desk=bench]').click();"
                    + "document.querySelector('[data-bench=record]').click();");
            assertThat(window.run("return document.querySelector('.screen__record').textContent;")).asString()
                    .contains("7. Washing\n").contains("bath: 1, pH fresh: pH 8.5").doesNotContain("step: ");
            assertThat(frontMatter(saved(window))).contains("- id: wash").contains("- {bath: 1, pH fresh: pH 8.5}");
        });
    }

    /** The case saw straw yellow, then faintly yellow water, and washed until two baths in a row stayed as clear as fresh water. */
    @Test
    void the_colour_of_a_bath_is_told_beside_that_of_the_case_and_of_the_bath_before() {
        atTheBench((window, clock) -> {
            String note = "return [...document.querySelectorAll('[data-screen=step-wash] .screen__write')].slice(0, 2).map(write => {"
                    + "write.open = true; write.dispatchEvent(new Event('toggle'));"
                    + "const box = write.querySelectorAll('.screen__fields input')[3]; box.value = 'Straw yellow';"
                    + "box.dispatchEvent(new Event('change')); return write.querySelectorAll('.screen__told')[3].textContent; });";
            assertThat(window.texts(note)).containsExactly("As in the case.", "In the case it was: faintly yellow. "
                    + "The same as the bath before. Enough when: two baths in a row stay as clear as fresh water.");
        });
    }

    /** The case brings its bath to pH 8.5, of which a meter may read 0.1 more or less; it puts 60 to 66 % of paper under the boards. */
    @Test
    void a_reading_is_told_to_lie_within_above_or_below_what_the_sheet_gives() {
        atTheBench((window, clock) -> {
            String told = "return [document.querySelector('[data-screen=step-wash] .screen__fields .screen__told').textContent];";
            written(window, "step-wash", "8,6");
            assertThat(window.texts(told)).containsExactly("within pH 8.4–8.6, as the sheet gives it");
            written(window, "step-wash", "8.9");
            assertThat(window.texts(told)).containsExactly("above pH 8.4–8.6, as the sheet gives it: note it and ask before you go on");
            written(window, "step-wash", "7.0");
            assertThat(window.texts(told)).containsExactly("below pH 8.4–8.6, as the sheet gives it: note it and ask before you go on");
            written(window, "step-wash", "pH abc");
            assertThat(window.texts(told)).containsExactly("Not a number: not written down.");
            assertThat(window.texts("return [document.querySelector('[data-screen=step-wash] .screen__fields label').textContent,"
                    + "JSON.stringify(window.benchleaf.state().record).includes('abc')];"))
                    .containsExactly("pH, fresh (pH 8.4–8.6)", "false");
            assertThat(window.texts("return [...document.querySelectorAll('[data-screen=step-dry] [data-range]')].map(note =>"
                    + "note.dataset.key + ' ' + Math.round(note.dataset.low * 10) / 10 + ' ' + Math.round(note.dataset.high * 10) / 10);"))
                    .containsExactly("restrained 14.5 16.1");
        });
    }

    /** The first bath is timed for its 20 min on the clock of the test. */
    @Test
    void the_record_on_paper_names_the_object_and_tells_when_each_bath_began_and_ended() {
        whereAllIsReleased((window, clock) -> {
            pressed(window, BATH, IN);
            clock.set(20 * 60 + 5);
            assertThat(rings(window)).isTrue();
            clock.set(20 * 60 + 8);
            window.run("[...document.querySelectorAll('dialog button')].find(button => button.textContent === 'Lift out now').click();"
                    + "document.querySelector('[data-desk=bench]').click(); document.querySelector('[data-bench=record]').click();");
            assertThat(window.run("return document.querySelector('.screen__record').textContent;")).asString()
                    .startsWith("A tide table that had met the tide\n").contains("7. Washing\n")
                    .containsPattern("Bath 1: started \\d\\d:\\d\\d, stopped \\d\\d:\\d\\d\n");
        });
    }

    /** Wet and gloved hands: the house's own 48 px on the sheet as at the bench; a clock of twelve hours shows all of its time. */
    @Test
    void each_button_of_the_sheet_is_48_px_high_and_the_started_time_is_not_cut_off() {
        atTheBench((window, clock) -> {
            assertThat(window.texts("document.querySelectorAll('details').forEach(part => { part.open = true; });"
                    + "return [...document.querySelectorAll('.content button')].filter(button => button.offsetHeight > 0"
                    + "&& button.offsetHeight < 48).map(button => button.textContent + ' ' + button.offsetHeight);")).isEmpty();
            atStep(window, "step-look");
            window.run("document.querySelector('[data-bench=steps]').click();");
            assertThat(window.texts("const field = document.querySelector('[data-bench=started]'); const own = field.offsetWidth;"
                    + "field.style.inlineSize = 'max-content'; const needed = field.offsetWidth; field.style.inlineSize = '';"
                    + "return [own >= needed];")).containsExactly("true");
        });
    }

    /** A trainee who began on the French sheet goes on with the English one: it is the same record, and the sheet was not changed. */
    @Test
    void what_was_written_down_on_the_sheet_of_another_language_stays_and_is_not_taken_for_that_of_an_older_sheet() {
        atTheBench((window, clock) -> {
            window.open("fr/" + SHEET);
            written(window, "step-wash", "8,5");
            window.open(SHEET);
            assertThat(status(window)).isEmpty();
            assertThat(saved(window)).contains("\"pH fresh\": \"pH 8.5\"");
            written(window, "step-wash", "8,4");
            window.open("fr/" + SHEET);
            assertThat(status(window)).isEmpty();
            assertThat(saved(window)).contains("\"pH fresh\": \"pH 8.4\"").doesNotContain("8.5");
        });
    }

    @Test
    void a_sheet_that_was_changed_since_the_record_was_begun_says_so() {
        atTheBench((window, clock) -> {
            written(window, "step-wash", "8,5");
            window.run("const key = Object.keys(localStorage).find(one => one.endsWith('.tide-table.1'));"
                    + "const state = JSON.parse(localStorage.getItem(key)); state.record.issues.en = 'older';"
                    + "localStorage.setItem(key, JSON.stringify(state));");
            window.again();
            assertThat(status(window)).contains("changed");
        });
    }

    private static void written(Window window, String step, String value) {
        atStep(window, step);
        window.run("document.querySelectorAll('[data-screen=' + arguments[0] + '] .screen__write')[0].open = true;", step);
        window.until("document.querySelector('[data-screen=" + step + "] .screen__fields input')");
        window.run("const field = document.querySelector('[data-screen=' + arguments[0] + '] .screen__fields input');"
                + "field.value = arguments[1]; field.dispatchEvent(new Event('change'));", step, value);
    }

    private static String status(Window window) {
        return (String) window.run("return document.querySelector('.bench-desk__status').textContent;");
    }

    @Test
    void on_paper_every_step_is_there_even_if_the_bench_view_is_on_the_screen() {
        atTheBench((window, clock) -> {
            int all = shown(window).size();
            window.run("document.getElementById('tick-briefing').checked = true; document.querySelector('[data-desk=bench]').click();");
            assertThat(window.run("return document.querySelector('.strip').checkVisibility();")).isEqualTo(false);
            window.show(new Setting(768, Setting.Look.PRINT));
            assertThat(window.run("return document.querySelector('.strip').checkVisibility();")).isEqualTo(true);
            assertThat(shown(window)).hasSize(all);
        });
    }

    /** As {@code atTheBench}, after the briefing was ticked off and every hold point released. */
    private static void whereAllIsReleased(BiConsumer<Window, PageClock> work) {
        atTheBench((window, clock) -> {
            window.run("const view = document.getElementById('bench'); const issue = view.dataset.issue; const steps = {};"
                    + "view.querySelectorAll('.screen--hold').forEach(one => {"
                    + "steps[one.dataset.screen] = {released: {by: 'AB', role: 'supervisor', at: Date.now()}}; });"
                    + "localStorage.setItem(document.getElementById('desk').dataset.store, JSON.stringify({sheet: 1,"
                    + "ticks: {'tick-briefing': 1},"
                    + "asked: Object.fromEntries([...view.querySelectorAll('[data-stage]')].map(one => [one.dataset.stage, 1])),"
                    + "record: {issue: issue, issues: {en: issue}, steps: steps}}));");
            window.again();
            work.accept(window, clock);
        });
    }

    private static void atTheBench(BiConsumer<Window, PageClock> work) {
        Windows.lend(window -> {
            try (PageClock clock = PageClock.in(window)) {
                window.open(SHEET);
                window.run("localStorage.clear();");
                window.again();
                work.accept(window, clock);
            } finally {
                window.run("localStorage.clear();");
            }
        });
    }

    /** What the browser was asked to save. */
    private static String saved(Window window) {
        return window.textsLater("const done = arguments[0]; const click = HTMLAnchorElement.prototype.click;"
                + "URL.createObjectURL = blob => { blob.text().then(text => done([text])); return '#'; };"
                + "HTMLAnchorElement.prototype.click = () => {}; document.querySelector('[data-bench=save]').click();"
                + "HTMLAnchorElement.prototype.click = click;").get(0);
    }

    private static String frontMatter(String saved) {
        try {
            Path file = Files.createTempFile("record", ".json");
            Files.writeString(file, saved);
            StringWriter out = new StringWriter();
            assertThat(new CommandLine(new RecordsCommand()).setOut(new PrintWriter(out, true)).execute(file.toString())).isZero();
            Files.delete(file);
            return out.toString();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    private static String timer(String name) {
        return "[data-timer=" + name + "]";
    }

    private static String digits(Window window, String name) {
        return (String) window.run("return document.querySelector(arguments[0] + ' [role=timer]').textContent;", timer(name));
    }

    private static String stamped(Window window, String name) {
        return (String) window.run("return document.querySelector(arguments[0] + ' .timer__stamp').textContent;", timer(name));
    }

    private static String said(Window window, String name) {
        return (String) window.run("return document.querySelector(arguments[0] + ' [role=status]').textContent;", timer(name));
    }

    private static void pressed(Window window, String name, String words) {
        window.run("[...document.querySelectorAll(arguments[0] + ' button')].find(button => "
                + "button.textContent.replace(/\\s/g, ' ') === arguments[1])"
                + ".click();", timer(name), words);
    }

    private static void reset(Window window, PageClock clock, String name, long seconds) {
        pressed(window, name, "Reset");
        clock.set(seconds + 3);
        pressed(window, name, "Press again: back to the start");
    }

    /** What stands at the head of the bench view, after the page has looked at the clock. */
    private static List<String> heads(Window window) {
        window.run(Scripts.plain("do-again"));
        return window.texts("return [...document.querySelectorAll('.bench__due li')].map(one => one.textContent);");
    }

    private static void setMinutes(Window window, String name, String minutes) {
        pressed(window, name, "Other length");
        window.run("const field = document.querySelector(arguments[0] + ' input');"
                + "field.value = arguments[1]; field.dispatchEvent(new Event('change'));", timer(name), minutes);
    }

    private static void forward(Window window) {
        window.run("document.querySelector('[data-bench=next]').click();");
    }

    private static void atStep(Window window, String step) {
        window.run("document.getElementById('tick-briefing').checked = true; document.querySelector('[data-desk=bench]').click();"
                + "document.querySelector('[data-stage=' + arguments[0] + '] button').click();", step);
    }

    private static void initialled(Window window) {
        window.run("document.querySelector('.screen--hold:not([hidden]) input').value = 'AB';");
    }

    private static void release(Window window) {
        window.run("document.querySelector('.screen--hold:not([hidden]) .screen__release button').click();");
    }

    private static String releases(Window window) {
        return (String) window.run("return document.querySelector('.screen--hold:not([hidden]) .screen__release button').textContent;");
    }

    private static String told(Window window) {
        return (String) window.run("return document.querySelector('.screen--hold:not([hidden]) .screen__told').textContent;");
    }

    private static String latest(Window window) {
        return (String) window.run("return document.querySelector('.screen--hold:not([hidden]) .screen__latest').textContent;");
    }

    private static String screen(Window window) {
        return (String) window.run("return document.querySelector('.screen:not([hidden]) .screen__name').textContent;");
    }

    private static String heard(Window window) {
        return (String) window.run("return document.querySelector('.bench__said').textContent;");
    }

    private static void answered(Window window, String words) {
        window.run("[...document.querySelectorAll('dialog[open] button')]"
                + ".find(one => one.textContent.replace(/\\s/g, ' ') === arguments[0]).click();", words);
    }

    private static boolean rings(Window window) {
        return Boolean.TRUE.equals(window.run("return !!document.querySelector('dialog[open]');"));
    }

    private static List<String> shown(Window window) {
        return window.texts(Scripts.named("steps-shown"));
    }
}
