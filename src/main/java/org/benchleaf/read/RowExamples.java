package org.benchleaf.read;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** How the shipped rows of a table write each of their keys, for a message about a row of a studio's that lacks one. */
final class RowExamples {

    private static final Pattern QUOTED = Pattern.compile("[:#,\\[\\]{}&*!|>%@`'\"]");

    private final Map<String, String> first = new LinkedHashMap<>();

    /** Takes on the rows of a table; the first that writes a key is the example of it. */
    RowExamples and(Node.Mapping table) {
        table.entries().forEach((key, entry) -> {
            if (entry.value() instanceof Node.Mapping row) {
                first.putIfAbsent("", key + ": " + row.entries().entrySet().stream().limit(2)
                        .map(one -> one.getKey() + ": " + written(one.getValue().value()))
                        .collect(Collectors.joining(", ", "{", ", …}")));
                keysOf(row);
            }
        });
        return this;
    }

    /** How a row begins, on one line; empty for a table without rows. */
    String row() {
        return first.getOrDefault("", "");
    }

    /** The line of a key; empty if no row has the key. */
    Optional<String> of(String key) {
        return Optional.ofNullable(first.get(key));
    }

    private void keysOf(Node node) {
        if (node instanceof Node.Mapping mapping) {
            mapping.entries().forEach((key, entry) -> {
                first.putIfAbsent(key, key + ": " + written(entry.value()));
                keysOf(entry.value());
            });
        } else if (node instanceof Node.Sequence list) {
            list.items().forEach(this::keysOf);
        }
    }

    private static String written(Node node) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream().map(one -> one.getKey() + ": " + written(one.getValue().value()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (node instanceof Node.Sequence list) {
            return list.items().stream().map(RowExamples::written).collect(Collectors.joining(", ", "[", "]"));
        }
        String text = ((Node.Scalar) node).text();
        return QUOTED.matcher(text).find() ? '"' + text.replace("\"", "\\\"") + '"' : text;
    }
}
