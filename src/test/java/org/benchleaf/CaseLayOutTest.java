package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.tuple;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.CaseLayOut;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.model.BenchNeed;
import org.benchleaf.model.BenchNote;
import org.benchleaf.model.Library;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.LibraryReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** What a case of the demo has laid out, held against its file as it is written: from each step to the list, and back. */
class CaseLayOutTest {

    /** The keys under which a step names what it uses. */
    private static final Set<String> NAMING = Set.of("of", "tool", "tools", "under", "between", "blotter", "tissue", "with",
            "materials", "uses");

    private static final Pattern LAID = Pattern.compile("\\b(blotter|felt|web)s?\\b");

    private static final Library LIBRARY = LibraryChecker.check(LibraryReader.read(Path.of("content"))).library();

    private static List<LaidOut> list(String id) {
        return CaseLayOut.of(DemoSite.worked(id, LIBRARY), LIBRARY);
    }

    private static Map<?, ?> front(String id) throws IOException {
        String text = Files.readString(Path.of("content/cases", id, "case.md"), StandardCharsets.UTF_8);
        return new Yaml(new SafeConstructor(new LoaderOptions())).load(text.split("(?m)^---$")[1]);
    }

    /** The steps of a case file, read without the program. */
    private static List<Map<?, ?>> steps(String id) throws IOException {
        List<Map<?, ?>> steps = new ArrayList<>();
        ((List<?>) front(id).get("steps")).forEach(step -> steps.add((Map<?, ?>) step));
        return steps;
    }

    private static Map<?, ?> solutions(String id) throws IOException {
        return front(id).get("solutions") instanceof Map<?, ?> solutions ? solutions : Map.of();
    }

    /** The materials that a step names, in its parts too. */
    private static Set<String> named(Map<?, ?> step) {
        Set<String> ids = new TreeSet<>();
        step.forEach((key, value) -> {
            if (value instanceof Map<?, ?> part) {
                ids.addAll(named(part));
            } else if (NAMING.contains(key)) {
                texts(value).forEach(ids::add);
            }
        });
        ids.retainAll(LIBRARY.materials().keySet());
        return ids;
    }

    private static Stream<String> texts(Object value) {
        return value instanceof Collection<?> list ? list.stream().map(String::valueOf) : Stream.of(String.valueOf(value));
    }

