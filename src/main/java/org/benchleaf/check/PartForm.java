package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.DAMAGE;
import static org.benchleaf.check.References.Kind.MATERIAL;
import static org.benchleaf.check.References.Kind.MEDIUM;
import static org.benchleaf.check.References.Kind.SOLUTION;
import static org.benchleaf.quantity.Dimension.CONDUCTIVITY;
import static org.benchleaf.quantity.Dimension.HUMIDITY;
import static org.benchleaf.quantity.Dimension.ILLUMINANCE;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.MASS_PER_AREA;
import static org.benchleaf.quantity.Dimension.PRESSURE;
import static org.benchleaf.quantity.Dimension.SHARE;
import static org.benchleaf.quantity.Dimension.TEMPERATURE;
import static org.benchleaf.quantity.Dimension.TIME;
import static org.benchleaf.quantity.Dimension.VOLUME;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.Part;
import org.benchleaf.model.StatedTime;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.Node;

/** Reads the parts of a step: what it uses, each under a key of its own. */
final class PartForm {

    private static final String OVERNIGHT = "overnight";

    /** What a material next to the object is said to be where nobody asked its maker. */
    private static final String UNKNOWN = "unknown";

    private final Context context;
    private final Map<String, Function<Fields, Part>> readers = new LinkedHashMap<>();

    PartForm(Context context) {
        this.context = context;
        readers.put("bath", this::bath);
        readers.put("mist", this::mist);
        readers.put("chamber", this::chamber);
        readers.put("blotters", this::blotters);
        readers.put("press", this::press);
        readers.put("mend", this::mend);
        readers.put("heat", this::heat);
        readers.put("support", this::support);
        readers.put("cleaning", this::cleaning);
        readers.put("fixing", this::fixing);
        readers.put("weighing", this::weighing);
        readers.put("housing", this::housing);
        readers.put("layer", this::layer);
        readers.put("suction", this::suction);
        readers.put("light", PartForm::light);
        readers.put("gas", this::gas);
        readers.put("tape", this::tape);
        readers.put("ageing", this::ageing);
    }

    /** The parts of a step, in the order written. */
    List<Part> read(Fields step) {
        List<Part> parts = new ArrayList<>();
        for (String key : step.keys()) {
            if (readers.containsKey(key)) {
                step.group(key).filter(part -> !isUntoldSupport(key, part)).map(readers.get(key)).ifPresent(parts::add);
            }
        }
        return parts;
    }

    /** A support that nobody recorded is none that a rule could count on. */
    private static boolean isUntoldSupport(String key, Fields part) {
        return key.equals("support") && part.missing("under").isPresent();
    }

    private Part bath(Fields bath) {
        boolean counted = !context.retold() || bath.missing("baths").isEmpty();
        int baths = counted ? bath.need(bath.whole("baths"), "baths", 1) : 1;
        Optional<Integer> atMost = bath.whole("at most");
        if (atMost.isPresent() && baths > atMost.get()) {
            bath.messages().add(FormMessages.BATHS_OVER_MOST.at(bath.place("baths"), "baths", baths,
                    "most", atMost.get()));
        }
        Optional<Part.Water> water = bath.group("water").map(PartForm::water);
        List<Part.BathReading> readings = bath.groups("readings").stream().map(reading ->
                bathReading(reading, atMost.orElse(baths))).toList();
        return new Part.Bath(liquid(bath, "of"), bath.positive("margin", LENGTH),
                bath.positive("depth", LENGTH), baths, counted, atMost, bathTimes(bath, baths, atMost.orElse(baths)),
                bath.quantity("temperature", TEMPERATURE), bath.whole("sheets").orElse(1), water, readings,
                bath.positive("filling", TIME), bath.positive("changing", TIME));
    }

    /** One time for all baths, or as many as there are baths; further baths that are allowed may have theirs. */
    private List<StatedTime> bathTimes(Fields bath, int baths, int most) {
        List<StatedTime> times = TimeForm.readAll(bath, "each", context.library().formulary());
        if (times.size() > 1 && (times.size() < baths || times.size() > Math.max(baths, most))) {
            bath.messages().add(FormMessages.BATH_TIMES_COUNT.at(bath.place("each"), "count", times.size(), "baths", baths));
        }
        return times;
    }

