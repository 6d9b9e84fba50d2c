package org.benchleaf.model;

import java.util.Optional;
import java.util.stream.Stream;

/** The facts of a case that a trade rule can ask about, by the words of the case file. */
public enum CaseField {
    MADE("made"),
    MADE_EVIDENCE("made.evidence"),
    MADE_OPINION("made.opinion"),
    OBJECT_KIND("object.kind"),
    OBJECT_TECHNIQUE("object.technique"),
    OBJECT_FEATURES("object.features"),
    OBJECT_GRAMMAGE("object.grammage"),
    LONG_SIDE("sheet.long side"),
    SHORT_SIDE("sheet.short side"),
    SIZING("support.sizing"),
    CONSULTATION_OPEN("consultation.open"),
    PRIVATE("private"),
    DAMAGE_ACTIVE("mould.active"),
    PROPOSAL_AIMS("proposal.aims"),
    PROPOSAL_OPTIONS("proposal.options"),
    LAYER_STATE("state"),
    LAYER_GRADE("grade"),
    LAYER_COLOUR("colour"),
    STEP_ON("on"),
    STEP_UNTIL("until"),
    STEP_WATCH("watch"),
    STEP_HOLD("hold"),
    STEP_LOOK("hold.look"),
    STEP_RELEASED_BY("hold.released by"),
    STEP_AT_MOST("at most"),
    STEP_BY("by"),
    STEP_PEOPLE("people"),
    STEP_AREA("area"),
    STEP_EDGE("edge"),
    STEP_AIM("aim"),
    STEP_INSTEAD("instead"),
    STEP_CHECKS("looked for"),
    STEP_PRACTISED("practised"),
    STEP_EMERGENCY("emergency"),
    EMERGENCY_REPORT("emergency.report by"),
    STEP_RESIZE("resize"),
    HOUSING_DAY("day of housing"),
    MEASURING_DAY("day of measuring"),
    LIQUID_PH("liquid.pH"),
    LIQUID_AGE("liquid.age"),
    LIQUID_KEEPS("liquid.keeps"),
    BATH_TEMPERATURE("bath.temperature"),
    BATH_PH_READ("bath.pH read"),
    WATER_SOURCE("bath.water.source"),
    WATER_PH("bath.water.pH"),
    WATER_CONDUCTIVITY("bath.water.conductivity"),
    WATER_ANALYSIS("bath.water.analysis"),
    WATER_PIPES("bath.water.pipes"),
    MIST_ULTRASONIC("mist.ultrasonic"),
    MIST_WATER("mist.water"),
    MIST_CLEANED("mist.cleaned"),
    CHAMBER_PACK("chamber.pack"),
    CHAMBER_HUMIDITY("chamber.humidity"),
    CHAMBER_LOOK_EVERY("chamber.look every"),
    SUPPORT_RIGID("support.rigid"),
    CLEANING_EXTRACTION("cleaning.extraction"),
    CLEANING_OPEN("cleaning.open brushing"),
    FIXING_METHOD("fixing.method"),
    FIXING_RINSE("fixing.rinse"),
    FIXING_RINSES("fixing.rinses"),
    FIXING_CLEAR_BY("fixing.clear by"),
    HEAT_TEMPERATURE("heat.temperature"),
    PRESSURE("press.pressure"),
    PRESS_BETWEEN("press.between"),
    TISSUE_GRAMMAGE("mend.tissue grammage"),
    MEND_GRAIN("mend.grain"),
    MEND_PATCH("mend.patch"),
    FIRST_CHANGE("blotters.first change"),
    SOLIDS("weighing.solids"),
    BLOTTED_FOR("weighing.blotted for"),
    HOUSING_BUFFERED("housing.buffered"),
    HOUSING_PH("housing.pH"),
    MEASURE("measure"),
    RESULT_KIND("result.kind"),
    METHOD("method"),
    COLOUR_FORMULA("colour.formula"),
    COLOUR_ILLUMINANT("colour.illuminant"),
    COLOUR_OBSERVER("colour.observer"),
    COLOUR_GEOMETRY("colour.geometry"),
    COLOUR_READINGS("colour.readings each"),
    COLOUR_SPOTS("colour.spots"),
    RESERVE_TITRATION("reserve.titration"),
    RESERVE_STEP("reserve.step"),
    RESERVE_CARBONATE("reserve.carbonate"),
    RESERVE_AMOUNT("reserve.amount"),
    PICTURE_CREDIT("credit"),
    PICTURE_LICENCE("licence"),
    PICTURE_PAIR("pair"),
    PICTURE_LIGHT("light"),
    PICTURE_SIDE("side"),
    PICTURE_SCALE("scale"),
    PICTURE_TARGET("target"),
    PICTURE_CAUTION("caution");

    private final String word;

    CaseField(String word) {
        this.word = word;
    }

    /** The word as written in a rule file. */
    public String word() {
        return word;
    }

    /** The field written with that word. */
    public static Optional<CaseField> of(String word) {
        return Stream.of(values()).filter(field -> field.word.equals(word)).findFirst();
    }
}
