package org.benchleaf.model;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.quantity.Quantity;

/**
 * What a rule asks: all of its clauses have to hold.
 *
 * @param clauses the clauses; none at all always holds
 */
public record Condition(List<Clause> clauses) {

    /** Holds of everything. */
    public static final Condition ALWAYS = new Condition(List.of());

    public Condition {
        clauses = List.copyOf(clauses);
    }

    /** The fields that it asks, in the order of asking. */
    public Set<CaseField> fields() {
        return blocks().map(Block::given).flatMap(Given::asked).collect(Collectors.toCollection(LinkedHashSet::new));
    }

    /**
     * Everything that it asks, in words: facts as {@link BuildingBlock#fact()} names them, and fields.
     *
     * @param named how a field is named: as an author writes it, or as a reader of the pages meets it
     */
    public Set<String> facts(Function<CaseField, String> named) {
        return blocks().flatMap(block -> Stream.concat(block.block().fact().stream(), block.given().asked().map(named)))
                .collect(Collectors.toCollection(LinkedHashSet::new));
    }

    private Stream<Block> blocks() {
        return clauses.stream().flatMap(clause -> clause.ask(new Kinds<Stream<Block>>() {
            @Override
            public Stream<Block> block(Block one) {
                return Stream.concat(Stream.of(one), one.given().inner().stream().flatMap(Condition::blocks));
            }

            @Override
            public Stream<Block> anyOf(AnyOf any) {
                return any.conditions().stream().flatMap(Condition::blocks);
            }

            @Override
            public Stream<Block> noneOf(NoneOf none) {
                return none.conditions().stream().flatMap(Condition::blocks);
            }
        }));
    }

    /** Whether it may hold because of what a block asks of the very thing that it is asked of. */
    public boolean mayHoldBy(BuildingBlock asked) {
        return clauses.stream().anyMatch(clause -> clause instanceof Block block ? block.block() == asked
                : clause instanceof AnyOf some && some.conditions().stream().anyMatch(one -> one.mayHoldBy(asked)));
    }

    /** One clause. */
    public sealed interface Clause {

        /** Asks a question that differs by the kind of clause. */
        <R> R ask(Kinds<R> kinds);
    }

    /** One answer for each kind of clause. */
    public interface Kinds<R> {
        R block(Block clause);

        R anyOf(AnyOf clause);

        R noneOf(NoneOf clause);
    }

    /** One building block with what it was given. */
    public record Block(BuildingBlock block, Given given) implements Clause {
        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.block(this);
        }
    }

    /** At least one of the conditions holds. */
    public record AnyOf(List<Condition> conditions) implements Clause {
        public AnyOf {
            conditions = List.copyOf(conditions);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.anyOf(this);
        }
    }

    /** None of the conditions holds. */
    public record NoneOf(List<Condition> conditions) implements Clause {
        public NoneOf {
            conditions = List.copyOf(conditions);
        }

        @Override
        public <R> R ask(Kinds<R> kinds) {
            return kinds.noneOf(this);
        }
    }

    /**
     * What a block was given; what it does not take stays empty.
     *
     * @param words words, in order
     * @param fields fields, in order
     * @param fieldWords words by field
     * @param limits quantities by field
     * @param pairs fields by field
     * @param named words by indicator or action
     * @param numbers quantities by name: {@code limit}, {@code is}, {@code within}, {@code buffers}, {@code near}
     * @param inner a condition on something else
     */
    public record Given(List<String> words, List<CaseField> fields, Map<CaseField, List<String>> fieldWords,
            Map<CaseField, Quantity> limits, Map<CaseField, CaseField> pairs, Map<String, List<String>> named,
            Map<String, Quantity> numbers, Optional<Condition> inner) {

        /** Every field that is asked. */
        Stream<CaseField> asked() {
            return Stream.of(fields.stream(), fieldWords.keySet().stream().sorted(), limits.keySet().stream().sorted(),
                    pairs.entrySet().stream().flatMap(pair -> Stream.of(pair.getKey(), pair.getValue())).sorted())
                    .flatMap(some -> some);
        }

        /** Nothing given. */
        public static final Given NOTHING = new Given(List.of(), List.of(), Map.of(), Map.of(), Map.of(), Map.of(),
                Map.of(), Optional.empty());

        public Given {
            words = List.copyOf(words);
            fields = List.copyOf(fields);
            fieldWords = Map.copyOf(fieldWords);
            limits = Map.copyOf(limits);
            pairs = Map.copyOf(pairs);
            named = Map.copyOf(named);
            numbers = Map.copyOf(numbers);
        }
    }
}
