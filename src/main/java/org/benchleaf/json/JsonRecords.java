package org.benchleaf.json;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.MapperFeature;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.ObjectReader;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.util.Optional;

/**
 * Records of one type as JSON on one line, and back.
 *
 * @param <T> the type
 */
public final class JsonRecords<T> {

    /** Only what the records are made of is written; what they tell besides would not be taken back. */
    private static final ObjectMapper JSON = JsonMapper.builder(JsonForm.FACTORY)
            .disable(MapperFeature.AUTO_DETECT_IS_GETTERS).build();

    private final ObjectWriter writer;
    private final ObjectReader reader;

    /** Makes ready to write and read records of a type, which may hold records, lists, maps, texts, numbers and enums. */
    public JsonRecords(Class<T> type) {
        writer = JSON.writerFor(type);
        reader = JSON.readerFor(type);
    }

    /** A record as text. */
    public String text(T one) {
        try {
            return writer.writeValueAsString(one);
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException("a record that holds more than records, words and numbers", impossible);
        }
    }

    /** The record in a text; empty if it is of another form, as an older version may have left. */
    public Optional<T> read(String text) {
        try {
            return Optional.of(reader.readValue(text));
        } catch (JsonProcessingException otherForm) {
            return Optional.empty();
        }
    }
}
