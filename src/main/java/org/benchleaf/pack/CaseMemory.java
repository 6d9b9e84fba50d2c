package org.benchleaf.pack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import java.io.BufferedOutputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * What one run leaves for the next, kept beside the site and never in it: notes may quote a case file.
 *
 * @param edition SHA-256 of the edition's list that it belongs to
 * @param cases what is remembered, by case
 */
record CaseMemory(String edition, SortedMap<String, Remembered> cases) {

    private static final JsonFactory JSON = new JsonFactory();
    private static final String FORM = "2";

    static CaseMemory none() {
        return new CaseMemory("", new TreeMap<>());
    }

    /** Writes it; paths that many pages name are written once and then by number. */
    void write(Path file) throws IOException {
        Map<String, Integer> names = new LinkedHashMap<>();
        for (Remembered each : cases.values()) {
            each.batch().reach().forEach((page, reached) -> {
                names.putIfAbsent(page, names.size());
                reached.forEach(path -> names.putIfAbsent(path, names.size()));
            });
            each.batch().leaves().forEach((leaf, page) -> {
                names.putIfAbsent(leaf, names.size());
                names.putIfAbsent(page, names.size());
            });
        }
        try (OutputStream out = new BufferedOutputStream(Files.newOutputStream(file), 1 << 16);
                JsonGenerator json = JSON.createGenerator(out)) {
            json.writeStartArray();
            json.writeString(FORM);
            json.writeString(edition);
            json.writeStartArray();
            for (String name : names.keySet()) {
                json.writeString(name);
            }
            json.writeEndArray();
            for (var each : cases.entrySet()) {
                write(json, each.getKey(), each.getValue(), names);
            }
            json.writeEndArray();
        }
    }

    private static void write(JsonGenerator json, String id, Remembered remembered, Map<String, Integer> names)
            throws IOException {
        Batch batch = remembered.batch();
        json.writeStartArray();
        json.writeString(id);
        json.writeString(remembered.key());
        json.writeString(remembered.note());
        json.writeString(batch.heaviest());
        json.writeNumber(batch.weight());
        json.writeNumber(batch.files().size());
        for (var file : batch.files().entrySet()) {
            json.writeString(file.getKey());
            json.writeString(file.getValue().hash());
            json.writeNumber(file.getValue().size());
            json.writeNumber(file.getValue().time());
        }
        json.writeNumber(batch.reach().size());
        for (var page : batch.reach().entrySet()) {
            json.writeNumber(names.get(page.getKey()));
            json.writeNumber(page.getValue().size());
            for (String reached : page.getValue()) {
                json.writeNumber(names.get(reached));
            }
        }
        json.writeNumber(batch.leaves().size());
        for (var leaf : batch.leaves().entrySet()) {
            json.writeNumber(names.get(leaf.getKey()));
            json.writeNumber(names.get(leaf.getValue()));
        }
        json.writeEndArray();
    }

    /** Reads it; what is damaged or of another form is as good as forgotten, since it only saves work. */
    static CaseMemory read(Path file) {
        if (!Files.isRegularFile(file)) {
            return none();
        }
        try (InputStream in = Files.newInputStream(file); JsonParser json = JSON.createParser(in)) {
            return new Reader(json).read();
        } catch (IOException | IndexOutOfBoundsException damaged) {
            return none();
        }
    }

    /** Reads one memory. */
    private static final class Reader {

        private final JsonParser json;
        private final List<String> names = new ArrayList<>();
        private final Map<List<String>, List<String>> reaches = new HashMap<>();

        Reader(JsonParser json) {
            this.json = json;
        }

        CaseMemory read() throws IOException {
            expect(json.nextToken() == JsonToken.START_ARRAY);
            expect(text().equals(FORM));
            String edition = text();
            expect(json.nextToken() == JsonToken.START_ARRAY);
            while (json.nextToken() == JsonToken.VALUE_STRING) {
                names.add(json.getText());
            }
            SortedMap<String, Remembered> cases = new TreeMap<>();
            while (json.nextToken() == JsonToken.START_ARRAY) {
                cases.put(text(), remembered());
                expect(json.nextToken() == JsonToken.END_ARRAY);
            }
            expect(json.currentToken() == JsonToken.END_ARRAY);
            return new CaseMemory(edition, cases);
        }

        private Remembered remembered() throws IOException {
            String key = text();
            String note = text();
            String heaviest = text();
            long weight = number();
            Map<String, Batch.Written> files = new TreeMap<>();
            for (long left = number(); left > 0; left--) {
                files.put(text(), new Batch.Written(text(), number(), number()));
            }
            Map<String, List<String>> reach = new TreeMap<>();
            for (long left = number(); left > 0; left--) {
                String page = name();
                List<String> reached = new ArrayList<>();
                for (long more = number(); more > 0; more--) {
                    reached.add(name());
                }
                reach.put(page, reaches.computeIfAbsent(reached, List::copyOf));
            }
            Map<String, String> leaves = new TreeMap<>();
            for (long left = number(); left > 0; left--) {
                leaves.put(name(), name());
            }
            return new Remembered(key, note, new Batch(files, reach, leaves, heaviest, weight));
        }

        private String text() throws IOException {
            expect(json.nextToken() == JsonToken.VALUE_STRING);
            return json.getText();
        }

        private long number() throws IOException {
            expect(json.nextToken() == JsonToken.VALUE_NUMBER_INT);
            return json.getLongValue();
        }

        private String name() throws IOException {
            return names.get((int) number());
        }

        private static void expect(boolean holds) throws IOException {
            if (!holds) {
                throw new IOException("not a memory of this form");
            }
        }
    }
}
