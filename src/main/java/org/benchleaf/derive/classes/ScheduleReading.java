package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import org.benchleaf.model.Handling;
import org.benchleaf.plan.Claim;
import org.benchleaf.plan.Delay;
import org.benchleaf.plan.SharedThing;
import org.benchleaf.plan.Station;
import org.benchleaf.plan.Timetable;

/** A schedule as people read it: by the clock and in words. */
public final class ScheduleReading {

    private final ClassSchedule schedule;
    private final Timetable timetable;
    private final PlanWords words;

    /** Reads a schedule in its own words, which are English. */
    public ScheduleReading(ClassSchedule schedule) {
        this(schedule, PlanWords.ENGLISH);
    }

    /** Reads a schedule in the words of a language; what stands in a {@link Turn} stays as the plan has it. */
    public ScheduleReading(ClassSchedule schedule, PlanWords words) {
        this.schedule = schedule;
        this.timetable = schedule.timetable();
        this.words = words;
    }

    /**
     * A piece of a station's day.
     *
     * @param station its number, from 1
     * @param part its place in the station's work, from 0; the same for all stations
     * @param step id
     * @param work in a few words
     * @param kind of that work, without the number of a piece of which there are several
     * @param start minutes from the start of the class
     * @param from the same by the clock
     * @param to when it is over
     * @param takes people and things that it has meanwhile
     */
    public record Turn(int station, int part, String step, String work, String kind, int start, LocalDateTime from,
            LocalDateTime to, List<String> takes) {
        public Turn {
            takes = List.copyOf(takes);
        }

        /** The same with the end of a later piece. */
        private Turn until(Turn later) {
            return new Turn(station, part, step, work, kind, start, from, later.to, takes);
        }

        /** As a plan names it. */
        public String name() {
            return step + ": " + work;
        }

        /** Minutes from the start of the class. */
        public int end() {
            return start + (int) java.time.Duration.between(from, to).toMinutes();
        }

        /** Whether somebody's hands are at it. */
        public boolean isHandsOn() {
            return takes.stream().anyMatch(one -> one.contains(StationCut.HANDS));
        }

        /** Whether it is the step's own work: neither its preparation nor a release nor waiting. */
        public boolean isMainWork() {
            return isHandsOn() && !isHold() && !isBathMade() && !isClearedAway() && !isBeside();
        }

        private boolean isBeside() {
            return BesideWork.ALL.contains(work);
        }

        /** Whether a tray is filled, for the first time or again. */
        boolean isFilling() {
            return isBathMade() || isBathChanged();
        }

        /** Whether a station makes its first bath. */
        public boolean isBathMade() {
            return work.equals(StationCut.MAKE_BATH);
        }

        /** Whether a tray is emptied and filled again. */
        public boolean isBathChanged() {
            return kind.equals(StationCut.BATH_CHANGE);
        }

        /** Whether a fresh bath is brought to its pH. */
        public boolean isBathRead() {
            return work.equals(StationCut.READ_BATH);
        }

        /** Whether the meter is used. */
        public boolean isMetered() {
            return takes.contains(StationCut.METER);
        }

        /** Whether a trainee of a station lends a hand at another. */
        public boolean isHelpedBy(int other) {
            return station != other && takes.stream().anyMatch(one -> one.endsWith(StationCut.HANDS + " of station " + other));
        }

        /** Whether a supervisor is there: to release the work, to stand beside it or to lend a hand. */
        public boolean isSupervised() {
            return takes.contains(StationCut.SUPERVISOR);
        }

        /** After how many minutes in the bath it is a look at the sheet; empty for other work. */
        public OptionalInt look() {
            return work.startsWith(StationCut.LOOK) ? OptionalInt.of(Integer.parseInt(work.substring(StationCut.LOOK.length())))
                    : OptionalInt.empty();
        }

        /** Whether a station is cleared away. */
        public boolean isClearedAway() {
            return work.equals(StationCut.CLEAR_AWAY);
        }

        /** Whether a sheet is laid into its fresh bath as a piece of work of its own. */
        public boolean isLaidInAgain() {
            return work.equals(StationCut.LAY_IN_AGAIN);
        }

        /** Whether two lift a sheet out of its bath. */
        public boolean isLiftedOut() {
            return work.equals(StationCut.LIFT_OUT);
        }

        /** Whether a sheet is lifted out of its last bath and drained by one. */
        public boolean isLiftedAndDrained() {
            return work.equals(StationCut.LIFT_AND_DRAIN);
        }

        /** Whether someone stays with a sheet that was just lowered. */
        public boolean isWatched() {
            return work.equals(StationCut.WATCH);
        }

        /** Whether a sheet that was lifted out of its last bath drains. */
        public boolean isDrained() {
            return work.equals(StationCut.DRAIN);
        }

        /** Whether its blotters are changed. */
        public boolean isBlotterChanged() {
            return kind.equals(StationCut.BLOTTER_CHANGE);
        }

        /** Whether a sheet is taken out from under its weight. */
        public boolean isTakenOut() {
            return work.equals(StationCut.TAKE_OUT);
        }

        /** Whether a sheet is weighed that was taken out. */
        public boolean isWeighedDried() {
            return work.equals(BesideWork.WEIGH_DRIED);
        }

        /** What is done with hands in it, as far as cautions are for that alone. */
        public Set<Handling> handlings() {
            Set<Handling> handlings = EnumSet.noneOf(Handling.class);
            if (isHandsOn() && isMetered() && !work.equals(BesideWork.READ_USED)) {
                handlings.add(Handling.ADDING);
            }
            if (isBathChanged() || work.equals(BesideWork.EMPTY_TRAY)) {
                handlings.add(Handling.EMPTYING);
            }
            if (work.equals(StationCut.LOWER) || isLiftedOut() || isLiftedAndDrained() || isLaidInAgain()
                    || work.equals(BesideWork.WEIGH_WET) || work.equals(StationCut.LAY_BETWEEN_BLOTTERS) || isBlotterChanged()) {
                handlings.add(Handling.MOVING);
            }
            return handlings;
        }

        /** Whether a supervisor releases the work. */
        public boolean isHold() {
            return work.startsWith(StationCut.HOLD);
        }
    }

