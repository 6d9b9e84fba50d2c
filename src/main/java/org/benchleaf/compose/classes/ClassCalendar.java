package org.benchleaf.compose.classes;

import java.nio.charset.StandardCharsets;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/**
 * Calendars of a class (RFC 5545), in the time of the room's clock. Each event keeps its identity from issue to issue, and its
 * number counts up with the issue, so that a later file takes the place of an earlier one.
 */
final class ClassCalendar {

    private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("yyyyMMdd'T'HHmmss", Locale.ROOT);
    private static final int MOST_OCTETS = 75;
    private static final String TECHNICIAN = "technician";
    private static final String SUPERVISOR = "supervisor";
    private static final String STATION = "station-";

    private final ClassDesk desk;
    private final Sheet sheet;
    private final int issue;
    private final String stamp;

    ClassCalendar(ClassDesk desk, Sheet sheet) {
        this.desk = desk;
        this.sheet = sheet;
        this.issue = desk.course().papers().issue().map(ClassPapers.Issue::number).orElse(0);
        this.stamp = TIME.format(desk.course().papers().issue().map(one -> one.on().atStartOfDay())
                .orElse(desk.course().starts())) + "Z";
    }

    /** The calendar of each who has something to do, by what it is called: a calendar without an event is none. */
    Map<String, String> all() {
        Map<String, String> all = new LinkedHashMap<>();
        all.put(TECHNICIAN, ofTechnician());
        all.put(SUPERVISOR, ofSupervisor());
        for (int station = 1; station <= desk.course().stations(); station++) {
            all.put(STATION + station, ofStation(station));
        }
        all.values().removeIf(calendar -> !calendar.contains("BEGIN:VEVENT"));
        return all;
    }

    /** What the technician begins, and by when it must be ready; the meter is calibrated on each day of its use. */
    private String ofTechnician() {
        StringBuilder events = new StringBuilder();
        MeterWork.checks(sheet, desk).forEach(one -> event(events, "check-" + one.until().toLocalDate(), one.begin(), one.until(),
                sheet.words().say("class.check-conductivity")));
        MeterWork.of(sheet, desk).forEach(one -> event(events, "calibrate-" + one.used().toLocalDate()
                        + (one.meter() > 1 ? "-" + one.meter() : ""), one.begin(), one.used(),
                sheet.words().say("class.calendar-begin", "what", MeterWork.name(sheet, one),
                        "ready", desk.moment(sheet, one.used()))));
        desk.plan().starts().stream().filter(start -> !start.inTrays()).forEach(start -> event(events,
                "begin-" + start.solution() + (start.batch().number() > 1 ? "-" + start.batch().number() : ""), start.begin(),
                start.boundUntil(),
                sheet.words().say("class.calendar-make", "what", ClassPreparationPage.batch(sheet, desk, start),
                        "hands", sheet.numbers().duration(start.handsOn()).text(), "ready", desk.moment(sheet, start.readyFor()))));
        Duties duties = new Duties(sheet, desk);
        desk.plan().duties().forEach(duty -> duty.stretches().forEach(stretch -> event(events, duty.kind().name().toLowerCase(Locale.ROOT)
                + "-" + duty.step().orElse("") + "-" + stretch.from(), stretch.from(), stretch.to(), duties.name(duty))));
        return calendar(events);
    }

    /** The briefings, every release, and all work that the supervisor stands beside. */
    private String ofSupervisor() {
        StringBuilder events = new StringBuilder();
        if (desk.reading().turns().stream().anyMatch(ScheduleReading.Turn::isSupervised)) {
            Map<LocalDateTime, Integer> briefings = new TreeMap<>();
            IntStream.rangeClosed(1, desk.course().stations()).forEach(station ->
                    briefings.putIfAbsent(desk.reading().briefing(station).from(), station));
            briefings.values().forEach(station -> briefing(events, station));
        }
        return calendar(events.append(events(ScheduleReading.Turn::isSupervised, true)));
    }

    /** The briefing, and what one station does with its hands. */
    private String ofStation(int station) {
        StringBuilder events = new StringBuilder();
        briefing(events, station);
        return calendar(events.append(events(turn -> turn.station() == station && turn.isHandsOn(), false)));
    }

    private void briefing(StringBuilder events, int station) {
        ScheduleReading.Briefing briefing = desk.reading().briefing(station);
        event(events, "station-" + station + "-briefing", briefing.from(), briefing.to(), sheet.words().say("class.briefing"));
    }

    /** Whose calendar it is, in words. */
    static String words(Words words, String calendar) {
        return calendar.startsWith(STATION) ? words.say("class.file.station", "n", calendar.substring(STATION.length()))
                : words.say("class.file." + calendar);
    }

    private StringBuilder events(Predicate<ScheduleReading.Turn> wanted, boolean naming) {
        StringBuilder events = new StringBuilder();
        List<ScheduleReading.Turn> turns = desk.reading().turns().stream().filter(wanted).toList();
        turns.forEach(turn -> event(events, "station-" + turn.station() + "-part-" + turn.part(), turn.from(), turn.to(),
                (naming ? sheet.words().say("class.station-n", "n", turn.station()) + ": " : "")
                        + desk.step(sheet, turn.step()) + ", " + desk.reading().work(turn)));
        return events;
    }

    private void event(StringBuilder to, String id, LocalDateTime from, LocalDateTime until, String what) {
        line(to, "BEGIN:VEVENT");
        line(to, "UID:" + Paths.slug(desk.course().id()) + "-" + Paths.slug(id) + "@benchleaf");
        line(to, "DTSTAMP:" + stamp);
        line(to, "SEQUENCE:" + issue);
        line(to, "DTSTART:" + TIME.format(from));
        line(to, "DTEND:" + TIME.format(until));
        line(to, "SUMMARY:" + escaped(what));
        line(to, "END:VEVENT");
    }

    private static String calendar(StringBuilder events) {
        StringBuilder calendar = new StringBuilder();
        line(calendar, "BEGIN:VCALENDAR");
        line(calendar, "VERSION:2.0");
        line(calendar, "PRODID:-//Benchleaf//Class//EN");
        calendar.append(events);
        line(calendar, "END:VCALENDAR");
        return calendar.toString();
    }

    /** RFC 5545, 3.3.11. */
    private static String escaped(String text) {
        return text.replace("\\", "\\\\").replace(";", "\\;").replace(",", "\\,").replace("\n", "\\n");
    }

    /** RFC 5545, 3.1: at most 75 octets, folded between letters. */
    private static void line(StringBuilder to, String line) {
        int octets = 0;
        for (int at = 0; at < line.length(); ) {
            int letter = line.codePointAt(at);
            int size = Character.toString(letter).getBytes(StandardCharsets.UTF_8).length;
            if (octets + size > MOST_OCTETS) {
                to.append("\r\n ");
                octets = 1;
            }
            to.appendCodePoint(letter);
            octets += size;
            at += Character.charCount(letter);
        }
        to.append("\r\n");
    }
}
