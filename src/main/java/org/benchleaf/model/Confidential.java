package org.benchleaf.model;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.benchleaf.message.Place;

/**
 * The private values of one case, sealed: no page may hold them, and the finished site is searched for them.
 *
 * <p>Nothing prints it: neither it nor a secret shows its value in {@code toString}.
 */
public final class Confidential {

    /** The field of those who worked on the object. */
    public static final String PEOPLE = "people";

    private final List<Secret> secrets;

    /** Seals values. */
    public Confidential(List<Secret> secrets) {
        this.secrets = List.copyOf(secrets);
    }

    /** Nothing private. */
    public static Confidential none() {
        return new Confidential(List.of());
    }

    /** The values with the fields that they stand in, in the order written. */
    public List<Secret> secrets() {
        return secrets;
    }

    /** The names of the fields that are filled in, in alphabetical order. */
    Set<String> fields() {
        Set<String> fields = new TreeSet<>();
        secrets.forEach(secret -> fields.add(secret.field()));
        return fields;
    }

    @Override
    public String toString() {
        return "Confidential" + fields();
    }

    /**
     * One private value: a plain text, or a person or thing told by keys such as {@code family} and {@code given}.
     *
     * @param field the key it stands under, such as {@code owner}
     * @param parts what must not be found in the site, by its keys; a plain text stands under the empty key
     * @param place where it begins in the case file
     */
    public record Secret(String field, Map<String, String> parts, Place place) {

        public Secret {
            parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        }

        /** A plain text. */
        public static Secret plain(String field, String text, Place place) {
            return new Secret(field, Map.of("", text), place);
        }

        /** All its texts, in the order written, with spaces between them. */
        public String value() {
            return String.join(" ", parts.values());
        }

        @Override
        public String toString() {
            return "Secret[" + field + "]";
        }
    }
}
