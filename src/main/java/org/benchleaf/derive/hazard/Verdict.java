package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;

/** What the rules have found about one mixture so far: statements, each with its grounds, and what is not known. */
final class Verdict {

    /** Stands for organs that a part damages besides, of which its row says nothing. */
    private static final String OTHERS = "others not stated";

    private final Reference reference;
    private final Set<String> statements = new LinkedHashSet<>();
    private final Set<Hazards.Ground> grounds = new LinkedHashSet<>();
    private final Map<String, Set<String>> named = new LinkedHashMap<>();
    private final Set<Hazards.Unknown> unknown = new LinkedHashSet<>();

    Verdict(Reference reference) {
        this.reference = reference;
    }

    Reference reference() {
        return reference;
    }

    /** A class is given; the sentence has this key. */
    void give(String name, String statement, String source, String key, Object... pairs) {
        statements.add(statement);
        grounds.add(new Hazards.Ground(Optional.of(name), Optional.of(statement), reference.sentence(key, pairs), source));
    }

    /** A statement that was given names something: the substance that sensitises, or the organs, where these are known. */
    void name(String statement, List<String> words) {
        named.computeIfAbsent(statement, any -> new LinkedHashSet<>()).addAll(words.isEmpty() ? List.of(OTHERS) : words);
    }

    /** A class was looked at and not given. */
    void refuse(String name, String source, String key, Object... pairs) {
        grounds.add(new Hazards.Ground(Optional.of(name), Optional.empty(), reference.sentence(key, pairs), source));
    }

    /** No class of a theme was given. */
    void refuseAny(String source, String key, Object... pairs) {
        grounds.add(new Hazards.Ground(Optional.empty(), Optional.empty(), reference.sentence(key, pairs), source));
    }

    void lack(String about, String key, Object... pairs) {
        unknown.add(new UnknownWords(reference).of(about, key, pairs));
    }

    /** Whether a statement that was given stands for this one as well. */
    boolean covers(String statement) {
        Precedence row = reference.precedence().get(statement);
        return row != null && statements.stream().anyMatch(row.leftOutBeside()::contains);
    }

    /** What statements name, by their codes; of organs nothing where none is known. */
    Map<String, List<String>> named() {
        Map<String, List<String>> told = new LinkedHashMap<>();
        named.forEach((statement, words) -> {
            List<String> known = new ArrayList<>(words);
            if (known.remove(OTHERS) && !known.isEmpty()) {
                known.add(OTHERS);
            }
            told.put(statement, known);
        });
        return told;
    }

    Set<String> statements() {
        return statements;
    }

    List<Hazards.Ground> grounds() {
        return new ArrayList<>(grounds);
    }

    List<Hazards.Unknown> unknown() {
        return new ArrayList<>(unknown);
    }
}
