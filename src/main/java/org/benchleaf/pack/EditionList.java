package org.benchleaf.pack;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.time.LocalDate;
import java.time.format.DateTimeParseException;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

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
    private static final JsonFactory JSON = new JsonFactory();

    EditionList {
        files = Collections.unmodifiableSortedMap(files);
    }

    static EditionList none() {
        return new EditionList(Optional.empty(), new TreeMap<>());
    }

    byte[] bytes() {
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        DefaultIndenter lines = new DefaultIndenter(" ", "\n");
        try (JsonGenerator json = JSON.createGenerator(out)) {
            json.setPrettyPrinter(new DefaultPrettyPrinter().withObjectIndenter(lines).withArrayIndenter(lines));
            json.writeStartObject();
            json.writeStringField("what", "files of this edition that Benchleaf wrote, with their SHA-256");
            if (on.isPresent()) {
                json.writeStringField(ON, on.get().toString());
            }
            json.writeObjectFieldStart("files");
            for (var file : files.entrySet()) {
                json.writeStringField(file.getKey(), file.getValue());
            }
            json.writeEndObject();
            json.writeEndObject();
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
        try (JsonParser json = JSON.createParser(bytes)) {
            expect(json.nextToken() == JsonToken.START_OBJECT);
            while (json.nextToken() == JsonToken.FIELD_NAME) {
                String field = json.currentName();
                JsonToken value = json.nextToken();
                if (field.equals("files")) {
                    expect(value == JsonToken.START_OBJECT);
                    found = true;
                    readFiles(json, files);
                } else if (field.equals(ON)) {
                    on = Optional.of(day(json));
                } else {
                    json.skipChildren();
                }
            }
            expect(json.currentToken() == JsonToken.END_OBJECT && found);
        }
        return new EditionList(on, files);
    }

    private static LocalDate day(JsonParser json) throws IOException {
        expect(json.currentToken() == JsonToken.VALUE_STRING);
        try {
            return LocalDate.parse(json.getText());
        } catch (DateTimeParseException noDay) {
            throw new IOException("not the day of an edition", noDay);
        }
    }

    private static void readFiles(JsonParser json, SortedMap<String, String> files) throws IOException {
        while (json.nextToken() == JsonToken.FIELD_NAME) {
            String path = json.currentName();
            expect(json.nextToken() == JsonToken.VALUE_STRING && PathRule.fault(path).isEmpty());
            files.put(path, json.getText());
        }
        expect(json.currentToken() == JsonToken.END_OBJECT);
    }

    private static void expect(boolean holds) throws IOException {
        if (!holds) {
            throw new IOException("not a list of an edition");
        }
    }
}
