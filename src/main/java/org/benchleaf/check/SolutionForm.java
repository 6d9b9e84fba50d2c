package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.MATERIAL;
import static org.benchleaf.check.References.Kind.SOLUTION;
import static org.benchleaf.quantity.Dimension.AMOUNT_PER_VOLUME;
import static org.benchleaf.quantity.Dimension.COUNT;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.MASS_FRACTION;
import static org.benchleaf.quantity.Dimension.MASS_PER_VOLUME;
import static org.benchleaf.quantity.Dimension.NUMBER;
import static org.benchleaf.quantity.Dimension.TEMPERATURE;
import static org.benchleaf.quantity.Dimension.TIME;
import static org.benchleaf.quantity.Dimension.VOLUME;
import static org.benchleaf.quantity.Dimension.VOLUME_FRACTION;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Place;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.StatedValue;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/** Reads the solutions of a case. */
final class SolutionForm {

    static final List<String> WAYS = List.of("mix", "dissolve", "dilute", "saturate", "adjust", "parts");

    private static final Pattern PARTS = Pattern.compile(
            "^\\d{1,15}+(?:\\.\\d{1,15}+)?+(?:\\s*+\\+\\s*+\\d{1,15}+(?:\\.\\d{1,15}+)?+)++");
    private static final Recipe STAND_IN = new Recipe.Parts("", 1, "", 1, false, false);

    private static final StatedValue ANY_PH = StatedValue.of(Quantity.of(7, Unit.PH), "7");

    private final Context context;

    SolutionForm(Context context) {
        this.context = context;
    }

    List<Solution> read(Optional<Fields> solutions) {
        List<Solution> read = new ArrayList<>();
        solutions.map(Fields::named).orElse(Map.of()).forEach((id, fields) -> {
            context.references().declare(SOLUTION, id, solutions.get().keyPlace(id));
            read.add(solution(id, fields, solutions.get().keyPlace(id)));
        });
        return read;
    }

    private Solution solution(String id, Fields fields, Place place) {
        fields.scalar("source").ifPresent(key -> context.references().use(key, References.Kind.SOURCE));
        return new Solution(id, fields.text("name").orElse(id), recipe(id, fields, place),
                fields.positive("make", VOLUME, MASS), fields.positive("least", VOLUME, MASS),
                fields.positive("keeps", TIME), fields.text("kept"), fields.positive("ready in", TIME),
                fields.positive("hands-on", TIME), fields.past("made on", context.today()), fields.texts("how"),
                fields.text("source"), fields.group("low reserve").map(this::lowReserve), place);
    }

    private LowReserve lowReserve(Fields fields) {
        fields.scalar("source").ifPresent(key -> context.references().use(key, References.Kind.SOURCE));
        return new LowReserve(Set.copyOf(fields.texts("rules out")), Optional.empty(), fields.needText("test"),
                fields.needText("source"));
    }

    private Recipe recipe(String id, Fields fields, Place place) {
        List<String> written = WAYS.stream().filter(fields::has).toList();
        if (written.size() != 1) {
            fields.messages().add(FormMessages.RECIPE_WAYS.at(place, "id", id,
                    "count", written.isEmpty() ? "none" : written.size()));
            fields.soundness().spoil(place);
            // Read them all the same, so that their references count and their slips are found.
            written.forEach(way -> fields.group(way).ifPresent(group -> recipe(way, id, group)));
            return STAND_IN;
        }
        String way = written.get(0);
        return fields.group(way).map(group -> recipe(way, id, group)).orElse(STAND_IN);
    }

    private Recipe recipe(String way, String id, Fields group) {
        if (way.equals("dissolve") && isLeftOpen(group, "strength")) {
            return new Recipe.Untold(id, List.of(name(group, "solid"), name(group, "in")), List.of());
        }
        return switch (way) {
            case "mix" -> mix(id, group);
            case "dissolve" -> new Recipe.Dissolve(name(group, "solid"),
                    group.needPositive("strength", StrengthKinds.of(context, MASS_PER_VOLUME, MASS_FRACTION,
                            AMOUNT_PER_VOLUME)),
                    name(group, "in"));
            case "dilute" -> dilute(group);
            case "saturate" -> new Recipe.Saturate(name(group, "solid"), name(group, "in"), isLeftOpen(group, "at") ? Optional.empty()
                    : Optional.of(group.needQuantity("at", TEMPERATURE)));
            case "adjust" -> new Recipe.Adjust(name(group, "liquid"), name(group, "with"),
                    group.need(StatedForm.ph(group, "to"), "to", ANY_PH), group.quantity("at", TEMPERATURE));
            default -> parts(id, group);
        };
    }

    private Recipe mix(String id, Fields group) {
        return new MixForm(context, group).read(id).orElse(STAND_IN);
    }

    /** Whether a retold case says that its publication does not give a value. */
    private boolean isLeftOpen(Fields group, String key) {
        return context.retold() && group.isScalar(key) && group.missing(key).isPresent();
    }

