package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.ChangedContent;
import org.benchleaf.command.FiguresCommand;
import org.benchleaf.model.AuthorGuide.CitableFigure;
import org.benchleaf.read.AuthorGuideReader;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

/** The list of figures that a story can cite, held against the names that the program gives and every figure of the cases of the tests. */
class CitableFiguresTest {

    private static final Path RESOURCES = Path.of("src/test/resources");
    private static final List<CitableFigure> LISTED = AuthorGuideReader.read().figures();
    private static final Pattern HOLE = Pattern.compile("<[a-z]+>");
    private static final String OF_STEP = "<step>.";

    @TempDir
    private static Path folder;
    private static final Set<String> FIGURES = new TreeSet<>();

    @BeforeAll
    static void figures_of_every_case() throws IOException {
        List<Path> contents = new ArrayList<>(List.of(Path.of("content"), RESOURCES.resolve("published")));
        for (String change : List.of("kinds/change.txt", "mixtures/three-solvents.txt", "figures/change.txt")) {
            contents.add(ChangedContent.of(RESOURCES.resolve("sound/base"), RESOURCES.resolve(change),
                    folder.resolve(change.substring(0, change.indexOf('/')))));
        }
        for (Path content : contents) {
            try (Stream<Path> cases = Files.list(content.resolve("cases"))) {
                for (Path one : cases.toList()) {
                    FIGURES.addAll(figures(content, one.getFileName().toString()));
                }
            }
        }
        assertThat(FIGURES).hasSizeGreaterThan(200);
    }

    private static List<String> figures(Path content, String name) throws IOException {
        StringWriter out = new StringWriter();
        new CommandLine(new FiguresCommand()).setOut(new PrintWriter(out, true)).setErr(new PrintWriter(new StringWriter()))
                .execute(name, "--format", "json", "--content", content.toString());
        List<String> ids = new ArrayList<>();
        new ObjectMapper().readTree(out.toString()).path("figures").forEach(figure -> ids.add(figure.get("id").asText()));
        return ids;
    }

    private static Pattern pattern(CitableFigure figure) {
        return Pattern.compile(Arrays.stream(HOLE.split(figure.cited(), -1)).map(Pattern::quote)
                .collect(Collectors.joining("[A-Za-z0-9-]+")));
    }

    @Test
    void every_figure_of_every_case_is_listed() {
        assertThat(FIGURES).allMatch(id -> LISTED.stream().anyMatch(one -> pattern(one).matcher(id).matches()));
    }

    /** Those of parts are held below against the names themselves. */
    @Test
    void what_is_listed_for_solutions_results_and_the_whole_is_a_figure_of_some_case() {
        assertThat(LISTED.stream().filter(one -> !one.cited().startsWith(OF_STEP))
                .filter(one -> FIGURES.stream().noneMatch(id -> pattern(one).matcher(id).matches())).map(CitableFigure::cited).toList())
                .isEmpty();
    }

    @Test
    void the_list_names_the_figures_of_each_part_of_a_step() {
        assertThat(LISTED.stream().filter(one -> one.cited().startsWith(OF_STEP)).collect(Collectors.groupingBy(
                one -> one.of().replace("A step with ", ""), Collectors.mapping(one -> one.cited().substring(OF_STEP.length()),
                        Collectors.toList())))).isEqualTo(FigureNames.NAMES);
    }
}
