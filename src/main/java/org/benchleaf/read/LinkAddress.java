package org.benchleaf.read;

import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Which addresses a link in a story may have: http, https, mailto, or relative to the page. */
final class LinkAddress {

    static final Set<String> SCHEMES = Set.of("http", "https", "mailto");

    // A browser drops control characters and blanks before it looks for the scheme.
    private static final Pattern DROPPED = Pattern.compile("[\\p{Cntrl}\\s\\u00AD\\u200B-\\u200F\\u2060\\uFEFF]");
    private static final Pattern SCHEME = Pattern.compile("^([^/?#]*?)(:|&colon;|&#|%3[aA])");

    private LinkAddress() {
    }

    static boolean isAllowed(String address) {
        String seen = DROPPED.matcher(address).replaceAll("");
        if (seen.startsWith("/") || seen.startsWith("\\") || seen.contains("\\")) {
            return false;
        }
        Matcher scheme = SCHEME.matcher(seen);
        return !scheme.find() || scheme.group(2).equals(":") && seen.length() == address.length()
                && SCHEMES.contains(scheme.group(1).toLowerCase(Locale.ROOT));
    }
}
