package org.benchleaf.derive.time;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.benchleaf.derive.Invented.q;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.Stream;
import org.benchleaf.derive.Invented;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedTime;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.jgrapht.alg.shortestpath.BellmanFordShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleDirectedWeightedGraph;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Holds times against sums by hand and against the longest paths of the JGraphT library. */
class TimelineTest {

    private static final Part.Blotters BLOTTERS = new Part.Blotters(List.of(Optional.of(q("15 min")),
            Optional.of(q("30 min")), Optional.of(q("1 h")), Optional.of(q("3 h")), Optional.empty()),
            Optional.empty(), 1, Optional.empty(), Optional.empty());

    private static Timeline.TimedStep step(Timeline timeline, String id) {
        return timeline.steps().stream().filter(one -> one.step().equals(id)).findFirst().orElseThrow();
    }

    private static Timeline.ClockedStep day(Timeline timeline, String id) {
        return timeline.days().stream().filter(one -> one.step().equals(id)).findFirst().orElseThrow();
    }

    private static Timeline timeline(Invented invented) {
        return invented.derived().worked().timeline();
    }

    private static LocalDateTime at(String text) {
        return LocalDateTime.parse(text);
    }

    @Test
    void earliest_times_are_ranges_and_the_longer_branch_is_critical() {
        Timeline timeline = timeline(new Invented().step("look", Map.of("takes", "30 min to 60 min"), List.of())
                .step("short", Map.of("takes", "10 min"), List.of("look"))
                .step("long", Map.of("takes", "40 min to 50 min"), List.of("look"))
                .step("end", Map.of("takes", "20 min"), List.of("short", "long")));
        // By hand: quick 30 + 40 + 20 = 90 min, slow 60 + 50 + 20 = 130 min; usual slack of short 45 − 10 = 35 min.
        assertThat(timeline.total().lowIn(Unit.MINUTE)).isEqualTo(90);
        assertThat(timeline.total().highIn(Unit.MINUTE)).isEqualTo(130);
        assertThat(step(timeline, "end").start().low()).isEqualTo(70);
        assertThat(step(timeline, "end").start().high()).isEqualTo(110);
        assertThat(step(timeline, "short").slack().value()).isEqualTo(35);
        assertThat(timeline.steps().stream().filter(Timeline.TimedStep::critical).map(Timeline.TimedStep::step))
                .containsExactly("look", "long", "end");
    }

    /**
     * By hand: about 3 h is 2.5 h to 3.5 h, about 20 min is 17.5 min to 22.5 min, about 45 min is 40.5 min to 49.5 min (common
     * practice, no source); less than 10 min is nothing to 10 min.
     */
    @Test
    void a_time_told_in_words_keeps_its_ends_through_the_sum() {
        Timeline timeline = timeline(new Invented().step("a", Map.of("takes", "about 3 h"), List.of())
                .step("b", Map.of("takes", "about 20 min"), List.of("a")).step("c", Map.of("takes", "about 45 min"), List.of("b"))
                .step("d", Map.of("takes", "less than 10 min"), List.of("c")));
        assertThat(timeline.total().lowIn(Unit.MINUTE)).isEqualTo(150 + 17.5 + 40.5);
        assertThat(timeline.total().in(Unit.MINUTE)).isEqualTo(180 + 20 + 45 + 10);
        assertThat(timeline.total().highIn(Unit.MINUTE)).isEqualTo(210 + 22.5 + 49.5 + 10);
        assertThat(timeline.complete()).isTrue();
    }

    /** By hand: half a step of the last digit, in fives after a five or a nought, a tenth to a quarter (common practice, no source). */
    @ParameterizedTest
    @CsvSource({"1 min, 0.75, 1.25", "3 min, 2.5, 3.5", "5 min, 3.75, 6.25", "8 min, 7.2, 8.8", "10 min, 7.5, 12.5", "15 min, 12.5, 17.5",
        "30 min, 27, 33", "50 min, 45, 55", "100 min, 90, 110", "500 min, 450, 550", "1 h, 45, 75", "1.5 h, 75, 105", "2 h, 90, 150",
        "8 h, 432, 528", "2 d, 2160, 3600", "14 d, 18144, 22176", "8 wk, 72576, 88704"})
    void a_time_told_as_about_leaves_open_what_its_last_digit_does(String told, double low, double high) {
        Quantity span = Invented.time("about " + told).span();
        assertThat(span.lowIn(Unit.MINUTE)).isCloseTo(low, within(1e-6));
        assertThat(span.highIn(Unit.MINUTE)).isCloseTo(high, within(1e-6));
    }

