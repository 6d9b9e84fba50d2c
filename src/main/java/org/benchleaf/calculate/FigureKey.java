package org.benchleaf.calculate;

import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/**
 * Whose a figure is and what it is called; prose and data name it by its {@link #id}.
 *
 * @param owner what kind of thing it belongs to
 * @param of the step, solution, result, material or class that it belongs to; empty where there is but one owner of the kind
 * @param name its name, such as {@code volume} or {@code change}
 * @param qualifier what tells figures of one name apart: the part of a step, the liquid of a mixture, the spot of a result;
 *     empty for most
 */
public record FigureKey(Owner owner, String of, String name, String qualifier) {

    /** What the names of figures begin with that are values as a report states them. */
    public static final String STATED = "stated-";

    /** What figures belong to. */
    public enum Owner {
        STEP, SOLUTION, RESULT, TOTAL, TIMELINE, CLASS
    }

    /** What a figure is there for. */
    public enum Role {
        /** The hand needs it while a step is done. */
        AT_HAND,
        /** What leaves the shelf in all. */
        TOTAL,
        /** It stands behind other figures. */
        WORKING
    }

    public static FigureKey ofStep(Step step, Part part, String name) {
        return new FigureKey(Owner.STEP, step.id(), name, FigureNames.qualifier(step, part, name));
    }

    public static FigureKey ofSolution(String solution, String name) {
        return new FigureKey(Owner.SOLUTION, solution, name, "");
    }

    public static FigureKey ofResult(String result, String name, String qualifier) {
        return new FigureKey(Owner.RESULT, result, name, qualifier);
    }

    public static FigureKey ofTotal(String material, String qualifier) {
        return new FigureKey(Owner.TOTAL, material, "total", qualifier);
    }

    public static FigureKey ofTimeline(String name) {
        return new FigureKey(Owner.TIMELINE, "", name, "");
    }

    /** The name of a measure or a spot in ids: its letters and digits, words joined by hyphens. */
    public static String named(String words) {
        StringBuilder name = new StringBuilder();
        words.codePoints().forEach(letter -> {
            if (Character.isLetter(letter) || isNumber(letter)) {
                name.appendCodePoint(letter);
            } else if (!name.isEmpty() && name.charAt(name.length() - 1) != '-') {
                name.append('-');
            }
        });
        if (!name.isEmpty() && name.charAt(name.length() - 1) == '-') {
            name.setLength(name.length() - 1);
        }
        return name.isEmpty() ? "result" : name.toString();
    }

    private static boolean isNumber(int letter) {
        int type = Character.getType(letter);
        return type == Character.DECIMAL_DIGIT_NUMBER || type == Character.LETTER_NUMBER || type == Character.OTHER_NUMBER;
    }

    /** Whether it is a figure of that spot of a result. */
    public boolean isOfSpot(String at) {
        return qualifier.equals(named(at));
    }

    /** The amount to make at a time, of a solution for a class. */
    public static FigureKey ofClass(String course, String solution, String name) {
        return new FigureKey(Owner.CLASS, course + "." + solution, name, "");
    }

    /** The name by which prose cites the figure, unique in a case, such as {@code wash.volume}. */
    public String id() {
        return switch (owner) {
            case STEP, SOLUTION -> of + "." + (qualifier.isEmpty() ? name : qualifier + "-" + name);
            case RESULT -> "results." + of + "." + local();
            case TOTAL -> "total." + of + (qualifier.isEmpty() ? "" : "-" + qualifier);
            case TIMELINE -> "timeline." + name;
            case CLASS -> "class." + of + "." + name;
        };
    }

    /** The name among the figures of one result. */
    public String local() {
        return qualifier.isEmpty() ? name : name + "." + qualifier;
    }

    /** The heading under which figures are listed: the step or solution, or the kind of what there is one list of. */
    public String group() {
        return switch (owner) {
            case STEP, SOLUTION, CLASS -> of;
            case RESULT -> "results";
            case TOTAL -> "total";
            case TIMELINE -> "timeline";
        };
    }

    /** What the figure is there for. */
    public Role role() {
        return switch (owner) {
            case TOTAL -> Role.TOTAL;
            case STEP -> FigureNames.isAtHand(name) ? Role.AT_HAND : Role.WORKING;
            case SOLUTION, RESULT, TIMELINE, CLASS -> Role.WORKING;
        };
    }
}
