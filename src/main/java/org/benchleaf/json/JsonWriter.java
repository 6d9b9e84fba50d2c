package org.benchleaf.json;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.io.OutputStream;
import java.io.Writer;
import java.util.Collection;
import java.util.Map;

/** Writes JSON piece by piece. To be closed; what it writes to is closed with it. */
public final class JsonWriter implements AutoCloseable {

    private final JsonGenerator json;

    /**
     * Begins a file in UTF-8.
     *
     * @throws IOException if it cannot be written to, as all that writes may
     */
    public JsonWriter(OutputStream out, JsonForm form) throws IOException {
        json = form.on(JsonForm.FACTORY.createGenerator(out));
    }

    JsonWriter(Writer text, JsonForm form) throws IOException {
        json = form.on(JsonForm.FACTORY.createGenerator(text));
    }

    /** Begins an object: a value, or one under the name before it. */
    public void startObject() throws IOException {
        json.writeStartObject();
    }

    /** Ends the object. */
    public void endObject() throws IOException {
        json.writeEndObject();
    }

    /** Begins a list. */
    public void startList() throws IOException {
        json.writeStartArray();
    }

    /** Ends the list. */
    public void endList() throws IOException {
        json.writeEndArray();
    }

    /** The name of the value that comes next in an object. */
    public void name(String name) throws IOException {
        json.writeFieldName(name);
    }

    /** A text. */
    public void text(String text) throws IOException {
        json.writeString(text);
    }

    /** A whole number. */
    public void number(long number) throws IOException {
        json.writeNumber(number);
    }

    /** A value of any kind, with all in it, as {@link JsonText} tells. */
    public void value(Object value) throws IOException {
        if (value instanceof Map<?, ?> map) {
            startObject();
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                name(entry.getKey().toString());
                value(entry.getValue());
            }
            endObject();
        } else if (value instanceof Collection<?> list) {
            startList();
            for (Object each : list) {
                value(each);
            }
            endList();
        } else {
            plain(value);
        }
    }

    private void plain(Object value) throws IOException {
        if (value == null || value instanceof Double number && !Double.isFinite(number)) {
            json.writeNull();
        } else if (value instanceof Number || value instanceof Boolean) {
            json.writePOJO(value);
        } else {
            text(value.toString());
        }
    }

    @Override
    public void close() throws IOException {
        json.close();
    }
}
