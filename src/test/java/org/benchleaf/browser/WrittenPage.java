package org.benchleaf.browser;

import java.util.stream.Stream;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.jsoup.select.Elements;

/**
 * A page, read.
 *
 * @param path from the site's root
 * @param html what stands in it
 * @param live whether its scripts have run: then it holds what only comfort brings
 */
record WrittenPage(String path, Document html, boolean live) {

    private static final int SHOWN = 70;

    /** What kind of page it says it is, such as {@code case-study}. */
    String kind() {
        return html.body().classNames().stream().filter(name -> name.startsWith("page--"))
                .map(name -> name.substring("page--".length())).findFirst().orElse("unnamed");
    }

    /** The elements that a selector finds, without those hidden from assistive technology. */
    Stream<Element> all(String selector) {
        return html.select(selector).stream().filter(element -> element.closest("[aria-hidden=true]") == null);
    }

    /** Whether the selector finds anything. */
    boolean has(String selector) {
        return html.selectFirst(selector) != null;
    }

    /** The elements that a selector finds. */
    Elements find(String selector) {
        return html.select(selector);
    }

    /** The same page under another name, free to be changed. */
    WrittenPage copy(String otherPath) {
        return new WrittenPage(otherPath, html.clone(), live);
    }

    /** An element for a report: its start tag and the start of its text. */
    static String shown(Element element) {
        String tag = "<" + element.tagName() + (element.id().isEmpty() ? "" : " id=" + element.id())
                + (element.className().isEmpty() ? "" : " class=" + element.className()) + ">";
        String text = element.text();
        return tag + " " + (text.length() > SHOWN ? text.substring(0, SHOWN) + "…" : text);
    }
}
