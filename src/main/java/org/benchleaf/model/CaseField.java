package org.benchleaf.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The facts of a case that a trade rule can ask about, by the words of the case file. */
public enum CaseField {
    MADE("made", "the date of the object",
            Home.OBJECT, Absence.NONE, "made", "when"),
    MADE_EVIDENCE("made.evidence", "what the date rests on",
            Home.OBJECT, Absence.NOT_GIVEN, "made", "evidence"),
    MADE_OPINION("made.opinion", "whether the date is an opinion",
            Home.OBJECT, Absence.NONE, "made", "opinion"),
    OBJECT_KIND("object.kind", "what kind of object it is",
            Home.OBJECT, Absence.NOT_GIVEN, "kind"),
    OBJECT_TECHNIQUE("object.technique", "its technique",
            Home.OBJECT, Absence.NOT_GIVEN, "technique"),
    OBJECT_FEATURES("object.features", "its features",
            Home.OBJECT, Absence.NONE, "features"),
    OBJECT_GRAMMAGE("object.grammage", "the grammage of the paper",
            Home.OBJECT, Absence.NOT_GIVEN, "support", "grammage"),
    LONG_SIDE("sheet.long side", "the long side of the sheet",
            Home.OBJECT, Absence.NOT_GIVEN, "size"),
    SHORT_SIDE("sheet.short side", "the short side of the sheet",
            Home.OBJECT, Absence.NOT_GIVEN, "size"),
    SIZING("support.sizing", "the sizing of the paper",
            Home.OBJECT, Absence.NOT_GIVEN, "support", "sizing"),
    CONSULTATION_OPEN("consultation.open", "whether anybody is still to be heard about it",
            Home.OBJECT, Absence.NONE, "consultation"),
    PRIVATE("private", "what is private",
            Home.OBJECT, Absence.NONE, "private"),
    DAMAGE_ACTIVE("mould.active", "whether there is active mould",
            Home.CASE, Absence.NONE, "condition"),
    PROPOSAL_AIMS("proposal.aims", "the aims of the proposal",
            Home.CASE, Absence.NOT_GIVEN, "proposal", "aims"),
    PROPOSAL_OPTIONS("proposal.options", "the alternatives in the proposal",
            Home.CASE, Absence.NOT_GIVEN, "proposal", "options"),
    RETOLD("source", "whether the case is retold from a publication",
            Home.CASE, Absence.NONE, "source"),
    LAYER_STATE("state", "the state of the medium or paper",
            Home.LAYER, Absence.NOT_GIVEN, "state"),
    LAYER_GRADE("grade", "the grade of the ink",
            Home.LAYER, Absence.NOT_GIVEN, "grade"),
    LAYER_COLOUR("colour", "the colour of the medium",
            Home.LAYER, Absence.NOT_GIVEN, "colour"),
    STEP_ON("on", "the day of the step",
            Home.STEP, Absence.NOT_GIVEN, "on"),
    STEP_UNTIL("until", "the end point of the step",
            Home.STEP, Absence.NOT_GIVEN, "until"),
    STEP_WATCH("watch", "what is watched during the step",
            Home.STEP, Absence.NONE, "watch"),
    STEP_HOLD("hold", "whether work stops for a look",
            Home.STEP, Absence.NONE, "hold"),
    STEP_LOOK("hold.look", "what is looked at when work stops",
            Home.STEP, Absence.NOT_GIVEN, "hold", "look"),
    STEP_RELEASED_BY("hold.released by", "who lets the work go on",
            Home.STEP, Absence.NOT_GIVEN, "hold", "released by"),
    STEP_MEANWHILE("hold.meanwhile", "what happens to the sheet while work stops",
            Home.STEP, Absence.NOT_GIVEN, "hold", "meanwhile"),
    STEP_AT_MOST("at most", "how long the step may last at most",
            Home.STEP, Absence.NOT_GIVEN, "at most"),
    STEP_BY("by", "who does the step",
            Home.STEP, Absence.NOT_GIVEN, "by"),
    STEP_PEOPLE("people", "how many people it takes",
            Home.STEP, Absence.NOT_GIVEN, "people"),
    STEP_AREA("area", "how much of the sheet is treated",
            Home.STEP, Absence.NOT_GIVEN, "area"),
    STEP_APPLIED("applied", "how the liquid is brought to the sheet",
            Home.STEP, Absence.NONE, "applied"),
    STEP_EDGE("edge", "how the edge of the wetted place is kept",
            Home.STEP, Absence.NOT_GIVEN, "edge"),
    STEP_AIM("aim", "the aim of the step",
            Home.STEP, Absence.NOT_GIVEN, "aim"),
    STEP_INSTEAD("instead", "what could be done instead",
            Home.STEP, Absence.NOT_GIVEN, "instead"),
    STEP_CHECKS("looked for", "what was looked for",
            Home.STEP, Absence.NONE, "looked for"),
    STEP_PRACTISED("practised", "whether it was practised before",
            Home.STEP, Absence.NONE, "practised"),
    STEP_EMERGENCY("emergency", "what the emergency averted",
            Home.STEP, Absence.NONE, "emergency", "averted"),
    EMERGENCY_REPORT("emergency.report by", "by when the emergency is reported",
            Home.STEP, Absence.NOT_GIVEN, "emergency", "report by"),
    STEP_RESIZE("resize", "whether the sheet is sized again",
            Home.STEP, Absence.NOT_GIVEN, "resize", "decision"),
    HOUSING_DAY("day of housing", "the day of housing",
            Home.HOUSING, Absence.NOT_GIVEN, "on"),
    MEASURING_DAY("day of measuring", "the day of measuring",
            Home.MEASURING, Absence.NOT_GIVEN, "on"),
    LIQUID_PH("liquid.pH", "the pH of the liquid",
            Home.LIQUID, Absence.NOT_GIVEN, "bath", "readings", "pH fresh"),
    LIQUID_AGE("liquid.age", "when the liquid was made",
            Home.LIQUID, Absence.NOT_GIVEN, "made on"),
    LIQUID_KEEPS("liquid.keeps", "how long the liquid keeps",
            Home.LIQUID, Absence.NOT_GIVEN, "keeps"),
    BATH_TEMPERATURE("bath.temperature", "the temperature of the bath",
            Home.STEP, Absence.NOT_GIVEN, "bath", "temperature"),
    BATH_PH_READ("bath.pH read", "the pH that was read in the fresh bath",
            Home.STEP, Absence.NOT_GIVEN, "bath", "readings", "pH fresh"),
    WATER_SOURCE("bath.water.source", "where the water comes from",
            Home.STEP, Absence.NOT_GIVEN, "bath", "water", "source"),
    WATER_PH("bath.water.pH", "the pH of the water",
            Home.STEP, Absence.NOT_GIVEN, "bath", "water", "pH"),
    WATER_CONDUCTIVITY("bath.water.conductivity", "the conductivity of the water",
            Home.STEP, Absence.NOT_GIVEN, "bath", "water", "conductivity"),
    WATER_ANALYSIS("bath.water.analysis", "the analysis of the water",
            Home.STEP, Absence.NOT_GIVEN, "bath", "water", "analysis"),
    WATER_PIPES("bath.water.pipes", "the pipes of the water",
            Home.STEP, Absence.NOT_GIVEN, "bath", "water", "pipes"),
    MIST_ULTRASONIC("mist.ultrasonic", "the tool for misting",
            Home.STEP, Absence.NOT_GIVEN, "mist", "tool"),
    MIST_PER_SHEET("mist.per sheet", "how much is misted for the mass of the sheet",
            Home.STEP, Absence.NONE, "mist", "amount"),
    MIST_WATER("mist.water", "the water for misting",
            Home.STEP, Absence.NOT_GIVEN, "mist", "water"),
    MIST_CLEANED("mist.cleaned", "when the tool for misting was cleaned",
            Home.STEP, Absence.NOT_GIVEN, "mist", "cleaned"),
    CHAMBER_PACK("chamber.pack", "the kind of humidification",
            Home.STEP, Absence.NOT_GIVEN, "chamber", "pack"),
    CHAMBER_HUMIDITY("chamber.humidity", "the humidity in the chamber",
            Home.STEP, Absence.NOT_GIVEN, "chamber", "humidity"),
    CHAMBER_LOOK_EVERY("chamber.look every", "how often somebody looks into the chamber",
            Home.STEP, Absence.NOT_GIVEN, "chamber", "look every"),
    SUPPORT_RIGID("support.rigid", "whether what carries the sheet is rigid",
            Home.STEP, Absence.NONE, "support", "rigid"),
    CLEANING_EXTRACTION("cleaning.extraction", "whether air is extracted while cleaning",
            Home.STEP, Absence.NONE, "cleaning", "extraction"),
    CLEANING_OPEN("cleaning.open brushing", "whether it is brushed in the open",
            Home.STEP, Absence.NONE, "cleaning", "open brushing"),
    FIXING_METHOD("fixing.method", "the method of fixing",
            Home.STEP, Absence.NOT_GIVEN, "fixing", "method"),
    FIXING_RINSE("fixing.rinse", "how long the fixative is rinsed",
            Home.STEP, Absence.NOT_GIVEN, "fixing", "rinse"),
    FIXING_RINSES("fixing.rinses", "how often the fixative is rinsed",
            Home.STEP, Absence.NOT_GIVEN, "fixing", "rinses"),
    FIXING_CLEAR_BY("fixing.clear by", "by when the wax is gone",
            Home.STEP, Absence.NOT_GIVEN, "fixing", "clear by"),
    HEAT_TEMPERATURE("heat.temperature", "the temperature of the tool",
            Home.STEP, Absence.NOT_GIVEN, "heat", "temperature"),
    PRESSURE("press.pressure", "the mass of the weight",
            Home.STEP, Absence.NOT_GIVEN, "press", "mass"),
    PRESS_WEIGHTS("press.weights", "how many weights there are",
            Home.STEP, Absence.NONE, "press", "weights"),
    PRESS_HEIGHT("press.height", "the area of the weight",
            Home.STEP, Absence.NONE, "press", "height"),
    PRESS_BETWEEN("press.between", "what lies between sheet and weight",
            Home.STEP, Absence.NOT_GIVEN, "press", "between"),
    TISSUE_GRAMMAGE("mend.tissue grammage", "the grammage of the tissue",
            Home.STEP, Absence.NOT_GIVEN, "mend", "tissue"),
    MEND_PLACES("mend.places", "what is mended at once",
            Home.STEP, Absence.NOT_GIVEN, "mend", "damages"),
    MEND_GRAIN("mend.grain", "the grain of the tissue",
            Home.STEP, Absence.NOT_GIVEN, "mend", "grain"),
    MEND_PATCH("mend.patch", "whether it is a large patch",
            Home.STEP, Absence.NONE, "mend", "patch"),
    STEP_NAMED("named", "the step’s own name",
            Home.STEP, Absence.NONE, "named"),
    LAID_BETWEEN("layer.between", "what lies between sheet and layer",
            Home.STEP, Absence.NONE, "layer", "between"),
    LAID_EACH("layer.each", "how long each layer stays",
            Home.STEP, Absence.NOT_GIVEN, "layer", "each"),
    SUCTION_PRESSURE("suction.pressure", "the pressure of the suction",
            Home.STEP, Absence.NOT_GIVEN, "suction", "pressure"),
    LIGHT_FILTERED("light.filtered", "whether ultraviolet is filtered out",
            Home.STEP, Absence.NONE, "light", "filtered"),
    LIGHT_TIME("light.time", "how long the light lasts",
            Home.STEP, Absence.NOT_GIVEN, "light", "time"),
    TAPE_ADHESIVE("tape.adhesive", "the adhesive of the tape",
            Home.STEP, Absence.NOT_GIVEN, "tape", "adhesive"),
    AGEING_OF("ageing.of", "what is aged",
            Home.STEP, Absence.NOT_GIVEN, "ageing", "of"),
    HEAT_TIME("heat.time", "how long the heat lasts",
            Home.STEP, Absence.NOT_GIVEN, "heat", "time"),
    PRESS_TIME("press.time", "how long the pressing lasts",
            Home.STEP, Absence.NOT_GIVEN, "press", "time"),
    ACTIVATED_BY("mend.activated by", "what activates the adhesive",
            Home.STEP, Absence.NONE, "mend", "activated", "by"),
    ACTIVATED_WITH("mend.activated with", "the liquid that activates the adhesive",
            Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "with"),
    WINDOW_LOW("mend.window from", "the lowest temperature that sets the adhesive",
            Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "window"),
    WINDOW_HIGH("mend.window to", "the highest temperature that sets the adhesive",
            Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "window"),
    FIRST_CHANGE("blotters.first change", "when the blotters are first changed",
            Home.STEP, Absence.NOT_GIVEN, "blotters", "changes"),
    SOLIDS("weighing.solids", "the mass at which the sheet was restrained",
            Home.STEP, Absence.NOT_GIVEN, "weighing", "restrained"),
    BLOTTED_FOR("weighing.blotted for", "how long the sheet was blotted",
            Home.STEP, Absence.NOT_GIVEN, "weighing", "blotted for"),
    HOUSING_BUFFERED("housing.buffered", "whether the housing is buffered",
            Home.STEP, Absence.NOT_GIVEN, "housing", "buffered"),
    HOUSING_PH("housing.pH", "the pH of the housing",
            Home.STEP, Absence.NOT_GIVEN, "housing", "pH"),
    MEASURE("measure", "what was measured",
            Home.RESULT, Absence.NOT_GIVEN, "measure"),
    RESULT_KIND("result.kind", "the kind of result",
            Home.RESULT, Absence.NOT_GIVEN, "measure"),
    METHOD("method", "the method of measuring",
            Home.RESULT, Absence.NOT_GIVEN, "method"),
    COLOUR_FORMULA("colour.formula", "the formula of the colour difference",
            Home.RESULT, Absence.NOT_GIVEN, "with", "formula"),
    COLOUR_ILLUMINANT("colour.illuminant", "the illuminant",
            Home.RESULT, Absence.NOT_GIVEN, "with", "illuminant"),
    COLOUR_OBSERVER("colour.observer", "the observer",
            Home.RESULT, Absence.NOT_GIVEN, "with", "observer"),
    COLOUR_GEOMETRY("colour.geometry", "the geometry of the instrument",
            Home.RESULT, Absence.NOT_GIVEN, "with", "geometry"),
    COLOUR_READINGS("colour.readings each", "the number of readings at each place",
            Home.RESULT, Absence.NOT_GIVEN, "with", "readings each"),
    COLOUR_SPOTS("colour.spots", "the places where colour was read",
            Home.RESULT, Absence.NOT_GIVEN, "spots", "at"),
    RESERVE_TITRATION("reserve.titration", "the titration of the reserve",
            Home.RESULT, Absence.NOT_GIVEN, "titration"),
    RESERVE_STEP("reserve.step", "the step that the reserve is worked out from",
            Home.RESULT, Absence.NOT_GIVEN, "step"),
    RESERVE_CARBONATE("reserve.carbonate", "the carbonate as stated",
            Home.RESULT, Absence.NOT_GIVEN, "carbonate"),
    RESERVE_AMOUNT("reserve.amount", "the amount of the reserve as stated",
            Home.RESULT, Absence.NOT_GIVEN, "amount"),
    PICTURE_CREDIT("credit", "the credit of the picture",
            Home.PICTURE, Absence.NOT_GIVEN, "credit"),
    PICTURE_LICENCE("licence", "the licence of the picture",
            Home.PICTURE, Absence.NOT_GIVEN, "licence"),
    PICTURE_PAIR("pair", "the picture that it is paired with",
            Home.PICTURE, Absence.NONE, "pair"),
    PICTURE_LIGHT("light", "the light of the picture",
            Home.PICTURE, Absence.NOT_GIVEN, "light"),
    PICTURE_SIDE("side", "the side that the picture shows",
            Home.PICTURE, Absence.NOT_GIVEN, "side"),
    PICTURE_SCALE("scale", "whether a scale is in the picture",
            Home.PICTURE, Absence.NONE, "scale"),
    PICTURE_TARGET("target", "whether a colour target is in the picture",
            Home.PICTURE, Absence.NONE, "target"),
    PICTURE_CAUTION("caution", "the caution at the picture",
            Home.PICTURE, Absence.NONE, "caution");

