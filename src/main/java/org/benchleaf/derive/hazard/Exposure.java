package org.benchleaf.derive.hazard;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.HazardMessages;
import org.benchleaf.model.Finding;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reason;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.Step;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Works out how much vapour a step may bring into the room or into a closed space, and says where that is too much. */
final class Exposure {

    static final String RULE = "chamber-vapour-limit";
    private static final String WORKED_OUT = "ethanol";

    private final Bench bench;
    private final HazardLimits limits;
    private final Compositions compositions;
    private final List<Finding> findings = new ArrayList<>();

    Exposure(Bench bench, Compositions compositions) {
        this.bench = bench;
        this.limits = bench.library().reference().limits();
        this.compositions = compositions;
    }

    /** What reasons answered, for the trainees to read. */
    List<Finding> findings() {
        return findings;
    }

    /** The ids of a step's figures of vapour. */
    List<String> of(Step step) {
        List<String> ids = new ArrayList<>();
        step.part(Part.Mist.class).ifPresent(mist -> ids.addAll(open(step, mist, mist.of(), mist.amount())));
        step.part(Part.Layer.class).ifPresent(layer -> ids.addAll(open(step, layer, layer.of(),
                bench.ledger().figure(FigureKey.ofStep(step, layer, "total").id()).map(Figure::value))));
        step.part(Part.Suction.class).ifPresent(suction -> suction.of().ifPresent(of ->
                ids.addAll(open(step, suction, of, suction.amount()))));
        step.part(Part.Chamber.class).ifPresent(chamber -> spirit(chamber.of()).ifPresent(spirit ->
                ids.addAll(inChamber(step, chamber, spirit))));
        return ids;
    }

    /** What a liquid that lies or hangs open gives off into the room. */
    private List<String> open(Step step, Part part, String of, Optional<Quantity> amount) {
        List<String> others = otherVapours(of);
        if (!others.isEmpty()) {
            bench.messages().add(HazardMessages.ROOM_UNKNOWN.at(step.place(), "step", step.id(), "liquid", of,
                    "substances", String.join(", ", others)));
            return List.of();
        }
        Optional<Composition.Spirit> spirit = spirit(of);
        Optional<String> missing = amount.isEmpty() ? Optional.of("its amount")
                : bench.library().studio().roomVolume().isEmpty() ? Optional.of("the volume of the room")
                : bench.library().studio().temperature().isEmpty() ? Optional.of("the temperature of the room") : Optional.empty();
        if (spirit.isPresent() && missing.isPresent()) {
            bench.messages().add(HazardMessages.ROOM_UNKNOWN.at(step.place(), "step", step.id(), "liquid", of,
                    "substances", missing.get() + ", which is not recorded"));
            return List.of();
        }
        return spirit.flatMap(one -> amount.map(liquid -> inRoom(step, part, one, liquid))).orElse(List.of());
    }

    /** What a liquid gives off beside ethanol and water: whatever burns, has a vapour pressure, or is not in the tables. */
    private List<String> otherVapours(String id) {
        Map<String, Substance> known = bench.library().reference().substances();
        return compositions.of(id).shares().keySet().stream().filter(key -> !key.equals(WORKED_OUT) && !key.equals("water"))
                .filter(key -> Optional.ofNullable(known.get(key)).map(row -> row.vapourPressure().isPresent()
                        || row.fire().isPresent()).orElse(true)).toList();
    }

    private Optional<Composition.Spirit> spirit(String id) {
        return compositions.of(id).spirit();
    }

    private List<String> inRoom(Step step, Part part, Composition.Spirit spirit, Quantity amount) {
        Job job = job(step, part, spirit, amount, bench.library().studio().roomVolume().orElseThrow(), Job.STUDIO)
                .note("All the liquid is taken to evaporate while the step lasts, or at once if its time is not stated.");
        step.takes().map(StatedTime::span).filter(time -> time.low() > 0)
                .ifPresent(time -> bench.library().studio().airChanges().ifPresent(changes -> job
                        .given("air-changes", changes, Job.STUDIO).given("over", time, Job.CASE_FILE)));
        Map<String, Figure> made = bench.ledger().work(job);
        share(step, part, made, "vapour-lower-limit").filter(percent -> percent > percent(limits.fireInAir())).ifPresent(percent ->
                bench.messages().add(HazardMessages.ROOM_CAN_EXPLODE.at(step.place(), "step", step.id(),
                        "share", Math.round(percent), "limit", Reading.of(limits.fireInAir().value()))));
        share(step, part, made, "vapour-exposure-limit").filter(percent -> percent > percent(limits.healthInAir())).ifPresent(percent ->
                bench.messages().add(HazardMessages.ROOM_ABOVE_HEALTH_LIMIT.at(step.place(), "step", step.id(),
                        "share", Math.round(percent))));
        return List.copyOf(made.keySet());
    }

