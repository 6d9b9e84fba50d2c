package org.benchleaf.pack;

import java.io.ByteArrayInputStream;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import org.benchleaf.json.JsonForm;
import org.benchleaf.json.JsonReader;
import org.benchleaf.json.JsonWriter;

/**
 * The list of an edition's files, {@code edition.json} in the site: by it the next run tells its own files from
 * others, and whether its day has gone back. It holds a day, paths and hashes only, nothing of any case's text.
 *
 * @param on the day by which its permissions were judged; empty if the list does not tell
 * @param files SHA-256 in hexadecimal, by path
 */
record EditionList(Optional<LocalDate> on, SortedMap<String, String> files) {

    /** Where it stands in the site. */
    static final String PATH = "edition.json";

    private static final String ON = "on";
    private static final String FILES = "files";

    EditionList {
        files = Collections.unmodifiableSortedMap(files);
    }

    static EditionList none() {
        return new EditionList(Optional.empty(), new TreeMap<>());
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        try (JsonWriter json = new JsonWriter(out, JsonForm.LINES)) {
            json.startObject();
            json.name("what");
            json.text("files of this edition that Benchleaf wrote, with their SHA-256");
            if (on.isPresent()) {
                json.name(ON);
                json.text(on.get().toString());
            }
            json.name(FILES);
            json.value(files);
            json.endObject();
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        out.write('\n');
        return out.toByteArray();
    }

    /**
     * Reads a list.
     *
     * @throws IOException if it is not one, or names a path that no edition can have
     */
    static EditionList read(byte[] bytes) throws IOException {
        SortedMap<String, String> files = new TreeMap<>();
        Optional<LocalDate> on = Optional.empty();
        boolean found = false;
        try (JsonReader json = new JsonReader(new ByteArrayInputStream(bytes))) {
            json.startObject();
            while (json.hasMore()) {
                switch (json.name()) {
                    case FILES -> {
                        found = true;
                        readFiles(json, files);
                    }
                    case ON -> on = Optional.of(day(json.text()));
                    default -> json.skip();
                }
            }
            json.endObject();
        }
        if (!found) {
            throw new IOException("not a list of an edition");
        }
        return new EditionList(on, files);
    }

    private static LocalDate day(String text) throws IOException {
        try {
            return LocalDate.parse(text);
        } catch (DateTimeParseException noDay) {
            throw new IOException("not the day of an edition", noDay);
        }
    }

    private static void readFiles(JsonReader json, SortedMap<String, String> files) throws IOException {
        json.startObject();
        while (json.hasMore()) {
            String path = json.name();
            if (PathRule.fault(path).isPresent()) {
                throw new IOException("no path of an edition: " + path);
            }
            files.put(path, json.text());
        }
        json.endObject();
    }
}
