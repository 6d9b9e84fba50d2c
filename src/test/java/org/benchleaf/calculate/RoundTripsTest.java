package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import org.assertj.core.data.Offset;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.read.MethodReader;
import org.junit.jupiter.api.Test;

/** What one calculation gives, another takes back; what is done in two steps comes to what is done in one. */
class RoundTripsTest {

    private static final int DRAWS = 100;
    private static final Calculations CALCULATIONS = new Calculations(MethodReader.read());
    private final Random random = new Random(20260302);

    @Test
    void a_solution_diluted_holds_as_much_as_one_made_weak_at_once() {
        for (int k = 0; k < DRAWS; k++) {
            double stock = between(1, 100);
            double strength = between(0.01, stock);
            double volume = between(10, 5000);
            double taken = value("dilution", "stock-volume", "stock", stock + " g/L", "strength", strength + " g/L",
                    "volume", volume + " mL");
            double inTheStock = value("dissolving", "mass", "strength", stock + " g/L", "volume", taken + " mL");
            assertThat(inTheStock).isCloseTo(
                    value("dissolving", "mass", "strength", strength + " g/L", "volume", volume + " mL"), nearly(volume));
        }
    }

    @Test
    void parts_add_up_to_the_whole_and_their_share_dissolves_back_to_the_first() {
        for (int k = 0; k < DRAWS; k++) {
            String[] inputs = {"parts", between(0.1, 10) + " + " + between(0.1, 10), "total", between(1, 5000) + " g"};
            double first = value("parts", "first", inputs);
            double total = first + value("parts", "second", inputs);
            assertThat(value("dissolving", "mass", "strength", value("parts", "mass-fraction", inputs) + " % m/m", "mass",
                    total + " g")).isCloseTo(first, nearly(total));
            assertThat(value("parts", "first", "parts", inputs[1], "total", total + " g")).isCloseTo(first, nearly(total));
        }
    }

    @Test
    void a_reserve_that_a_bath_could_leave_is_found_again_by_titration() {
        for (int k = 0; k < DRAWS; k++) {
            String[] bath = {"grammage", between(20, 300) + " g/m²", "uptake", between(20, 300) + " g/m²", "calcium",
                    between(0.001, 0.05) + " mol/kg"};
            double reserve = value("reserve-ceiling", "reserve", bath);
            // A gram of paper that uses up so many millimoles of 10 mmol of acid.
            String[] titration = {"sample", "1 g", "acid-volume", "100 mL", "acid", "0.1 mol/L", "base-volume",
                    (10 - reserve) / 0.1 + " mL", "base", "0.1 mol/L"};
            assertThat(value("alkaline-reserve", "reserve", titration)).isCloseTo(reserve, within(1e-9));
            assertThat(value("alkaline-reserve", "carbonate", titration))
                    .isCloseTo(value("reserve-ceiling", "carbonate", bath), within(1e-9));
        }
    }

    @Test
    void so_many_baths_reach_two_per_cent_and_one_fewer_does_not() {
        for (int k = 0; k < DRAWS; k++) {
            String[] bath = {"grammage", between(20, 300) + " g/m²", "uptake", between(20, 300) + " g/m²", "calcium",
                    between(0.001, 0.05) + " mol/kg"};
            double each = value("reserve-ceiling", "carbonate", bath);
            double baths = value("reserve-ceiling", "baths-to-two-per-cent", bath);
            assertThat(baths * each).isGreaterThanOrEqualTo(2 - 1e-9);
            assertThat((baths - 1) * each).isLessThan(2);
        }
    }

    @Test
    void rinsing_three_and_then_four_times_is_rinsing_seven_times() {
        for (int k = 0; k < DRAWS; k++) {
            String held = between(0.01, 1) + " L";
            String bath = between(0.1, 20) + " L";
            double three = value("rinsing", "left", "held", held, "bath", bath, "baths", "3");
            double four = value("rinsing", "left", "held", held, "bath", bath, "baths", "4");
            assertThat(value("rinsing", "left", "held", held, "bath", bath, "baths", "7"))
                    .isCloseTo(three * four / 100, within(1e-9));
        }
    }

    @Test
    void a_bath_for_all_sheets_is_what_so_many_boxes_of_that_size_hold() {
        for (int k = 0; k < DRAWS; k++) {
            double margin = between(0, 80);
            double height = between(50, 900);
            String depth = between(5, 80) + " mm";
            double with = value("bath", "total", "height", height + " mm", "width", "300 mm", "margin", margin + " mm",
                    "depth", depth, "baths", "3", "sheets", "4");
            double box = value("bath", "volume", "height", height + 2 * margin + " mm", "width", 300 + 2 * margin + " mm",
                    "margin", "0 mm", "depth", depth);
            assertThat(with).isCloseTo(12 * box, nearly(with));
        }
    }

    @Test
    void a_sheet_dries_to_the_mass_that_was_foretold_for_it() {
        for (int k = 0; k < DRAWS; k++) {
            double dry = between(5, 50);
            double first = dry * between(1.9, 3);
            double second = first - (first - dry) * between(0.05, 0.4);
            double to = between(75, 98);
            String[] weighed = {"dry", dry + " g", "first", first + " g", "second", second + " g", "between", "20 min"};
            double rate = value("drying", "rate", weighed);
            double time = value("drying", "time", with(weighed, "to", to + " %"));
            double then = dry + (second - dry) * Math.exp(-rate * time);
            assertThat(value("solids", "solids", "dry", dry + " g", "now", then + " g")).isCloseTo(to, within(1e-6));
        }
    }