    private static Part.Water water(Fields water) {
        return new Part.Water(water.needText("source"), water.ph("pH"), water.positive("conductivity", CONDUCTIVITY),
                water.text("analysis"), water.text("pipes"));
    }

    private static Part.BathReading bathReading(Fields reading, int most) {
        int number = reading.need(reading.whole("bath"), "bath", 1);
        if (number > most) {
            reading.messages().add(FormMessages.BATHS_OVER_MOST.at(reading.place("bath"), "baths", number,
                    "most", most));
        }
        return new Part.BathReading(number, reading.ph("pH fresh"), reading.ph("pH used"),
                reading.positive("conductivity", CONDUCTIVITY), reading.text("colour"),
                reading.positive("added", VOLUME));
    }

    private Part mist(Fields mist) {
        return new Part.Mist(liquid(mist, "of"), mist.positive("amount", VOLUME), optional(mist, "tool"),
                mist.yes("ultrasonic", false), mist.text("water"), mist.text("cleaned"), mist.positive("distance", LENGTH));
    }

    private Part chamber(Fields chamber) {
        return new Part.Chamber(chamber.text("pack").orElse("chamber"), liquid(chamber, "of"),
                chamber.positive("amount", VOLUME), chamber.reading("volume", VOLUME),
                chamber.within("humidity", 0, 100, HUMIDITY),
                chamber.asRead("temperature", chamber.quantity("temperature", TEMPERATURE)),
                chamber.positive("look every", TIME), chamber.yes("no ignition", false));
    }

    private Part blotters(Fields blotters) {
        List<Optional<Quantity>> changes = new ArrayList<>();
        for (Node.Scalar change : blotters.scalars("changes")) {
            boolean night = change.text().strip().equals(OVERNIGHT);
            changes.add(night ? Optional.empty() : Optional.of(change(change, blotters)));
        }
        Optional<Quantity> wet = blotters.reading("wet", MASS);
        Optional<Quantity> dry = blotters.reading("dry", MASS);
        checkWetness(blotters, wet, dry);
        return new Part.Blotters(changes, optional(blotters, "blotter"), blotters.whole("layers").orElse(1), wet, dry);
    }

    private static Quantity change(Node.Scalar written, Fields fields) {
        return Amounts.read(written, List.of(TIME), fields.messages()).orElse(Quantity.of(1, Unit.MINUTE));
    }

    private static void checkWetness(Fields fields, Optional<Quantity> wet, Optional<Quantity> dry) {
        if (wet.isPresent() && dry.isPresent() && wet.get().in(Unit.GRAM) < dry.get().in(Unit.GRAM)) {
            fields.messages().add(FormMessages.WET_LIGHTER_THAN_DRY.at(fields.place("wet")));
        }
    }

    private Part press(Fields press) {
        return new Part.Press(press.whole("weights").orElse(1), press.reading("mass", MASS), press.reading("height", LENGTH),
                press.reading("width", LENGTH), materials(press, "between"), press.positive("time", TIME));
    }

    private Part mend(Fields mend) {
        mend.scalars("damages").forEach(id -> context.references().use(id, DAMAGE));
        return new Part.Mend(mend.texts("damages"), material(mend, "tissue"), liquid(mend, "with"),
                mend.positive("strip", LENGTH), mend.positive("lap", LENGTH), mend.positive("piece", LENGTH),
                mend.positive("paste load", MASS_PER_AREA), mend.within("waste", 0, 1000, SHARE),
                mend.text("grain"), mend.yes("patch", false), mend.group("activated").map(this::activation));
    }

    private Part.Activation activation(Fields activated) {
        activated.scalar("with").ifPresent(id -> context.references().use(id, SOLUTION, MATERIAL));
        return new Part.Activation(activated.need(activated.word("by", Part.Activation.Agent::of), "by",
                Part.Activation.Agent.WATER), activated.text("with"), activated.positive("load", MASS_PER_AREA),
                activated.positive("coating", MASS_PER_AREA), activated.quantity("window", TEMPERATURE));
    }

    private Part heat(Fields heat) {
        return new Part.Heat(material(heat, "tool"), heat.quantity("temperature", TEMPERATURE),
                heat.positive("time", TIME));
    }

    private Part support(Fields support) {
        return new Part.Support(material(support, "under"), optional(support, "between"), support.yes("rigid", false),
                support.positive("margin", LENGTH));
    }

