package org.benchleaf.compose.part;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.benchleaf.page.Table;
import org.benchleaf.words.Words;
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

    @Test
    void a_file_says_what_a_row_is_and_in_which_units_its_numbers_stand() {
        Words words = Words.in("en");
        DataTable baths = new DataTable("baths", "Baths", List.of(DataTable.Column.numbers("Bath", "bath"),
                DataTable.Column.numbers("pH, used", "pH used"), new DataTable.Column("Conductivity", "conductivity", "µS/cm", true),
                DataTable.Column.words("Colour", "colour")), TABLE.rows());

        assertThat(TABLE.about(words)).isEqualTo("One row for each place. Numbers that have a unit are in mm.");
        assertThat(baths.about(words)).isEqualTo("One row for each bath. Without unit: pH, used. In µS/cm: Conductivity.");
        assertThat(TABLE.metadata("en", TABLE.about(words), Optional.empty(), Optional.empty()))
                .contains("\"dc:description\":\"One row for each place. Numbers that have a unit are in mm.\"");
    }

    /** What was told in words and no number stands before and after in a single row, which no column names. */
    @Test
    void a_table_of_one_row_names_no_column_for_it() {
        DataTable told = new DataTable("told", "Told", List.of(DataTable.Column.words("Before", "before"),
                DataTable.Column.words("After", "after")), List.of(List.of(DataTable.Cell.words("acid"), DataTable.Cell.words("neutral"))));
        assertThat(told.about(Words.in("en"))).isEqualTo("One row.");
    }
}
