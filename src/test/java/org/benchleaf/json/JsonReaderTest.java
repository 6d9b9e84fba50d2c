package org.benchleaf.json;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Reads piece by piece what was written piece by piece, and refuses what is something else. */
class JsonReaderTest {

    private static JsonReader reader(String text) throws IOException {
        return new JsonReader(new ByteArrayInputStream(text.getBytes(StandardCharsets.UTF_8)));
    }

    @Test
    void what_was_written_comes_back_in_order() throws IOException {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonWriter json = new JsonWriter(out, JsonForm.LINES)) {
            json.startObject();
            json.name("passed over");
            json.value(Map.of("deep", List.of(1, List.of())));
            json.name("kept");
            json.startList();
            json.text("é");
            json.number(1L << 40);
            json.endList();
            json.endObject();
        }
        try (JsonReader json = reader(out.toString(StandardCharsets.UTF_8))) {
            json.startObject();
            assertThat(json.name()).isEqualTo("passed over");
            json.skip();
            assertThat(json.hasMore()).isTrue();
            assertThat(json.name()).isEqualTo("kept");
            json.startList();
            assertThat(json.text()).isEqualTo("é");
            assertThat(json.number()).isEqualTo(1L << 40);
            assertThat(json.hasMore()).isFalse();
            json.endList();
            json.endObject();
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{}", "[", "[1]", "[null]", "[\"a\"", "[\"a\", 1]", "no JSON"})
    void something_else_than_a_list_of_one_text_is_refused(String text) {
        assertThatThrownBy(() -> {
            try (JsonReader json = reader(text)) {
                json.startList();
                json.text();
                json.endList();
            }
        }).isInstanceOf(IOException.class);
    }
}