    /** By hand: of 60 min about 20 min is 17.5 to 22.5 min; more than 20 min is 20 to 60 min; less than 20 min, nothing to 20 min. */
    @ParameterizedTest
    @CsvSource({"about 20 min, 17.5, 22.5", "more than 20 min, 20, 60", "less than 20 min, 0, 20", "20 min to 30 min, 20, 30"})
    void what_needs_a_person_may_be_told_in_words(String hands, double low, double high) {
        Timeline timeline = timeline(new Invented().step("a", Map.of("takes", "60 min", "hands", hands), List.of()));
        assertThat(step(timeline, "a").handsOn().lowIn(Unit.MINUTE)).isEqualTo(low);
        assertThat(step(timeline, "a").handsOn().highIn(Unit.MINUTE)).isEqualTo(high);
    }

    /** By hand: fill 10 min, three baths, two changes of 2 min. */
    @Test
    void the_times_of_baths_may_be_told_in_words() {
        Timeline about = timeline(new Invented().step("wash", Map.of(), List.of(),
                bath("50 mm", Optional.of("10 min"), Optional.of("2 min"), List.of(Invented.time("about 20 min")))));
        assertThat(step(about, "wash").takes().lowIn(Unit.MINUTE)).isCloseTo(10 + 3 * 17.5 + 4, within(1e-9));
        assertThat(step(about, "wash").takes().highIn(Unit.MINUTE)).isCloseTo(10 + 3 * 22.5 + 4, within(1e-9));
        Timeline more = timeline(new Invented().step("wash", Map.of(), List.of(),
                bath("50 mm", Optional.of("10 min"), Optional.of("2 min"), List.of(Invented.time("more than 20 min")))));
        assertThat(step(more, "wash").atLeast()).isTrue();
        assertThat(step(more, "wash").takes().lowIn(Unit.MINUTE)).isGreaterThanOrEqualTo(60);
        assertThat(more.complete()).isFalse();
    }

    @Test
    void a_time_told_as_more_than_so_much_makes_the_sum_a_least_one() {
        Timeline timeline = timeline(new Invented().step("a", Map.of("takes", "more than 2 h"), List.of())
                .step("b", Map.of("takes", "30 min"), List.of("a")));
        assertThat(timeline.total().lowIn(Unit.MINUTE)).isEqualTo(150);
        assertThat(timeline.complete()).isFalse();
        assertThat(step(timeline, "a").atLeast()).isTrue();
        assertThat(step(timeline, "b").startKnown()).isFalse();
    }

    @Test
    void baths_follow_one_another_while_weight_and_blotters_go_together() {
        Timeline timeline = timeline(new Invented()
                .step("wash", Map.of("hands", "50 %"), List.of(), Invented.bath("deionised-water", "50 mm", "30 mm", 3))
                .step("dry", Map.of("hands", "30 min", "overnight", "yes"), List.of("wash"), BLOTTERS,
                        new Part.Press(1, Optional.of(q("4 kg")), Optional.empty(), Optional.empty(), List.of(),
                                Optional.of(q("3 d")))));
        // By hand, with the usual 3 to 6 min to fill and 3 to 5 min for a change: 3 + 60 + 2 · 3 and 6 + 60 + 2 · 5 min.
        assertThat(step(timeline, "wash").takes().lowIn(Unit.MINUTE)).isEqualTo(69);
        assertThat(step(timeline, "wash").takes().highIn(Unit.MINUTE)).isEqualTo(76);
        assertThat(step(timeline, "wash").handsOn().highIn(Unit.MINUTE)).isEqualTo(38);
        assertThat(step(timeline, "wash").moments()).extracting(moment -> moment.at().low()).containsExactly(23.0, 46.0);
        assertThat(step(timeline, "wash").moments()).extracting(moment -> moment.at().high()).containsExactly(26.0, 51.0);
        assertThat(step(timeline, "dry").takes().value()).isEqualTo(3 * 24 * 60);
        // By hand: 15, 45, 105 and 285 min; the last waits for the next morning.
        assertThat(step(timeline, "dry").moments()).extracting(moment -> moment.at().low())
                .startsWith(15.0, 45.0, 105.0, 285.0);
        assertThat(step(timeline, "dry").moments().get(4).overnight()).isTrue();
    }