    private Part cleaning(Fields cleaning) {
        return new Part.Cleaning(materials(cleaning, "tools"), cleaning.yes("extraction", false),
                cleaning.yes("open brushing", false));
    }

    private Part fixing(Fields fixing) {
        fixing.scalar("medium").ifPresent(id -> context.references().use(id, MEDIUM));
        return new Part.Fixing(fixing.needText("medium"), liquid(fixing, "with"), fixing.needText("method"),
                fixing.positive("rinse", TIME), fixing.whole("rinses"), fixing.date("clear by"), fixing.text("faces"),
                fixing.positive("beyond", LENGTH));
    }

    private Part weighing(Fields weighing) {
        Optional<Quantity> wet = weighing.reading("wet", MASS);
        Optional<Quantity> dry = weighing.reading("dry", MASS);
        checkWetness(weighing, wet, dry);
        return new Part.Weighing(dry, wet, weighing.reading("restrained", MASS), weighing.positive("between", TIME),
                weighing.positive("blotted for", TIME));
    }

    private Part housing(Fields housing) {
        return new Part.Housing(materials(housing, "materials"),
                housing.missing("buffered").isPresent() ? UNKNOWN : housing.needText("buffered"), housing.ph("pH"),
                housing.quantity("temperature", TEMPERATURE));
    }

    private Part layer(Fields layer) {
        return new Part.Layer(liquid(layer, "of"), layer.positive("thickness", LENGTH),
                layer.reading("height", LENGTH), layer.reading("width", LENGTH), layer.positive("each", TIME),
                layer.whole("times").orElse(1), optional(layer, "between"), layer.yes("covered", false));
    }

    private Part suction(Fields suction) {
        suction.scalar("of").ifPresent(id -> context.references().use(id, SOLUTION, MATERIAL));
        return new Part.Suction(material(suction, "tool"), suction.text("of"), suction.positive("amount", VOLUME),
                suction.positive("pressure", PRESSURE), suction.positive("time", TIME));
    }

    private static Part light(Fields light) {
        return new Part.Light(light.text("source"), light.positive("illuminance", ILLUMINANCE),
                light.word("filtered", Fields::yesOrNo), light.positive("time", TIME));
    }

    private Part gas(Fields gas) {
        return new Part.Gas(material(gas, "of"), gas.positive("amount", VOLUME), gas.positive("time", TIME),
                optional(gas, "tool"));
    }

    private Part tape(Fields tape) {
        tape.scalars("damages").forEach(id -> context.references().use(id, DAMAGE));
        return new Part.Tape(tape.texts("damages"), tape.text("carrier"), tape.text("adhesive"), tape.texts("by"));
    }

    private Part ageing(Fields ageing) {
        boolean refused = !context.retold() && ageing.isScalar("of") && ageing.missing("of").isPresent();
        String of = refused ? ageing.need(Optional.empty(), "of", "") : ageing.needText("of");
        return new Part.Ageing(of, ageing.quantity("temperature", TEMPERATURE),
                ageing.within("humidity", 0, 100, HUMIDITY), ageing.missing("humidity"), ageing.positive("time", TIME),
                ageing.text("standard"));
    }

    /**
     * Which liquid it is. Hazards and tests rest on it, so that only a case which is retold, and gets no sheets for the bench by it, may
     * say that nobody recorded it.
     */
    private String liquid(Fields fields, String key) {
        if (fields.missing(key).isPresent()) {
            return context.retold() ? fields.needText(key) : fields.need(Optional.empty(), key, "");
        }
        fields.scalar(key).ifPresent(id -> context.references().use(id, SOLUTION, MATERIAL));
        return fields.needText(key);
    }

    private String material(Fields fields, String key) {
        return fields.need(optional(fields, key), key, "");
    }

    /** A thing that is no liquid may be one that nobody recorded; of a liquid, hazards and tests rest on what it is. */
    private Optional<String> optional(Fields fields, String key) {
        fields.scalar(key).filter(id -> fields.missing(key).isEmpty()).ifPresent(id -> context.references().use(id, MATERIAL));
        return fields.text(key);
    }

    private List<String> materials(Fields fields, String key) {
        fields.scalars(key).forEach(id -> context.references().use(id, MATERIAL));
        return fields.texts(key);
    }
}
