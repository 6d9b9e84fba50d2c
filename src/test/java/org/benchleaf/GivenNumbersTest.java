package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Deriver;
import org.benchleaf.derive.WorkedCase;
import org.benchleaf.derive.classes.ClassPlan;
import org.benchleaf.derive.classes.ClassSchedule;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.time.Timeline;
import org.benchleaf.page.Page;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.LibraryReader;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * Every number with a unit, and every date, on the pages of a case is one that its author wrote, one of the studio's or the
 * reference's, or a rounding of one that was worked out: no page tells a size, a duration or a digit that nobody gave.
 *
 * <p>Left out are drawings and formulas, and the shares by which liquids are classified, which WorkedMixturesTest holds against
 * the regulation.
 */
class GivenNumbersTest {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 25);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());
    private static final Map<String, Unit> UNITS = units();
    private static final String NUMBER = "[+\u2212-]?\\d[\\d\u202F]*(?:\\.\\d+)?";
    private static final Pattern TOLD = Pattern.compile("(?<![\\w.])(" + NUMBER + ")(?:(?: ?\u2013 ?| to | \u00B1 | \u2026 )("
            + NUMBER + "))?[ \u202F\u00A0](" + UNITS.keySet().stream().sorted(Comparator.comparing(String::length).reversed())
                    .map(Pattern::quote).collect(Collectors.joining("|")) + ")(?![\\w\u00B2\u00B3/])");
    private static final Pattern DATE = Pattern.compile("\\b\\d{1,2} (?:January|February|March|April|May|June|July|August"
            + "|September|October|November|December) \\d{4}\\b");
    /** A number of readings, as pages tell it. */
    private static final Pattern COUNT = Pattern.compile("\\bn = (\\d++)");
    private static final DateTimeFormatter LONG_DATE = DateTimeFormatter.ofPattern("d MMMM yyyy", Locale.UK);
    private static final String NO_NUMBERS_OF_THE_CASE =
            "script, style, svg, math, button, label, .hazard, [class*=hazard], .strip__hazards";

    /** The clock of the step sheet is told to the quarter of an hour beyond three hours. */
    private static final double QUARTER = 15;

    /** Not the pages of methods, rules and of the format, which tell examples. */
    private static final String OF_CASES = "index\\.html|cases\\.html|(?:browse|evidence|materials|compared)/.*";

    @TempDir
    private Path folder;

    /** What may be told: amounts in the coherent unit of their dimension, days, and numbers of readings. */
    private static final class Given {
        private final Map<Dimension, Set<Double>> amounts = new EnumMap<>(Dimension.class);
        private final Set<String> days = new TreeSet<>();
        private final Set<Integer> counts = new TreeSet<>();

        private void text(String text) {
            told(text, new ArrayList<>()).forEach(token -> token.each(this::put));
            Pattern.compile("\\d{4}-\\d{2}-\\d{2}").matcher(text).results().map(MatchResult::group).forEach(days::add);
        }

        private void day(LocalDateTime time) {
            days.add(time.toLocalDate().toString());
        }

        /** How many values lists of a case have, and the whole numbers that it tells. */
        private void counts(Object written) {
            if (written instanceof Map<?, ?> map) {
                map.values().forEach(this::counts);
            } else if (written instanceof Collection<?> list) {
                counts.add(list.size());
                list.forEach(this::counts);
            } else if (written instanceof Integer number) {
                counts.add(number);
            }
        }

        private void add(Given other) {
            other.amounts.forEach((dimension, numbers) -> amounts.computeIfAbsent(dimension, any -> new TreeSet<>()).addAll(numbers));
            days.addAll(other.days);
            counts.addAll(other.counts);
        }

        private void quantity(Quantity quantity) {
            for (double end : new double[] {quantity.value(), quantity.low(), quantity.high(), quantity.halfWidth()}) {
                put(end, quantity.unit());
            }
            /* An uncertainty is told with one or two of its digits: JCGM 100:2008, 7.2.6. */
            for (int digits = 1; digits <= 2; digits++) {
                put(new BigDecimal(quantity.halfWidth()).round(new MathContext(digits)).doubleValue(), quantity.unit());
            }
        }

        private void put(double number, Unit unit) {
            amounts.computeIfAbsent(unit.dimension(), any -> new TreeSet<>()).add(Math.abs(number) * unit.factor());
        }

        private boolean holds(double number, int decimals, Unit unit) {
            double half = 0.5001 * Math.pow(10, -decimals) * unit.factor();
            return amounts.getOrDefault(unit.dimension(), Set.of()).stream()
                    .anyMatch(one -> Math.abs(one - Math.abs(number) * unit.factor()) <= half);
        }
    }

    private interface Taker {
        void take(double number, Unit unit);
    }

    /** One number or range of a text, or one time in two units. */
    private record Token(String text, List<String> numbers, Unit unit, double more) {

        private void each(Taker taker) {
            numbers.forEach(number -> taker.take(value(number) + more, unit));
        }

        private boolean isIn(Given given) {
            return numbers.stream().allMatch(number -> given.holds(value(number) + more, decimals(number), unit));
        }

        private static double value(String number) {
            return Double.parseDouble(number.replace("\u202F", "").replace('\u2212', '-'));
        }

        private static int decimals(String number) {
            int point = number.indexOf('.');
            return point < 0 ? 0 : number.length() - point - 1;
        }
    }

    private static Map<String, Unit> units() {
        Map<String, Unit> units = Stream.of(Unit.values()).filter(unit -> !unit.symbol().isEmpty() && unit != Unit.COUNT
                && unit != Unit.PH).collect(Collectors.toMap(Unit::symbol, unit -> unit));
        units.put("weeks", Unit.WEEK);
        return units;
    }

    /** The numbers of a text; "3 d 8 h" is one time, told to the smaller unit. */
    private static List<Token> told(String text, List<Token> tokens) {
        int end = -1;
        for (MatchResult found : TOLD.matcher(text).results().toList()) {
            Unit unit = UNITS.get(found.group(3));
            List<String> numbers = Stream.of(found.group(1), found.group(2)).filter(one -> one != null).toList();
            Optional<Token> larger = tokens.isEmpty() || found.start() != end + 1 || numbers.size() > 1
                    || unit.dimension() != Dimension.TIME ? Optional.empty() : Optional.of(tokens.get(tokens.size() - 1))
                    .filter(token -> token.unit().dimension() == Dimension.TIME && token.unit().factor() > unit.factor()
                            && token.numbers().size() == 1);
            larger.ifPresent(tokens::remove);
            double more = larger.map(token -> (Token.value(token.numbers().get(0)) + token.more()) * token.unit().factor()
                    / unit.factor()).orElse(0.0);
            tokens.add(new Token(larger.map(Token::text).orElse("") + " " + found.group(), numbers, unit, more));
            end = found.end();
        }
        return tokens;
    }

    /** The numbers and days of a page that nobody gave. */
    private static List<String> invented(Document page, Given given) {
        page.select(NO_NUMBERS_OF_THE_CASE).remove();
        page.select("td, th, li, p, dt, dd, h1, h2, h3, h4, summary, div, span").append(" | ");
        String text = page.text();
        List<String> invented = told(text, new ArrayList<>()).stream().filter(token -> !token.isIn(given))
                .map(token -> context(text, token.text().strip())).collect(Collectors.toCollection(ArrayList::new));
        DATE.matcher(text).results().map(MatchResult::group)
                .filter(day -> !given.days.contains(LocalDate.parse(day, LONG_DATE).toString())).forEach(invented::add);
        COUNT.matcher(text).results().filter(count -> !given.counts.contains(Integer.valueOf(count.group(1))))
                .map(count -> context(text, count.group())).forEach(invented::add);
        return invented;
    }

    private static String context(String text, String token) {
        int at = Math.max(0, text.indexOf(token));
        return token + " in: " + text.substring(Math.max(0, at - 50), Math.min(text.length(), at + 40));
    }

    /** What a class adds: its figures, its times, how it hands out, and the days of its plan. */
    private static void addClass(Given given, ClassPlan plan) {
        plan.figures().values().forEach(figure -> add(given, figure));
        times(plan.timeline()).forEach(given::quantity);
        plan.duties().forEach(duty -> {
            given.put((int) duty.minutes(), Unit.MINUTE);
            given.quantity(duty.waits());
        });
        plan.starts().forEach(start -> {
            given.quantity(start.handsOn());
            Stream.of(start.begin(), start.readyFor()).forEach(given::day);
        });
        plan.supplies().vessels().forEach(vessel -> Stream.of(vessel.holds(), vessel.each(), vessel.inStation())
                .flatMap(Optional::stream).forEach(given::quantity));
        Stream.concat(plan.supplies().layOut().stream(), plan.supplies().practice().stream()).forEach(item ->
                Stream.of(item.station(), item.all()).flatMap(Optional::stream).forEach(given::quantity));
        plan.supplies().orders().forEach(order -> {
            Stream.concat(Stream.of(order.inHouse()), order.orderBy().stream()).forEach(day -> given.days.add(day.toString()));
            Stream.of(order.missing(), order.packs(), order.left()).flatMap(Optional::stream).forEach(figure -> add(given, figure));
            add(given, order.needed());
        });
        plan.supplies().beside().forEach(bought -> bought.item().all().ifPresent(given::quantity));
        plan.supplies().beside().forEach(bought -> Stream.concat(Stream.of(bought.inHouse()), bought.orderBy().stream()).forEach(day ->
                given.days.add(day.toString())));
        plan.supplies().waste().forEach(waste -> add(given, waste.volume()));
        plan.supplies().loads().forEach(load -> add(given, load.most()));
        plan.supplies().air()
                .forEach(air -> Stream.of(air.one(), air.peak(), air.atOnce()).flatMap(Optional::stream)
                        .forEach(figure -> add(given, figure)));
        plan.schedule().ifPresent(schedule -> addSchedule(given, schedule));
    }

    private static void addSchedule(Given given, ClassSchedule schedule) {
        given.put(schedule.timetable().end(), Unit.MINUTE);
        given.put(schedule.floor().minutes(), Unit.MINUTE);
        ScheduleReading reading = new ScheduleReading(schedule);
        reading.turns().forEach(turn -> {
            given.day(turn.from());
            given.day(turn.to());
            given.put(turn.end() - turn.start(), Unit.MINUTE);
        });
        reading.waits(String::valueOf).forEach(wait -> given.put(wait.minutes(), Unit.MINUTE));
    }

    private static void add(Given given, Figure figure) {
        given.quantity(figure.value());
        figure.inputs().forEach(input -> {
            input.values().forEach(given::quantity);
            given.text(input.text());
        });
        figure.notes().forEach(given::text);
    }

    private static Given given(Path content, Path folder, WorkedCase worked, CheckedLibrary library) throws IOException {
        Given given = new Given();
        for (Path from : List.of(folder, content.resolve("studio.yaml"), content.resolve("materials"), content.resolve("classes"),
                content.resolve("glossary.yaml"), Path.of("src/main/resources/reference"), Path.of("src/main/resources/words"))) {
            try (Stream<Path> files = Files.exists(from) ? Files.walk(from) : Stream.empty()) {
                for (Path file : files.filter(one -> one.toString().matches(".*\\.(md|yaml|csv|properties)")).toList()) {
                    given.text(Files.readString(file));
                }
            }
        }
        library.library().formulary().table("flash-points").rows().forEach(row -> row.values().stream()
                .filter(cell -> cell.matches("\\d+(\\.\\d+)?")).forEach(cell -> given.put(Double.parseDouble(cell), Unit.CELSIUS)));
        worked.figures().values().forEach(figure -> add(given, figure));
        worked.classes().forEach(plan -> addClass(given, plan));
        given.counts(new Yaml(new SafeConstructor(new LoaderOptions())).load(
                Files.readString(folder.resolve("case.md")).split("(?m)^---$")[1]));
        times(worked.timeline()).forEach(given::quantity);
        worked.timeline().steps().forEach(step -> Stream.of(step.start().lowIn(Unit.MINUTE), step.start().highIn(Unit.MINUTE))
                .forEach(time -> given.put(Math.round(time / QUARTER) * QUARTER, Unit.MINUTE)));
        for (Preparation preparation : worked.preparations()) {
            Stream.of(preparation.beginBefore(), preparation.handsOn()).flatMap(Optional::stream).forEach(given::quantity);
            preparation.measures().forEach(measure -> Stream.of(Optional.of(measure.exact()), Optional.of(measure.measured()),
                    measure.within(), measure.coarse()).flatMap(Optional::stream).forEach(given::quantity));
        }
        return given;
    }

    /** The times of steps whose time is known; those of others are filled with nothing, which no page may tell. */
    private static Stream<Quantity> times(Timeline timeline) {
        return Stream.concat(Stream.of(timeline.total(), timeline.handsOn()), timeline.steps().stream()
                .flatMap(step -> Stream.concat(step.known() ? Stream.of(step.start(), step.end(), step.takes(), step.handsOn(),
                        step.slack()) : Stream.of(step.start()), step.moments().stream().map(Timeline.Moment::at))))
                .filter(time -> time.high() > 0);
    }

    /** On pages of cases, of their classes and of the site; of the last, those that tell of cases. */
    private static List<String> invented(Path content) throws IOException {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        List<String> invented = new ArrayList<>();
        List<CaseCard> cards = new ArrayList<>();
        Given all = new Given();
        int pages = 0;
        for (Path folder : CaseReader.folders(content)) {
            Checked checked = WholeLine.checked(content, folder, library);
            WorkedCase worked = new Deriver(library.library()).derive(checked.treatment().orElseThrow(), checked.findings()).worked();
            Given given = given(content, folder, worked, library);
            given.days.add(DAY.toString());
            all.add(given);
            CasePages made = PageComposer.compose(worked, library.library(), Clearance.on(DAY, worked.source().publication(),
                    Audience.EVERYBODY));
            cards.add(made.card());
            pages += look(made.pages(), "cases/[^/]+/(?:index|steps|preparation|results)\\.html", given, invented);
            assertThat(look(made.pages(), "cases/[^/]+/class-[a-z-]+\\.html", given, invented) >= worked.classes().stream()
                    .filter(plan -> plan.source().papers().published()).count()).as("pages of classes").isTrue();
        }
        int ofSite = look(SiteComposer.compose(library.library(), cards, CheckValueReader.read(library.library().formulary()),
                AuthorGuideReader.read(), Audience.EVERYBODY).pages(), OF_CASES, all, invented);
        assertThat(pages).isGreaterThanOrEqualTo(4);
        assertThat(ofSite).isGreaterThanOrEqualTo(4);
        return invented;
    }

    private static int look(List<Page> pages, String paths, Given given, List<String> invented) {
        List<Page> looked = pages.stream().filter(page -> page.path().matches(paths)).toList();
        looked.forEach(page -> invented(Jsoup.parse(PUBLISHER.publish(page).text()), given)
                .forEach(one -> invented.add(page.path() + ": " + one)));
        return looked.size();
    }

    @ParameterizedTest
    @ValueSource(strings = {"content", "src/test/resources/sound/base"})
    void no_page_tells_a_number_that_nobody_gave(String content) throws IOException {
        assertThat(invented(Path.of(content))).isEmpty();
    }

    @Test
    void no_page_of_a_case_without_times_and_size_tells_any() throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.of(Path.of("src/test/resources/sound/base"), Path.of("src/test/resources/faulty/FIG-024/change.txt"), content);
        Path file = content.resolve("cases/tide/case.md");
        Files.writeString(file, Files.readString(file).replaceAll("    takes: .*\n", "    takes: not known\n")
                .replaceAll(", each: \\d+ min|      each: \\d+ min\n", "").replaceAll("    hands-on: .*\n", ""));
        assertThat(invented(content)).isEmpty();
    }

    @Test
    void no_page_of_a_published_treatment_tells_a_number_that_its_publication_does_not_give() throws IOException {
        Path content = folder.resolve("published");
        ChangedContent.copy(Path.of("src/test/resources/published"), content);
        for (Path each : CaseReader.folders(content)) {
            Path file = each.resolve("case.md");
            Files.writeString(file, Files.readString(file).replaceAll("source licence: [a-z ]++", "source licence: CC-BY-4.0"));
        }
        assertThat(invented(content)).isEmpty();
    }

    @Test
    void a_number_that_nobody_gave_is_found() {
        Given given = new Given();
        given.text("depth: 25 mm, takes: 15 min to 30 min, on: 2026-03-17");
        Document page = Jsoup.parse("<p>25 mm deep, 15\u201330\u202Fmin, on 17 March 2026; 37.3\u202Fmm, 1 h 7 min, 0\u202Fmin, 18 March "
                + "2026</p>");
        assertThat(invented(page, given)).hasSize(4).anyMatch(one -> one.startsWith("37.3")).anyMatch(one -> one.startsWith("1 h 7 min"))
                .anyMatch(one -> one.startsWith("0")).contains("18 March 2026");
    }

    @Test
    void a_number_of_readings_that_nobody_gave_is_found() {
        Given given = new Given();
        given.counts(Map.of("before", List.of(4.4, 4.5, 4.3), "n", 7));
        assertThat(invented(Jsoup.parse("<p>n = 3, n = 7 and n = 1</p>"), given)).singleElement().asString().startsWith("n = 1");
    }
}