    private static Part.Bath bath(String margin, Optional<String> filling, Optional<String> changing) {
        return bath(margin, filling, changing, List.of(Invented.time("20 min")));
    }

    private static Part.Bath bath(String margin, Optional<String> filling, Optional<String> changing, List<StatedTime> each) {
        return new Part.Bath("deionised-water", Optional.of(q(margin)), Optional.of(q("30 mm")), 3, true, Optional.empty(), each,
                Optional.empty(),
                1, Optional.empty(), List.of(), filling.map(Invented::q), changing.map(Invented::q));
    }

    @Test
    void a_case_tells_its_own_times_of_filling_and_changing() {
        Timeline timeline = timeline(new Invented().step("wash", Map.of(), List.of(),
                bath("50 mm", Optional.of("10 min"), Optional.of("2 min"))));
        // By hand: 10 + 60 + 2 · 2 min.
        assertThat(step(timeline, "wash").takes()).satisfies(takes -> {
            assertThat(takes.lowIn(Unit.MINUTE)).isEqualTo(74);
            assertThat(takes.highIn(Unit.MINUTE)).isEqualTo(74);
        });
        assertThat(step(timeline, "wash").moments()).extracting(moment -> moment.at().value()).containsExactly(30.0, 52.0);
    }

    @Test
    void baths_of_unlike_length_follow_one_another_as_each_is_told() {
        Timeline timeline = timeline(new Invented().step("wash", Map.of(), List.of(),
                bath("50 mm", Optional.of("10 min"), Optional.of("2 min"),
                        Stream.of("20 min", "15 min", "30 min").map(Invented::time).toList())));
        // By hand: 10 + 20 + 2 + 15 + 2 + 30 min.
        assertThat(step(timeline, "wash").takes().value()).isEqualTo(79);
        assertThat(step(timeline, "wash").moments()).extracting(moment -> moment.at().value()).containsExactly(30.0, 47.0);
    }

    @Test
    void of_a_bath_larger_than_a_tray_nobody_knows_how_long_it_takes_to_fill() {
        // By hand: (420 + 800) · (594 + 800) · 30 mm are 51 L.
        Timeline timeline = timeline(new Invented().step("wash", Map.of(), List.of(), bath("400 mm", Optional.empty(), Optional.empty()))
                .step("dry", Map.of("takes", "1 h"), List.of("wash")));
        assertThat(step(timeline, "wash").takes().value()).isEqualTo(60);
        assertThat(step(timeline, "wash").atLeast()).isTrue();
        assertThat(step(timeline, "dry").startKnown()).isFalse();
        assertThat(timeline.complete()).isFalse();
    }

    @Test
    void a_time_that_the_case_tells_in_all_has_filling_and_changing_in_it() {
        Timeline timeline = timeline(new Invented().step("wash", Map.of("takes", "70 min"), List.of(),
                bath("50 mm", Optional.empty(), Optional.empty())));
        assertThat(step(timeline, "wash").takes().value()).isEqualTo(70);
        assertThat(timeline.complete()).isTrue();
    }

    /** By hand: 60 min and two changes of 3 min are 66 min at least, with filling 69; only the first are a matter of the sheet. */
    @Test
    void a_limit_counts_from_the_first_bath_on() {
        assertThat(new Invented().step("wash", Map.of("most", "67 min"), List.of(), Invented.bath("deionised-water", "50 mm", "30 mm", 3))
                .codes()).isEmpty();
        assertThat(new Invented().step("wash", Map.of("most", "65 min"), List.of(), Invented.bath("deionised-water", "50 mm", "30 mm", 3))
                .codes()).containsExactly("FIG-008");
    }

