package org.benchleaf.compose.bench;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.page.BenchScreen;
import org.benchleaf.page.Paths;

/** What is written down at a screen, under the keys of the case file. */
public final class BenchNotes {

    private static final Set<StepKind> WETTING = EnumSet.of(StepKind.HUMIDIFICATION, StepKind.PREWETTING, StepKind.WASHING);

    private final Sheet sheet;

    public BenchNotes(Sheet sheet) {
        this.sheet = sheet;
    }

    /** What is read in that bath, 0 for none; what is weighed at the beginning of drying, and at the end of misting what was used. */
    public List<BenchScreen.Note> of(Step step, int bath, boolean first, boolean last) {
        List<BenchScreen.Note> notes = new ArrayList<>();
        if (bath > 0) {
            notes.add(note("readings", bath, "pH fresh", "pH", ""));
            notes.add(note("readings", bath, "pH used", "pH", ""));
            notes.add(note("readings", bath, "conductivity", "", "µS/cm"));
            notes.add(note("readings", bath, "colour", "", ""));
            notes.add(note("readings", bath, "added", "", "mL"));
        }
        if (first && isWeighed(step)) {
            notes.add(note("weighing", 0, "dry", "", "g"));
            notes.add(note("weighing", 0, "wet", "", "g"));
            notes.add(note("weighing", 0, "restrained", "", "g"));
        }
        if (last && step.part(Part.Mist.class).isPresent()) {
            notes.add(note("mist", 0, "amount", "", "mL"));
        }
        return notes;
    }

    /** How much the dry sheet weighs, before the first step that wets it: it belongs to the step in which the sheet dries again. */
    public Optional<BenchScreen.Note> dryBefore(Step step, List<Step> steps) {
        int here = steps.indexOf(step);
        List<Step> after = steps.subList(here + 1, steps.size());
        return !wets(step) || isWeighed(step) || steps.subList(0, here).stream().anyMatch(BenchNotes::wets) ? Optional.empty()
                : after.stream().filter(BenchNotes::isWeighed).findFirst()
                        .map(drying -> note("weighing", 0, "dry", "", "g").ownedBy(Paths.step(drying.id())));
    }

    private static boolean isWeighed(Step step) {
        return step.part(Part.Weighing.class).isPresent() || step.part(Part.Blotters.class).isPresent();
    }

    private static boolean wets(Step step) {
        return WETTING.contains(step.kind()) || step.part(Part.Mist.class).isPresent() || step.part(Part.Bath.class).isPresent()
                || step.part(Part.Chamber.class).isPresent();
    }

    /** How each test of a screen came out. */
    public List<BenchScreen.Note> ofTests(List<BenchScreen.Clock> clocks) {
        return clocks.stream().filter(clock -> clock.test() > 0).map(clock -> note("tests", clock.test(), "result", "", "")
                .named(clock.label().orElse(sheet.words().say("bench-note.result")))).toList();
    }

    /** What a class writes down of a bath besides, where several watch one clock and each addition is looked at. */
    public List<BenchScreen.Note> ofClassBath(int bath) {
        return List.of(note("readings", bath, "laid in", "", ""), note("readings", bath, "lifted out", "", ""),
                note("readings", bath, "read at", "", ""), note("readings", bath, "temperature", "", "°C"),
                note("readings", bath, "additions", "", ""));
    }

    /** What a class writes down of a change of blotters. */
    public List<BenchScreen.Note> ofChange(int change) {
        return List.of(note("changes", change, "changed at", "", ""), note("changes", change, "colour", "", ""));
    }

    /** What a class weighs besides, where the mass of a sheet tells when it is dry. */
    public List<BenchScreen.Note> ofClassDrying() {
        return List.of(note("weighing", 0, "day before", "", "g"), note("weighing", 0, "taken out", "", "g"));
    }

    /** What a class weighs to know the wet sheet's mass: it with its web, and the web by itself. */
    public List<BenchScreen.Note> ofWetWeb() {
        return List.of(note("weighing", 0, "wet with web", "", "g"), note("weighing", 0, "wet web", "", "g"));
    }

    private BenchScreen.Note note(String part, int bath, String key, String before, String unit) {
        return new BenchScreen.Note(part, bath, key, sheet.words().say("bench-note." + key.replace(' ', '-')), before, unit,
                Optional.empty(), Optional.empty());
    }
}
