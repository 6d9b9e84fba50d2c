package org.benchleaf.browser;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Something wrong on a page.
 *
 * @param rule name of the rule that is broken
 * @param page path of the page from the site's root, with the setting where that matters
 * @param what was found, with enough of it to be looked for
 */
record Fault(String rule, String page, String what) {

    private static final int LONGEST = 220;

    Fault {
        what = what.length() > LONGEST ? what.substring(0, LONGEST) + "…" : what;
    }

    /** Fails if there are faults, and tells each once with the places where it was found. */
    static void none(Stream<Fault> faults) {
        Map<String, List<String>> places = new LinkedHashMap<>();
        faults.forEach(fault -> places.computeIfAbsent(fault.rule() + ": " + fault.what(), first -> new ArrayList<>())
                .add(fault.page()));
        if (!places.isEmpty()) {
            throw new AssertionError(places.entrySet().stream().map(fault -> fault.getValue().get(0) + ": " + fault.getKey()
                    + (fault.getValue().size() > 1 ? " (and " + (fault.getValue().size() - 1) + " times more)" : ""))
                    .collect(Collectors.joining("\n  ", "\n  ", "\n")));
        }
    }

    @Override
    public String toString() {
        return page + ": " + rule + ": " + what;
    }
}
