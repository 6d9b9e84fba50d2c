package org.benchleaf.derive.classes;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.model.ClassPapers;

/**
 * What the papers of a class state, put so that it can be kept beside the class and compared with a later state of it.
 *
 * @param mark of everything that they state
 * @param amounts how much of each solution is made and of each material needed, by id
 * @param cautions keys of the cautions of each step, by its id
 */
public record IssuedPapers(String mark, Map<String, ClassPapers.Amount> amounts, Map<String, List<String>> cautions) {

    public IssuedPapers {
        amounts = Collections.unmodifiableMap(new LinkedHashMap<>(amounts));
        cautions = Collections.unmodifiableMap(new LinkedHashMap<>(cautions));
    }

    /** Of a plan that is not finished. */
    static final IssuedPapers NONE = new IssuedPapers("", Map.of(), Map.of());

    /**
     * What has changed of one amount, or of the cautions of one step; empty on the side where it does not occur.
     *
     * @param of id
     */
    public record Difference<T>(String of, Optional<T> before, Optional<T> now) {
    }

    /** The amounts that are others than in an issue. */
    public List<Difference<ClassPapers.Amount>> amountsSince(ClassPapers.Issued before) {
        return differences(before.amounts(), amounts);
    }

    /** The steps whose cautions are others than in an issue, as keys. */
    public List<Difference<List<String>>> cautionsSince(ClassPapers.Issued before) {
        return differences(before.cautions(), cautions);
    }

    private static <T> List<Difference<T>> differences(Map<String, T> before, Map<String, T> now) {
        return Stream.concat(now.keySet().stream(), before.keySet().stream()).distinct()
                .filter(of -> !Objects.equals(before.get(of), now.get(of))).map(of -> new Difference<>(of,
                        Optional.ofNullable(before.get(of)), Optional.ofNullable(now.get(of)))).toList();
    }
}
