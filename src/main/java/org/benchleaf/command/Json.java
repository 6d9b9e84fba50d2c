package org.benchleaf.command;

import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Writes values as JSON text: maps in their own order, lists, texts, numbers at full precision, yes and no, nothing.
 *
 * <p>Source: RFC 8259. Numbers that JSON cannot hold are written as nothing ({@code null}).
 */
final class Json {

    private static final String INDENT = "  ";

    private Json() {
    }

    static String of(Object value) {
        StringBuilder text = new StringBuilder();
        write(text, value, "");
        return text.toString();
    }

    private static void write(StringBuilder text, Object value, String indent) {
        if (value instanceof Map<?, ?> map) {
            writeAll(text, '{', map.entrySet(), '}', indent, entry -> {
                writeText(text, String.valueOf(entry.getKey()));
                text.append(": ");
                write(text, entry.getValue(), indent + INDENT);
            });
        } else if (value instanceof List<?> list) {
            writeAll(text, '[', list, ']', indent, each -> write(text, each, indent + INDENT));
        } else if (value instanceof Number number) {
            text.append(Double.isFinite(number.doubleValue()) ? String.valueOf(number) : "null");
        } else if (value == null || value instanceof Boolean) {
            text.append(value);
        } else {
            writeText(text, String.valueOf(value));
        }
    }

    private static <T> void writeAll(StringBuilder text, char open, Iterable<T> all, char close, String indent,
            Consumer<T> one) {
        text.append(open);
        String before = "\n";
        for (T each : all) {
            text.append(before).append(indent).append(INDENT);
            one.accept(each);
            before = ",\n";
        }
        if (before.startsWith(",")) {
            text.append('\n').append(indent);
        }
        text.append(close);
    }

    private static void writeText(StringBuilder text, String value) {
        text.append('"');
        for (int k = 0; k < value.length(); k++) {
            char c = value.charAt(k);
            switch (c) {
                case '"' -> text.append("\\\"");
                case '\\' -> text.append("\\\\");
                case '\n' -> text.append("\\n");
                case '\r' -> text.append("\\r");
                case '\t' -> text.append("\\t");
                default -> {
                    if (c < 0x20) {
                        text.append("\\u").append(String.format("%04x", (int) c));
                    } else {
                        text.append(c);
                    }
                }
            }
        }
        text.append('"');
    }
}