    private Recipe dilute(Fields group) {
        Optional<String> ph = Stream.of("strength", "to").filter(group::isScalar).flatMap(key -> group.text(key).stream())
                .filter(text -> text.strip().startsWith("pH")).findFirst();
        if (ph.isPresent()) {
            group.messages().add(FormMessages.DILUTED_TO_PH.at(group.place(), "found", ph.get(), "stock", name(group, "stock"),
                    "with", name(group, "with")));
            group.soundness().spoil(group.place());
            return STAND_IN;
        }
        Optional<Quantity> strength = group.positive("strength", StrengthKinds.of(context, VOLUME_FRACTION, MASS_FRACTION,
                MASS_PER_VOLUME, AMOUNT_PER_VOLUME));
        Optional<Quantity> oneIn = group.positive("one in", NUMBER, COUNT);
        if (strength.isPresent() == oneIn.isPresent() && !isLeftOpen(group, "strength")) {
            group.soundness().spoil(group.place());
        }
        return new Recipe.Dilute(name(group, "stock"), strength, oneIn, name(group, "with"));
    }

    private Recipe parts(String id, Fields group) {
        List<String> things = things(group);
        if (!things.isEmpty() && isLeftOpen(group, "parts")) {
            return new Recipe.Untold(id, things, List.of());
        }
        boolean untold = isLeftOpen(group, "by");
        if (!untold && group.isScalar("by") && group.missing("by").isPresent()) {
            group.need(Optional.empty(), "by", "");
        }
        boolean byMass = !untold && group.word("by", word -> word.equals("mass") ? Optional.of(true)
                : word.equals("volume") ? Optional.of(false) : Optional.<Boolean>empty()).orElse(false);
        boolean cooked = group.yes("cooked", false);
        List<Double> numbers = numbers(group);
        if (numbers.isEmpty() || things.isEmpty()) {
            return STAND_IN;
        }
        if (numbers.size() != things.size()) {
            group.messages().add(FormMessages.PARTS_COUNT.at(group.place("parts"), "parts", numbers.size(),
                    "things", things.size()));
            return STAND_IN;
        }
        List<Recipe.Portion> portions = IntStream.range(0, things.size())
                .mapToObj(i -> new Recipe.Portion(things.get(i), numbers.get(i))).toList();
        return untold ? new Recipe.Untold(id, things, portions) : new Recipe.Parts(portions, byMass, cooked);
    }

    /** What is put together: 'first' and 'second', or any number under 'of'. */
    private List<String> things(Fields group) {
        boolean pair = group.has("first") && group.has("second");
        if (group.has("of") ? group.has("first") || group.has("second") : !pair) {
            group.messages().add(FormMessages.PARTS_OF.at(group.place()));
            group.soundness().spoil(group.place());
            return List.of();
        }
        if (pair) {
            List<String> two = List.of(name(group, "first"), name(group, "second"));
            tellTwice(two.get(0), two.get(1), group.place("second"), group);
            return two;
        }
        List<Node.Scalar> listed = group.scalars("of");
        List<String> ids = new ArrayList<>();
        for (Node.Scalar one : listed) {
            context.references().use(one, SOLUTION, MATERIAL);
            String id = one.text().strip();
            tellTwice(ids.contains(id) ? id : "", id, one.place(), group);
            ids.add(id);
        }
        return ids;
    }

    private static void tellTwice(String earlier, String id, Place place, Fields group) {
        if (earlier.equals(id)) {
            group.messages().add(FormMessages.PART_TWICE.at(place, "part", id));
        }
    }

    private static List<Double> numbers(Fields group) {
        Optional<Node.Scalar> written = group.scalar("parts");
        if (written.isEmpty()) {
            group.soundness().spoil(group.place());
            return List.of();
        }
        String text = written.get().text().strip();
        if (!PARTS.matcher(text).matches()) {
            group.messages().add(text.matches("\\d+(\\.\\d+)?\\s*:\\s*\\d+(\\.\\d+)?")
                    ? Amounts.colonRatio(written.get().place(), written.get().text())
                    : FormMessages.PARTS_FORM.at(written.get().place(), "found", written.get().text()));
            return List.of();
        }
        List<Double> numbers = Arrays.stream(text.split("\\+")).map(String::strip).map(Double::valueOf).toList();
        if (numbers.stream().anyMatch(one -> one <= 0)) {
            group.messages().add(FormMessages.NOT_POSITIVE.at(written.get().place(), "found", written.get().text()));
        }
        return numbers;
    }

    private String name(Fields group, String key) {
        if (group.missing(key).isPresent()) {
            // Of a case that is not retold it is asked: hazards and tests rest on what a liquid is.
            return context.retold() ? group.needText(key) : group.need(Optional.empty(), key, "");
        }
        group.scalar(key).ifPresent(id -> context.references().use(id, SOLUTION, MATERIAL));
        return group.needText(key);
    }
}
