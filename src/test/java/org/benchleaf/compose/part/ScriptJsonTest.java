package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Holds written JSON against another library's reader. */
class ScriptJsonTest {

    @Test
    void what_is_written_reads_back_the_same() throws Exception {
        String odd = "quote \" back \\ line\nend \u2028 <b> & \u0001 é 漢";
        String json = ScriptJson.text(ScriptJson.object("a", odd, "n", 2.5, "yes", true, "list", List.of("x", "y"),
                "none", Optional.empty(), "empty", List.of()));
        var read = new ObjectMapper().readTree(json);
        assertThat(read.get("a").asText()).isEqualTo(odd);
        assertThat(read.get("n").asDouble()).isEqualTo(2.5);
        assertThat(read.get("list")).hasSize(2);
        assertThat(read.has("none") || read.has("empty")).isFalse();
    }

    @Test
    void nothing_written_can_end_a_script_element() {
        assertThat(ScriptJson.text(List.of("</script><!--", "\u2029"))).doesNotContain("<", ">", "\u2029");
    }
}