    /** When those at a station read the briefing, before anybody of them begins. */
    public record Briefing(LocalDateTime from, LocalDateTime to) {
    }

    /** A station, from 1, that waits before a piece of its work, and why. */
    public record Wait(int station, String before, int minutes, String why) {
    }

    /** What one more of a thing would give: the end of the class, and whether that is sooner. */
    public record Gain(String thing, LocalDateTime end, boolean sooner) {
    }

    /**
     * A thing or kind of person of which there are only so many.
     *
     * @param count how many there are
     * @param most how many are in use at once at most
     */
    public record Sharing(String thing, int count, int most) {
    }

    /** Minutes that the plan takes. */
    public int minutes() {
        return timetable.end();
    }

    /** Minutes that no plan can be shorter than. */
    public int floor() {
        return schedule.floor().minutes();
    }

    /** A minute of the plan by the clock. */
    public LocalDateTime clock(int minute) {
        return schedule.course().starts().plusMinutes(minute);
    }

    /** When those at a station, from 1, read the briefing: with all who begin together. */
    public Briefing briefing(int station) {
        int end = stations().get(station - 1).earliest();
        return new Briefing(clock(end - schedule.briefing()), clock(end));
    }

    /** Every piece of every station's day, station by station. */
    public List<Turn> turns() {
        List<Turn> turns = new ArrayList<>();
        for (int station = 0; station < stations().size(); station++) {
            for (int part = 0; part < stations().get(station).parts().size(); part++) {
                String[] name = partName(station, part).split(": ", 2);
                turns.add(new Turn(station + 1, part, name[0], name[1], stations().get(station).parts().get(part).kind(),
                        timetable.start(station, part),
                        clock(timetable.start(station, part)), clock(timetable.end(station, part)), takes(station, part)));
            }
        }
        return turns;
    }

    /** The same with the pieces of a wait that looks cut apart as one, from its first begin to its last end. */
    public List<Turn> whole() {
        Map<String, Turn> whole = new LinkedHashMap<>();
        turns().forEach(turn -> whole.merge(turn.station() + " " + (turn.isHandsOn() ? turn.part() : turn.name()), turn, Turn::until));
        return List.copyOf(whole.values());
    }

    /** A piece of work in words. */
    public String work(Turn turn) {
        return words.work(turn.step(), turn.work());
    }

    /** What a thing or kind of person that is shared is called; so many of one, as a {@link Turn} takes them. */
    public String thing(String thing) {
        return words.thing(thing);
    }

    /**
     * Where a station waits, and why.
     *
     * @param clock words a minute of the plan
     */
    public List<Wait> waits(IntFunction<String> clock) {
        return schedule.delays().stream().map(delay -> new Wait(delay.station() + 1,
                told(delay.station(), delay.part()), delay.minutes(), why(delay.station(), delay.cause(), clock))).toList();
    }

