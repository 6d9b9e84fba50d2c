package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Who may use what: decided by the trade for every statement of the law (common practice, no source). */
class AccessTableTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();

    /** Nothing with a hazard may be allowed only because no row thought of it. */
    @Test
    void every_statement_of_the_law_has_a_row_that_asks_for_nothing_else() {
        assertThat(REFERENCE.statements().keySet()).filteredOn(code -> !code.startsWith("P")).hasSizeGreaterThan(100)
                .allSatisfy(code -> assertThat(REFERENCE.access().stream().filter(row -> row.statements().contains(code))
                        .filter(row -> row.substances().isEmpty() && row.groups().isEmpty() && row.usedBy().isEmpty()
                                && row.moreThan().isEmpty() && row.from().isEmpty() && !row.ph())).as(code).hasSize(1));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "calcium hydroxide 0.16 % m/m; rest water | supervised",
        "calcium hydroxide 0.01 % m/m; rest water | allowed",
        "sodium hydroxide 0.4 % m/m; rest water | supervised",
        "sodium hydroxide 2 % m/m; rest water | refused",
        "sodium carbonate 1 % m/m; rest water | supervised",
        "hydrochloric acid 1 % m/m; rest water | supervised",
        "hydrochloric acid 5 % m/m; rest water | refused",
        "oxalic acid 2 % m/m; rest water | supervised",
        "benzyl alcohol 5 % m/m; rest water | supervised",
        "dimethyl sulfoxide 10 % m/m; rest water | supervised",
        "alcohol ethoxylate 5 % m/m; rest water | supervised",
        "EDTA tetrasodium 10 % m/m; rest water | supervised",
        "diethyl ether 10 % m/m; rest ethanol | refused",
        "sodium hypochlorite 0.1 % m/m; rest water | refused",
        "wheat starch 10 % m/m; rest water | allowed",
        "ammonium bicarbonate 1 % m/m; rest water | allowed",
        "iodine 2 % m/m; rest ethanol | supervised",
        "borax 0.2 % m/m; boric acid 0.2 % m/m; rest water | refused"})
    void the_trade_decides_by_what_is_in_it(String bottle, String trainee) {
        Bottles.Answer answer = new Bottles(REFERENCE, MethodReader.read()).ask(bottle, Optional.empty());

        assertThat(((Bottles.Told) answer).hazards().access().trainee().word()).isEqualTo(trainee);
    }

    @Test
    void a_little_spirit_at_the_bench_is_allowed_and_sprayed_heated_or_much_of_it_is_supervised() {
        assertThat(ethanol("50 mL", Set.of("cleaning"))).isEqualTo(Reference.Trainee.ALLOWED);
        assertThat(ethanol("150 mL", Set.of("cleaning"))).isEqualTo(Reference.Trainee.SUPERVISED);
        assertThat(ethanol("5 mL", Set.of("mist"))).isEqualTo(Reference.Trainee.SUPERVISED);
        assertThat(ethanol("5 mL", Set.of("heat"))).isEqualTo(Reference.Trainee.SUPERVISED);
        assertThat(ethanol("5 mL", Set.of("chamber"))).isEqualTo(Reference.Trainee.SUPERVISED);
    }

    private static Reference.Trainee ethanol(String amount, Set<String> uses) {
        Composition composition = new Composition(java.util.Map.of("ethanol", MassShare.WHOLE), Optional.empty(),
                Optional.empty(), List.of());
        Quantity handled = Quantity.of(Double.parseDouble(amount.replace(" mL", "")), Unit.MILLILITRE);
        return new AccessTable(REFERENCE).of(composition, List.of("H225"), Optional.of(handled), uses, true).trainee();
    }
}
