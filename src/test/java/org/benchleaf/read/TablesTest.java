package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/** Holds the tables that come with the program against what others published. */
class TablesTest {

    @ParameterizedTest(name = "{0} {1}: {2}")
    @CsvFileSource(resources = "/check-values/tables.csv", numLinesToSkip = 2)
    void a_table_has_the_number_that_others_published(String id, String table, String path, String expected,
            String source, String status) {
        String file = "/reference/" + table;
        List<String> steps = Arrays.asList(path.split("/"));
        assertThat(table.endsWith(".csv") ? cell(file, steps) : entry(file, steps)).as("%s, %s [%s]", id, source, status)
                .isEqualTo(expected);
    }

    /** The first column after those that name the row: a tolerance, a flash point. */
    private static String cell(String file, List<String> names) {
        return CsvTable.parse(file, OwnFile.text(file)).rows().stream().map(row -> List.copyOf(row.values()))
                .filter(cells -> cells.subList(0, names.size()).equals(names)).findFirst().orElseThrow()
                .get(names.size());
    }

    private static String entry(String file, List<String> keys) {
        Object found = new Yaml(new SafeConstructor(new LoaderOptions())).load(OwnFile.text(file));
        for (String key : keys) {
            found = found instanceof List<?> classes ? ofStatement(classes, key) : ((Map<?, ?>) found).get(key);
        }
        return found instanceof List<?> classes ? classes.stream().map(one -> hazard((Map<?, ?>) one))
                .collect(Collectors.joining("; ")) : String.valueOf(found);
    }

    private static Object ofStatement(List<?> classes, String statement) {
        return classes.stream().filter(one -> ((Map<?, ?>) one).get("statement").equals(statement)).findFirst()
                .orElseThrow();
    }

    private static String hazard(Map<?, ?> entry) {
        return entry.get("class") + " " + entry.get("statement");
    }
}
