package org.benchleaf.pack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/**
 * What is still to be done once an edition is ready: written down before the first file moves, so that a run that is
 * cut off can be completed by the next.
 *
 * @param moves paths of staged files, in the order in which they move
 * @param removals paths of earlier editions' files that this one no longer has
 */
record Plan(List<String> moves, List<String> removals) {

    private static final JsonFactory JSON = new JsonFactory();

    Plan {
        moves = List.copyOf(moves);
        removals = List.copyOf(removals);
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonGenerator json = JSON.createGenerator(out)) {
            json.writeStartObject();
            write(json, "moves", moves);
            write(json, "removals", removals);
            json.writeEndObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    private static void write(JsonGenerator json, String name, List<String> paths) throws IOException {
        json.writeArrayFieldStart(name);
        for (String path : paths) {
            json.writeString(path);
        }
        json.writeEndArray();
    }

    /**
     * Reads a plan.
     *
     * @throws IOException if it is not one, or names a path that no edition can have
     */
    static Plan read(byte[] bytes) throws IOException {
        List<String> moves = new ArrayList<>();
        List<String> removals = new ArrayList<>();
        try (JsonParser json = JSON.createParser(bytes)) {
            json.nextToken();
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                List<String> into = json.currentName().equals("moves") ? moves : removals;
                json.nextToken();
                while (json.nextToken() == JsonToken.VALUE_STRING) {
                    if (PathRule.fault(json.getText()).isPresent()) {
                        throw new IOException("no path of an edition: " + json.getText());
                    }
                    into.add(json.getText());
                }
            }
        }
        return new Plan(moves, removals);
    }
}