    @Test
    void growing_and_shrinking_back_changes_nothing() {
        for (int k = 0; k < DRAWS; k++) {
            String one = between(100, 900) + " mm";
            String other = between(100, 900) + " mm";
            double there = value("size-change", "change", "before", one, "after", other) / 100;
            double back = value("size-change", "change", "before", other, "after", one) / 100;
            assertThat((1 + there) * (1 + back)).isCloseTo(1, within(1e-12));
            assertThat(value("size-change", "area-change", "before", one, "after", other, "across-before", other,
                    "across-after", one)).isCloseTo(0, within(1e-9));
        }
    }

    @Test
    void twice_the_weight_on_twice_the_sheet_presses_alike() {
        for (int k = 0; k < DRAWS; k++) {
            double mass = between(0.1, 100);
            double height = between(50, 900);
            assertThat(value("pressure", "pressure", "mass", 2 * mass + " kg", "height", 2 * height + " mm", "width",
                    "300 mm")).isCloseTo(value("pressure", "pressure", "mass", mass + " kg", "height", height + " mm",
                    "width", "300 mm"), within(1e-9));
        }
    }

    @Test
    void the_blotters_hold_the_water_and_one_fewer_would_not() {
        for (int k = 0; k < DRAWS; k++) {
            double dry = between(5, 200);
            double water = between(1, 300);
            double each = between(10, 100);
            double uptake = between(0.2, 2);
            double count = value("blotters", "per-change", "wet", dry + water + " g", "dry", dry + " g", "blotter-mass",
                    each + " g", "uptake", uptake + " g/g", "changes", "3");
            assertThat(count * each * uptake).isGreaterThanOrEqualTo(water - 1e-9);
            assertThat((count - 1) * each * uptake).isLessThan(water);
        }
    }

    @Test
    void two_tears_need_what_each_needs_alone() {
        for (int k = 0; k < DRAWS; k++) {
            String one = between(5, 200) + " mm";
            String other = between(5, 200) + " mm";
            for (String output : List.of("area", "pieces", "tissue-mass", "paste-mass")) {
                double both = mending(output, one + ", " + other);
                assertThat(both).isCloseTo(mending(output, one) + mending(output, other), nearly(both));
            }
        }
    }

    private double mending(String output, String tears) {
        return value("mending", output, "tears", tears, "lap", "10 mm", "width", "8 mm", "piece", "40 mm", "tissue",
                "9 g/m²", "paste", "0.03 g/cm²", "waste", "20 %");
    }

    @Test
    void the_vessel_holds_the_volume_and_is_surer_than_its_whole_tolerance() {
        for (int k = 0; k < DRAWS; k++) {
            double volume = between(0.5, 1000);
            String text = volume + " mL";
            double vessel = value("measuring", "vessel", "volume", text);
            assertThat(vessel).isGreaterThanOrEqualTo(volume);
            assertThat(value("measuring", "vessel", "volume", vessel + " mL")).isEqualTo(vessel);
            double uncertainty = value("measuring", "uncertainty", "volume", text);
            assertThat(uncertainty).isLessThan(value("measuring", "tolerance", "volume", text));
            assertThat(value("measuring", "relative", "volume", text)).isCloseTo(100 * uncertainty / volume, within(1e-9));
        }
    }

    @Test
    void humidifying_in_two_steps_takes_what_the_air_holds_more_at_the_end() {
        for (int k = 0; k < DRAWS; k++) {
            double from = between(5, 50);
            double half = between(from, 80);
            double to = between(half, 100);
            String celsius = between(-20, 50) + " °C";
            double whole = humidifying(celsius, from, to);
            assertThat(humidifying(celsius, from, half) + humidifying(celsius, half, to)).isCloseTo(whole, nearly(whole));
            assertThat(moisture(celsius, to) - moisture(celsius, from)).isCloseTo(whole, nearly(whole));
        }
    }

    private double humidifying(String celsius, double from, double to) {
        return value("humidifying", "water", "volume", "1 m³", "temperature", celsius, "from", from + " %", "to", to + " %");
    }

    private double moisture(String celsius, double humidity) {
        return value("moist-air", "absolute-humidity", "temperature", celsius, "humidity", humidity + " %");
    }

    @Test
    void salts_keep_their_order_from_the_driest_to_the_dampest_and_never_pass_saturation() {
        List<String> salts = List.of("lithium chloride", "magnesium chloride", "potassium carbonate", "magnesium nitrate",
                "sodium chloride", "potassium chloride", "potassium nitrate", "potassium sulfate");
        for (double celsius = 20; celsius <= 25; celsius += 0.5) {
            double before = 0;
            for (String salt : salts) {
                double humidity = value("salt-humidity", "humidity", "salt", salt, "temperature", celsius + " °C");
                assertThat(humidity).as(salt).isGreaterThan(before).isLessThan(100);
                before = humidity;
            }
        }
    }

    private double between(double low, double high) {
        return low + (high - low) * random.nextDouble();
    }

    private static Offset<Double> nearly(double size) {
        return within(1e-9 * Math.max(1, Math.abs(size)));
    }

    private static String[] with(String[] inputs, String key, String value) {
        String[] more = Arrays.copyOf(inputs, inputs.length + 2);
        more[inputs.length] = key;
        more[inputs.length + 1] = value;
        return more;
    }

    private static double value(String calculation, String output, String... inputs) {
        Map<String, String> texts = new LinkedHashMap<>();
        for (int k = 0; k < inputs.length; k += 2) {
            texts.put(inputs[k], inputs[k + 1]);
        }
        Outcome outcome = CALCULATIONS.work(calculation, texts);
        assertThat(outcome).as("%s %s: %s", calculation, texts, outcome).isInstanceOf(Outcome.Worked.class);
        Quantity number = ((Outcome.Worked) outcome).numbers().get(output);
        assertThat(number).as("%s %s of %s", calculation, output, texts).isNotNull();
        return number.value();
    }
}
