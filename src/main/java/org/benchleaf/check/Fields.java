package org.benchleaf.check;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.CalendarSpan;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.StatedDay;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/**
 * The keys of one group of a file, read as what they should be.
 *
 * <p>What the schema refuses already is not said again: a needed value that is missing, or of another shape, is
 * replaced by a stand-in and noted as unsound, so that reading goes on and every problem is found in one run. An
 * unsound case is never handed on.
 */
final class Fields {

    private static final String WHOLE = "\\d{1,4}";

    private final Node.Mapping mapping;
    private final Soundness soundness;

    Fields(Node.Mapping mapping, Soundness soundness) {
        this.mapping = mapping;
        this.soundness = soundness;
    }

    /** The same keys, with another note of what is unsound. */
    Fields noting(Soundness other) {
        return new Fields(mapping, other);
    }

    /** The messages of the file, and the places where the model had to be filled with a stand-in. */
    static final class Soundness {
        private final Messages messages;
        private final List<Place> places = new ArrayList<>();

        Soundness(Messages messages) {
            this.messages = messages;
        }

        Messages messages() {
            return messages;
        }

        /** The first place with a stand-in, if there is one. */
        Optional<Place> unsound() {
            return places.stream().findFirst();
        }

        List<Place> places() {
            return List.copyOf(places);
        }

        void spoil(Place place) {
            places.add(place);
        }
    }

    Place place() {
        return mapping.place();
    }

    /** The place of a value; of the whole group if it is not there. */
    Place place(String key) {
        return mapping.get(key).map(Node::place).orElse(mapping.place());
    }

    Place keyPlace(String key) {
        return Optional.ofNullable(mapping.entries().get(key)).map(Node.Entry::keyPlace).orElse(mapping.place());
    }

    boolean has(String key) {
        return mapping.entries().containsKey(key);
    }

    List<String> keys() {
        return List.copyOf(mapping.entries().keySet());
    }

    Messages messages() {
        return soundness.messages();
    }

    Soundness soundness() {
        return soundness;
    }

    boolean isScalar(String key) {
        return mapping.get(key).filter(Node.Scalar.class::isInstance).isPresent();
    }

    Optional<Node.Scalar> scalar(String key) {
        Optional<Node> node = mapping.get(key);
        if (node.isPresent() && !(node.get() instanceof Node.Scalar scalar && !scalar.isNothing())) {
            soundness.spoil(node.get().place());
            return Optional.empty();
        }
        return node.map(Node.Scalar.class::cast);
    }

    /** The value under a key that is more than a word; empty too where the author says that there is none to give. */
    private Optional<Node.Scalar> given(String key) {
        return scalar(key).filter(scalar -> MissingValue.read(scalar.text()).isEmpty());
    }

    /** What stands in the place of a value that the record does not give. */
    Optional<MissingValue> missing(String key) {
        return scalar(key).flatMap(scalar -> MissingValue.read(scalar.text()));
    }

    /** The same where a group of keys may stand as well; a text that is neither is said. */
    Optional<MissingValue> missingOnly(String key) {
        Optional<MissingValue> missing = isScalar(key) ? missing(key) : Optional.empty();
        if (isScalar(key) && missing.isEmpty() && scalar(key).isPresent()) {
            messages().add(FormMessages.WRONG_SHAPE.at(place(key), "found", "a single value", "wanted",
                    "a group of keys, or the words 'not known',", "example", key + ": not known"));
        }
        return missing;
    }

    Optional<String> text(String key) {
        return scalar(key).map(scalar -> scalar.text().strip()).filter(text -> !text.isEmpty());
    }

    String needText(String key) {
        return need(text(key), key, "");
    }

    /** A value that must be there, or a stand-in. */
    <T> T need(Optional<T> value, String key, T standIn) {
        if (value.isEmpty()) {
            if (isScalar(key) && missing(key).isPresent()) {
                messages().add(FormMessages.NEEDED.at(place(key), "key", key, "found", missing(key).get().kind().word()));
            }
            soundness.spoil(place(key));
        }
        return value.orElse(standIn);
    }

    <T> Optional<T> word(String key, Function<String, Optional<T>> known) {
        Optional<String> text = text(key);
        Optional<T> word = text.flatMap(known);
        if (text.isPresent() && word.isEmpty()) {
            soundness.spoil(place(key));
        }
        return word;
    }

