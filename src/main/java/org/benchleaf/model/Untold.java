package org.benchleaf.model;

import java.util.Map;
import java.util.Optional;

/**
 * The values of a case file in whose place stands why there is none, by where they stand.
 *
 * @param values by JSON Pointer, such as {@code /steps/2/ageing/time}
 */
public record Untold(Map<String, MissingValue> values) {

    /** Of a case of which nothing of the kind is known. */
    public static final Untold NONE = new Untold(Map.of());

    public Untold {
        values = Map.copyOf(values);
    }

    /** What stands there in the place of a value; keys of groups and numbers of lists, from the head of the file. */
    public Optional<MissingValue> at(Object... way) {
        StringBuilder pointer = new StringBuilder();
        for (Object key : way) {
            pointer.append('/').append(key);
        }
        return Optional.ofNullable(values.get(pointer.toString()));
    }
}
