package org.benchleaf.pack;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.json.JsonForm;
import org.benchleaf.json.JsonReader;
import org.benchleaf.json.JsonWriter;

/**
 * What is still to be done once an edition is ready: written down before the first file moves, so that a run that is
 * cut off can be completed by the next.
 *
 * @param moves paths of staged files, in the order in which they move
 * @param removals paths of earlier editions' files that this one no longer has
 */
record Plan(List<String> moves, List<String> removals) {

    Plan {
        moves = List.copyOf(moves);
        removals = List.copyOf(removals);
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonWriter json = new JsonWriter(out, JsonForm.COMPACT)) {
            json.startObject();
            json.name("moves");
            json.value(moves);
            json.name("removals");
            json.value(removals);
            json.endObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return out.toByteArray();
    }

    /**
     * Reads a plan.
     *
     * @throws IOException if it is not one, or names a path that no edition can have
     */
    static Plan read(byte[] bytes) throws IOException {
        List<String> moves = new ArrayList<>();
        List<String> removals = new ArrayList<>();
        try (JsonReader json = new JsonReader(new ByteArrayInputStream(bytes))) {
            json.startObject();
            while (json.hasMore()) {
                readPaths(json, json.name().equals("moves") ? moves : removals);
            }
            json.endObject();
        }
        return new Plan(moves, removals);
    }

    private static void readPaths(JsonReader json, List<String> into) throws IOException {
        json.startList();
        while (json.hasMore()) {
            String path = json.text();
            if (PathRule.fault(path).isPresent()) {
                throw new IOException("no path of an edition: " + path);
            }
            into.add(path);
        }
        json.endList();
    }
}
