package org.benchleaf;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Publishes a folder of content as an author would. */
public final class Published {

    private Published() {
    }

    /**
     * Publishes and tells what was said.
     *
     * @param on the day, as on the command line
     * @param more options
     * @throws AssertionError with what was said, if it did not go well
     */
    public static String from(Path content, Path site, String on, String... more) {
        StringWriter told = new StringWriter();
        PrintWriter out = new PrintWriter(told, true);
        List<String> words = new ArrayList<>(List.of("publish", "--content", content.toString(), "--site", site.toString(),
                "--on", on));
        words.addAll(List.of(more));
        if (Main.run(out, out, words.toArray(String[]::new)) != 0) {
            throw new AssertionError(told.toString());
        }
        return told.toString();
    }
}
