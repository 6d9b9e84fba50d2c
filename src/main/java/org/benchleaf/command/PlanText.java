package org.benchleaf.command;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.derive.ClassSchedule;
import org.benchleaf.plan.Claim;
import org.benchleaf.plan.Delay;
import org.benchleaf.plan.Planner;
import org.benchleaf.plan.Station;
import org.benchleaf.plan.Timetable;

/** Writes the schedule of a class as text and as JSON. */
final class PlanText {

    private static final int HOUR = 60;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_CLOCK = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final ClassSchedule schedule;
    private final Timetable timetable;

    PlanText(ClassSchedule schedule) {
        this.schedule = schedule;
        this.timetable = schedule.timetable();
    }

    /**
     * The schedule as JSON: {@code floor}, {@code end}, {@code parts}, {@code waits} and {@code more}, with minutes from
     * the start of the class.
     */
    String json() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("floor", schedule.floor().minutes());
        all.put("end", timetable.end());
        all.put("parts", parts());
        all.put("waits", schedule.delays().stream().map(this::wait).toList());
        all.put("more", schedule.gains().stream().map(this::more).toList());
        return Json.of(all) + "\n";
    }

    private List<Object> parts() {
        List<Object> parts = new ArrayList<>();
        for (int station = 0; station < stations().size(); station++) {
            for (int part = 0; part < stations().get(station).parts().size(); part++) {
                Map<String, Object> one = new LinkedHashMap<>();
                one.put("station", station + 1);
                one.put("part", partName(station, part));
                one.put("start", timetable.start(station, part));
                one.put("end", timetable.end(station, part));
                one.put("takes", takes(station, part));
                parts.add(one);
            }
        }
        return parts;
    }

    private Map<String, Object> wait(Delay delay) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("station", delay.station() + 1);
        one.put("part", partName(delay.station(), delay.part()));
        one.put("minutes", delay.minutes());
        one.put("why", why(delay.station(), delay.cause()));
        return one;
    }

    private Map<String, Object> more(Planner.Gain gain) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("thing", thing(gain.thing()));
        one.put("end", gain.end());
        return one;
    }

    /** The schedule as a teacher reads it. */
    String text() {
        StringBuilder text = new StringBuilder();
        text.append(schedule.course().title()).append(", from ")
                .append(DAY_AND_CLOCK.format(schedule.course().starts())).append("\n").append(length()).append("\n");
        for (int station = 0; station < stations().size(); station++) {
            text.append("\n").append(stations().get(station).name()).append("\n");
            for (int part = 0; part < stations().get(station).parts().size(); part++) {
                text.append(line(station, part));
            }
        }
        section(text, "Who waits, and why", schedule.delays().stream().map(this::line).toList());
        section(text, "What one more would give", schedule.gains().stream().map(gain -> thing(gain.thing())
                + ": the class ends at " + clock(gain.end()) + (gain.end() == timetable.end() ? ", as now" : "")).toList());
        return text.toString();
    }

    private String length() {
        int end = timetable.end();
        int floor = schedule.floor().minutes();
        String takes = "This plan takes " + time(end) + " and ends at " + clock(end);
        return end == floor ? takes + ". No plan can be shorter."
                : takes + "; none can be shorter than " + time(floor) + ".";
    }

    private String line(int station, int part) {
        List<String> takes = takes(station, part);
        return "  " + clock(timetable.start(station, part)) + " to " + clock(timetable.end(station, part)) + "  "
                + partName(station, part) + (takes.isEmpty() ? "" : " (" + String.join(", ", takes) + ")") + "\n";
    }

    private String line(Delay delay) {
        return stations().get(delay.station()).name() + " waits " + time(delay.minutes()) + " before "
                + partName(delay.station(), delay.part()) + ": " + why(delay.station(), delay.cause());
    }

    private static void section(StringBuilder text, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append("\n").append(title).append("\n");
            lines.forEach(line -> text.append("  ").append(line).append("\n"));
        }
    }

    private String why(int station, Delay.Cause cause) {
        if (cause instanceof Delay.Taken taken) {
            String holders = taken.holders().stream().map(holder -> stations().get(holder.station()).name() + " ("
                    + partName(holder.station(), holder.part()) + ")").collect(Collectors.joining(" and "));
            return thing(taken.thing()) + ", taken by " + holders + " until " + clock(taken.until());
        }
        if (cause instanceof Delay.Away away) {
            return thing(away.thing()) + ", not there until " + clock(away.until());
        }
        if (cause instanceof Delay.HeldBack held) {
            return "it is held back so that the wait before " + partName(station, held.laterPart())
                    + " stays short, and there " + why(station, held.cause());
        }
        return "nothing is in the way, but beginning sooner would make the class no shorter";
    }

    private List<Station> stations() {
        return timetable.classroom().stations();
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
                .map(this::amountAndThing).toList();
    }

    private String amountAndThing(Claim claim) {
        return (claim.amount() > 1 ? claim.amount() + " " : "") + thing(claim.thing());
    }

    /** The time of day, with the day where it is not the first. */
    private String clock(int minute) {
        LocalDateTime time = schedule.course().starts().plusMinutes(minute);
        return (time.toLocalDate().equals(schedule.course().starts().toLocalDate()) ? CLOCK : DAY_AND_CLOCK).format(time);
    }

    private static String time(int minutes) {
        return minutes < 2 * HOUR ? minutes + " min" : minutes / HOUR + " h " + minutes % HOUR + " min";
    }
}