    private List<String> inChamber(Step step, Part.Chamber chamber, Composition.Spirit spirit) {
        Optional<String> missing = chamber.amount().isEmpty() ? Optional.of("its amount is not stated")
                : chamber.volume().isEmpty() ? Optional.of("the volume of the space is not stated")
                : bench.library().studio().temperature().isEmpty() ? Optional.of("the temperature of the room is not recorded")
                : !spirit.substance().equals(WORKED_OUT) ? Optional.of("vapour is worked out for ethanol alone")
                : Optional.empty();
        if (missing.isPresent()) {
            stop(step, chamber, "The vapour in the closed space is not known: " + missing.get() + ".",
                    HazardMessages.CHAMBER_UNKNOWN.at(step.place(), "step", step.id(), "liquid", chamber.of(),
                            "missing", missing.get(), "rule", RULE));
            return List.of();
        }
        Map<String, Figure> made = bench.ledger().work(job(step, chamber, spirit, chamber.amount().get(),
                chamber.volume().get(), Job.CASE_FILE).note("The space is taken to be closed, without any airing."));
        share(step, chamber, made, "vapour-lower-limit").filter(percent -> percent > percent(limits.fireInAir())).ifPresent(percent ->
                stop(step, chamber, "The vapour may reach " + Math.round(percent)
                                + " % of the lower limit of flammability; every source of ignition is kept away.",
                        HazardMessages.CHAMBER_CAN_EXPLODE.at(step.place(), "step", step.id(),
                                "amount", Reading.of(chamber.amount().get()), "liquid", chamber.of(),
                                "volume", Reading.of(chamber.volume().get()), "share", Math.round(percent),
                                "limit", Reading.of(limits.fireInAir().value()),
                                "rule", RULE)));
        return List.copyOf(made.keySet());
    }

    private Job job(Step step, Part part, Composition.Spirit spirit, Quantity amount, Quantity space, Origin from) {
        return new Job("vapour", step.place()).word("liquid", WORKED_OUT, Job.CASE_FILE)
                .given("strength", spirit.strength().to(Unit.PERCENT_BY_VOLUME), Job.CASE_FILE)
                .given("volume", amount, Job.CASE_FILE).given("room", space, from)
                .given("temperature", bench.library().studio().temperature().orElseThrow(), Job.STUDIO)
                .gives("concentration", FigureKey.ofStep(step, part, "vapour"), "vapour in the air")
                .gives("parts-per-million", FigureKey.ofStep(step, part, "vapour-ppm"))
                .gives("share-of-lower-limit", FigureKey.ofStep(step, part, "vapour-lower-limit"))
                .gives("share-of-exposure-limit", FigureKey.ofStep(step, part, "vapour-exposure-limit"));
    }

    private static Optional<Double> share(Step step, Part part, Map<String, Figure> made, String name) {
        return Optional.ofNullable(made.get(FigureKey.ofStep(step, part, name).id()))
                .map(figure -> figure.value().highIn(Unit.PERCENT));
    }

    private static double percent(HazardLimits.Limit limit) {
        return limit.value().in(Unit.PERCENT);
    }

    /** A stop, unless no source of ignition is near and a reason is recorded. */
    private void stop(Step step, Part.Chamber chamber, String what, org.benchleaf.message.Message message) {
        Optional<Reason> reason = bench.source().reasons().stream().filter(one -> one.rule().equals(RULE))
                .filter(one -> one.step().map(step.id()::equals).orElse(true)).findFirst();
        if (chamber.noIgnition() && reason.isPresent()) {
            findings.add(new Finding(RULE, Optional.of(step.id()), what, Optional.of(reason.get().why()), true,
                    Finding.Standing.ANSWERED));
        } else {
            bench.messages().add(message);
        }
    }
}
