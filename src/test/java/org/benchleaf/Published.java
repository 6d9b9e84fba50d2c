package org.benchleaf;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.UnaryOperator;

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

    /**
     * Publishes the sound case with its file changed.
     *
     * @param change which has to alter the text
     * @return the folder of the case's pages
     */
    public static Path sound(Path folder, UnaryOperator<String> change) throws IOException {
        Path content = folder.resolve("content");
        ChangedContent.copy(Path.of("src/test/resources/sound/base"), content);
        Path file = content.resolve("cases/tide/case.md");
        String text = Files.readString(file);
        String changed = change.apply(text);
        if (changed.equals(text)) {
            throw new AssertionError("the change leaves " + file + " as it is");
        }
        Files.writeString(file, changed);
        from(content, folder.resolve("site"), "2026-06-01");
        return folder.resolve("site/cases/tide");
    }
}
