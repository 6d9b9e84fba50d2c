package org.benchleaf.page;

import java.util.List;
import java.util.Optional;

/**
 * One screen of the bench view: a hold point, or one thing that a hand does.
 *
 * @param anchor of the step on the sheet
 * @param name number and kind of the step
 * @param hand which bath or change of the step; empty if the step is one action
 * @param hold where the work stops until someone lets it go on; such a screen holds nothing else
 * @param action what to do; empty where there is only to look
 * @param folded whether the action is opened by a touch while a timer runs, so that the screen keeps few words
 * @param amount the one amount that the hand needs
 * @param see what one should see
 * @param watch what to keep an eye on, where there is only to look or a timer runs, there with what to keep away
 *     from and for how long at most
 * @param looks for what one looks while a timer runs, and when
 * @param until when it is enough, where there is only to look; of a drop, when it is taken off; else from what to keep away
 * @param otherwise what to do if it goes otherwise, where a sheet is wet and a timer runs; opened by a touch
 * @param clocks the timers that are started here
 * @param cautions what can happen at the step, the gravest first
 * @param care dangers and protection in one line
 * @param wear what to wear, in words
 * @param told what else the step says: watch, if not, until
 * @param drawn whether the drawings of the step are shown here
 * @param notes what is written down here
 * @param last whether the step ends with this screen
 * @param enough whether it may end here, though one more bath is foreseen
 */
public record BenchScreen(String anchor, String name, Optional<String> hand, Optional<BenchStep.Hold> hold,
        String action, boolean folded, Optional<Fact> amount, Optional<Fact> see, List<Fact> watch, List<Look> looks,
        Optional<Fact> until,
        Optional<Fact> otherwise, List<Clock> clocks,
        List<Caution> cautions, String care, List<String> wear, List<Fact> told, boolean drawn, List<Note> notes, boolean last,
        boolean enough) {

    public BenchScreen {
        watch = List.copyOf(watch);
        looks = List.copyOf(looks);
        clocks = List.copyOf(clocks);
        cautions = List.copyOf(cautions);
        wear = List.copyOf(wear);
        told = List.copyOf(told);
        notes = List.copyOf(notes);
    }

    /** A look while a timer runs, and how many seconds after its start. */
    public record Look(Fact what, long at) {
    }

    /**
     * A timer of a screen.
     *
     * @param timer its id
     * @param kind what is timed
     * @param test number of the test in its step; 0 if it is none
     * @param label where the screen's name does not tell it
     */
    public record Clock(String timer, BenchTimer.Kind kind, int test, Optional<String> label) {
    }

    /**
     * Something to write down.
     *
     * @param part of the step that the case file names it under: {@code readings}, {@code weighing}, {@code mist},
     *     {@code tests}
     * @param bath number of the bath, or of the test; 0 if it belongs to neither
     * @param key of the case file
     * @param label in words
     * @param before what the case file writes before the number, such as {@code pH}
     * @param unit what it writes after it; empty for words
     * @param range between what it should lie, as the sheet gives it
     * @param sight what words that are written down are held against
     * @param of anchor of the step to which it belongs, where that is another than the screen's; empty otherwise
     */
    public record Note(String part, int bath, String key, String label, String before, String unit, Optional<Range> range,
            Optional<Sight> sight, String of) {

        /** A note of the screen's own step. */
        public Note(String part, int bath, String key, String label, String before, String unit, Optional<Range> range,
                Optional<Sight> sight) {
            this(part, bath, key, label, before, unit, range, sight, "");
        }

        /** The same note, of another step. */
        public Note ownedBy(String anchor) {
            return new Note(part, bath, key, label, before, unit, range, sight, anchor);
        }

        /** The same note under another name. */
        public Note named(String name) {
            return new Note(part, bath, key, name, before, unit, range, sight, of);
        }

        /** The same note with the range in which it should lie. */
        public Note within(Optional<Range> given) {
            return new Note(part, bath, key, label, before, unit, given, sight, of);
        }

        /** The same note with what its words are held against. */
        public Note against(Optional<Sight> given) {
            return new Note(part, bath, key, label, before, unit, range, given, of);
        }
    }

    /**
     * What the look of a bath is held against, besides the bath before it.
     *
     * @param there how it looked in the case; empty if that is not told
     * @param until when the step is enough
     */
    public record Sight(Optional<String> there, String until) {
    }

    /** Between what a reading should lie, in the unit of its note, and the same in words. */
    public record Range(double low, double high, String text) {
    }
}
