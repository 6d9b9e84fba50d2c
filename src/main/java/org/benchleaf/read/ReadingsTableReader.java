package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;

/** Cuts a table of readings into cells: comma, semicolon or tab between them, double quotes around them (RFC 4180). */
final class ReadingsTableReader {

    private final TextFile file;
    private final Lines lines;
    private final char delimiter;
    private final Messages messages;

    private ReadingsTableReader(TextFile file, char delimiter, Messages messages) {
        this.file = file;
        this.lines = file.lines();
        this.delimiter = delimiter;
        this.messages = messages;
    }

    static Optional<ReadingsTable> read(String name, TextFile file, Messages messages) {
        String first = file.text().lines().findFirst().orElse("");
        if (first.isBlank()) {
            messages.add(ReadingMessages.TABLE_EMPTY.at(Place.file(file.name())));
            return Optional.empty();
        }
        return Optional.of(new ReadingsTableReader(file, delimiter(first), messages).table(name));
    }

    /** The sign that cuts the header into the most cells. */
    private static char delimiter(String header) {
        char best = ',';
        for (char candidate : new char[] {';', '\t'}) {
            best = count(header, candidate) > count(header, best) ? candidate : best;
        }
        return best;
    }

    private static long count(String line, char sign) {
        return line.chars().filter(c -> c == sign).count();
    }

    private ReadingsTable table(String name) {
        List<List<ReadingsTable.Cell>> rows = rows();
        List<ReadingsTable.Cell> header = rows.remove(0);
        if (rows.isEmpty()) {
            messages.add(ReadingMessages.TABLE_WITHOUT_ROWS.at(header.get(0).place()));
        }
        List<List<ReadingsTable.Cell>> whole = new ArrayList<>();
        for (List<ReadingsTable.Cell> row : rows) {
            if (row.size() == header.size()) {
                whole.add(row);
            } else {
                messages.add(ReadingMessages.TABLE_ROW_LENGTH.at(row.get(0).place(),
                        "cells", row.size(), "header", header.size()));
            }
        }
        return new ReadingsTable(name, header, whole, Place.file(file.name()));
    }

    private List<List<ReadingsTable.Cell>> rows() {
        List<List<ReadingsTable.Cell>> rows = new ArrayList<>();
        List<ReadingsTable.Cell> row = new ArrayList<>();
        String text = file.text();
        for (int at = 0; at <= text.length();) {
            int end = cellEnd(text, at);
            row.add(cell(text, at, end));
            if (end == text.length() || text.charAt(end) == '\n') {
                if (row.size() > 1 || !row.get(0).text().isEmpty()) {
                    rows.add(row);
                }
                row = new ArrayList<>();
            }
            at = end + 1;
        }
        return rows;
    }

    private int cellEnd(String text, int from) {
        boolean quoted = false;
        int at = from;
        for (; at < text.length(); at++) {
            char c = text.charAt(at);
            if (c == '"') {
                quoted = !quoted;
            } else if (!quoted && (c == delimiter || c == '\n')) {
                break;
            }
        }
        return at;
    }

    private ReadingsTable.Cell cell(String text, int from, int end) {
        String written = text.substring(from, end).strip();
        boolean quoted = written.length() > 1 && written.startsWith("\"") && written.endsWith("\"");
        String value = quoted ? written.substring(1, written.length() - 1).replace("\"\"", "\"") : written;
        return new ReadingsTable.Cell(value, lines.place(from, Math.max(from + 1, end), ""));
    }
}
