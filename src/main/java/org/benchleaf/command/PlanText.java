package org.benchleaf.command;

import java.time.Duration;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.IntStream;
import org.benchleaf.derive.classes.ClassSchedule;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.json.JsonText;

/** Writes the schedule of a class as text and as JSON. */
final class PlanText {

    private static final int HOUR = 60;
    private static final DateTimeFormatter CLOCK = DateTimeFormatter.ofPattern("HH:mm", Locale.ENGLISH);
    private static final DateTimeFormatter DAY_AND_CLOCK = DateTimeFormatter.ofPattern("EEE d MMM HH:mm", Locale.ENGLISH);

    private final ClassSchedule schedule;
    private final ScheduleReading reading;

    PlanText(ClassSchedule schedule) {
        this.schedule = schedule;
        this.reading = new ScheduleReading(schedule);
    }

    /**
     * The schedule as JSON: {@code floor}, {@code end}, {@code briefings}, {@code parts}, {@code waits} and {@code more}, with minutes from
     * the start of the class.
     */
    String json() {
        Map<String, Object> all = new LinkedHashMap<>();
        all.put("floor", reading.floor());
        all.put("end", reading.minutes());
        all.put("briefings", IntStream.rangeClosed(1, schedule.course().stations()).mapToObj(this::briefed).toList());
        all.put("parts", reading.turns().stream().map(PlanText::part).toList());
        all.put("waits", reading.waits(this::clock).stream().map(PlanText::wait).toList());
        all.put("more", reading.gains().stream().map(this::more).toList());
        return JsonText.of(all) + "\n";
    }

    private Map<String, Object> briefed(int station) {
        ScheduleReading.Briefing briefing = reading.briefing(station);
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("station", station);
        one.put("start", minute(briefing.from()));
        one.put("end", minute(briefing.to()));
        return one;
    }

    private long minute(LocalDateTime time) {
        return Duration.between(schedule.course().starts(), time).toMinutes();
    }

    private static Map<String, Object> part(ScheduleReading.Turn turn) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("station", turn.station());
        one.put("part", turn.name());
        one.put("start", turn.start());
        one.put("end", turn.end());
        one.put("takes", turn.takes());
        return one;
    }

    private static Map<String, Object> wait(ScheduleReading.Wait wait) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("station", wait.station());
        one.put("part", wait.before());
        one.put("minutes", wait.minutes());
        one.put("why", wait.why());
        return one;
    }

    private Map<String, Object> more(ScheduleReading.Gain gain) {
        Map<String, Object> one = new LinkedHashMap<>();
        one.put("thing", gain.thing());
        one.put("end", minute(gain.end()));
        return one;
    }

    /** The schedule as a teacher reads it. */
    String text() {
        StringBuilder text = new StringBuilder();
        text.append(schedule.course().title()).append(", from ")
                .append(DAY_AND_CLOCK.format(schedule.course().starts())).append("\n").append(length()).append("\n");
        int station = 0;
        for (ScheduleReading.Turn turn : reading.turns()) {
            if (turn.station() != station) {
                station = turn.station();
                text.append("\nstation ").append(station).append("\n").append(briefing(station));
            }
            text.append(line(turn));
        }
        section(text, "Who waits, and why", reading.waits(this::clock).stream().map(PlanText::line).toList());
        section(text, "What one more would give", reading.gains().stream().map(gain -> gain.thing()
                + ": the class ends at " + clock(gain.end()) + (gain.sooner() ? "" : ", as now")).toList());
        return text.toString();
    }

    private String length() {
        String takes = "This plan takes " + time(reading.minutes()) + " and ends at " + clock(reading.minutes());
        return reading.minutes() == reading.floor() ? takes + ". No plan can be shorter."
                : takes + "; none can be shorter than " + time(reading.floor()) + ".";
    }

    private String briefing(int station) {
        ScheduleReading.Briefing briefing = reading.briefing(station);
        return "  " + clock(briefing.from()) + " to " + clock(briefing.to()) + "  briefing\n";
    }

    private String line(ScheduleReading.Turn turn) {
        return "  " + clock(turn.from()) + " to " + clock(turn.to()) + "  " + turn.name()
                + (turn.takes().isEmpty() ? "" : " (" + String.join(", ", turn.takes()) + ")") + "\n";
    }

    private static String line(ScheduleReading.Wait wait) {
        return "station " + wait.station() + " waits " + time(wait.minutes()) + " before " + wait.before() + ": " + wait.why();
    }

    private static void section(StringBuilder text, String title, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append("\n").append(title).append("\n");
            lines.forEach(line -> text.append("  ").append(line).append("\n"));
        }
    }

    private String clock(int minute) {
        return clock(reading.clock(minute));
    }

    /** The time of day, with the day where it is not the first. */
    private String clock(LocalDateTime time) {
        return (time.toLocalDate().equals(schedule.course().starts().toLocalDate()) ? CLOCK : DAY_AND_CLOCK).format(time);
    }

    private static String time(int minutes) {
        return minutes < 2 * HOUR ? minutes + " min" : minutes / HOUR + " h " + minutes % HOUR + " min";
    }
}