    /** What a field belongs to, and how it is named in a sentence. */
    public enum Home {
        CASE, OBJECT, LAYER, STEP, LIQUID, HOUSING, MEASURING, RESULT, PICTURE
    }

    /** What it means that a field is left out. */
    public enum Absence {
        /** There is none, or it is as the format says of fields left out. */
        NONE,
        /** It may be so or otherwise. */
        NOT_GIVEN
    }

    private final String word;
    private final String says;
    private final Home home;
    private final Absence absence;
    private final List<String> keys;

    CaseField(String word, String says, Home home, Absence absence, String... keys) {
        this.word = word;
        this.says = says;
        this.home = home;
        this.absence = absence;
        this.keys = List.of(keys);
    }

    /** The word as written in a rule file. */
    public String word() {
        return word;
    }

    /** What it is to a reader who has not seen the case file, within a sentence. */
    public String says() {
        return says;
    }

    /** What the field belongs to. */
    public Home home() {
        return home;
    }

    /** What it means that the field is left out. */
    public Absence absence() {
        return absence;
    }

    /** The keys under which an author writes it, the outermost first. */
    public List<String> keys() {
        return keys;
    }

    /** The field as an author writes it, such as {@code 'temperature:' under 'bath:'}. */
    public String written() {
        List<String> inwards = new ArrayList<>(keys);
        Collections.reverse(inwards);
        return inwards.stream().map(key -> "'" + key + ":'").collect(Collectors.joining(" under "));
    }

    /** The field written with that word. */
    public static Optional<CaseField> of(String word) {
        return Stream.of(values()).filter(field -> field.word.equals(word)).findFirst();
    }
}
