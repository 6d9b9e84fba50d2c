package org.benchleaf.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;

/** The scripts that look at a page from inside; those of our own stand in the folder {@code browser} of the test's files. */
final class Scripts {

    /** Works out what can be seen, for every script of our own. */
    private static final String SIGHT = text("/browser/sight.js");

    private Scripts() {
    }

    /** A script of our own, with what all of them share before it. */
    static String named(String name) {
        return SIGHT + "\n" + text("/browser/" + name + ".js");
    }

    /** Several scripts of our own as one, which gives a list of what each gives; what can be seen is worked out once for all. */
    static String together(List<String> scripts) {
        return SIGHT + "\n" + text("/browser/seen-once.js") + "\nreturn ["
                + scripts.stream().map(script -> "(function () {\n" + script + "\n}())").collect(Collectors.joining(",\n")) + "];";
    }

    /** A script of our own that needs nothing else. */
    static String plain(String name) {
        return text("/browser/" + name + ".js");
    }

    /** Watches a page from its first moment. */
    static String witness() {
        return text("/browser/witness.js");
    }

    /** The library that judges a page by the accessibility guidelines. */
    static String axe() {
        return text("/axe.min.js");
    }

    private static String text(String resource) {
        try (InputStream in = Scripts.class.getResourceAsStream(resource)) {
            if (in == null) {
                throw new IllegalStateException("no script " + resource);
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }
}
