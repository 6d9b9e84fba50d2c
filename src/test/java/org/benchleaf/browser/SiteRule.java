package org.benchleaf.browser;

import java.util.function.Function;
import java.util.stream.Stream;

/**
 * A rule that only several pages together can break.
 *
 * @param name what is asked, in few words
 * @param clause where that is asked
 * @param faults what breaks it in the site
 */
record SiteRule(String name, String clause, Function<SiteUnderTest, Stream<Fault>> faults) {
}