    /** The most weights of each mass that one step lays on. */
    private static Map<String, Integer> weights(List<Map<?, ?>> steps) {
        Map<String, Integer> most = new TreeMap<>();
        steps.stream().map(step -> step.get("press")).filter(Map.class::isInstance).map(press -> (Map<?, ?>) press)
                .forEach(press -> most.merge((String) press.get("mass"), press.get("weights") == null ? 1
                        : (Integer) press.get("weights"), Math::max));
        return most;
    }

    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void what_a_step_names_is_laid_out_and_nothing_else(String id) throws IOException {
        Map<String, Set<String>> told = new TreeMap<>();
        list(id).stream().filter(item -> item.kind() == Kind.MATERIAL).forEach(item -> told.computeIfAbsent(item.id(),
                any -> new TreeSet<>()).addAll(item.steps()));
        Map<String, Set<String>> named = new TreeMap<>();
        steps(id).forEach(step -> named(step).forEach(thing -> named.computeIfAbsent(thing, any -> new TreeSet<>())
                .add((String) step.get("id"))));
        assertThat(told).isEqualTo(named).isNotEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void weights_are_laid_out_as_many_as_one_step_needs_at_once(String id) throws IOException {
        Map<String, Integer> told = new TreeMap<>();
        list(id).stream().filter(item -> item.kind() == Kind.WEIGHT).forEach(item ->
                told.put(item.id(), (int) item.all().orElseThrow().value()));
        assertThat(told).isEqualTo(weights(steps(id)));
    }

    /** As the case files tell it: a bath of 25 mm in the medium tray, a stock added by the meter, a press on the whole sheet. */
    @Test
    void trays_boards_pipettes_and_the_meter_are_laid_out() {
        assertThat(list("tide-table")).filteredOn(item -> item.kind() == Kind.VESSEL || item.kind() == Kind.BENCH)
                .extracting(LaidOut::id, LaidOut::steps).containsExactly(
                        tuple("medium tray", List.of("wash")), tuple("board", List.of("dry")),
                        tuple("5 mL graduated pipette, class B", List.of("wash")), tuple("meter", List.of("wash")),
                        tuple("small beaker", List.of("wash")),
                        tuple("paste brush", List.of("mend")), tuple("fine water brush", List.of("mend")),
                        tuple("tweezers", List.of("mend")), tuple("bone folder", List.of("mend")),
                        tuple("heated spatula", List.of("fix-stamp")), tuple("scalpel", List.of("mend")),
                        tuple("fine pipette", List.of("tests", "test-again")));
        assertThat(list("lock-plan")).filteredOn(item -> item.kind() == Kind.BENCH).extracting(LaidOut::id).containsExactly("board");
        assertThat(list("ferry-letter")).noneMatch(item -> item.mark().isPresent() || item.kind() == Kind.BENCH);
    }

    /** From the work of each step and the making of what it uses to the list, and back; the demo names no tool in the place of one. */
    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void what_work_needs_without_a_word_of_the_case_is_laid_out_and_nothing_else(String id) throws IOException {
        Set<String> names = WrittenNeeds.rows().stream().map(row -> (String) row.get("name")).collect(Collectors.toSet());
        Map<String, Set<String>> told = new TreeMap<>();
        list(id).stream().filter(item -> names.contains(item.id())).forEach(item -> told.put(item.id(), new TreeSet<>(item.steps())));
        assertThat(told).isEqualTo(WrittenNeeds.of(steps(id), solutions(id))).isNotEmpty();
    }

    @Test
    void every_work_that_the_table_of_needs_names_is_one_that_a_case_or_a_class_can_have() throws IOException {
        Set<String> known = new TreeSet<>(BenchNeed.OWN_WORDS);
        known.addAll(BenchNote.OWN_WORDS);
        Stream.of(StepKind.values()).map(StepKind::word).forEach(known::add);
        known.addAll(List.of("bath", "mend", "support", "press", "blotters", "weighing", "mist", "chamber", "volatile wax"));
        assertThat(WrittenNeeds.rows()).allSatisfy(row -> assertThat(known).containsAll(texts(row.get("for")).toList()));
    }

    /**
     * By hand, tide table: 6 stacks of a blotter on each face are 12; one web on each face in the bath and one in the press, which are
     * cut to the carrier (412 and 298 mm with 30 mm on each side) and to the blotter (600 by 480 mm); 3 weights of 100 by 150 mm with
     * one piece under and one over the sheet at each are 6; strips are 8 mm wide and at most 40 mm long.
     */
    @ParameterizedTest
    @ValueSource(strings = {"blotter-300, 12, 600, 480", "blotter-300, 6, 100, 150", "polyester-web, 2, 472, 358",
        "polyester-web, 2, 600, 480", "polyester-web, 6, 100, 150", "polyester-film, 1, 472, 358",
        "felt, 2, 600, 480", "kozo-5, 5, 40, 8", "sprayer, 1"})
    void counts_and_sizes_are_those_of_one_sheet(String row) {
        List<String> wanted = List.of(row.split(", "));
        assertThat(list("tide-table")).filteredOn(item -> item.id().equals(wanted.get(0))).extracting(item -> Stream.concat(
                Stream.of(item.id(), whole(item.all().orElseThrow())), item.size().stream().flatMap(size -> Stream.of(whole(size.height()),
                        whole(size.width())))).toList()).contains(wanted);
    }

    /** A number without its unit: a count, or millimetres. */
    private static String whole(Quantity quantity) {
        return String.valueOf(Math.round(quantity.in(quantity.dimension() == Dimension.LENGTH ? Unit.MILLIMETRE : Unit.COUNT)));
    }

    /** What a step says to lay under or over the sheet is what its parts name. */
    @ParameterizedTest
    @ValueSource(strings = {"ferry-letter", "flood-poster", "lock-plan", "parish-map", "tide-table"})
    void a_step_lays_the_blotter_felt_or_web_of_which_its_words_tell(String id) throws IOException {
        for (Map<?, ?> step : steps(id)) {
            Set<String> kinds = named(step).stream().map(LIBRARY.materials()::get).map(one -> one.kind().equals("absorbent") ? "blotter"
                    : one.name().contains("felt") ? "felt" : one.name().contains("web") ? "web" : one.name()).collect(Collectors.toSet());
            assertThat(LAID.matcher((String) step.get("do")).results().map(found -> found.group(1)).toList()).as(id + ", " + step.get("id"))
                    .isSubsetOf(kinds);
        }
    }
}
