package org.benchleaf.command;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.benchleaf.ChangedContent;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import picocli.CommandLine;

/** Plans a sound class, and classes that cannot be planned. */
class PlanCommandTest {

    private static final Path PLANS = Path.of("src/test/resources/plans");
    private static final Clock DAY = Clock.fixed(Instant.parse("2026-06-01T10:00:00Z"), ZoneOffset.UTC);
    private static final Pattern CODE = Pattern.compile("\\b(?:error|warning|advice) ([A-Z]+-\\d{3})");

    private final StringWriter out = new StringWriter();
    private final StringWriter err = new StringWriter();

    @TempDir
    private Path folder;
    private Path sound;

    @BeforeEach
    void content() throws IOException {
        sound = folder.resolve("sound");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), sound);
        Files.copy(PLANS.resolve("spring.yaml"), sound.resolve("classes/spring.yaml"),
                StandardCopyOption.REPLACE_EXISTING);
    }

    private int run(String... arguments) {
        return new CommandLine(new PlanCommand()).setOut(new PrintWriter(out, true))
                .setErr(new PrintWriter(err, true)).execute(arguments);
    }

    private JsonNode plan(Path content) throws IOException {
        assertThat(run("spring", "--format", "json", "--content", content.toString())).as(err::toString).isZero();
        return new ObjectMapper().readTree(out.toString());
    }

    private Path changed(String from, String to) throws IOException {
        Path file = sound.resolve("classes/spring.yaml");
        assertThat(file).content().contains(from);
        Files.writeString(file, Files.readString(file).replace(from, to));
        return sound;
    }

    /**
     * Worked by hand: briefing 10, fill the bath 6 and bring it to its pH in 8 additions of 1, mist 10, hold 4, lower 4,
     * three baths of 20, two changes of 5 and readings of 3 with 2 for the used bath, drain 10, read the last bath 2,
     * empty the tray 3, clear away 10 make 147 min.
     */
    @Test
    void one_station_takes_as_long_as_its_work() throws IOException {
        JsonNode plan = plan(changed("stations: 6", "stations: 1"));
        assertThat(plan.get("floor").asInt()).isEqualTo(147);
        assertThat(plan.get("end").asInt()).isEqualTo(147);
        assertThat(plan.get("waits")).isEmpty();
    }

    /**
     * Worked by hand: after the briefing of 10 min the one meter is shared by six, each of whom has it for the first bath, 6 + 8 + 1, at
     * the release, 4, and for two fresh baths, 5 + 1 each: 31, in all 186 min. The last goes on for 1 + 20 + 10 + 3 + 3 + 10 = 47:
     * 10 + 186 + 47 = 243.
     */
    @Test
    void six_stations_wait_for_the_meter() throws IOException {
        JsonNode plan = plan(sound);
        assertThat(plan.fieldNames()).toIterable().containsExactly("floor", "end", "briefings", "parts", "waits", "more");
        assertThat(plan.get("floor").asInt()).isEqualTo(243);
        assertThat(plan.get("end").asInt()).isGreaterThanOrEqualTo(243);
        assertThat(plan.get("briefings")).hasSize(6).allSatisfy(one -> assertThat(one.get("end").asInt() - one.get("start").asInt())
                .isEqualTo(10));
        assertThat(plan.get("parts").findValuesAsText("takes")).hasSameSizeAs(plan.get("parts"));
        assertThat(plan.get("parts").findValues("end").stream().mapToInt(JsonNode::asInt).max())
                .hasValue(plan.get("end").asInt());
        assertThat(plan.get("waits")).isNotEmpty().allSatisfy(wait -> assertThat(wait.fieldNames()).toIterable()
                .containsExactly("station", "part", "minutes", "why"));
        assertThat(plan.get("more")).isNotEmpty().allSatisfy(more -> {
            assertThat(more.fieldNames()).toIterable().containsExactly("thing", "end");
            assertThat(more.get("end").asInt()).isLessThanOrEqualTo(plan.get("end").asInt());
        });
    }

    /** The limits of the file, looked for in what is printed: mist to lowering 15 min, the hold just before. */
    @Test
    void a_sheet_is_lowered_in_time_and_straight_after_its_release() throws IOException {
        JsonNode parts = plan(sound).get("parts");
        for (int station = 1; station <= 6; station++) {
            int lowered = time(parts, station, "wash: lower", "start");
            assertThat(lowered).isBetween(time(parts, station, "relax: prewetting", "end"),
                    time(parts, station, "relax: prewetting", "end") + 15);
            assertThat(time(parts, station, "wash: hold before lowering", "end")).isEqualTo(lowered);
            assertThat(time(parts, station, "wash: watch the sheet in its bath", "start"))
                    .isEqualTo(time(parts, station, "wash: lower", "end"));
        }
    }

    /**
     * From the table of access, by which a trainee sprays what burns only with the supervisor beside them, and its caution, by which
     * several take turns: looked for in what is printed, minute by minute.
     */
    @Test
    void one_who_sprays_what_burns_has_the_only_supervisor_beside_them() throws IOException {
        JsonNode parts = plan(sound).get("parts");
        int sprayed = 0;
        for (JsonNode part : parts) {
            if (part.get("part").asText().equals("relax: prewetting")) {
                sprayed++;
                for (JsonNode other : parts) {
                    assertThat(other != part && other.get("takes").toString().contains("supervisor")
                            && other.get("start").asInt() < part.get("end").asInt() && part.get("start").asInt() < other.get("end").asInt())
                            .as("%s while %s", other, part).isFalse();
                }
            }
        }
        assertThat(sprayed).isEqualTo(6);
    }

    /** Common practice, no source: a solvent is sprayed by one at a time; two supervisors do not change that, a class's own count does. */
    @ParameterizedTest
    @CsvSource({"'', 1", "'  - {thing: turn to spray, count: 2}\n', 2"})
    void those_who_spray_take_turns_unless_the_class_counts_more(String more, int most) throws IOException {
        changed("supervisors: 1", "supervisors: 6");
        changed("pH meter, count: 1", "pH meter, count: 6");
        JsonNode parts = plan(changed("limits:\n", more.replace("\\n", "\n") + "limits:\n")).get("parts");
        int atOnce = 0;
        for (JsonNode part : parts) {
            int start = part.get("start").asInt();
            atOnce = Math.max(atOnce, (int) StreamSupport.stream(parts.spliterator(), false).filter(other ->
                    other.get("part").asText().equals("relax: prewetting") && other.get("start").asInt() <= start
                            && start < other.get("end").asInt()).count());
        }
        assertThat(atOnce).isEqualTo(most);
    }

    /** From the case, whose washing takes two: each moves of a wet sheet has a second pair of hands; a look at it is not lent away. */
    @Test
    void every_move_of_a_sheet_that_takes_two_has_two() throws IOException {
        JsonNode parts = plan(sound).get("parts");
        for (JsonNode part : parts) {
            String work = part.get("part").asText();
            if (List.of("wash: lower", "wash: lift out", "wash: lay in again").contains(work)) {
                assertThat(part.get("takes").toString().split("trainee of station", -1)).as(part.toString()).hasSize(3);
            }
        }
        assertThat(parts.findValuesAsText("part")).filteredOn("wash: lift out"::equals).hasSize(6 * 3);
        assertThat(parts.findValuesAsText("part")).filteredOn("wash: lay in again"::equals).hasSize(6 * 2);
        assertThat(parts.findValuesAsText("part")).filteredOn(name -> name.startsWith("wash: look after min")).hasSize(6 * 3);
        for (int station = 1; station <= 6; station++) {
            int lowered = time(parts, station, "wash: lower", "end");
            assertThat(List.of(1, 5, 15)).allSatisfy(minute -> assertThat(parts).anySatisfy(part ->
                    assertThat(part.get("part").asText() + part.get("start")).isEqualTo("wash: look after min " + minute
                            + (lowered + minute))));
        }
    }

    private static int time(JsonNode parts, int station, String name, String key) {
        for (JsonNode part : parts) {
            if (part.get("station").asInt() == station && part.get("part").asText().equals(name)) {
                return part.get(key).asInt();
            }
        }
        throw new AssertionError("station " + station + " has no " + name);
    }

    @Test
    void the_text_tells_when_the_plan_ends_and_that_nothing_is_shorter() throws IOException {
        changed("stations: 6", "stations: 1");
        assertThat(run("spring", "--content", sound.toString())).isZero();
        assertThat(out.toString()).contains("This plan takes 2 h 27 min and ends at 12:27. No plan can be shorter.",
                "10:00 to 10:10  briefing", "10:10 to 10:24  wash: make the bath");
    }

    @ParameterizedTest
    @CsvSource({
        "PLAN-001, 1, sink",
        "PLAN-002, 1, 4 min",
        "PLAN-003, 1, hood",
        "PLAN-004, 1, 9 h",
        "PLAN-005, 1, 'one supervisor cannot release 6 stations within 15 min'",
        "PLAN-005, 1, 'groups of 3, 9 min after one another, or ask for another supervisor (6 at once)'",
        "PLAN-006, 1, 'the pH meter alone needs 4 h 3 min (10 min before it, 3 h 6 min of work for it, 47 min after it)'",
        "PLAN-007, 0, none can end before 2026-04-14 13:33",
        "PLAN-008, 1, Saturday 2026-04-11 23:00",
        "PLAN-009, 1, 6 trainees are too many for one supervisor",
        "PLAN-010, 1, wash",
        "PLAN-011, 1, rhythm",
        "PLAN-012, 1, ends by",
        "PLAN-013, 1, 'one supervisor cannot stand beside 6 stations that begin ''relax: prewetting'' together'",
        "PLAN-013, 1, 'all of them in 60 min at least), or ask for as many supervisors as begin together (5 more)'",
    })
    void what_stands_in_the_way_of_a_plan_is_told_alone_and_by_name(String code, int exit, String told) {
        Path content = ChangedContent.of(sound, PLANS.resolve(code + ".txt"), folder.resolve("faulty"));
        assertThat(run("spring", "--content", content.toString())).as(err::toString).isEqualTo(exit);
        assertThat(err.toString()).contains(told);
        Set<String> codes = CODE.matcher(err.toString()).results().map((MatchResult found) -> found.group(1))
                .collect(Collectors.toCollection(TreeSet::new));
        assertThat(codes).containsExactly(code);
    }

    /** Six sheets reach one supervisor together, who gives each 4 min: the fourth has waited longer than 12 min (counted by hand). */
    @Test
    void how_long_a_sheet_may_wait_at_a_hold_limits_how_many_one_supervisor_can_release() {
        Path content = ChangedContent.of(sound, PLANS.resolve("hold-at-most.txt"), folder.resolve("faulty"));

        assertThat(run("spring", "--content", content.toString())).as(err::toString).isEqualTo(1);
        assertThat(err.toString())
                .contains("PLAN-005", "one supervisor cannot release 6 stations within 12 min", "3 is the most at 4 min each");
    }

    @ParameterizedTest
    @ValueSource(strings = {"PLAN-001", "PLAN-003", "PLAN-005", "PLAN-006", "PLAN-007", "PLAN-008", "PLAN-009"})
    void a_check_tells_it_too_with_the_line_of_the_class(String code) {
        Path content = ChangedContent.of(sound, PLANS.resolve(code + ".txt"), folder.resolve("faulty"));
        new CommandLine(new CheckCommand(DAY)).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(err, true))
                .execute("--content", content.toString());
        assertThat(err.toString()).containsPattern("classes/spring\\.yaml:\\d+:\\d+: (error|warning) " + code + ":");
    }

    @Test
    void an_unknown_class_is_a_wrong_command_and_names_the_classes() {
        assertThat(run("sprung", "--content", sound.toString())).isEqualTo(2);
        assertThat(err.toString()).contains("spring");
        assertThat(run("spring", "--content", "nowhere")).isEqualTo(2);
    }
}
