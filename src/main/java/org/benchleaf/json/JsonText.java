package org.benchleaf.json;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;

/**
 * Values as JSON text: maps in their own order, lists, texts, numbers at full precision, yes and no, nothing. Any other value is
 * written as its text.
 *
 * <p>Source: RFC 8259. A number that JSON cannot hold is written as nothing ({@code null}).
 */
public final class JsonText {

    private JsonText() {
    }

    /** A value for people, each part on a line. */
    public static String of(Object value) {
        return text(value, JsonForm.INDENTED);
    }

    /** A value on one line, fit to stand inside a script element. */
    public static String script(Object value) {
        return text(value, JsonForm.SCRIPT);
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

    private static String text(Object value, JsonForm form) {
        StringWriter text = new StringWriter();
        try (JsonWriter json = new JsonWriter(text, form)) {
            json.value(value);
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        return text.toString();
    }
}
