package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.BesideWork;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.derive.classes.Looks;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.Handling;
import org.benchleaf.model.Part;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Step;
import org.benchleaf.words.Words;

/**
 * What is done in each piece of one station's day, in words, and what to heed there. A caution is told in full once: where the piece
 * is that it is for, else where the work of its step begins; at later pieces that it is for it is named.
 */
final class StationWords {

    /** How what is done for the record or the room is done, by the word of the plan for it. */
    private static final Map<String, String> BESIDE = Map.of(BesideWork.READ_AGAIN, "class.bath-again", BesideWork.READ_USED,
            "class.used-read", BesideWork.EMPTY_TRAY, "class.tray-emptied", BesideWork.WEIGH_DRY, "class.weigh-dry",
            BesideWork.WEIGH_WET, "class.weigh-wet", BesideWork.WEIGH_BLOTTED, "class.weigh-blotted", BesideWork.WEIGH_WEB,
            "class.weigh-web", BesideWork.WEIGH_DRIED, "class.weigh-dried");

    private final Sheet sheet;
    private final ClassDesk desk;
    private final Words words;
    private final int station;
    /** Steps whose work has begun. */
    private final Set<String> begun = new HashSet<>();
    /** Keys of cautions that were told in full. */
    private final Set<String> heeded = new HashSet<>();
    private final ClassNotes notes;
    /** Work whose notes were told. */
    private final Set<String> notedFor = new HashSet<>();

    StationWords(Sheet sheet, ClassDesk desk, int station) {
        this.sheet = sheet;
        this.desk = desk;
        this.words = sheet.words();
        this.station = station;
        this.notes = new ClassNotes(sheet, desk);
    }

    /** A piece of the station's day; pieces are asked for in the order of the day. */
    String told(ScheduleReading.Turn turn) {
        boolean first = turn.isMainWork() && begun.add(turn.step());
        String how = how(turn, first);
        return sentences(desk.work(sheet, turn), (how + noted(turn) + liesUntil(turn) + (first ? waitsUntil(turn) : "")).strip(),
                cautions(turn, first));
    }

    /** How it is done by the table of notes, told at the first piece of such work. */
    private String noted(ScheduleReading.Turn turn) {
        return turn.isHandsOn() && notedFor.add(turn.kind()) ? notes.at(turn.kind())
                .stream().map(" "::concat).collect(Collectors.joining()) : "";
    }

    /** Where a sheet lies that nobody works on at once: a wet one, or one that was taken out to be weighed. */
    private String liesUntil(ScheduleReading.Turn turn) {
        boolean wet = turn.isDrained() || turn.isLiftedAndDrained() || turn.work().equals(BesideWork.WEIGH_WET);
        return nextAfterWait(turn).filter(next -> wet || turn.isTakenOut() && next.isWeighedDried())
                .map(next -> " " + words.say(wet ? "class.lies-until" : "class.lies-dry-until", "time", desk.clock(sheet, next.from())))
                .orElse("");
    }

    /** What happens to a sheet that waits for the release of the next step, and who is there. */
    private String waitsUntil(ScheduleReading.Turn turn) {
        return nextAfterWait(turn).filter(ScheduleReading.Turn::isHold).flatMap(next -> desk.desk().treatment().step(next.step())
                .flatMap(Step::hold).flatMap(Step.Hold::meanwhile).map(how -> " " + words.say("class.waits-until", "time",
                        desk.clock(sheet, next.from()), "how", how)))
                .map(told -> told + (turn.isSupervised() ? " " + words.say("class.waits-beside") : "")).orElse("");
    }

    /** The station's next work by hand where it does not begin at once. */
    private Optional<ScheduleReading.Turn> nextAfterWait(ScheduleReading.Turn turn) {
        return desk.reading().turns().stream().filter(other -> other.station() == station && other.isHandsOn()
                && !other.from().isBefore(turn.to())).min(Comparator.comparing(ScheduleReading.Turn::from))
                .filter(next -> next.from().isAfter(turn.to()));
    }

