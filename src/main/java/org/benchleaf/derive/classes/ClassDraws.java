package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.derive.time.Calendar;
import org.benchleaf.derive.time.Moments;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/** When the stations of a class draw what a step uses: by the plan, else as early as its steps allow, all stations at once. */
final class ClassDraws {

    /** Stands for all stations where no plan tells them apart. */
    static final int ALL = 0;

    private final int stations;
    /** Minutes in which a portion is filled. */
    private final int portion;
    private final Timeline timeline;
    private final List<ScheduleReading.Turn> turns;
    private final Map<String, Draw> before;

    /**
     * Something that is drawn at one time.
     *
     * @param by id of the step or solution that draws it
     * @param station number of the station; {@link #ALL} where it is not one station alone
     * @param from when it is drawn
     * @param until when it has been used
     */
    record Draw(String by, int station, LocalDateTime from, LocalDateTime until) {
    }

    /**
     * Makes ready to tell.
     *
     * @param portion minutes in which a portion is filled
     * @param before what is drawn before the class, by the id of the step that draws it
     */
    ClassDraws(int stations, int portion, Timeline timeline, Optional<ClassSchedule> schedule, Map<String, Draw> before) {
        this.before = before;
        this.stations = stations;
        this.portion = portion;
        this.timeline = timeline;
        this.turns = schedule.map(ScheduleReading::new).map(ScheduleReading::turns).orElse(List.of());
    }

    /** Every draw of a solution by a step; none where nobody knows when the step begins. */
    List<Draw> of(Step step, String solution) {
        if (before.containsKey(step.id())) {
            return List.of(before.get(step.id()));
        }
        boolean fillsTrays = step.part(Part.Bath.class).filter(bath -> bath.of().equals(solution)).isPresent();
        List<Draw> planned = IntStream.rangeClosed(1, stations).boxed()
                .flatMap(station -> planned(step, station, fillsTrays)).toList();
        return planned.isEmpty() ? byTheClock(step, fillsTrays) : fillsTrays ? planned : inPortions(planned);
    }

    /** One pair of hands fills a portion after the other, each before its station begins with it. */
    private List<Draw> inPortions(List<Draw> planned) {
        List<Draw> portions = new ArrayList<>();
        LocalDateTime limit = LocalDateTime.MAX;
        for (Draw draw : planned.stream().sorted(Comparator.comparing(Draw::from).thenComparing(Draw::station).reversed()).toList()) {
            limit = (draw.from().isBefore(limit) ? draw.from() : limit).minusMinutes(portion);
            portions.add(0, new Draw(draw.by(), draw.station(), limit, draw.until()));
        }
        return portions;
    }

    private Stream<Draw> planned(Step step, int station, boolean fillsTrays) {
        List<ScheduleReading.Turn> own = turns.stream().filter(turn -> turn.station() == station
                && turn.step().equals(step.id())).toList();
        if (fillsTrays) {
            // A bath has to be fresh when it is filled; what it is like at its end is read in it.
            return own.stream().filter(ScheduleReading.Turn::isFilling)
                    .map(turn -> new Draw(step.id(), station, turn.from(), turn.to()));
        }
        // What is weighed or made before is done without it.
        return own.stream().filter(ScheduleReading.Turn::isMainWork).findFirst().flatMap(work -> own.stream().filter(turn ->
                        turn.isHold() || turn.isMainWork()).findFirst().map(first -> new Draw(step.id(), station, first.from(), work.to())))
                .stream();
    }

    private List<Draw> byTheClock(Step step, boolean fillsTrays) {
        List<Draw> draws = new ArrayList<>();
        Calendar.day(timeline, step.id()).ifPresent(day -> {
            draws.add(atOnce(step, day.earliestStart()));
            day.moments().stream().filter(moment -> fillsTrays && moment.kind().equals(Moments.BATH_CHANGE))
                    .forEach(change -> draws.add(atOnce(step, change.earliest())));
        });
        return draws;
    }

    private static Draw atOnce(Step step, LocalDateTime time) {
        return new Draw(step.id(), ALL, time, time);
    }
}
