package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.calculate.Origin;
import org.benchleaf.derive.figure.Job;
import org.benchleaf.derive.figure.Ledger;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.RoomLoad;
import org.benchleaf.quantity.Quantity;

/** Works out what the stations of a class draw from the room at once, in the order of their plan, and says where it gives less. */
final class ClassLoads {

    private static final Map<RoomLoad, String> LABELS = Map.of(RoomLoad.POWER, "power at once, at most",
            RoomLoad.WATER, "water at once, at most", RoomLoad.NOISE, "noise at once, at most");

    private final CourseClass course;
    private final ClassStores.Room room;
    private final Ledger ledger;
    private final Messages messages;

    ClassLoads(CourseClass course, Ledger ledger, Messages messages) {
        this.course = course;
        this.room = course.stores().room();
        this.ledger = ledger;
        this.messages = messages;
    }

    /** Of each kind that a thing of the class states. */
    List<ClassSupplies.Load> of(ScheduleReading reading) {
        List<ClassSupplies.Load> loads = new ArrayList<>();
        for (RoomLoad kind : RoomLoad.values()) {
            peak(kind, reading, course.stations()).flatMap(moment -> load(kind, moment)).ifPresent(load -> {
                loads.add(load);
                load.gives().filter(gives -> exceeds(load.most().value(), gives)).ifPresent(gives -> tellTooMuch(load, gives, reading));
            });
        }
        return loads;
    }

    /** A minute of the plan, what is in use then, and how much that draws. */
    private record Moment(int minute, Map<String, Integer> inUse, Quantity drawn) {
    }

    /** The first of the minutes at which the first stations of the plan draw most; empty if nothing is ever drawn. */
    private Optional<Moment> peak(RoomLoad kind, ScheduleReading reading, int stations) {
        return reading.turns().stream().map(ScheduleReading.Turn::start).distinct().sorted()
                .flatMap(minute -> moment(kind, reading, minute, stations).stream())
                .max(Comparator.<Moment>comparingDouble(one -> one.drawn().high())
                        .thenComparing(Moment::minute, Comparator.reverseOrder()));
    }

    private Optional<Moment> moment(RoomLoad kind, ScheduleReading reading, int minute, int stations) {
        Map<String, Integer> inUse = new LinkedHashMap<>();
        room.draws().forEach((thing, draws) -> Optional.of(reading.inUse(thing, minute, stations))
                .filter(count -> count > 0 && draws.containsKey(kind)).ifPresent(count -> inUse.put(thing, count)));
        return inUse.isEmpty() ? Optional.empty() : ledger.value(calculation(kind), job(kind, inUse).inputs(), output(kind))
                .map(drawn -> new Moment(minute, inUse, drawn));
    }

    private Optional<ClassSupplies.Load> load(RoomLoad kind, Moment moment) {
        return ledger.one(job(kind, moment.inUse()).gives(output(kind), FigureKey.ofClass(course.id(), "room", kind.word()),
                LABELS.get(kind))).map(most -> new ClassSupplies.Load(kind, most, moment.minute(),
                        Optional.ofNullable(room.limits().get(kind))));
    }

    private Job job(RoomLoad kind, Map<String, Integer> inUse) {
        List<Quantity> each = new ArrayList<>();
        List<Quantity> times = new ArrayList<>();
        inUse.forEach((thing, count) -> {
            each.add(room.draws().get(thing).get(kind));
            times.add(Quantity.number(count));
        });
        return new Job(calculation(kind), room.place()).given(kind == RoomLoad.NOISE ? "levels" : "amounts", each, Origin.Place.CLASS)
                .given("times", times, Origin.Place.CLASS);
    }

    private static String calculation(RoomLoad kind) {
        return kind == RoomLoad.NOISE ? "sound-sum" : "sum";
    }

    private static String output(RoomLoad kind) {
        return kind == RoomLoad.NOISE ? "level" : "total";
    }

    private static boolean exceeds(Quantity drawn, Quantity gives) {
        return drawn.highIn(gives.unit()) > gives.low();
    }

    private void tellTooMuch(ClassSupplies.Load load, Quantity gives, ScheduleReading reading) {
        int most = IntStream.range(1, course.stations()).filter(count -> peak(load.kind(), reading, count)
                .filter(moment -> exceeds(moment.drawn(), gives)).isEmpty()).max().orElse(0);
        messages.add(ClassMessages.ROOM_GIVES_LESS.at(room.place(), "kind", load.kind().word(), "most", Reading.of(load.most().value()),
                "when", reading.clock(load.minute()).toLocalTime(), "gives", Reading.of(gives), "remedy", most == 0
                        ? "Not even one station would do; teach in another room, or with things that draw less."
                        : "In the order of this plan " + most + " would do. Count fewer of these things under 'shared', so that stations"
                                + " take turns, or teach in groups."));
    }
}
