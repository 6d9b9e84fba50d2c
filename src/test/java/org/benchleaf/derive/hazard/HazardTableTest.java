package org.benchleaf.derive.hazard;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Substance;
import org.benchleaf.quantity.Unit;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;
import org.junit.jupiter.api.Test;

/**
 * Looks at every substance of the table alone, in water and in another solvent, and holds the answers to what no table may
 * break; the answers stand afterwards in {@code target/hazard-table.csv}, for whoever wants to compare them by eye.
 */
class HazardTableTest {

    private static final Reference REFERENCE = ReferenceReader.shipped();
    private static final Bottles BOTTLES = new Bottles(REFERENCE, MethodReader.read());
    private static final double[] SHARES = {0.05, 0.1, 0.3, 0.5, 1, 2, 3, 5, 8, 10, 20, 25, 30, 50, 70, 90};

    private static List<String> bottles(Substance row) {
        String other = row.key().equals("ethanol") ? "acetone" : "ethanol";
        return row.key().equals("water") ? List.of("water") : List.of(row.key(),
                row.key() + " 10 % m/m; rest water", row.key() + " 10 % m/m; rest " + other);
    }

    @Test
    void what_is_not_known_is_never_harmless_and_what_is_called_weak_is_shown_to_be() throws IOException {
        List<String> table = new ArrayList<>(List.of(
                "bottle;known;signal;statements;waste;drain;trainee;public;not known;sources of the classes"));
        for (Substance row : REFERENCE.substances().values()) {
            for (String bottle : bottles(row)) {
                Hazards hazards = ask(bottle);
                holds(bottle, hazards);
                table.add(line(bottle, row, hazards));
            }
        }
        assertThat(table).hasSizeGreaterThan(180);
        Files.createDirectories(Path.of("target"));
        Files.write(Path.of("target/hazard-table.csv"), table);
    }

    private static void holds(String bottle, Hazards hazards) {
        if (!hazards.known()) {
            assertThat(hazards.waste().group()).as(bottle).isEmpty();
            assertThat(hazards.access().trainee()).as(bottle).isEqualTo(Reference.Trainee.REFUSED);
            assertThat(hazards.access().withheld()).as(bottle).isTrue();
            assertThat(hazards.unknown()).as(bottle).allSatisfy(one -> assertThat(one.remedy()).isNotBlank());
        }
        if (hazards.waste().drain()) {
            assertThat(hazards.known()).as(bottle).isTrue();
            assertThat(hazards.hazardStatements()).as(bottle).isEmpty();
            assertThat(hazards.parts().get("water").least()).as(bottle).isGreaterThanOrEqualTo(0.98);
        }
        if (hazards.known() && hazards.hazardStatements().isEmpty()) {
            assertThat(hazards.parts().keySet()).as(bottle).allSatisfy(key -> assertThat(
                    REFERENCE.substances().get(key).hazards()).isNotEqualTo(Substance.Answer.UNKNOWN));
        }
    }

    /** By itself a substance has every class of its row, but for what a stronger one covers (CLP articles 26 and 27). */
    @Test
    void a_substance_alone_loses_no_class_of_its_row() {
        for (Substance row : REFERENCE.substances().values()) {
            Set<String> told = new TreeSet<>(ask(row.key() + " 100 % m/m").hazardStatements());
            assertThat(row.classes().stream().filter(one -> one.below().isEmpty()).map(Substance.HazardClass::statement)
                    .filter(code -> !told.contains(code)).filter(code -> !isCovered(code, told))).as(row.key() + " " + told).isEmpty();
        }
    }

    private static boolean isCovered(String code, Set<String> told) {
        Precedence row = REFERENCE.precedence().get(code);
        return row != null && told.stream().anyMatch(row.leftOutBeside()::contains);
    }

    /** The limits of the regulation are shares from which on a class counts: more of a part never takes a class away. */
    @Test
    void a_stronger_mixture_is_never_milder() {
        for (Substance row : REFERENCE.substances().values()) {
            int signal = 0;
            int trainee = 0;
            for (double share : row.key().equals("water") ? new double[0] : SHARES) {
                Hazards hazards = ask(row.key() + " " + share + " % m/m; rest water");
                int rank = hazards.signal().map(word -> word.equals("Danger") ? 2 : 1).orElse(0);
                assertThat(rank).as(row.key() + " " + share + " " + hazards.hazardStatements()).isGreaterThanOrEqualTo(signal);
                assertThat(hazards.access().trainee().ordinal()).as(row.key() + " " + share).isGreaterThanOrEqualTo(trainee);
                signal = rank;
                trainee = hazards.access().trainee().ordinal();
            }
        }
    }

    private static String line(String bottle, Substance row, Hazards hazards) {
        Set<String> sources = new LinkedHashSet<>();
        row.classes().forEach(one -> sources.add(one.source()));
        return List.of(bottle.replace(";", ","), hazards.known() ? "yes" : "no", hazards.signal().orElse(""),
                String.join(" ", hazards.hazardStatements()), hazards.waste().group().orElse("not known"),
                hazards.waste().drain() ? "drain" : "", hazards.access().trainee().word(),
                hazards.access().withheld() ? "withheld" : "shown",
                hazards.unknown().stream().map(Hazards.Unknown::about).distinct().collect(Collectors.joining(" ")),
                String.join(" ", sources)).stream().collect(Collectors.joining(";"));
    }

    private static Hazards ask(String bottle) {
        return ((Bottles.Told) BOTTLES.ask(bottle, Optional.empty())).hazards();
    }

    /** The window of the drain lies inside what the pH by itself calls corrosive (CLP Annex I, 3.2.3.1.2: 2 and 11.5). */
    @Test
    void the_window_of_the_drain_is_inside_the_limits_of_corrosion() {
        assertThat(REFERENCE.limits().drain().value().lowIn(Unit.PH)).isGreaterThan(2);
        assertThat(REFERENCE.limits().drain().value().highIn(Unit.PH)).isLessThan(11.5);
    }
}
