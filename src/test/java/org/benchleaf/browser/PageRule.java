package org.benchleaf.browser;

import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A rule that one page can break by what is written in it.
 *
 * @param name what is asked, in few words
 * @param clause where that is asked
 * @param breaches what on a page breaks it
 */
record PageRule(String name, String clause, Function<WrittenPage, Stream<String>> breaches) {

    /** What breaks this rule on the page. */
    List<Fault> faults(WrittenPage page) {
        return breaches.apply(page).map(what -> new Fault(name, page.path(), what)).toList();
    }
}
