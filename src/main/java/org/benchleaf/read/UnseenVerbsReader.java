package org.benchleaf.read;

import java.util.List;
import java.util.Locale;

/** Reads the verbs that nobody can see done, and tells them in an outcome. */
public final class UnseenVerbsReader {

    private static final String FILE = "/reference/unseen-verbs.yaml";

    private UnseenVerbsReader() {
    }

    /** Whether what a trainee is to do begins with such a verb, in any of its persons. */
    public static boolean beginsWithOne(String deed) {
        String words = deed.strip().toLowerCase(Locale.ROOT) + " ";
        return OwnYaml.list(FILE).stream().anyMatch(row -> {
            row.text("source");
            String verb = row.text("name");
            return List.of(verb + " ", verb + "s ").stream().anyMatch(words::startsWith);
        });
    }
}
