package org.benchleaf.publish;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.DemoSite;
import org.junit.jupiter.api.Test;

/** Every table of the demo is valid by its description (CSV on the Web). */
class CsvwTest {

    private static final String TABLE = "a b,n\r\n\"x, y\",1.5\r\nz,\r\n";
    private static final String DESCRIPTION = """
            {"@context": ["http://www.w3.org/ns/csvw", {"@language": "en"}], "url": "t.csv", "dc:title": "T",
             "tableSchema": {"columns": [{"name": "a_b", "titles": "a b", "datatype": "string"},
                                         {"name": "n", "titles": "n", "datatype": "number"}]}}""";

    @Test
    void every_table_is_valid_by_its_description() {
        Map<String, SiteFile> files = DemoSite.made().files().stream().collect(Collectors.toMap(SiteFile::path, file -> file));
        List<String> tables = files.keySet().stream().filter(path -> path.endsWith(".csv")).sorted().toList();
        List<String> findings = new ArrayList<>();
        for (String table : tables) {
            assertThat(files).containsKey(table + "-metadata.json");
            findings.addAll(CsvwChecker.findings(table.substring(table.lastIndexOf('/') + 1), files.get(table).text(),
                    files.get(table + "-metadata.json").text()));
        }
        assertThat(tables).hasSizeGreaterThan(20);
        assertThat(findings).isEmpty();
    }

    @Test
    void the_validator_accepts_a_sound_table() {
        assertThat(CsvwChecker.findings("t.csv", TABLE, DESCRIPTION)).isEmpty();
    }

    @Test
    void the_validator_finds_each_planted_fault() {
        assertThat(faults("\"name\": \"n\"", "\"name\": \"a_b\"")).hasSize(1);
        assertThat(faults("\"name\": \"n\"", "\"name\": \"_n\"")).hasSize(1);
        assertThat(faults("\"titles\": \"n\"", "\"titles\": \"m\"")).hasSize(1);
        assertThat(faults("\"number\"", "\"integer\"")).hasSize(1);
        assertThat(faults("\"number\"", "\"decimals\"")).hasSize(1);
        assertThat(faults("t.csv", "u.csv")).hasSize(1);
        assertThat(faults("dc:title", "title")).hasSize(1);
        assertThat(faults("ns/csvw", "ns/other")).hasSize(1);
        assertThat(CsvwChecker.findings("t.csv", TABLE.replace("1.5", "1,5"), DESCRIPTION)).hasSize(1);
        assertThat(CsvwChecker.findings("t.csv", TABLE.replace("1.5", "about 1"), DESCRIPTION)).hasSize(1);
    }

    private static List<String> faults(String sound, String faulty) {
        assertThat(DESCRIPTION).contains(sound);
        return CsvwChecker.findings("t.csv", TABLE, DESCRIPTION.replace(sound, faulty));
    }
}
