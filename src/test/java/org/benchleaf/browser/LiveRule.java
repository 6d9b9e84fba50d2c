package org.benchleaf.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/**
 * A rule that a page can break only once a browser shows it.
 *
 * @param name what is asked, in few words
 * @param clause where that is asked
 * @param script that gives what breaks it, and changes nothing that another rule looks at; empty where more than a script is needed
 * @param breaches what in the window breaks it
 */
record LiveRule(String name, String clause, Optional<String> script, Function<Window, List<String>> breaches) {

    LiveRule(String name, String clause, Function<Window, List<String>> breaches) {
        this(name, clause, Optional.empty(), breaches);
    }

    /** A rule whose script stands in {@code browser/<name with hyphens>.js} and gives a list of texts. */
    static LiveRule scripted(String name, String clause) {
        String file = name.replace(' ', '-');
        String script = Scripts.named(file);
        return new LiveRule(name, clause, Optional.of(Scripts.plain(file)), window -> window.texts(script));
    }

    /** What breaks this rule in the window, told with its page and setting. */
    List<Fault> faults(Window window) {
        return told(window, breaches.apply(window));
    }

    private List<Fault> told(Window window, List<String> found) {
        return found.stream().map(what -> new Fault(name, window.place(), what)).toList();
    }

    /** What breaks any of the rules, asked in their order; those that need a script alone are asked together, in one go. */
    static List<Fault> faults(Window window, List<LiveRule> rules) {
        List<Fault> faults = new ArrayList<>();
        List<LiveRule> together = new ArrayList<>();
        for (LiveRule rule : rules) {
            if (rule.script.isPresent()) {
                together.add(rule);
            } else {
                faults.addAll(inOneGo(window, together));
                together.clear();
                faults.addAll(rule.faults(window));
            }
        }
        faults.addAll(inOneGo(window, together));
        return faults;
    }

    private static List<Fault> inOneGo(Window window, List<LiveRule> rules) {
        List<Fault> faults = new ArrayList<>();
        if (!rules.isEmpty()) {
            List<List<String>> found = window.lists(Scripts.together(rules.stream().map(rule -> rule.script.orElseThrow()).toList()));
            for (int at = 0; at < rules.size(); at++) {
                faults.addAll(rules.get(at).told(window, found.get(at)));
            }
        }
        return faults;
    }
}
