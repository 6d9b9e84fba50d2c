package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalVersion;
import biweekly.ICalendar;
import biweekly.io.text.ICalReader;
import biweekly.util.DateTimeComponents;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The calendars of the demo's classes, read by the rules of RFC 5545 (3.1, 3.3.5, 3.3.11, 3.6.1). */
class ClassCalendarTest {

    @TempDir
    private static Path site;

    @BeforeAll
    static void publish() {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        assertThat(Main.run(out, out, "publish", "--content", "content", "--site", site.toString(), "--on", "2026-06-01"))
                .as(told::toString).isZero();
    }

    private static List<Path> calendars() throws IOException {
        try (Stream<Path> files = Files.list(site.resolve("cases/tide-table"))) {
            return files.filter(file -> file.toString().endsWith(".ics")).sorted().toList();
        }
    }

    private static List<Map<String, String>> events(Path file) throws IOException {
        List<Map<String, String>> events = new ArrayList<>();
        for (String line : Files.readString(file).replace("\r\n ", "").split("\r\n")) {
            String[] parts = line.split(":", 2);
            if (line.equals("BEGIN:VEVENT")) {
                events.add(new LinkedHashMap<>());
            } else if (!events.isEmpty()) {
                events.get(events.size() - 1).put(parts[0], parts[1]);
            }
        }
        return events;
    }

    @Test
    void every_line_ends_with_both_signs_and_has_at_most_75_octets() throws IOException {
        assertThat(calendars()).as("technician, supervisor and 6 stations; technician and 12 stations, whose class has no release")
                .hasSize(2 + 6 + 1 + 12);
        for (Path file : calendars()) {
            String text = Files.readString(file);
            assertThat(text.replace("\r\n", "")).doesNotContain("\r", "\n");
            assertThat(text).startsWith("BEGIN:VCALENDAR\r\nVERSION:2.0\r\nPRODID:").endsWith("END:VCALENDAR\r\n");
            assertThat(text.split("\r\n")).allSatisfy(line ->
                    assertThat(line.getBytes(StandardCharsets.UTF_8).length).isLessThanOrEqualTo(75));
        }
    }

    @Test
    void every_event_has_what_it_must_have_and_ends_after_it_begins() throws IOException {
        for (Path file : calendars()) {
            List<Map<String, String>> events = events(file);
            assertThat(events).allSatisfy(event -> {
                assertThat(event).containsKeys("UID", "DTSTAMP", "DTSTART", "DTEND", "SUMMARY", "SEQUENCE");
                assertThat(event.get("DTSTAMP")).matches("\\d{8}T\\d{6}Z");
                assertThat(event.get("DTSTART")).matches("\\d{8}T\\d{6}").isLessThan(event.get("DTEND"));
                assertThat(event.get("SUMMARY")).doesNotContainPattern("(?<!\\\\)[,;]");
            });
            assertThat(events.stream().map(event -> event.get("UID"))).doesNotHaveDuplicates();
        }
    }

    /** One briefing; each of six stations is released twice, before misting and before lowering, and misted with the supervisor beside. */
    @Test
    void the_supervisor_finds_every_release_and_whom_to_stand_beside() throws IOException {
        assertThat(events(site.resolve("cases/tide-table/class-spring-course-supervisor.ics"))).hasSize(1 + 6 * 3)
                .allSatisfy(event -> assertThat(event.get("SEQUENCE")).isEqualTo("3"));
    }

    /**
     * By hand: on Tuesday 14 April 2026 the first meter is first used at 9:16, by station 4, the second at 9:28, by station 3; up to
     * 10 min are usual to calibrate each. For the trial of the practice sheets it is calibrated on Friday before, from 11:01.
     */
    @Test
    void the_technician_finds_the_calibration_of_the_meter() throws IOException {
        assertThat(events(site.resolve("cases/tide-table/class-spring-course-technician.ics"))).filteredOn(event ->
                event.get("SUMMARY").contains("calibrate")).extracting(event -> event.get("DTSTART") + " to " + event.get("DTEND"))
                .containsExactlyInAnyOrder("20260414T090600 to 20260414T091600", "20260414T091800 to 20260414T092800",
                        "20260410T110100 to 20260410T111100");
    }

    /** An independent reader of RFC 5545, its own checks, and the plan as a table (CSV). */
    @Test
    void a_calendar_library_reads_every_file_without_a_warning_and_finds_the_times_of_the_plan() throws IOException {
        for (Path file : calendars()) {
            ICalReader reader = new ICalReader(file.toFile());
            ICalendar calendar = reader.readNext();
            assertThat(reader.getWarnings()).as(file.toString()).isEmpty();
            assertThat(calendar.validate(ICalVersion.V2_0).isEmpty()).as(() -> file + " " + calendar.validate(ICalVersion.V2_0)).isTrue();
            reader.close();
        }
        Path plan = site.resolve("cases/tide-table/class-spring-course-plan.csv");
        List<String> times = Files.readAllLines(plan).stream().skip(1).filter(line -> line.startsWith("4,"))
                .filter(line -> line.contains("trainee"))
                .map(line -> line.replaceAll(".*,(\\d{4}-\\d\\d-\\d\\dT[\\d:]+),(\\d{4}-[-T:\\d]+),.*", "$1 $2")).toList();
        List<String> found = Biweekly.parse(site.resolve("cases/tide-table/class-spring-course-station-4.ics").toFile()).first().getEvents()
                .stream().map(event -> written(event.getDateStart().getValue().getRawComponents()) + " "
                        + written(event.getDateEnd().getValue().getRawComponents())).toList();
        assertThat(found).isNotEmpty().containsExactlyElementsOf(times);
    }

    private static String written(DateTimeComponents time) {
        return String.format(Locale.ROOT, "%04d-%02d-%02dT%02d:%02d", time.getYear(), time.getMonth(), time.getDate(),
                time.getHour(), time.getMinute());
    }
}