    boolean yes(String key, boolean usual) {
        return word(key, Fields::yesOrNo).orElse(usual);
    }

    static Optional<Boolean> yesOrNo(String word) {
        return word.equals("yes") ? Optional.of(true) : word.equals("no") ? Optional.of(false) : Optional.empty();
    }

    Optional<Quantity> quantity(String key, Dimension... wanted) {
        return given(key).flatMap(scalar -> {
            Optional<Quantity> quantity = Amounts.read(scalar, List.of(wanted), messages());
            if (quantity.isEmpty()) {
                soundness.spoil(scalar.place());
            }
            return quantity;
        });
    }

    Quantity needQuantity(String key, Dimension... wanted) {
        return need(quantity(key, wanted), key, Quantity.of(1, Unit.usual(wanted[0])));
    }

    /** A time of day; the stand-in where it is not given or is none, which is told. */
    LocalTime time(String key, LocalTime standIn) {
        Optional<String> text = text(key);
        if (text.isEmpty()) {
            soundness().spoil(place(key));
            return standIn;
        }
        try {
            return LocalTime.parse(text.get());
        } catch (DateTimeException wrong) {
            messages().add(FormMessages.NOT_A_TIME.at(place(key), "found", text.get()));
            return standIn;
        }
    }

    /** A quantity above nothing: a size, a mass, a time. */
    Optional<Quantity> positive(String key, Dimension... wanted) {
        Optional<Quantity> quantity = quantity(key, wanted);
        if (quantity.isPresent() && quantity.get().low() <= 0) {
            messages().add(FormMessages.NOT_POSITIVE.at(place(key), "found", text(key).orElse("")));
        }
        return quantity;
    }

    /** The quantity that is written there, above nothing; empty where it cannot be read, which is said. */
    Optional<Quantity> positive(Node.Scalar scalar, Dimension... wanted) {
        Optional<Quantity> quantity = Amounts.read(scalar, List.of(wanted), messages());
        if (quantity.isEmpty()) {
            soundness.spoil(scalar.place());
        } else if (quantity.get().low() <= 0) {
            messages().add(FormMessages.NOT_POSITIVE.at(scalar.place(), "found", scalar.text()));
        }
        return quantity;
    }

    Quantity needPositive(String key, Dimension... wanted) {
        return need(positive(key, wanted), key, Quantity.of(1, Unit.usual(wanted[0])));
    }

    /** A quantity above nothing that was read off a rule, a balance or an instrument. */
    Optional<Quantity> reading(String key, Dimension... wanted) {
        return asRead(key, positive(key, wanted));
    }

    /** The same quantity as one that was read off an instrument. */
    Optional<Quantity> asRead(String key, Optional<Quantity> quantity) {
        return quantity.map(written -> QuantityReader.asReading(written, text(key).orElse("")));
    }

    Quantity needReading(String key, Dimension... wanted) {
        return need(reading(key, wanted), key, Quantity.of(1, Unit.usual(wanted[0])));
    }

    /** A quantity between two ends that no measurement leaves. */
    Optional<Quantity> within(String key, double low, double high, Dimension wanted) {
        return within(key, quantity(key, wanted), low, high, wanted);
    }

    private Optional<Quantity> within(String key, Optional<Quantity> quantity, double low, double high, Dimension wanted) {
        if (quantity.isPresent() && (quantity.get().lowIn(Unit.usual(wanted)) < low
                || quantity.get().highIn(Unit.usual(wanted)) > high)) {
            messages().add(FormMessages.OUT_OF_RANGE.at(place(key), "found", text(key).orElse(""),
                    "low", Amounts.plain(low), "high", Amounts.plain(high) + Amounts.unit(wanted)));
        }
        return quantity;
    }

    Optional<Quantity> ph(String key) {
        return asPh(key, quantity(key, Dimension.ACIDITY));
    }

    /** The same pH; that no meter reads it is said. */
    Optional<Quantity> asPh(String key, Optional<Quantity> quantity) {
        return within(key, quantity, 0, 14, Dimension.ACIDITY);
    }

    Optional<Integer> whole(String key) {
        Optional<Node.Scalar> scalar = given(key);
        if (scalar.isPresent() && (!scalar.get().text().matches(WHOLE) || Integer.parseInt(scalar.get().text()) == 0)) {
            messages().add(FormMessages.NOT_WHOLE.at(scalar.get().place(), "found", scalar.get().text()));
            return Optional.empty();
        }
        return scalar.map(number -> Integer.valueOf(number.text()));
    }

