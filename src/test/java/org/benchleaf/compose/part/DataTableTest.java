package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchleaf.page.Table;
import org.junit.jupiter.api.Test;

class DataTableTest {

    private static final DataTable TABLE = new DataTable("waves", "Waves", List.of(
            new DataTable.Column("Place", "place", "", false), new DataTable.Column("Change", "change", "mm", true)),
            List.of(List.of(DataTable.Cell.words("=1+1"), DataTable.Cell.number("−1.5")),
                    List.of(DataTable.Cell.words("head, \"left\""), DataTable.Cell.missing("not read")),
                    List.of(DataTable.Cell.words("-4"), DataTable.Cell.number("12\u202F000"))));

    /** RFC 4180 for commas and quotes; a leading apostrophe keeps a spreadsheet from running a cell (OWASP). */
    @Test
    void the_file_quotes_commas_and_guards_what_a_spreadsheet_would_run() {
        assertThat(TABLE.csv()).isEqualTo("place,change\r\n'=1+1,-1.5\r\n\"head, \"\"left\"\"\",\r\n-4,12000\r\n");
    }

    @Test
    void the_page_tells_the_unit_in_the_header_and_why_a_cell_is_empty() {
        Table table = TABLE.table(Optional.empty());
        assertThat(table.columns().get(1).header()).isEqualTo("Change (mm)");
        assertThat(table.rows().get(1).get(1).plain()).isEqualTo("not read");
    }
}
