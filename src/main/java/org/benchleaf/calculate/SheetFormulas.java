package org.benchleaf.calculate;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import org.benchleaf.model.ReferenceTable;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Decimal;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Ageing;
import org.benchleaf.science.Change;
import org.benchleaf.science.Colour;
import org.benchleaf.science.Drying;
import org.benchleaf.science.LightExposure;
import org.benchleaf.science.Measuring;
import org.benchleaf.science.MoistAir;
import org.benchleaf.science.SaltHumidity;
import org.benchleaf.science.Sheets;
import org.benchleaf.science.WhitePoint;
import org.benchleaf.science.Whiteness;

/** Binds the names of the calculations about sheets, air, colour and measuring to their formulas. */
final class SheetFormulas {

    private final List<Measuring.Vessel> cylinders;

    SheetFormulas(ReferenceTable glassware) {
        this.cylinders = glassware.rows().stream().filter(row -> row.get("usual").equals("yes"))
                .map(SheetFormulas::vessel).toList();
    }

    void bindTo(Map<String, Function<Args, Answers>> formulas) {
        formulas.put("solids", SheetFormulas::solids);
        formulas.put("drying", SheetFormulas::drying);
        formulas.put("pressure", args -> new Answers().number("pressure",
                Sheets.pressure(args.one("mass"), args.one("height"), args.one("width"))));
        formulas.put("size-change", SheetFormulas::sizeChange);
        formulas.put("blotters", SheetFormulas::blotters);
        formulas.put("blotters-unweighed", args -> new Answers().number("per-change",
                Drying.blotters(Drying.atSolids(args.one("dry"), args.one("solids")).mass(), args.one("dry"),
                        args.one("blotter-mass"), args.one("uptake"), Quantity.count(0)).perChange()));
        formulas.put("mending", args -> mending(args, tissue -> Sheets.mending(args.list("tears"), args.one("lap"), args.one("width"),
                args.one("piece"), tissue, args.one("paste"), args.one("waste"))));
        formulas.put("sheet-mass", args -> new Answers().number("mass",
                Sheets.mass(args.one("grammage"), args.one("height"), args.one("width"))));
        formulas.put("paper-density", args -> new Answers().number("density",
                Sheets.density(args.one("grammage"), args.one("thickness"))));
        formulas.put("mass-at-solids", SheetFormulas::massAtSolids);
        formulas.put("cut-size", args -> new Answers().number("size",
                Sheets.withMargins(args.one("side"), args.one("margin"))));
        formulas.put("lining", args -> new Answers().number("area",
                Sheets.lining(args.one("height"), args.one("width"), args.one("lap"))));
        formulas.put("patches", args -> mending(args, tissue -> Sheets.patches(args.list("areas"), tissue,
                args.one("paste"), args.one("waste"))));
        formulas.put("covering", SheetFormulas::covering);
        formulas.put("blotter-sets", SheetFormulas::blotterSets);
        formulas.put("moist-air", SheetFormulas::moistAir);
        formulas.put("humidifying", args -> new Answers().number("water", MoistAir.humidifying(args.one("volume"),
                args.one("temperature"), args.one("from"), args.one("to"))));
        formulas.put("salt-humidity", SheetFormulas::saltHumidity);
        formulas.put("colour-difference", SheetFormulas::colourDifference);
        formulas.put("colour-values", SheetFormulas::colourValues);
        formulas.put("change", SheetFormulas::change);
        formulas.put("measuring", this::measuring);
        formulas.put("light-exposure", args -> new Answers().number("exposure",
                LightExposure.exposure(args.one("illuminance"), args.one("time"))));
        formulas.put("ageing", args -> new Answers().number("multiplier",
                Ageing.multiplier(args.one("temperature"), args.one("humidity"), args.one("energy"))));
    }

    private static Answers solids(Args args) {
        Drying.Solids solids = Drying.solids(args.one("dry"), args.one("now"));
        return new Answers().number("solids", solids.solids()).number("water", solids.water());
    }

    private static Answers drying(Args args) {
        Drying.Rate rate = Drying.rate(args.one("dry"), args.one("first"), args.one("second"), args.one("between"),
                args.one("to"));
        return new Answers().number("rate", rate.rate()).number("time", rate.time(),
                Clause.of("at the second weighing the sheet is already drier than that"));
    }

    private static Answers sizeChange(Args args) {
        Quantity along = Sheets.sizeChange(args.one("before"), args.one("after"));
        Answers answers = new Answers().number("change", along);
        Optional<Quantity> before = args.optional("across-before");
        Optional<Quantity> after = args.optional("across-after");
        if (before.isPresent() != after.isPresent()) {
            throw new NotAllowed(Refusal.missing(before.isPresent() ? "across-after" : "across-before",
                    Clause.of("both lengths across, or neither"), "definition of relative change"));
        }
        if (before.isEmpty()) {
            Clause why = Clause.of("the lengths across were not given");
            return answers.withhold("across-change", why).withhold("area-change", why);
        }
        Quantity across = Sheets.sizeChange(renamed(before.get(), "across-before"), after.orElseThrow());
        return answers.number("across-change", across).number("area-change", Sheets.areaChange(along, across));
    }

    /** A length that must be above 0, said of the input that it came from. */
    private static Quantity renamed(Quantity length, String key) {
        if (!(length.value() > 0)) {
            throw new NotAllowed(Refusal.notAllowed(key, Written.said(length), Clause.of("more than 0"),
                    "definition of relative change"));
        }
        return length;
    }

    private static Answers blotters(Args args) {
        Drying.Blotters blotters = Drying.blotters(args.one("wet"), args.one("dry"), args.one("blotter-mass"),
                args.one("uptake"), args.one("changes"));
        Answers answers = new Answers().number("per-change", blotters.perChange()).number("total", blotters.total());
        return blotters.perChange().value() < 2
                ? answers.note(Clause.of("For the water alone; a sheet still needs a blotter on each side.")) : answers;
    }

