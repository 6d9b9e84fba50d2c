package org.benchleaf.json;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Holds written JSON against a reader, and its layout against RFC 8259 and texts written by hand. */
class JsonTextTest {

    private static final String ODD = "quote \" back \\ line\nend \u2028 <b> & \u0001 \t é 漢 𝄞";

    @Test
    void what_is_written_for_a_script_reads_back_the_same() throws Exception {
        String json = JsonText.script(JsonText.object("a", ODD, "n", 2.5, "yes", true, "list", List.of("x", "y"),
                "none", Optional.empty(), "empty", List.of()));
        var read = new ObjectMapper().readTree(json);
        assertThat(read.get("a").asText()).isEqualTo(ODD);
        assertThat(read.get("n").asDouble()).isEqualTo(2.5);
        assertThat(read.get("list")).hasSize(2);
        assertThat(read.has("none") || read.has("empty")).isFalse();
    }

    @Test
    void nothing_written_for_a_script_can_end_its_element() {
        assertThat(JsonText.script(List.of("</script><!--", "\u2029"))).doesNotContain("<", ">", "\u2029");
    }

    /** The browser's {@code JSON.stringify} writes these characters by their numbers in the same way; RFC 8259, section 7. */
    @Test
    void text_for_a_script_is_written_character_by_character() {
        assertThat(JsonText.script(Map.of("k<", "a\n\"\\\u001f&>\u2028é")))
                .isEqualTo("{\"k\\u003c\":\"a\\u000a\\\"\\\\\\u001f\\u0026\\u003e\\u2028é\"}");
    }

    @Test
    void text_for_people_has_each_value_on_a_line() {
        Map<String, Object> value = new LinkedHashMap<>();
        value.put("list", List.of(1, true));
        value.put("none", List.of());
        value.put("no keys", Map.of());
        value.put("text", "a\n<\u001f");
        assertThat(JsonText.of(value)).isEqualTo("""
                {
                  "list": [
                    1,
                    true
                  ],
                  "none": [],
                  "no keys": {},
                  "text": "a\\n<\\u001f"
                }""");
    }

    /** RFC 8259, section 6: infinities and what is no number are not permitted. */
    @Test
    void a_number_that_json_cannot_hold_is_nothing() {
        assertThat(JsonText.script(Arrays.asList(Double.NaN, Double.POSITIVE_INFINITY, null))).isEqualTo("[null,null,null]");
    }

    /**
     * The shortest digits that read back the same, as Java 19 and later write them and Java 17 does not. Source of the values: JDK-4511638,
     * "Double.toString(double) sometimes produces incorrect results".
     */
    @Test
    void a_number_is_written_the_same_on_every_machine() {
        assertThat(JsonText.script(List.of(2.0E-3, 2.0E23, 1.0E7, 3, 12345678901L))).isEqualTo("[0.002,2.0E23,1.0E7,3,12345678901]");
        assertThat(JsonText.script(2.2250738585072014E-308)).isEqualTo("2.2250738585072014E-308");
        assertThat(JsonText.script(Math.scalb(1.0, -44))).isEqualTo("5.684341886080802E-14");
    }
}