    Optional<LocalDate> date(String key) {
        return given(key).flatMap(this::date);
    }

    /** A day with its time, such as {@code 2026-04-14 10:00}; the stand-in where it is not one, which is said. */
    Optional<LocalDateTime> moment(String key, LocalDateTime standIn) {
        return text(key).map(text -> {
            try {
                return LocalDateTime.parse(text.replace(' ', 'T'));
            } catch (DateTimeException wrong) {
                messages().add(FormMessages.NOT_A_DATE.at(place(key), "found", text));
                return standIn;
            }
        });
    }

    private Optional<LocalDate> date(Node.Scalar written) {
        try {
            return Optional.of(LocalDate.parse(written.text().strip()));
        } catch (DateTimeException wrong) {
            messages().add(FormMessages.NOT_A_DATE.at(written.place(), "found", written.text()));
            return Optional.empty();
        }
    }

    /** A day, or a month or year in which it lies. */
    Optional<StatedDay> day(String key) {
        return given(key).flatMap(scalar -> CalendarSpan.read(scalar.text()).map(StatedDay::of).or(() -> date(scalar).map(StatedDay::of)));
    }

    /** The first day that it can be: of what ends, so that nothing holds longer than was meant. */
    Optional<LocalDate> earliest(String key) {
        return day(key).map(StatedDay::first);
    }

    /** The last day that it can be: of what begins, so that nothing holds sooner than was meant. */
    Optional<LocalDate> latest(String key) {
        return day(key).map(StatedDay::last);
    }

    List<LocalDate> dates(String key) {
        return scalars(key).stream().map(this::date).flatMap(Optional::stream).toList();
    }

    LocalDate needDate(String key) {
        return need(date(key), key, LocalDate.EPOCH);
    }

    /** A day that has come: something done or given. */
    Optional<LocalDate> past(String key, LocalDate today) {
        Optional<LocalDate> date = date(key);
        if (date.isPresent() && date.get().isAfter(today)) {
            messages().add(FormMessages.DATE_TO_COME.at(place(key), "found", date.get()));
        }
        return date;
    }

    List<Node.Scalar> scalars(String key) {
        List<Node.Scalar> scalars = new ArrayList<>();
        for (Node item : items(key)) {
            if (item instanceof Node.Scalar scalar && !scalar.isNothing()) {
                scalars.add(scalar);
            } else {
                soundness.spoil(item.place());
            }
        }
        return scalars;
    }

    /** The single values in the list under a key; none where there is no list, which is told elsewhere. */
    List<Node.Scalar> listed(String key) {
        return mapping.get(key).filter(Node.Sequence.class::isInstance).isPresent() ? scalars(key) : List.of();
    }

    List<String> texts(String key) {
        return scalars(key).stream().map(scalar -> scalar.text().strip()).toList();
    }

    private List<Node> items(String key) {
        Optional<Node> node = mapping.get(key);
        if (node.isPresent() && !(node.get() instanceof Node.Sequence)) {
            soundness.spoil(node.get().place());
            return List.of();
        }
        return node.map(list -> ((Node.Sequence) list).items()).orElse(List.of());
    }

    /** The group under a key, if it is there. */
    Optional<Fields> group(String key) {
        Optional<Node> node = mapping.get(key);
        if (node.isPresent() && !(node.get() instanceof Node.Mapping)) {
            soundness.spoil(node.get().place());
            return Optional.empty();
        }
        return node.map(group -> new Fields((Node.Mapping) group, soundness));
    }

    /** The group under a key; an empty one if it is missing. */
    Fields needGroup(String key) {
        return need(group(key), key, new Fields(new Node.Mapping(Map.of(), place(key)), soundness));
    }

    /** The groups in the list under a key. */
    List<Fields> groups(String key) {
        List<Fields> groups = new ArrayList<>();
        for (Node item : items(key)) {
            if (item instanceof Node.Mapping group) {
                groups.add(new Fields(group, soundness));
            } else {
                soundness.spoil(item.place());
            }
        }
        return groups;
    }

    /** The groups that stand under keys of their own, such as the solutions by id. */
    Map<String, Fields> named() {
        Map<String, Fields> named = new LinkedHashMap<>();
        for (String key : keys()) {
            group(key).ifPresent(group -> named.put(key, group));
        }
        return named;
    }
}
