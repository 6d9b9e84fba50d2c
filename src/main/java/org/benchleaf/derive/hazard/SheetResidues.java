package org.benchleaf.derive.hazard;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.derive.figure.UsedThings;
import org.benchleaf.derive.time.CriticalPath;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.Substance;

/**
 * Finds what meets in the sheet: what one step left in it and a later one brings to it. A rinse or a wash takes out what was
 * there. What evaporates is taken to be gone after a drying, on another day, or when another step has come between.
 */
final class SheetResidues {

    private static final Set<StepKind> RINSES = EnumSet.of(StepKind.RINSING, StepKind.WASHING);
    private static final Set<StepKind> BESIDE_THE_SHEET = EnumSet.of(StepKind.EXAMINATION, StepKind.TESTING,
            StepKind.PHOTOGRAPHY, StepKind.MEASURING);

    /**
     * Two that meet in the sheet.
     *
     * @param step that brings the second
     * @param earlier that left the first
     */
    record Found(Step step, Step earlier, Hazards.Clash clash, Substance residue, Substance brought) {
    }

    private final Bench bench;
    private final Compositions compositions;
    private final Meetings meetings;
    private final Map<Substance, Step> left = new LinkedHashMap<>();
    private final List<Found> found = new ArrayList<>();

    SheetResidues(Bench bench, Compositions compositions, Meetings meetings) {
        this.bench = bench;
        this.compositions = compositions;
        this.meetings = meetings;
    }

    /** Each two that meet, in the order of the steps. */
    List<Found> found() {
        Map<String, List<String>> after = new LinkedHashMap<>();
        Map<String, Step> steps = new LinkedHashMap<>();
        bench.source().steps().forEach(step -> {
            after.put(step.id(), step.after());
            steps.put(step.id(), step);
        });
        CriticalPath.order(after).stream().map(steps::get).filter(step -> !BESIDE_THE_SHEET.contains(step.kind())).forEach(this::step);
        return List.copyOf(found);
    }

    private void step(Step step) {
        List<Substance> brought = UsedThings.of(step).stream().map(compositions::of)
                .flatMap(one -> one.substances(reference()).stream()).distinct().toList();
        left.entrySet().removeIf(one -> isVolatile(one.getKey()) && isLater(one.getValue(), step));
        left.forEach((residue, earlier) -> {
            if (!brought.contains(residue)) {
                brought.forEach(other -> meetings.among(List.of(residue, other)).stream().findFirst()
                        .ifPresent(clash -> found.add(new Found(step, earlier, clash, residue, other))));
            }
        });
        left.keySet().removeIf(residue -> RINSES.contains(step.kind()) || isVolatile(residue));
        brought.forEach(substance -> left.put(substance, step));
    }

    private static boolean isLater(Step earlier, Step step) {
        Optional<LocalDate> day = step.on();
        return step.kind() == StepKind.DRYING || day.isPresent() && earlier.on().isPresent() && !day.equals(earlier.on());
    }

    private static boolean isVolatile(Substance substance) {
        return substance.vapourPressure().isPresent() || substance.fire().isPresent();
    }

    private Reference reference() {
        return bench.library().reference();
    }
}