    @Test
    void a_step_that_does_not_fit_before_closing_waits_for_the_next_working_day() {
        // 2026-03-20 is a Friday; the studio works from 9 to 17, Monday to Friday.
        Timeline timeline = timeline(new Invented().step("a", Map.of("takes", "7 h", "on", "2026-03-20"), List.of())
                .step("b", Map.of("takes", "1 h"), List.of("a"))
                .step("c", Map.of("takes", "30 min"), List.of("b")));
        assertThat(day(timeline, "b").earliestStart()).isEqualTo(at("2026-03-20T16:00"));
        assertThat(day(timeline, "c").earliestStart()).isEqualTo(at("2026-03-23T09:00"));
    }

    @Test
    void a_step_longer_than_a_day_goes_on_the_next_morning() {
        Timeline timeline = timeline(new Invented().step("a", Map.of("takes", "10 h", "on", "2026-03-20"), List.of()));
        // By hand: 8 h on Friday, 2 h on Monday.
        assertThat(day(timeline, "a").earliestEnd()).isEqualTo(at("2026-03-23T11:00"));
    }

    @Test
    void blotter_changes_are_clock_times_and_overnight_is_the_next_morning() {
        Timeline timeline = timeline(new Invented().step("dry",
                Map.of("hands", "30 min", "overnight", "yes", "on", "2026-03-19"), List.of(), BLOTTERS));
        assertThat(day(timeline, "dry").moments()).extracting(Timeline.ClockedMoment::earliest).containsExactly(
                at("2026-03-19T09:15"), at("2026-03-19T09:45"), at("2026-03-19T10:45"), at("2026-03-19T13:45"),
                at("2026-03-20T09:00"));
        assertThat(day(timeline, "dry").earliestEnd()).isEqualTo(at("2026-03-20T09:00"));
    }

    @Test
    void a_change_when_nobody_is_there_waits_and_is_told() {
        Invented invented = new Invented().step("wash", Map.of("takes", "5 h", "on", "2026-03-19"), List.of())
                .step("dry", Map.of("hands", "30 min", "overnight", "yes"), List.of("wash"), BLOTTERS);
        // By hand: from 14:00 the changes fall at 14:15, 14:45, 15:45 and 18:45, after closing.
        assertThat(day(timeline(invented), "dry").moments().get(3).earliest()).isEqualTo(at("2026-03-20T09:00"));
        assertThat(invented.codes()).containsExactly("FIG-020");
    }

