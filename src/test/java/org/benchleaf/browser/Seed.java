package org.benchleaf.browser;

import java.util.Optional;
import java.util.function.Consumer;
import org.jsoup.nodes.Document;

/**
 * A fault to be planted in a page.
 *
 * @param name what is done to the page
 * @param topic which kind of fault it stands for
 * @param rule name of the rule that must see it
 * @param on a selector: the fault is planted in the smallest page where it finds something
 * @param setting how the page is looked at
 * @param plant changes the page's text
 * @param css added as a style sheet; may be empty
 * @param js added as a script; may be empty
 */
record Seed(String name, String topic, String rule, String on, Setting setting, Consumer<Document> plant,
        Optional<String> css, Optional<String> js) {

    /** A fault in the page's text. */
    static Seed inText(String topic, String name, String rule, String on, Consumer<Document> plant) {
        return new Seed(name, topic, rule, on, Setting.DESK, plant, Optional.empty(), Optional.empty());
    }

    /** A fault in how the page is drawn. */
    static Seed inStyle(String topic, String name, String rule, String on, String css) {
        return new Seed(name, topic, rule, on, Setting.DESK, page -> { }, Optional.of(css), Optional.empty());
    }

    /** A fault in what the page does. */
    static Seed inScript(String topic, String name, String rule, String on, String js) {
        return new Seed(name, topic, rule, on, Setting.DESK, page -> { }, Optional.empty(), Optional.of(js));
    }

    /** The same fault, looked at otherwise. */
    Seed seen(Setting other) {
        return new Seed(name, topic, rule, on, other, plant, css, js);
    }
}
