package org.benchleaf.compose.part;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Writes JSON that may also stand inside a script element: the characters that could end the element, and the line
 * ends that old scripts cannot read, are written as escapes.
 */
public final class ScriptJson {

    private ScriptJson() {
    }

    /** An object with its keys in the order given; an empty optional or list leaves its key out. */
    public static Map<String, Object> object(Object... pairs) {
        Map<String, Object> object = new LinkedHashMap<>();
        for (int i = 0; i + 1 < pairs.length; i += 2) {
            Object value = pairs[i + 1] instanceof Optional<?> optional ? optional.orElse(null) : pairs[i + 1];
            if (value != null && !(value instanceof Collection<?> list && list.isEmpty())) {
                object.put((String) pairs[i], value);
            }
        }
        return object;
    }

    /** The text of a map, list, string, number or truth value. */
    public static String text(Object value) {
        StringBuilder json = new StringBuilder();
        write(value, json);
        return json.toString();
    }

    private static void write(Object value, StringBuilder json) {
        if (value instanceof Map<?, ?> map) {
            String between = "{";
            for (Map.Entry<?, ?> entry : map.entrySet()) {
                json.append(between);
                string((String) entry.getKey(), json);
                json.append(':');
                write(entry.getValue(), json);
                between = ",";
            }
            json.append(map.isEmpty() ? "{}" : "}");
        } else if (value instanceof Collection<?> list) {
            String between = "[";
            for (Object item : list) {
                json.append(between);
                write(item, json);
                between = ",";
            }
            json.append(list.isEmpty() ? "[]" : "]");
        } else if (value instanceof Number || value instanceof Boolean) {
            json.append(value);
        } else {
            string(value.toString(), json);
        }
    }

    private static void string(String text, StringBuilder json) {
        json.append('"');
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == '"' || c == '\\') {
                json.append('\\').append(c);
            } else if (c < 0x20 || c == '<' || c == '>' || c == '&' || c == '\u2028' || c == '\u2029') {
                json.append(String.format("\\u%04x", (int) c));
            } else {
                json.append(c);
            }
        }
        json.append('"');
    }
}
