package org.benchleaf.model;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;

/**
 * One step of the treatment.
 *
 * @param id how the file refers to it
 * @param kind the trade's verb; of a step that has a name of its own, the kind whose rules it answers to
 * @param named what a step is called that the list of kinds lacks
 * @param of ids of the items that it is done to; the whole object if empty
 * @param instruction what to do, imperative
 * @param see what one should see
 * @param watch what to keep an eye on
 * @param ifNot what to do if it goes otherwise
 * @param until the observed end point
 * @param checks what was looked for, such as {@code eraser residue}
 * @param takes how long it takes in all, as it is told; empty if it follows from the parts
 * @param timeMissing why there is no such time, where the author says that there is none to give
 * @param handsOn how much of that needs a person: a time or a share; all of it if empty
 * @param after ids of the steps that must be finished first
 * @param waiting for what it waits when those are done
 * @param atMost it must not take longer
 * @param hold where a supervisor must release the work
 * @param by who does it: conservator, trainee or supervisor
 * @param people how many pairs of hands, at least 1
 * @param overnight whether it may run on when nobody is there
 * @param on the day it was done
 * @param within the month or the year in which it was done, where the day is not known
 * @param area whole or local
 * @param edge how the edge of a local wet treatment is controlled
 * @param applied how its liquid is brought to the sheet, in a word of the format; empty where its kind and parts tell it
 * @param avoids ids of the media kept out of it
 * @param uses ids of materials and tools
 * @param practised whether it was practised on a surrogate first
 * @param emergency done without consent to stop damage
 * @param resize whether a washed sheet is sized again
 * @param aim what it is for, where that has to be stated
 * @param instead why it and not a gentler way
 * @param parts what it uses
 */
public record Step(String id, StepKind kind, Optional<String> named, List<String> of, String instruction, Optional<String> see,
        Optional<String> watch,
        Optional<String> ifNot, Optional<String> until, List<String> checks, Optional<StatedTime> takes,
        Optional<MissingValue> timeMissing, Optional<StatedTime> handsOn, List<String> after, Optional<Wait> waiting,
        Optional<Quantity> atMost, Optional<Hold> hold, String by,
        int people, boolean overnight, Optional<LocalDate> on, Optional<CalendarSpan> within, String area, Optional<String> edge,
        Optional<String> applied,
        List<String> avoids, List<String> uses, boolean practised, Optional<Emergency> emergency,
        Optional<Decision> resize, Optional<String> aim, Optional<String> instead, List<Part> parts,
        Place place) {

    private static final Set<String> LAID_ON = Set.of("brush", "swab", "drops", "spray");

    public Step {
        of = List.copyOf(of);
        checks = List.copyOf(checks);
        after = List.copyOf(after);
        avoids = List.copyOf(avoids);
        uses = List.copyOf(uses);
        parts = List.copyOf(parts);
    }

    /** Whether its liquid is laid on by hand, so that it is no bath whatever its kind is. */
    public boolean isLaidOn() {
        return applied.filter(LAID_ON::contains).isPresent();
    }

    /** The first day on which it may have been done; empty where nothing is on record. */
    public Optional<LocalDate> firstDay() {
        return on.or(() -> within.map(CalendarSpan::first));
    }

    /** The last day on which it may have been done; empty where nothing is on record. */
    public Optional<LocalDate> lastDay() {
        return on.or(() -> within.map(CalendarSpan::last));
    }

    /** The part of that record class, if the step has one. */
    public <P extends Part> Optional<P> part(Class<P> type) {
        return parts.stream().filter(type::isInstance).map(type::cast).findFirst();
    }

    /** When a thing is looked for after the sheet was laid in, as the end of its words tells: "colour at 5 min"; mostly empty. */
    public static Optional<Quantity> lookTime(String look) {
        String[] words = look.strip().split(" ");
        return words.length < 2 ? Optional.empty()
                : QuantityReader.read(words[words.length - 2] + " " + words[words.length - 1], Dimension.TIME).quantity();
    }

    /**
     * For what the step waits when those before it are done; one of the three.
     *
     * @param time how long, as it is told
     * @param day the day before which it does not begin
     * @param sign what must be seen first, in words
     */
    public record Wait(Optional<StatedTime> time, Optional<LocalDate> day, Optional<String> sign) {
    }

    /**
     * A point at which the work stops until someone lets it go on.
     *
     * @param before what must not begin, such as {@code lowering}
     * @param releasedBy in which role
     * @param look what they look at
     * @param meanwhile what happens to the sheet while one waits
     * @param takes how long looking and releasing takes, within the time of the step
     * @param atMost how long the sheet may wait
     */
    public record Hold(String before, String releasedBy, Optional<String> look, Optional<String> meanwhile,
            Optional<Quantity> takes, Optional<Quantity> atMost) {
    }

    /** Work done without consent to stop further damage. */
    public record Emergency(String averted, Optional<LocalDate> reportBy) {
    }

    /** A decision with its reason. */
    public record Decision(boolean yes, Optional<String> why) {
    }
}
