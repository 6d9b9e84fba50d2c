package org.benchleaf.model;

import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;

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

    /**
     * These values without the people whose name the studio bears itself: it stands on every page, by the studio's own
     * will.
     */
    public Confidential withoutPeopleIn(String studioName) {
        return new Confidential(secrets.stream().filter(secret -> !secret.field().equals(PEOPLE)
                || !studioName.toLowerCase(Locale.ROOT).contains(secret.value().toLowerCase(Locale.ROOT))).toList());
    }

    /** The names of the fields that are filled in, in alphabetical order. */
    public Set<String> fields() {
        Set<String> fields = new TreeSet<>();
        secrets.forEach(secret -> fields.add(secret.field()));
        return fields;
    }

    @Override
    public String toString() {
        return "Confidential" + fields();
    }

    /**
     * One private value.
     *
     * @param field the key it stands under, such as {@code owner}
     * @param value what must not be found in the site
     */
    public record Secret(String field, String value) {
        @Override
        public String toString() {
            return "Secret[" + field + "]";
        }
    }
}