    private static String sentences(String work, String how, String cautions) {
        String after = (how + " " + cautions).strip();
        return after.isEmpty() ? work : work + ". " + after;
    }

    private String how(ScheduleReading.Turn turn, boolean first) {
        Optional<Step> step = desk.desk().treatment().step(turn.step());
        if (turn.look().isPresent()) {
            return words.say("class.look-for", "what", words.list(step.map(one -> Looks.at(one, turn.look().getAsInt()))
                    .orElse(List.of())));
        }
        if (BESIDE.containsKey(turn.work())) {
            return words.say(BESIDE.get(turn.work())) + (turn.work().equals(BesideWork.WEIGH_BLOTTED) ? restraint(step) : "")
                    + (turn.isWeighedDried() ? until(step) + weighedBefore(turn) : "")
                    + (turn.work().equals(BesideWork.READ_USED) ? stoodOpen(turn) + new OneForAll(sheet, desk).after(turn) : "");
        }
        if (turn.isHold()) {
            return (step.flatMap(desk.course()::look).map(look -> words.say("class.hold-look", "look", look)).orElse("")
                    + (turn.isMetered() ? " " + words.say("class.bath-again") : "")).strip();
        }
        if (first) {
            return step.map(this::instruction).orElse("") + boardsLater(turn)
                    + (turn.isSupervised() ? " " + words.say("class.beside") : "");
        }
        return turn.isClearedAway() ? words.say("class.cleared-away") : piece(turn, step);
    }

    /** When the boards go on that the words of a step name at once, where the sheet is weighed before. */
    private String boardsLater(ScheduleReading.Turn laid) {
        return desk.reading().turns().stream().filter(turn -> turn.station() == station && turn.step().equals(laid.step())
                && turn.work().equals(BesideWork.WEIGH_BLOTTED)).findFirst()
                .map(weighed -> " " + words.say("class.boards-later", "time", desk.clock(sheet, weighed.to()))).orElse("");
    }

    /** That a used bath was left open by the plan until it is read. */
    private String stoodOpen(ScheduleReading.Turn read) {
        return desk.reading().turns().stream().filter(turn -> turn.station() == station && turn.step().equals(read.step())
                && (turn.isLiftedOut() || turn.isLiftedAndDrained()) && turn.to().isBefore(read.from())).reduce((one, later) -> later)
                .map(left -> " " + words.say("class.used-read-late", "time", desk.clock(sheet, left.to()))).orElse("");
    }

    /** How a piece is done that no step tells by itself. */
    private String piece(ScheduleReading.Turn turn, Optional<Step> step) {
        if (turn.isLiftedOut() || turn.isLiftedAndDrained() || turn.isDrained() || turn.isLaidInAgain()) {
            return words.say(turn.isLiftedOut() ? "class.lifted-out" : turn.isLiftedAndDrained() ? "class.lifted-and-drained"
                    : turn.isDrained() ? "class.drained" : "class.laid-in");
        }
        if (turn.isBlotterChanged()) {
            return step.flatMap(one -> one.part(Part.Blotters.class)).map(part -> words.count("bench-hand.change", part.layers()))
                    .orElse("");
        }
        if (turn.isTakenOut()) {
            boolean weighed = desk.reading().turns().stream().anyMatch(other -> other.station() == station
                    && other.step().equals(turn.step()) && other.isWeighedDried());
            return words.say("class.taken-out") + (weighed ? "" : until(step));
        }
        if (turn.isWatched()) {
            return step.flatMap(Step::watch).map(watch -> fact("bench.told-watch", watch).strip()).orElse("");
        }
        return inTheTray(turn);
    }

    private String until(Optional<Step> step) {
        return step.flatMap(Step::until).map(until -> fact("bench.told-until", until)).orElse("");
    }

