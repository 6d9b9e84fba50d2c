package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.derive.Deriver;
import org.benchleaf.model.Library;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Clause;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Holds the figures that follow from a change against sums by hand, and against a case file that says the same. */
class FigureChainTest {

    private static final Path CONTENT = Path.of("content");
    private static final Library LIBRARY = LibraryChecker.check(LibraryReader.read(CONTENT)).library();
    private static final Calculations CALCULATIONS = new Calculations(MethodReader.read());

    /** The water that a sheet holds is worked out as a mass and goes on as a volume. */
    private static final List<String> MASS_AS_VOLUME = List.of("wash.left");

    private static Map<String, Figure> figures(Path content, String name) {
        TreatmentCase source = CaseChecker.check(CaseReader.read(content, content.resolve("cases").resolve(name)), LIBRARY,
                LocalDate.of(2026, 6, 1), new Deriver(LIBRARY)::ph).treatment().orElseThrow();
        return new Deriver(LIBRARY).derive(source, List.of()).worked().figures();
    }

    private static Map<String, FigureChain.Reworked> follow(Map<String, Figure> figures, String... change) {
        return FigureChain.read(FigureChain.text(figures.values(), figure -> ""), CALCULATIONS).follow(List.of(Arrays.asList(change)))
                .stream().collect(Collectors.toMap(FigureChain.Reworked::id, Function.identity()));
    }

    /** Expected, by hand: a tray of 55 · 42 cm holds 11.55 L at a depth of 5 cm, and three of them 34.65 L. */
    @Test
    void another_depth_changes_the_bath_all_baths_and_what_is_made_for_them() {
        Map<String, FigureChain.Reworked> now = follow(figures(CONTENT, "tide-table"), "wash.tray-volume",
                "depth of the water", "50 mm");
        assertThat(now.get("wash.tray-volume").value().orElseThrow().in(Unit.LITRE)).isCloseTo(11.55, within(1e-9));
        assertThat(now.get("wash.tray-total").value().orElseThrow().in(Unit.LITRE)).isCloseTo(34.65, within(1e-9));
        assertThat(now.get("bath.batch").value().orElseThrow().in(Unit.LITRE)).isBetween(11.55, 12.1);
        assertThat(now.get("bath.batch").causes().stream().map(Clause::english)).containsExactly("depth of the water 50 mm");
        assertThat(now.keySet()).doesNotContain("relax.amount", "wash.sheet-mass", "dry.pressure");
    }

    /** What follows is what the program works out where the case file says so. */
    @Test
    void every_figure_that_follows_is_that_of_a_case_file_which_says_the_same(@TempDir Path folder) throws IOException {
        copy(CONTENT, folder);
        Path file = folder.resolve("cases/tide-table/case.md");
        String text = Files.readString(file);
        assertThat(text.split("depth: 25 mm", -1)).hasSize(2);
        Files.writeString(file, text.replace("depth: 25 mm", "depth: 30 mm"));
        Map<String, Figure> before = figures(CONTENT, "tide-table");
        Map<String, Figure> after = figures(folder, "tide-table");
        Map<String, FigureChain.Reworked> now = follow(before, "wash.tray-volume", "depth of the water", "30 mm");
        List<String> changed = before.keySet().stream().filter(after::containsKey)
                .filter(id -> !after.get(id).value().equals(before.get(id).value())).toList();
        assertThat(changed).hasSizeGreaterThan(8);
        assertThat(now.keySet()).as("nothing that changes is passed over").containsAll(changed);
        now.values().stream().filter(each -> each.value().isPresent()).forEach(each -> {
            Quantity there = after.get(each.id()).value();
            assertThat(each.value().get().in(there.unit())).as(each.id()).isCloseTo(there.value(), within(1e-9 * there.value()));
            assertThat(each.value().get().highIn(there.unit())).as(each.id()).isCloseTo(there.high(), within(1e-9 * there.high()));
        });
        assertThat(now.values().stream().filter(each -> each.value().isEmpty()).map(FigureChain.Reworked::id))
                .isSubsetOf(MASS_AS_VOLUME);
    }

    @Test
    void what_is_outside_the_range_or_unreadable_leaves_no_number_in_all_that_follows() {
        Map<String, Figure> figures = figures(CONTENT, "tide-table");
        Map<String, FigureChain.Reworked> backwards = follow(figures, "wash.tray-volume", "depth of the water", "-5 mm");
        assertThat(backwards.get("wash.tray-volume").value()).isEmpty();
        assertThat(backwards.get("wash.tray-volume").why().english()).contains("depth").contains("-5 mm");
        assertThat(backwards.get("bath.batch").value()).isEmpty();
        Map<String, FigureChain.Reworked> bare = follow(figures, "wash.tray-volume", "depth of the water", "50");
        assertThat(bare.get("wash.tray-volume").why().english()).contains("has no unit");
    }

    @Test
    void every_figure_of_the_demo_can_be_followed_or_says_that_it_cannot() {
        List<String> lost = Stream.of("tide-table", "ferry-letter", "flood-poster", "lock-plan", "parish-map").flatMap(name -> {
            Map<String, Figure> figures = figures(CONTENT, name);
            return figures.values().stream().filter(figure -> !figure.output().isEmpty()
                    && figure.key().owner() != FigureKey.Owner.RESULT && figure.key().owner() != FigureKey.Owner.TIMELINE)
                    .filter(figure -> figure.inputs().get(0).values().size() == 1)
                    .filter(figure -> follow(figures, figure.id(), figure.inputs().get(0).label(),
                            figure.inputs().get(0).text()).get(figure.id()).value().isEmpty())
                    .map(figure -> name + " " + figure.id());
        }).toList();
        assertThat(lost).isSubsetOf(MASS_AS_VOLUME.stream().map("tide-table "::concat).toList());
    }

    @Test
    void a_figure_or_input_that_is_not_there_is_refused() {
        Map<String, Figure> figures = figures(CONTENT, "tide-table");
        assertThatThrownBy(() -> follow(figures, "wash.none", "depth of the water", "5 mm")).hasMessageContaining("wash.none");
        assertThatThrownBy(() -> follow(figures, "wash.volume", "colour", "5 mm")).hasMessageContaining("colour");
    }

    private static void copy(Path from, Path to) throws IOException {
        try (Stream<Path> files = Files.walk(from)) {
            files.forEach(file -> {
                try {
                    Path there = to.resolve(from.relativize(file).toString());
                    if (!there.equals(to)) {
                        Files.copy(file, there);
                    }
                } catch (IOException broken) {
                    throw new UncheckedIOException(broken);
                }
            });
        }
    }
}
