package org.benchleaf.pack;

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
import org.benchleaf.json.JsonForm;
import org.benchleaf.json.JsonReader;
import org.benchleaf.json.JsonWriter;

/**
 * What one run leaves for the next, kept beside the site and never in it: notes may quote a case file.
 *
 * @param edition SHA-256 of the edition's list that it belongs to
 * @param cases what is remembered, by case
 */
record CaseMemory(String edition, SortedMap<String, Remembered> cases) {

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
                JsonWriter json = new JsonWriter(out, JsonForm.COMPACT)) {
            json.startList();
            json.text(FORM);
            json.text(edition);
            json.value(names.keySet());
            for (var each : cases.entrySet()) {
                write(json, each.getKey(), each.getValue(), names);
            }
            json.endList();
        }
    }

    private static void write(JsonWriter json, String id, Remembered remembered, Map<String, Integer> names)
            throws IOException {
        Batch batch = remembered.batch();
        json.startList();
        json.text(id);
        json.text(remembered.key());
        json.text(remembered.note());
        json.text(batch.heaviest());
        json.number(batch.weight());
        json.number(batch.files().size());
        for (var file : batch.files().entrySet()) {
            json.text(file.getKey());
            json.text(file.getValue().hash());
            json.number(file.getValue().size());
            json.number(file.getValue().time());
        }
        json.number(batch.reach().size());
        for (var page : batch.reach().entrySet()) {
            json.number(names.get(page.getKey()));
            json.number(page.getValue().size());
            for (String reached : page.getValue()) {
                json.number(names.get(reached));
            }
        }
        json.number(batch.leaves().size());
        for (var leaf : batch.leaves().entrySet()) {
            json.number(names.get(leaf.getKey()));
            json.number(names.get(leaf.getValue()));
        }
        json.endList();
    }

    /** Reads it; what is damaged or of another form is as good as forgotten, since it only saves work. */
    static CaseMemory read(Path file) {
        if (!Files.isRegularFile(file)) {
            return none();
        }
        try (InputStream in = Files.newInputStream(file); JsonReader json = new JsonReader(in)) {
            return new MemoryReader(json).read();
        } catch (IOException | IndexOutOfBoundsException damaged) {
            return none();
        }
    }

    /** Reads one memory. */
    private static final class MemoryReader {

        private final JsonReader json;
        private final List<String> names = new ArrayList<>();
        private final Map<List<String>, List<String>> reaches = new HashMap<>();

        MemoryReader(JsonReader json) {
            this.json = json;
        }

        CaseMemory read() throws IOException {
            json.startList();
            if (!json.text().equals(FORM)) {
                throw new IOException("not a memory of this form");
            }
            String edition = json.text();
            json.startList();
            while (json.hasMore()) {
                names.add(json.text());
            }
            json.endList();
            SortedMap<String, Remembered> cases = new TreeMap<>();
            while (json.hasMore()) {
                json.startList();
                cases.put(json.text(), remembered());
                json.endList();
            }
            json.endList();
            return new CaseMemory(edition, cases);
        }

        private Remembered remembered() throws IOException {
            String key = json.text();
            String note = json.text();
            String heaviest = json.text();
            long weight = json.number();
            Map<String, Batch.Written> files = new TreeMap<>();
            for (long left = json.number(); left > 0; left--) {
                files.put(json.text(), new Batch.Written(json.text(), json.number(), json.number()));
            }
            Map<String, List<String>> reach = new TreeMap<>();
            for (long left = json.number(); left > 0; left--) {
                String page = name();
                List<String> reached = new ArrayList<>();
                for (long more = json.number(); more > 0; more--) {
                    reached.add(name());
                }
                reach.put(page, reaches.computeIfAbsent(reached, List::copyOf));
            }
            Map<String, String> leaves = new TreeMap<>();
            for (long left = json.number(); left > 0; left--) {
                leaves.put(name(), name());
            }
            return new Remembered(key, note, new Batch(files, reach, leaves, heaviest, weight));
        }

        private String name() throws IOException {
            return names.get((int) json.number());
        }
    }
}
