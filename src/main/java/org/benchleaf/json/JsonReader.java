package org.benchleaf.json;

import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.IOException;
import java.io.InputStream;

/** Reads JSON piece by piece, in the order in which it was written. To be closed; what it reads from is closed with it. */
public final class JsonReader implements AutoCloseable {

    private final JsonParser json;
    private boolean ahead;

    /**
     * Begins a file in UTF-8.
     *
     * @throws IOException if it cannot be read, or is no JSON, as all that reads may
     */
    public JsonReader(InputStream in) throws IOException {
        json = JsonForm.FACTORY.createParser(in);
    }

    /**
     * Goes into an object.
     *
     * @throws IOException if something else comes next
     */
    public void startObject() throws IOException {
        take(JsonToken.START_OBJECT);
    }

    /**
     * Leaves the object.
     *
     * @throws IOException if it holds more
     */
    public void endObject() throws IOException {
        take(JsonToken.END_OBJECT);
    }

    /**
     * Goes into a list.
     *
     * @throws IOException if something else comes next
     */
    public void startList() throws IOException {
        take(JsonToken.START_ARRAY);
    }

    /**
     * Leaves the list.
     *
     * @throws IOException if it holds more
     */
    public void endList() throws IOException {
        take(JsonToken.END_ARRAY);
    }

    /** Whether the object or list holds more. */
    public boolean hasMore() throws IOException {
        JsonToken next = next();
        return next != null && !next.isStructEnd();
    }

    /**
     * The name of the value that comes next.
     *
     * @throws IOException if no name comes next
     */
    public String name() throws IOException {
        take(JsonToken.FIELD_NAME);
        return json.currentName();
    }

    /**
     * A text.
     *
     * @throws IOException if something else comes next
     */
    public String text() throws IOException {
        take(JsonToken.VALUE_STRING);
        return json.getText();
    }

    /**
     * A whole number.
     *
     * @throws IOException if something else comes next
     */
    public long number() throws IOException {
        take(JsonToken.VALUE_NUMBER_INT);
        return json.getLongValue();
    }

    /** Passes over a value with all in it. */
    public void skip() throws IOException {
        next();
        json.skipChildren();
        ahead = false;
    }

    private JsonToken next() throws IOException {
        if (!ahead) {
            json.nextToken();
            ahead = true;
        }
        return json.currentToken();
    }

    private void take(JsonToken wanted) throws IOException {
        JsonToken found = next();
        if (found != wanted) {
            throw new IOException("expected " + wanted + ", found " + found);
        }
        ahead = false;
    }

    @Override
    public void close() throws IOException {
        json.close();
    }
}