    /** That the sheet was weighed the day before, and what to do where its mass has changed too much since. */
    private String weighedBefore(ScheduleReading.Turn turn) {
        return desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.SHEETS_WEIGHED
                && duty.step().filter(turn.step()::equals).isPresent()).findFirst().map(duty -> " " + words.say("class.weigh-again",
                        "day", desk.moment(sheet, duty.begin()))).orElse("");
    }

    /** What is done when a tray is filled with a bath that is made in it; empty for other work. */
    private String inTheTray(ScheduleReading.Turn turn) {
        boolean made = desk.desk().treatment().step(turn.step()).flatMap(step -> step.part(Part.Bath.class))
                .filter(bath -> desk.bathsMadeInTrays().stream().anyMatch(one -> one.solution().equals(bath.of()))).isPresent();
        boolean apart = desk.reading().turns().stream().anyMatch(ScheduleReading.Turn::isLaidInAgain);
        String key = turn.isBathMade() ? "class.bath-made" : turn.isBathChanged() ? "class.bath-changed"
                : turn.isBathRead() ? "class.bath-read" : "";
        return !made || key.isEmpty() ? "" : words.say(key)
                + (turn.isBathMade() && turn.isMetered() ? " " + words.say("class.addition-takes", "each", sheet.numbers().duration(
                        sheet.library().formulary().constant("one-addition").value()).text()) : "")
                + (turn.isBathRead() && !apart ? " " + words.say("class.lay-in-again") : "") + new OneForAll(sheet, desk).after(turn);
    }

    /** When a sheet goes under the boards, by its own masses. */
    private String restraint(Optional<Step> step) {
        return step.flatMap(one -> one.part(Part.Weighing.class)).map(any -> " " + words.say("class.restraint", "solids",
                sheet.numbers().amount(sheet.library().formulary().constant("restraint-solids").value()).text())).orElse("");
    }

    /** What to do, how much is sprayed and from how far, how strips are torn, and what to watch. */
    private String instruction(Step step) {
        StringBuilder told = new StringBuilder(step.instruction());
        step.part(Part.Mist.class).flatMap(Part.Mist::amount).ifPresent(amount -> told.append(' ').append(words.say(
                "class.spray-amount", "amount", sheet.numbers().written(amount).text())));
        step.part(Part.Mist.class).flatMap(Part.Mist::distance).ifPresent(distance -> told.append(fact("bench-fact.distance",
                sheet.numbers().written(distance).text())));
        step.part(Part.Mend.class).ifPresent(mend -> {
            mend.strip().ifPresent(strip -> told.append(fact("bench-fact.strip", sheet.numbers().written(strip).text())));
            mend.lap().ifPresent(lap -> told.append(fact("bench-fact.lap", sheet.numbers().written(lap).text())));
            mend.grain().ifPresent(grain -> told.append(fact("bench-fact.grain", words.term("fibres-run", grain))));
        });
        step.watch().ifPresent(watch -> told.append(fact("bench.told-watch", watch)));
        return told.toString();
    }

    private String fact(String name, String value) {
        return " " + words.more(words.say(name), value) + ".";
    }

    private String cautions(ScheduleReading.Turn turn, boolean first) {
        HazardMaker hazards = new HazardMaker(sheet, desk.desk());
        List<String> full = new ArrayList<>();
        List<String> named = new ArrayList<>();
        for (Reference.Caution caution : hazards.cautionsOf(turn.step())) {
            Set<Handling> at = at(caution, turn.step());
            boolean here = at.isEmpty() ? first : !Collections.disjoint(at, turn.handlings());
            if (here && heeded.add(caution.key())) {
                full.add(hazards.told(caution));
            } else if (here) {
                named.add(caution.name().orElse(caution.doFirst()));
            }
        }
        if (!named.isEmpty()) {
            full.add(words.say("class.heed", "what", words.list(named)));
        }
        return String.join(" ", full);
    }

    /** The pieces that a caution is for, as far as the step has them; none where it has none of them. */
    private Set<Handling> at(Reference.Caution caution, String step) {
        Set<Handling> at = EnumSet.noneOf(Handling.class);
        desk.reading().turns().stream().filter(turn -> turn.station() == station && turn.step().equals(step))
                .forEach(turn -> at.addAll(turn.handlings()));
        at.retainAll(caution.at());
        return at;
    }
}