    /** What one more of each thing that runs out would give. */
    public List<Gain> gains() {
        return schedule.gains().stream().map(gain -> new Gain(words.thing(thing(gain.thing())), clock(gain.end()),
                gain.end() < timetable.end())).toList();
    }

    /** Every shared thing and the supervisors, with the most that the plan takes at once. */
    public List<Sharing> shared() {
        List<SharedThing> things = timetable.classroom().things();
        Map<String, Sharing> shared = new LinkedHashMap<>();
        for (int thing = 0; thing < things.size(); thing++) {
            if (things.get(thing).kind().canBeLent()) {
                shared.put(thing(thing), new Sharing(thing(thing), things.get(thing).count(), most(thing)));
            }
        }
        return List.copyOf(shared.values());
    }

    /** One of a thing that a station has from the begin of one piece of its work to the end of the same or a later one. */
    record Holding(Turn first, Turn last) {
    }

    /** Every time that a station has one of a shared thing; what it takes several of at once is none of these. */
    List<Holding> holdings(String thing) {
        List<Turn> turns = turns();
        List<Holding> holdings = new ArrayList<>();
        for (int station = 0; station < stations().size(); station++) {
            int number = station + 1;
            List<Turn> own = turns.stream().filter(turn -> turn.station() == number).toList();
            stations().get(station).claims().stream().filter(claim -> claim.amount() == 1 && thing(claim.thing()).equals(thing))
                    .forEach(claim -> holdings.add(new Holding(own.get(claim.first()), own.get(claim.last()))));
        }
        return holdings;
    }

    /** How many of a thing the first stations of the plan have at a minute of it; none of what is not shared. */
    int inUse(String thing, int minute, int upTo) {
        List<SharedThing> things = timetable.classroom().things();
        return IntStream.range(0, Math.min(upTo, stations().size())).map(station -> stations().get(station).claims().stream()
                .filter(claim -> things.get(claim.thing()).name().equals(thing) && timetable.start(station, claim.first()) <= minute
                        && minute < timetable.end(station, claim.last())).mapToInt(Claim::amount).sum()).sum();
    }

    private int most(int thing) {
        Map<Integer, Integer> changes = new java.util.TreeMap<>();
        for (int station = 0; station < stations().size(); station++) {
            for (Claim claim : stations().get(station).claims()) {
                if (claim.thing() == thing) {
                    changes.merge(timetable.start(station, claim.first()), claim.amount(), Integer::sum);
                    changes.merge(timetable.end(station, claim.last()), -claim.amount(), Integer::sum);
                }
            }
        }
        int now = 0;
        int most = 0;
        for (int change : changes.values()) {
            now += change;
            most = Math.max(most, now);
        }
        return most;
    }

    private String why(int station, Delay.Cause cause, IntFunction<String> clock) {
        if (cause instanceof Delay.Taken taken) {
            String holders = taken.holders().stream().map(holder -> words.thing(stations().get(holder.station()).name()) + " ("
                    + told(holder.station(), holder.part()) + ")")
                    .reduce((one, other) -> words.phrases().say("{one} and {other}", "one", one, "other", other)).orElse("");
            return words.phrases().say("{thing}, taken by {stations} until {time}", "thing", words.thing(thing(taken.thing())),
                    "stations", holders, "time", clock.apply(taken.until()));
        }
        if (cause instanceof Delay.Away away) {
            return words.phrases().say("{thing}, not there until {time}", "thing", words.thing(thing(away.thing())),
                    "time", clock.apply(away.until()));
        }
        if (cause instanceof Delay.HeldBack held) {
            return words.phrases().say("it is held back to keep the wait before {work} short; that work waits for {why}",
                    "work", told(station, held.laterPart()), "why", why(station, held.cause(), clock));
        }
        return words.phrases().of("nothing is in the way, but beginning sooner would make the class no shorter");
    }

    private List<Station> stations() {
        return timetable.classroom().stations();
    }

    private String told(int station, int part) {
        String[] name = partName(station, part).split(": ", 2);
        return words.part(name[0], name[1]);
    }

    private String partName(int station, int part) {
        return stations().get(station).parts().get(part).name();
    }

    private String thing(int thing) {
        return timetable.classroom().things().get(thing).name();
    }

    private List<String> takes(int station, int part) {
        return stations().get(station).claims().stream()
                .filter(claim -> claim.first() <= part && part <= claim.last())
                .map(claim -> (claim.amount() > 1 ? claim.amount() + PlanWords.TIMES : "") + thing(claim.thing())).toList();
    }
}