    private static Answers massAtSolids(Args args) {
        Drying.Wetness wetness = Drying.atSolids(args.one("dry"), args.one("solids"));
        return new Answers().number("mass", wetness.mass()).number("water", wetness.water());
    }

    private static Answers covering(Args args) {
        Drying.Covering covering = Drying.covering(args.one("height"), args.one("width"), args.one("blotter-height"),
                args.one("blotter-width"), args.one("layers"));
        Answers answers = new Answers().number("beside", covering.beside()).number("cover", covering.cover());
        return covering.beside().value() > 1
                ? answers.note(Clause.of("Laid side by side, since one is too small for the sheet (common practice, no source)."))
                : answers;
    }

    private static Answers blotterSets(Args args) {
        Drying.Blotters sets = Drying.sets(args.one("for-water"), args.one("cover"), args.one("changes"));
        return new Answers().number("per-change", sets.perChange()).number("total", sets.total());
    }

    /** Of a tissue whose grammage is not given, everything but its mass. */
    private static Answers mending(Args args, Function<Quantity, Sheets.Mending> work) {
        Optional<Quantity> tissue = args.optional("tissue");
        Sheets.Mending mending = work.apply(tissue.orElse(Quantity.of(0, Unit.GRAM_PER_SQUARE_METRE)));
        return new Answers().number("area", mending.area()).number("pieces", mending.pieces())
                .number("tissue-mass", tissue.map(given -> mending.tissueMass()), Clause.of("the grammage of the tissue was not given"))
                .number("paste-mass", mending.pasteMass());
    }

    private static Answers moistAir(Args args) {
        MoistAir.State air = MoistAir.state(args.one("temperature"), args.one("humidity"));
        return new Answers().number("dew-point", air.dewPoint()).number("absolute-humidity", air.absoluteHumidity())
                .number("vapour-pressure", air.vapourPressure());
    }

    private static Answers saltHumidity(Args args) {
        Quantity humidity = SaltHumidity.named(args.word("salt")).orElseThrow().humidity(args.one("temperature"));
        return new Answers()
                .number("humidity", Quantity.plusMinus(humidity.value(), humidity.halfWidth(), Unit.PERCENT))
                .number("uncertainty", Quantity.of(humidity.halfWidth(), Unit.PERCENT));
    }

    private static Answers colourDifference(Args args) {
        Colour.Difference difference = colour(args, "before").to(colour(args, "after"));
        return new Answers().number("de76", difference.de76()).number("de94", difference.de94())
                .number("de2000", difference.de2000()).number("lightness", difference.lightnessChange())
                .number("chroma", difference.chromaChange()).number("hue", difference.hueChange());
    }

    private static Colour colour(Args args, String key) {
        List<Quantity> numbers = args.three(key);
        return Colour.of(key, numbers.get(0), numbers.get(1), numbers.get(2));
    }

    private static Answers colourValues(Args args) {
        List<Quantity> numbers = args.three("xyz");
        Colour.Tristimulus measured = new Colour.Tristimulus(numbers.get(0), numbers.get(1), numbers.get(2));
        WhitePoint white = WhitePoint.named(args.word("white")).orElseThrow();
        Colour colour = Colour.of(measured, white.white());
        Answers answers = new Answers().number("l", colour.lightness()).number("a", colour.red())
                .number("b", colour.yellow());
        if (!white.forPaper()) {
            Clause why = Clause.of("ASTM E313 and CIE whiteness are not defined for this light");
            return answers.withhold("yellowness", why).withhold("whiteness", why).withhold("tint", why);
        }
        answers.number("yellowness", white.yellowness(measured));
        Whiteness whiteness = white.whiteness(measured);
        if (whiteness.holds()) {
            return answers.number("whiteness", whiteness.whiteness()).number("tint", whiteness.tint());
        }
        Clause why = Clause.of("outside the range of the CIE formula, 40 < W < 5 Y − 280 and −4 < tint < 2: W would be {whiteness}"
                + " and the tint {tint}", "whiteness", tenths(whiteness.whiteness()), "tint", tenths(whiteness.tint()));
        return answers.withhold("whiteness", why).withhold("tint", why);
    }

    private static double tenths(Quantity number) {
        return Decimal.of(number.value()).rounded(1).value();
    }

    private static Answers change(Args args) {
        Change change = args.yes("paired") ? Change.paired(args.list("before"), args.list("after"))
                : Change.unpaired(args.list("before"), args.list("after"));
        Clause why = Clause.of("fewer than three readings, or readings without scatter, say nothing about chance");
        Answers answers = new Answers().number("mean-change", change.mean())
                .number("sd", change.sd(), Clause.of("a single reading has no scatter"));
        Optional<Change.Test> test = change.test();
        return answers.number("t", test.map(Change.Test::t), why).number("degrees", test.map(Change.Test::degrees), why)
                .number("p", test.map(Change.Test::p), why).number("low", test.map(Change.Test::low), why)
                .number("high", test.map(Change.Test::high), why);
    }

    private Answers measuring(Args args) {
        Measuring.Measured measured = Measuring.choose(args.one("volume"), cylinders);
        return new Answers().number("vessel", measured.vessel()).number("tolerance", measured.tolerance())
                .number("uncertainty", measured.uncertainty()).number("relative", measured.relative());
    }

    private static Measuring.Vessel vessel(Map<String, String> row) {
        return new Measuring.Vessel(Quantity.of(Decimal.number(row.get("capacity")), Unit.MILLILITRE),
                Quantity.of(Decimal.number(row.get("tolerance")), Unit.MILLILITRE));
    }
}
