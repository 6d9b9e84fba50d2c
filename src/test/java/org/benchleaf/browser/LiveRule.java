package org.benchleaf.browser;

import java.util.List;
import java.util.function.Function;

/**
 * A rule that a page can break only once a browser shows it.
 *
 * @param name what is asked, in few words
 * @param clause where that is asked
 * @param breaches what in the window breaks it
 */
record LiveRule(String name, String clause, Function<Window, List<String>> breaches) {

    /** A rule whose script stands in {@code browser/<name with hyphens>.js} and gives a list of texts. */
    static LiveRule scripted(String name, String clause) {
        String script = Scripts.named(name.replace(' ', '-'));
        return new LiveRule(name, clause, window -> window.texts(script));
    }

    /** What breaks this rule in the window, told with its page and setting. */
    List<Fault> faults(Window window) {
        return breaches.apply(window).stream().map(what -> new Fault(name, window.place(), what)).toList();
    }
}
