package org.benchleaf.browser;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Base64;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.parallel.Execution;
import org.junit.jupiter.api.parallel.ExecutionMode;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The step sheet as it is met: on a phone, on a desk, on paper, and by ear. The measures are the house's own. */
@Execution(ExecutionMode.CONCURRENT)
class StepSheetIT {

    private static final Pattern PAGE_OF_A_PDF = Pattern.compile("/Type /Page\\b");
    /** ISO 216, A4 in inches, as the browser's protocol asks for it. */
    private static final Map<String, Object> A4 = Map.of("paperWidth", 210 / 25.4, "paperHeight", 297 / 25.4);

    /** Two screens of a phone of 360 × 640 px before anything is opened; seven screens they were. */
    @ParameterizedTest
    @CsvSource({"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void the_briefing_takes_two_screens_of_a_phone_at_most(String name) {
        Windows.lend(window -> {
            window.show(new Setting(360, Setting.Look.LIGHT));
            window.open("cases/" + name + "/steps.html");
            assertThat(((Number) window.run("return document.getElementById('briefing').getBoundingClientRect().height;"))
                    .doubleValue()).isBetween(200.0, 2 * 640.0);
        });
    }

    @ParameterizedTest
    @CsvSource({"ferry-letter, 4", "flood-poster, 3", "lock-plan, 3", "parish-map, 5", "tide-table, 5"})
    void a_sheet_is_printed_on_few_pages_and_cuts_no_step(String name, int most) {
        Windows.lend(window -> {
            window.open("cases/" + name + "/steps.html");
            String pdf = new String(Base64.getDecoder().decode((String) window.ask("Page.printToPDF", A4).get("data")),
                    StandardCharsets.ISO_8859_1);
            assertThat(PAGE_OF_A_PDF.matcher(pdf).results().count()).isBetween(2L, (long) most);
            window.show(new Setting(768, Setting.Look.PRINT));
            assertThat(window.texts("return [...document.querySelectorAll('.strip__step')].map(step => "
                    + "getComputedStyle(step).breakInside);"))
                    .isNotEmpty().containsOnly("avoid");
        });
    }

    /** In the order in which a hand needs it: name, action, amount, what one should see, timer, caution. */
    @Test
    void a_screen_is_heard_in_the_order_of_the_hand_and_its_buttons_name_their_step() {
        atTheBench("step-tests", window -> assertThat(heard(window)).containsSubsequence("heading: 2. Testing: what each liquid does",
                "text: Set one small drop of each liquid on each ink, wait its whole dwell or until colour moves, "
                        + "blot, and look through the loupe.",
                "button: Begin: 2. Testing: what each liquid does",
                "DisclosureTriangle: More: 2. Testing: what each liquid does", "button: Back: 1. Examination",
                "button: Next: 2. Testing: what each liquid does Washing water, made gently alkaline"));
        atTheBench("step-look", window -> assertThat(heard(window)).containsSubsequence("heading: 1. Examination",
                "text: Look at both sides in normal, raking and transmitted light.", "text: You should see",
                "timer: This step, 1. Examination", "button: Step done: 1. Examination"));
    }

    @Test
    void a_hold_point_is_heard_as_a_heading_in_its_place() {
        atTheBench("step-relax", window -> assertThat(heard(window)).containsSubsequence("heading: 6. Prewetting Hold point",
                "text: Stop before: misting", "textbox: Initials: supervisor",
                "button: Released now: 6. Prewetting Hold point"));
        Windows.lend(window -> {
            window.open("cases/tide-table/steps.html");
            assertThat(heard(window)).containsSubsequence("heading: Hold point: 7. Washing", "heading: 7. Washing");
        });
    }

    private static void atTheBench(String step, java.util.function.Consumer<Window> work) {
        Windows.lend(window -> {
            window.open("cases/tide-table/steps.html");
            window.run("document.getElementById('tick-briefing').checked = true; document.querySelector('[data-desk=bench]').click();"
                    + "document.querySelector('[data-stage=' + arguments[0] + '] button').click();", step);
            try {
                work.accept(window);
            } finally {
                window.run("localStorage.clear();");
            }
        });
    }

    /** What a screen reader walks through, from the accessibility tree of the browser. */
    @SuppressWarnings("unchecked")
    private static List<String> heard(Window window) {
        List<Map<String, Object>> nodes = (List<Map<String, Object>>) window.ask("Accessibility.getFullAXTree", Map.of()).get("nodes");
        Map<String, Map<String, Object>> byId = new HashMap<>();
        nodes.forEach(node -> byId.put((String) node.get("nodeId"), node));
        List<String> heard = new ArrayList<>();
        walk(nodes.get(0), byId, heard);
        return heard;
    }

    @SuppressWarnings("unchecked")
    private static void walk(Map<String, Object> node, Map<String, Map<String, Object>> byId, List<String> heard) {
        if (!Boolean.TRUE.equals(node.get("ignored"))) {
            String role = text(node, "role").replace("StaticText", "text");
            heard.add(role + ": " + text(node, "name").replaceAll("\\s+", " ").strip());
        }
        ((List<String>) node.getOrDefault("childIds", List.of())).stream().map(byId::get).filter(java.util.Objects::nonNull)
                .forEach(child -> walk(child, byId, heard));
    }

    private static String text(Map<String, Object> node, String key) {
        return node.get(key) instanceof Map<?, ?> value && value.get("value") != null ? String.valueOf(value.get("value")) : "";
    }
}
