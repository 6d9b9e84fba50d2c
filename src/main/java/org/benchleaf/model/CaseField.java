package org.benchleaf.model;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The facts of a case that a trade rule can ask about, by the words of the case file. */
public enum CaseField {
    MADE("made", Home.OBJECT, Absence.NONE, "made", "when"),
    MADE_EVIDENCE("made.evidence", Home.OBJECT, Absence.NOT_GIVEN, "made", "evidence"),
    MADE_OPINION("made.opinion", Home.OBJECT, Absence.NONE, "made", "opinion"),
    OBJECT_KIND("object.kind", Home.OBJECT, Absence.NOT_GIVEN, "kind"),
    OBJECT_TECHNIQUE("object.technique", Home.OBJECT, Absence.NOT_GIVEN, "technique"),
    OBJECT_FEATURES("object.features", Home.OBJECT, Absence.NONE, "features"),
    OBJECT_GRAMMAGE("object.grammage", Home.OBJECT, Absence.NOT_GIVEN, "support", "grammage"),
    LONG_SIDE("sheet.long side", Home.OBJECT, Absence.NOT_GIVEN, "size"),
    SHORT_SIDE("sheet.short side", Home.OBJECT, Absence.NOT_GIVEN, "size"),
    SIZING("support.sizing", Home.OBJECT, Absence.NOT_GIVEN, "support", "sizing"),
    CONSULTATION_OPEN("consultation.open", Home.OBJECT, Absence.NONE, "consultation"),
    PRIVATE("private", Home.OBJECT, Absence.NONE, "private"),
    DAMAGE_ACTIVE("mould.active", Home.CASE, Absence.NONE, "condition"),
    PROPOSAL_AIMS("proposal.aims", Home.CASE, Absence.NOT_GIVEN, "proposal", "aims"),
    PROPOSAL_OPTIONS("proposal.options", Home.CASE, Absence.NOT_GIVEN, "proposal", "options"),
    RETOLD("source", Home.CASE, Absence.NONE, "source"),
    LAYER_STATE("state", Home.LAYER, Absence.NOT_GIVEN, "state"),
    LAYER_GRADE("grade", Home.LAYER, Absence.NOT_GIVEN, "grade"),
    LAYER_COLOUR("colour", Home.LAYER, Absence.NOT_GIVEN, "colour"),
    STEP_ON("on", Home.STEP, Absence.NOT_GIVEN, "on"),
    STEP_UNTIL("until", Home.STEP, Absence.NOT_GIVEN, "until"),
    STEP_WATCH("watch", Home.STEP, Absence.NONE, "watch"),
    STEP_HOLD("hold", Home.STEP, Absence.NONE, "hold"),
    STEP_LOOK("hold.look", Home.STEP, Absence.NOT_GIVEN, "hold", "look"),
    STEP_RELEASED_BY("hold.released by", Home.STEP, Absence.NOT_GIVEN, "hold", "released by"),
    STEP_MEANWHILE("hold.meanwhile", Home.STEP, Absence.NOT_GIVEN, "hold", "meanwhile"),
    STEP_AT_MOST("at most", Home.STEP, Absence.NOT_GIVEN, "at most"),
    STEP_BY("by", Home.STEP, Absence.NOT_GIVEN, "by"),
    STEP_PEOPLE("people", Home.STEP, Absence.NOT_GIVEN, "people"),
    STEP_AREA("area", Home.STEP, Absence.NOT_GIVEN, "area"),
    STEP_EDGE("edge", Home.STEP, Absence.NOT_GIVEN, "edge"),
    STEP_AIM("aim", Home.STEP, Absence.NOT_GIVEN, "aim"),
    STEP_INSTEAD("instead", Home.STEP, Absence.NOT_GIVEN, "instead"),
    STEP_CHECKS("looked for", Home.STEP, Absence.NONE, "looked for"),
    STEP_PRACTISED("practised", Home.STEP, Absence.NONE, "practised"),
    STEP_EMERGENCY("emergency", Home.STEP, Absence.NONE, "emergency", "averted"),
    EMERGENCY_REPORT("emergency.report by", Home.STEP, Absence.NOT_GIVEN, "emergency", "report by"),
    STEP_RESIZE("resize", Home.STEP, Absence.NOT_GIVEN, "resize", "decision"),
    HOUSING_DAY("day of housing", Home.HOUSING, Absence.NOT_GIVEN, "on"),
    MEASURING_DAY("day of measuring", Home.MEASURING, Absence.NOT_GIVEN, "on"),
    LIQUID_PH("liquid.pH", Home.LIQUID, Absence.NOT_GIVEN, "bath", "readings", "pH fresh"),
    LIQUID_AGE("liquid.age", Home.LIQUID, Absence.NOT_GIVEN, "made on"),
    LIQUID_KEEPS("liquid.keeps", Home.LIQUID, Absence.NOT_GIVEN, "keeps"),
    BATH_TEMPERATURE("bath.temperature", Home.STEP, Absence.NOT_GIVEN, "bath", "temperature"),
    BATH_PH_READ("bath.pH read", Home.STEP, Absence.NOT_GIVEN, "bath", "readings", "pH fresh"),
    WATER_SOURCE("bath.water.source", Home.STEP, Absence.NOT_GIVEN, "bath", "water", "source"),
    WATER_PH("bath.water.pH", Home.STEP, Absence.NOT_GIVEN, "bath", "water", "pH"),
    WATER_CONDUCTIVITY("bath.water.conductivity", Home.STEP, Absence.NOT_GIVEN, "bath", "water", "conductivity"),
    WATER_ANALYSIS("bath.water.analysis", Home.STEP, Absence.NOT_GIVEN, "bath", "water", "analysis"),
    WATER_PIPES("bath.water.pipes", Home.STEP, Absence.NOT_GIVEN, "bath", "water", "pipes"),
    MIST_ULTRASONIC("mist.ultrasonic", Home.STEP, Absence.NOT_GIVEN, "mist", "tool"),
    MIST_PER_SHEET("mist.per sheet", Home.STEP, Absence.NONE, "mist", "amount"),
    MIST_WATER("mist.water", Home.STEP, Absence.NOT_GIVEN, "mist", "water"),
    MIST_CLEANED("mist.cleaned", Home.STEP, Absence.NOT_GIVEN, "mist", "cleaned"),
    CHAMBER_PACK("chamber.pack", Home.STEP, Absence.NOT_GIVEN, "chamber", "pack"),
    CHAMBER_HUMIDITY("chamber.humidity", Home.STEP, Absence.NOT_GIVEN, "chamber", "humidity"),
    CHAMBER_LOOK_EVERY("chamber.look every", Home.STEP, Absence.NOT_GIVEN, "chamber", "look every"),
    SUPPORT_RIGID("support.rigid", Home.STEP, Absence.NONE, "support", "rigid"),
    CLEANING_EXTRACTION("cleaning.extraction", Home.STEP, Absence.NONE, "cleaning", "extraction"),
    CLEANING_OPEN("cleaning.open brushing", Home.STEP, Absence.NONE, "cleaning", "open brushing"),
    FIXING_METHOD("fixing.method", Home.STEP, Absence.NOT_GIVEN, "fixing", "method"),
    FIXING_RINSE("fixing.rinse", Home.STEP, Absence.NOT_GIVEN, "fixing", "rinse"),
    FIXING_RINSES("fixing.rinses", Home.STEP, Absence.NOT_GIVEN, "fixing", "rinses"),
    FIXING_CLEAR_BY("fixing.clear by", Home.STEP, Absence.NOT_GIVEN, "fixing", "clear by"),
    HEAT_TEMPERATURE("heat.temperature", Home.STEP, Absence.NOT_GIVEN, "heat", "temperature"),
    PRESSURE("press.pressure", Home.STEP, Absence.NOT_GIVEN, "press", "mass"),
    PRESS_WEIGHTS("press.weights", Home.STEP, Absence.NONE, "press", "weights"),
    PRESS_HEIGHT("press.height", Home.STEP, Absence.NONE, "press", "height"),
    PRESS_BETWEEN("press.between", Home.STEP, Absence.NOT_GIVEN, "press", "between"),
    TISSUE_GRAMMAGE("mend.tissue grammage", Home.STEP, Absence.NOT_GIVEN, "mend", "tissue"),
    MEND_PLACES("mend.places", Home.STEP, Absence.NOT_GIVEN, "mend", "damages"),
    MEND_GRAIN("mend.grain", Home.STEP, Absence.NOT_GIVEN, "mend", "grain"),
    MEND_PATCH("mend.patch", Home.STEP, Absence.NONE, "mend", "patch"),
    STEP_NAMED("named", Home.STEP, Absence.NONE, "named"),
    LAID_BETWEEN("layer.between", Home.STEP, Absence.NONE, "layer", "between"),
    LAID_EACH("layer.each", Home.STEP, Absence.NOT_GIVEN, "layer", "each"),
    SUCTION_PRESSURE("suction.pressure", Home.STEP, Absence.NOT_GIVEN, "suction", "pressure"),
    LIGHT_FILTERED("light.filtered", Home.STEP, Absence.NONE, "light", "filtered"),
    LIGHT_TIME("light.time", Home.STEP, Absence.NOT_GIVEN, "light", "time"),
    TAPE_ADHESIVE("tape.adhesive", Home.STEP, Absence.NOT_GIVEN, "tape", "adhesive"),
    AGEING_OF("ageing.of", Home.STEP, Absence.NOT_GIVEN, "ageing", "of"),
    HEAT_TIME("heat.time", Home.STEP, Absence.NOT_GIVEN, "heat", "time"),
    PRESS_TIME("press.time", Home.STEP, Absence.NOT_GIVEN, "press", "time"),
    ACTIVATED_BY("mend.activated by", Home.STEP, Absence.NONE, "mend", "activated", "by"),
    ACTIVATED_WITH("mend.activated with", Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "with"),
    WINDOW_LOW("mend.window from", Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "window"),
    WINDOW_HIGH("mend.window to", Home.STEP, Absence.NOT_GIVEN, "mend", "activated", "window"),
    FIRST_CHANGE("blotters.first change", Home.STEP, Absence.NOT_GIVEN, "blotters", "changes"),
    SOLIDS("weighing.solids", Home.STEP, Absence.NOT_GIVEN, "weighing", "restrained"),
    BLOTTED_FOR("weighing.blotted for", Home.STEP, Absence.NOT_GIVEN, "weighing", "blotted for"),
    HOUSING_BUFFERED("housing.buffered", Home.STEP, Absence.NOT_GIVEN, "housing", "buffered"),
    HOUSING_PH("housing.pH", Home.STEP, Absence.NOT_GIVEN, "housing", "pH"),
    MEASURE("measure", Home.RESULT, Absence.NOT_GIVEN, "measure"),
    RESULT_KIND("result.kind", Home.RESULT, Absence.NOT_GIVEN, "measure"),
    METHOD("method", Home.RESULT, Absence.NOT_GIVEN, "method"),
    COLOUR_FORMULA("colour.formula", Home.RESULT, Absence.NOT_GIVEN, "with", "formula"),
    COLOUR_ILLUMINANT("colour.illuminant", Home.RESULT, Absence.NOT_GIVEN, "with", "illuminant"),
    COLOUR_OBSERVER("colour.observer", Home.RESULT, Absence.NOT_GIVEN, "with", "observer"),
    COLOUR_GEOMETRY("colour.geometry", Home.RESULT, Absence.NOT_GIVEN, "with", "geometry"),
    COLOUR_READINGS("colour.readings each", Home.RESULT, Absence.NOT_GIVEN, "with", "readings each"),
    COLOUR_SPOTS("colour.spots", Home.RESULT, Absence.NOT_GIVEN, "spots", "at"),
    RESERVE_TITRATION("reserve.titration", Home.RESULT, Absence.NOT_GIVEN, "titration"),
    RESERVE_STEP("reserve.step", Home.RESULT, Absence.NOT_GIVEN, "step"),
    RESERVE_CARBONATE("reserve.carbonate", Home.RESULT, Absence.NOT_GIVEN, "carbonate"),
    RESERVE_AMOUNT("reserve.amount", Home.RESULT, Absence.NOT_GIVEN, "amount"),
    PICTURE_CREDIT("credit", Home.PICTURE, Absence.NOT_GIVEN, "credit"),
    PICTURE_LICENCE("licence", Home.PICTURE, Absence.NOT_GIVEN, "licence"),
    PICTURE_PAIR("pair", Home.PICTURE, Absence.NONE, "pair"),
    PICTURE_LIGHT("light", Home.PICTURE, Absence.NOT_GIVEN, "light"),
    PICTURE_SIDE("side", Home.PICTURE, Absence.NOT_GIVEN, "side"),
    PICTURE_SCALE("scale", Home.PICTURE, Absence.NONE, "scale"),
    PICTURE_TARGET("target", Home.PICTURE, Absence.NONE, "target"),
    PICTURE_CAUTION("caution", Home.PICTURE, Absence.NONE, "caution");

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
    private final Home home;
    private final Absence absence;
    private final List<String> keys;

    CaseField(String word, Home home, Absence absence, String... keys) {
        this.word = word;
        this.home = home;
        this.absence = absence;
        this.keys = List.of(keys);
    }

    /** The word as written in a rule file. */
    public String word() {
        return word;
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
