package org.benchleaf.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

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