    @Test
    void a_later_recorded_day_is_waited_for_and_an_impossible_one_is_told() {
        Invented waits = new Invented().step("a", Map.of("takes", "1 h", "on", "2026-03-19"), List.of())
                .step("b", Map.of("takes", "1 h", "on", "2026-03-24"), List.of("a"));
        assertThat(day(timeline(waits), "b").earliestStart()).isEqualTo(at("2026-03-24T09:00"));
        assertThat(waits.codes()).isEmpty();
        Invented impossible = new Invented().step("a", Map.of("takes", "20 h", "on", "2026-03-17"), List.of())
                .step("b", Map.of("takes", "1 h", "on", "2026-03-18"), List.of("a"));
        assertThat(impossible.codes()).containsExactly("FIG-021");
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3, 5, 8, 13, 21, 34, 55, 89})
    void earliest_ends_and_slack_agree_with_longest_paths_of_another_library(long seed) {
        Random random = new Random(seed);
        int count = 2 + random.nextInt(30);
        Map<String, Double> lengths = new LinkedHashMap<>();
        Map<String, List<String>> after = new LinkedHashMap<>();
        SimpleDirectedWeightedGraph<String, DefaultWeightedEdge> graph =
                new SimpleDirectedWeightedGraph<>(DefaultWeightedEdge.class);
        graph.addVertex("start");
        graph.addVertex("end");
        for (int i = 0; i < count; i++) {
            String name = "s" + i;
            graph.addVertex(name);
            lengths.put(name, (double) random.nextInt(100));
            List<String> before = new ArrayList<>();
            for (int j = 0; j < i; j++) {
                if (random.nextInt(4) == 0) {
                    before.add("s" + j);
                }
            }
            after.put(name, before);
        }
        // A vertex stands for the begin of a step; an edge is as long as the step it leaves, and its weight negative.
        after.forEach((name, before) -> {
            graph.setEdgeWeight(graph.addEdge("start", name), 0);
            graph.setEdgeWeight(graph.addEdge(name, "end"), -lengths.get(name));
            before.forEach(one -> graph.setEdgeWeight(graph.addEdge(one, name), -lengths.get(one)));
        });
        BellmanFordShortestPath<String, DefaultWeightedEdge> paths = new BellmanFordShortestPath<>(graph);
        CriticalPath ours = new CriticalPath(lengths, Map.of(), after);
        double total = -paths.getPathWeight("start", "end");
        assertThat(ours.total()).isCloseTo(total, within(1e-9));
        for (String name : lengths.keySet()) {
            double start = -paths.getPathWeight("start", name);
            double toEnd = -paths.getPathWeight(name, "end");
            assertThat(ours.start(name)).isCloseTo(start, within(1e-9));
            assertThat(ours.slack(name)).isCloseTo(total - start - toEnd, within(1e-9));
        }
    }

    @ParameterizedTest
    @ValueSource(longs = {7, 11, 19, 23})
    void a_slower_step_never_makes_any_step_earlier(long seed) {
        Random random = new Random(seed);
        Invented quick = new Invented();
        Invented slow = new Invented();
        for (int i = 0; i < 12; i++) {
            int least = 10 + random.nextInt(600);
            int most = least + random.nextInt(300);
            List<String> after = i == 0 ? List.of() : List.of("s" + random.nextInt(i));
            Map<String, String> keys = i == 0 ? Map.of("on", "2026-03-16") : Map.of();
            quick.step("s" + i, with(keys, least + " min to " + most + " min"), after);
            slow.step("s" + i, with(keys, (least + 30) + " min to " + (most + 30) + " min"), after);
        }
        Timeline first = timeline(quick);
        Timeline second = timeline(slow);
        for (int i = 0; i < 12; i++) {
            assertThat(first.days().get(i).earliestStart()).isBeforeOrEqualTo(first.days().get(i).latestStart());
            assertThat(step(first, "s" + i).start().low()).isLessThanOrEqualTo(step(second, "s" + i).start().low());
        }
    }

    private static Map<String, String> with(Map<String, String> keys, String takes) {
        Map<String, String> more = new LinkedHashMap<>(keys);
        more.put("takes", takes);
        return more;
    }

    @Test
    void a_wait_counts_between_steps_at_both_ends() {
        // By hand: 1 h, then 6 to 8 weeks, then 30 min: 60480 + 90 = 60570 and 80640 + 90 = 80730 min.
        Timeline timeline = new Invented().step("wax", Map.of("takes", "1 h"), List.of())
                .step("wash", Map.of("takes", "30 min", "wait", "6 wk to 8 wk"), List.of("wax")).derived().worked().timeline();
        assertThat(timeline.total().lowIn(Unit.MINUTE)).isEqualTo(60570);
        assertThat(timeline.total().highIn(Unit.MINUTE)).isEqualTo(80730);
        assertThat(timeline.handsOn().in(Unit.MINUTE)).isEqualTo(90);
        assertThat(timeline.complete()).isTrue();
    }

    @Test
    void a_wait_for_a_sign_makes_what_follows_at_least() {
        Timeline timeline = new Invented().step("wax", Map.of("takes", "1 h"), List.of())
                .step("wash", Map.of("takes", "30 min", "sign", "when the wax is gone"), List.of("wax")).derived().worked().timeline();
        assertThat(timeline.complete()).isFalse();
        assertThat(timeline.steps().get(1).startKnown()).isFalse();
    }
}
