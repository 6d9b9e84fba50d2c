package org.benchleaf.read;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import org.benchleaf.message.SourceText;

/**
 * The text of a case file as messages may show it: what stands under a private key is blotted out, wherever the key stands, since
 * an author may have indented it wrongly.
 */
final class PrivateBlots {

    private static final char BLOT = '·';
    /** The group, and those of its keys that stand nowhere else in a case file. */
    private static final Set<String> KEYS = Set.of("private", "owner", "former owner", "lender", "insurer", "agent", "contact",
            "provenance", "kept at", "value", "price", "address", "postcode", "telephone", "e-mail", "person", "family", "given",
            "organisation");
    private static final String CASE_FILE = ".md";

    private final List<String> lines;

    private PrivateBlots(String text) {
        this.lines = new ArrayList<>(List.of(text.split("\n", -1)));
    }

    /** The whole file, of which a part was read as a tree; as it is if it is no case file. */
    static SourceText of(TextFile file, Node root) {
        if (!file.name().endsWith(CASE_FILE)) {
            return file.lines().shown();
        }
        PrivateBlots blots = new PrivateBlots(file.text());
        blots.search(root);
        return blots.text(file);
    }

    /** The whole file, of which a part is no YAML: blotted by its lines, as far as each private key begins one. */
    static SourceText ofLines(TextFile file) {
        if (!file.name().endsWith(CASE_FILE)) {
            return file.lines().shown();
        }
        PrivateBlots blots = new PrivateBlots(file.text());
        for (int at = 0; at < blots.lines.size(); at++) {
            String line = blots.lines.get(at);
            int colon = line.indexOf(':');
            String key = colon < 0 ? "" : line.substring(0, colon).replace("- ", "").replace("\"", "").strip();
            if (KEYS.contains(key.toLowerCase(Locale.ROOT))) {
                blots.blot(at, colon + 1);
            }
        }
        return blots.text(file);
    }

    /** The whole file with one value blotted out. */
    static SourceText ofValue(TextFile file, Node value) {
        PrivateBlots blots = new PrivateBlots(file.text());
        blots.blot(value);
        return blots.text(file);
    }

    private SourceText text(TextFile file) {
        return new SourceText(file.name(), String.join("\n", lines));
    }

    private void search(Node node) {
        if (node instanceof Node.Mapping mapping) {
            for (Map.Entry<String, Node.Entry> entry : mapping.entries().entrySet()) {
                if (KEYS.contains(entry.getKey().toLowerCase(Locale.ROOT))) {
                    blot(entry.getValue().value());
                } else {
                    search(entry.getValue().value());
                }
            }
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(this::search);
        }
    }

    private void blot(Node node) {
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().values().forEach(entry -> blot(entry.value()));
        } else if (node instanceof Node.Sequence sequence) {
            sequence.items().forEach(this::blot);
        } else {
            blot(node.place().line() - 1, node.place().column() - 1);
        }
    }

    /** Blots from a column to the end of the line, and the lines it runs on over, comments included. */
    private void blot(int at, int column) {
        String line = lines.get(at);
        int from = Math.min(column, line.length());
        lines.set(at, line.substring(0, from) + String.valueOf(BLOT).repeat(line.length() - from));
        int indent = indent(line);
        for (int next = at + 1; next < lines.size() && !lines.get(next).isBlank() && indent(lines.get(next)) > indent; next++) {
            lines.set(next, String.valueOf(BLOT).repeat(lines.get(next).length()));
        }
    }

    private static int indent(String line) {
        return line.length() - line.stripLeading().length();
    }
}
