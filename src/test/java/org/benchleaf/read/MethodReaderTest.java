package org.benchleaf.read;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.StringReader;
import java.util.List;
import java.util.Map;
import javax.xml.parsers.DocumentBuilderFactory;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Method;
import org.junit.jupiter.api.Test;
import org.xml.sax.InputSource;

/** The methods, sources, tables and check values that are part of the program. */
class MethodReaderTest {

    private static final Formulary FORMULARY = MethodReader.read();
    private static final List<String> MATHML = List.of("mrow", "mi", "mn", "mo", "mtext", "mfrac", "msqrt", "msub", "msup",
            "msubsup", "mover", "mtable", "mtr", "mtd");

    @Test
    void every_method_is_complete() {
        assertThat(FORMULARY.methods()).isNotEmpty().allSatisfy(method -> {
            assertThat(method.sources()).as(method.name()).isNotEmpty();
            assertThat(method.inputs()).as(method.name()).isNotEmpty();
            assertThat(method.outputs()).as(method.name()).isNotEmpty();
            assertThat(method.inputs()).extracting(Method.Input::key).doesNotHaveDuplicates();
            assertThat(method.outputs()).extracting(Method.Output::key).doesNotHaveDuplicates();
            assertThat(List.of(method.title(), method.answers(), method.formula(), method.range()))
                    .as(method.name()).noneMatch(String::isBlank);
            assertThat(method.answers()).endsWith("?");
        });
        assertThat(FORMULARY.methods()).extracting(Method::name).doesNotHaveDuplicates();
    }

    @Test
    void an_input_takes_either_words_or_quantities() {
        for (Method method : FORMULARY.methods()) {
            for (Method.Input input : method.inputs()) {
                assertThat(input.words().isEmpty()).as("%s %s", method.name(), input.key())
                        .isNotEqualTo(input.dimensions().isEmpty());
            }
        }
    }

    @Test
    void every_formula_in_mathml_is_well_formed_and_uses_elements_that_browsers_draw() throws Exception {
        for (Method method : FORMULARY.methods()) {
            var document = DocumentBuilderFactory.newInstance().newDocumentBuilder()
                    .parse(new InputSource(new StringReader("<math>" + method.mathml() + "</math>")));
            var elements = document.getElementsByTagName("*");
            for (int k = 1; k < elements.getLength(); k++) {
                assertThat(MATHML).as(method.name()).contains(elements.item(k).getNodeName());
            }
        }
    }

    @Test
    void every_source_says_how_it_was_consulted() {
        assertThat(FORMULARY.sources()).allSatisfy(source -> {
            assertThat(source.status()).isIn("read", "read in part", "secondary", "from memory");
            assertThat(List.of(source.author(), source.title(), source.where())).noneMatch(String::isBlank);
        });
    }

    @Test
    void every_table_says_where_it_comes_from() {
        assertThat(FORMULARY.tables()).isNotEmpty().allSatisfy(table -> {
            assertThat(table.source()).containsAnyOf("read", "secondary", "from memory");
            assertThat(table.rows()).isNotEmpty();
        });
    }

    @Test
    void a_table_keeps_quoted_commas_and_doubled_quotation_marks() {
        CsvTable table = CsvTable.parse("x.csv", "# what, where\na, b\n\"1, 2\", \"say \"\"so\"\"\"\n");
        assertThat(table.about()).isEqualTo("what, where");
        assertThat(table.rows()).containsExactly(Map.of("a", "1, 2", "b", "say \"so\""));
    }

    @Test
    void a_faulty_table_of_our_own_is_told_by_its_name() {
        assertThatThrownBy(() -> CsvTable.parse("x.csv", "a, b\n1, 2\n3, 4\n")).hasMessageContaining("x.csv");
        assertThatThrownBy(() -> CsvTable.parse("x.csv", "# what\na, b\n1\n")).hasMessageContaining("2 columns");
        assertThatThrownBy(() -> CsvTable.parse("x.csv", "# what\na, b\n\"1, 2\n")).hasMessageContaining("never closed");
        assertThatThrownBy(() -> OwnFile.text("/reference/none.csv")).hasMessageContaining("/reference/none.csv");
    }
}
