package org.benchleaf.check;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.benchleaf.model.BuildingBlock;
import org.benchleaf.model.CaseField;
import org.benchleaf.model.Condition;
import org.benchleaf.model.Rule;

/** What of a case a rule looks at, told from its building blocks; what is not known here is taken to look at everything. */
final class RuleGrounds implements Condition.Kinds<Void> {

    private static final List<String> EVERYTHING = List.of("object", "condition", "tests", "proposal", "instruments",
            "solutions", "steps", "results", "pictures", "publication", "source");

    private final Set<String> areas = new HashSet<>();
    /** Whether it looks only at the element that it is asked of, and not at others of its area. */
    private boolean ownElementAlone = true;

    private RuleGrounds() {
    }

    /** Whether a rule can be asked of the sound elements of a case without looking at an unsound part. */
    static boolean areSound(Rule rule, UnsoundParts unsound) {
        RuleGrounds grounds = new RuleGrounds();
        String own = grounds.subject(rule.speaksOf());
        grounds.condition(rule.where());
        rule.needs().ifPresent(grounds::condition);
        rule.forbids().ifPresent(grounds::condition);
        if (rule.weight() == Rule.Weight.REASON) {
            grounds.areas.add("reasons");
        }
        if (grounds.ownElementAlone && unsound.isKnownByElement(own)) {
            grounds.areas.remove(own);
        }
        return unsound.isSound(grounds.areas.toArray(String[]::new));
    }

    private String subject(Rule.Subject subject) {
        switch (subject) {
            case MEDIUM -> look("object");
            case STEP -> look("steps");
            case TOUCH -> look("steps", "object");
            case CONTACT -> look("steps", "object", "solutions");
            case RESULT -> look("results");
            case PICTURE -> look("pictures");
            default -> ownElementAlone = false;
        }
        return switch (subject) {
            case RESULT -> "results";
            case PICTURE -> "pictures";
            default -> "steps";
        };
    }

    private void look(String... some) {
        areas.addAll(List.of(some));
    }

    private void lookAtAll() {
        areas.addAll(EVERYTHING);
        ownElementAlone = false;
    }

    private void condition(Condition condition) {
        condition.clauses().forEach(clause -> clause.ask(this));
    }

    @Override
    public Void anyOf(Condition.AnyOf clause) {
        clause.conditions().forEach(this::condition);
        return null;
    }

    @Override
    public Void noneOf(Condition.NoneOf clause) {
        clause.conditions().forEach(this::condition);
        return null;
    }

    @Override
    public Void block(Condition.Block clause) {
        Condition.Given given = clause.given();
        given.inner().ifPresent(this::condition);
        given.fields().forEach(this::field);
        given.fieldWords().keySet().forEach(this::field);
        given.limits().keySet().forEach(this::field);
        given.pairs().forEach((one, other) -> {
            field(one);
            field(other);
        });
        block(clause.block());
        return null;
    }

    private void block(BuildingBlock block) {
        switch (block) {
            case HAS, SAYS, ABOVE, AT_MOST, AT_LEAST, BELOW, MORE_THAN, NO_MORE_THAN, RATIO, OBSERVED -> { }
            case KIND, PART, END_POINT -> look("steps");
            case TOUCHES -> look("steps", "object");
            case IN_ORDER, TOOLS_TOLD, TEMPERATURES_ALIKE -> look("steps");
            case COUNTS_ALIKE -> look("pictures", "condition");
            case LIQUID, SOME_LIQUID, TOOL, TOOLS -> look("steps", "solutions");
            case LAYER, KNOWN_LAYER, MATRIX -> look("object");
            case TESTED, INDICATED, PAPER_INDICATED -> look("object", "tests", "solutions", "steps");
            case AGREED, RISK_STATED -> look("steps", "proposal");
            case PERMITTED -> look("steps", "publication");
            default -> lookAtAll();
        }
    }

    private void field(CaseField field) {
        switch (field) {
            case MADE, MADE_EVIDENCE, MADE_OPINION, OBJECT_KIND, OBJECT_TECHNIQUE, OBJECT_FEATURES, OBJECT_GRAMMAGE,
                    LONG_SIDE, SHORT_SIDE, SIZING, CONSULTATION_OPEN, LAYER_STATE, LAYER_GRADE, LAYER_COLOUR ->
                    look("object");
            case DAMAGE_ACTIVE -> look("condition");
            case RETOLD -> look("source");
            case PROPOSAL_AIMS, PROPOSAL_OPTIONS -> look("proposal");
            case STEP_ON, STEP_UNTIL, STEP_WATCH, STEP_HOLD, STEP_LOOK, STEP_RELEASED_BY, STEP_MEANWHILE, STEP_AT_MOST, STEP_BY,
                    STEP_PEOPLE, STEP_AREA, STEP_APPLIED, STEP_EDGE, STEP_AIM, STEP_INSTEAD, STEP_CHECKS, STEP_PRACTISED,
                    STEP_EMERGENCY, EMERGENCY_REPORT, STEP_RESIZE, BATH_TEMPERATURE, WATER_SOURCE, WATER_PH,
                    WATER_CONDUCTIVITY, WATER_ANALYSIS, WATER_PIPES, MIST_ULTRASONIC, MIST_WATER, MIST_CLEANED,
                    CHAMBER_PACK, CHAMBER_HUMIDITY, CHAMBER_LOOK_EVERY, SUPPORT_RIGID, CLEANING_EXTRACTION,
                    CLEANING_OPEN, FIXING_METHOD, FIXING_RINSE, FIXING_RINSES, FIXING_CLEAR_BY, HEAT_TEMPERATURE,
                    PRESS_BETWEEN, PRESS_WEIGHTS, PRESS_HEIGHT, MEND_GRAIN, MEND_PATCH, FIRST_CHANGE,
                    STEP_NAMED, LAID_BETWEEN, LAID_EACH, SUCTION_PRESSURE, LIGHT_FILTERED, LIGHT_TIME, TAPE_ADHESIVE,
                    AGEING_OF, HEAT_TIME, PRESS_TIME, ACTIVATED_BY, ACTIVATED_WITH, WINDOW_LOW, WINDOW_HIGH ->
                    look("steps");
            case PRESSURE, MIST_PER_SHEET -> look("steps", "object");
            case MEND_PLACES -> look("steps", "condition");
            case LIQUID_PH, LIQUID_AGE, LIQUID_KEEPS, BATH_PH_READ -> look("steps", "solutions");
            case MEASURE, RESULT_KIND, METHOD, COLOUR_FORMULA, COLOUR_ILLUMINANT, COLOUR_OBSERVER, COLOUR_GEOMETRY,
                    COLOUR_READINGS, COLOUR_SPOTS, RESERVE_TITRATION, RESERVE_CARBONATE, RESERVE_AMOUNT -> look("results");
            case PICTURE_CREDIT, PICTURE_LICENCE, PICTURE_PAIR, PICTURE_LIGHT, PICTURE_SIDE, PICTURE_SCALE,
                    PICTURE_TARGET, PICTURE_CAUTION -> look("pictures");
            default -> lookAtAll();
        }
    }
}
