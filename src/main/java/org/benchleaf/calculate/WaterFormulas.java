package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.function.Function;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.AlkalineReserve;
import org.benchleaf.science.Baths;
import org.benchleaf.science.CarbonateWater;
import org.benchleaf.science.LimeWater;
import org.benchleaf.science.Water;

/** Binds the names of the calculations about baths, lime and the alkaline reserve to their formulas. */
final class WaterFormulas {

    private static final double LEAST_TITRATED = 2;

    private WaterFormulas() {
    }

    static void bindTo(Map<String, Function<Args, Answers>> formulas) {
        formulas.put("lime-water", WaterFormulas::limeWater);
        formulas.put("lime-dilution", WaterFormulas::limeDilution);
        formulas.put("lime-dose", WaterFormulas::limeDose);
        formulas.put("reserve-of-carbonate", args -> new Answers().number("reserve",
                AlkalineReserve.ofCarbonate(args.one("carbonate"))));
        formulas.put("carbonate-water", WaterFormulas::carbonateWater);
        formulas.put("alkaline-reserve", WaterFormulas::reserve);
        formulas.put("reserve-ceiling", WaterFormulas::ceiling);
        formulas.put("bath", WaterFormulas::bath);
        formulas.put("bath-time", WaterFormulas::bathTime);
        formulas.put("rinsing", args -> new Answers().number("left",
                Baths.left(args.one("held"), args.one("bath"), args.one("baths"))));
        formulas.put("liquor-ratio", args -> new Answers().number("ratio", Baths.liquorRatio(args.one("bath"),
                args.one("density"), args.one("sheet"), args.one("sheets"))));
        formulas.put("soaking", args -> new Answers().number("time",
                Baths.soaking(args.one("thickness"), args.one("diffusion"), args.one("share"), args.one("faces"))));
        formulas.put("water-density", args -> new Answers().number("density", Water.density(args.one("temperature"))));
    }

    private static Answers limeWater(Args args) {
        LimeWater.Saturated lime = LimeWater.saturated(args.one("temperature"));
        return new Answers().number("calcium", lime.calcium()).number("strength", lime.strength())
                .number("ph", lime.ph()).number("ionic-strength", lime.ionicStrength())
                .number("hydroxo-share", lime.hydroxoShare());
    }

    private static Answers limeDilution(Args args) {
        LimeWater.Diluted diluted = LimeWater.diluted(args.one("one-in"), args.one("made-at"),
                args.one("temperature"));
        Answers answers = new Answers().number("ph", diluted.ph()).number("calcium", diluted.calcium());
        // Solubility falls as the temperature rises, so only warming can bring lime out.
        boolean warmed = args.one("temperature").in(Unit.CELSIUS) > args.one("made-at").in(Unit.CELSIUS);
        return warmed && diluted.calcium().value() > LimeWater.saturated(args.one("temperature")).calcium().value()
                ? answers.note(Clause.of("More calcium than stays dissolved at this"
                + " temperature: some lime will settle out, and the pH will be lower.")) : answers;
    }

    private static Answers limeDose(Args args) {
        LimeWater.Dose dose = LimeWater.dose(args.one("ph"), args.one("volume"), args.one("made-at"), args.one("temperature"),
                args.one("carbon-dioxide"));
        Answers answers = new Answers().number("calcium", dose.calcium()).number("stock-volume", dose.stockVolume());
        return args.one("carbon-dioxide").value() > 0 ? answers
                : answers.note(Clause.of("For water free of carbon dioxide; water that stood in air needs several times as much."));
    }

    private static Answers carbonateWater(Args args) {
        boolean closed = args.one("carbon-dioxide").value() == 0;
        CarbonateWater.InBalance water = CarbonateWater.inBalance(args.one("temperature"),
                args.one("carbon-dioxide"), args.yes("calcite"));
        Answers answers = new Answers().number("ph", water.ph()).number("calcium", water.calcium())
                .number("carbon", water.carbon());
        return closed ? answers.note(Clause.of("Without carbon dioxide the vessel is taken to be closed.")) : answers;
    }

    private static Answers reserve(Args args) {
        AlkalineReserve.Reserve reserve = AlkalineReserve.byTitration(args.one("sample"), args.one("moisture"),
                args.one("acid-volume"), args.one("acid"), args.one("base-volume"), args.one("base"));
        Answers answers = new Answers().number("reserve", reserve.reserve()).number("carbonate", reserve.carbonate())
                .word("meets-threshold", reserve.meetsThreshold() ? "yes" : "no");
        return reserve.carbonate().in(Unit.PERCENT_BY_MASS) < LEAST_TITRATED ? answers.note(Clause.of(
                "Below about 2 % calcium carbonate the titration is indicative only (TAPPI T 553).")) : answers;
    }

    private static Answers ceiling(Args args) {
        AlkalineReserve.Ceiling ceiling = AlkalineReserve.ceiling(args.one("grammage"), args.one("uptake"),
                args.one("calcium"));
        return new Answers().number("carbonate-per-area", ceiling.carbonatePerArea())
                .number("carbonate", ceiling.carbonate()).number("reserve", ceiling.reserve())
                .number("baths-to-two-per-cent", ceiling.bathsToTwoPerCent(),
                        Clause.of("a bath without calcium never leaves a reserve"));
    }

    private static Answers bath(Args args) {
        Baths.Volumes volumes = Baths.volumes(args.one("height"), args.one("width"), args.one("margin"),
                args.one("depth"), args.one("baths"), args.one("sheets"));
        return new Answers().number("volume", volumes.volume()).number("total", volumes.total());
    }

    private static Answers bathTime(Args args) {
        List<Quantity> each = args.list("each").size() == 1 ? args.list("each")
                : args.exactly((int) args.one("baths").value(), "each");
        Baths.Times times = Baths.times(args.one("filling"), args.one("changing"), args.one("adjusting"), each, args.one("baths"));
        return new Answers().number("change", times.change()).number("wet", times.wet()).number("total", times.total());
    }
}
