package org.benchleaf.page;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A calculation to be worked in the page: what goes in, with units and range, and room for what comes out.
 *
 * @param calculation the calculation's name
 * @param title the calculation in words
 * @param formula the formula as plain text
 * @param range where it holds; may be empty
 * @param method to formula, sources and caveats
 * @param fields one for each input
 * @param words fixed labels and what the script says
 */
public record SumForm(String calculation, String title, String formula, String range, Link method, List<Field> fields,
        Map<String, String> words) implements Block {

    public SumForm {
        fields = List.copyOf(fields);
    }

    /**
     * One input.
     *
     * @param key the input's key
     * @param label what it is
     * @param allowed the range with its unit and source
     * @param usual what is taken where nothing is put in
     * @param example an input that works
     * @param choices the words to choose from as the calculation reads them, each as readers know it; empty where the input is no word
     * @param units the units it may be put in; empty where it has none
     * @param unit the unit of the example
     * @param required whether it must be put in
     */
    public record Field(String key, String label, String allowed, Optional<String> usual, String example,
            Map<String, String> choices, List<String> units, String unit, boolean required) {

        public Field {
            choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
            units = List.copyOf(units);
        }
    }
}
