package org.benchleaf.read;

import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;

/**
 * Where the front matter of a Markdown file stands, as offsets into its text.
 *
 * @param start of the YAML
 * @param end of the YAML
 * @param body start of the Markdown
 */
record FrontMatter(int start, int end, int body) {

    /** The most bytes that front matter, or any YAML file, may have. */
    static final int MOST_BYTES = 256 * 1024;

    private static final String FENCE = "---";

    static Optional<FrontMatter> find(TextFile file, Messages messages) {
        String text = file.text();
        int firstEnd = lineEnd(text, 0);
        if (!text.substring(0, firstEnd).stripTrailing().equals(FENCE)) {
            messages.add(ReadingMessages.FRONT_MATTER_MISSING.at(file.lines().place(0, firstEnd, "")));
            return Optional.empty();
        }
        int start = Math.min(firstEnd + 1, text.length());
        for (int line = start; line < text.length(); line = lineEnd(text, line) + 1) {
            int end = lineEnd(text, line);
            if (text.substring(line, end).stripTrailing().equals(FENCE)) {
                return sized(file, new FrontMatter(start, line, Math.min(end + 1, text.length())), messages);
            }
        }
        messages.add(ReadingMessages.FRONT_MATTER_OPEN.at(file.lines().place(0, firstEnd, "")));
        return Optional.empty();
    }

    private static Optional<FrontMatter> sized(TextFile file, FrontMatter found, Messages messages) {
        if (file.text().substring(found.start, found.end).getBytes(StandardCharsets.UTF_8).length > MOST_BYTES) {
            messages.add(ReadingMessages.FILE_TOO_LARGE.at(Place.file(file.name()), "most", MOST_BYTES / 1024));
            return Optional.empty();
        }
        return Optional.of(found);
    }

    private static int lineEnd(String text, int from) {
        int end = text.indexOf('\n', from);
        return end < 0 ? text.length() : end;
    }
}
