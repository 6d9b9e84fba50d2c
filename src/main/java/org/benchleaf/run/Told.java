package org.benchleaf.run;

import java.util.Comparator;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Severity;

/**
 * A message put into its final lines, without the file that it came from: ten thousand cases may each have some to
 * tell, and their files would not fit in memory together.
 *
 * @param text the lines for the terminal
 */
public record Told(String file, int line, int column, String code, Severity severity, String text) {

    static final Comparator<Told> READING_ORDER = Comparator.comparing(Told::file).thenComparingInt(Told::line)
            .thenComparingInt(Told::column).thenComparing(Told::code).thenComparing(Told::text);

    public static Told of(Message message) {
        return new Told(message.place().file(), message.place().line(), message.place().column(), message.code(),
                message.severity(), MessageText.of(message));
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
