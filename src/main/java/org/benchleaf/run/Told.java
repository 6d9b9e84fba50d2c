package org.benchleaf.run;

import java.util.Comparator;
import org.benchleaf.message.ConsentMessages;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.OpenQuestion;
import org.benchleaf.message.Severity;

/**
 * A message put into its final lines, without the file that it came from: ten thousand cases may each have some to
 * tell, and their files would not fit in memory together.
 *
 * @param text the lines for the terminal
 * @param listed what a list of many such messages tells of it in their place
 */
public record Told(String file, int line, int column, String code, Severity severity, String text, Listed listed) {

    static final Comparator<Told> READING_ORDER = Comparator.comparing(Told::file).thenComparingInt(Told::line)
            .thenComparingInt(Told::column).thenComparing(Told::code).thenComparing(Told::text);

    /** In which list a message has its line. */
    public enum List {
        /** In none. */
        NONE,
        /** In that of what a draft still needs. */
        DRAFT,
        /** In that of a draft, whose first line says it with its code. */
        HEAD_OF_DRAFT,
        /** In that of what the publication of a retold case leaves open. */
        SOURCE
    }

    /**
     * What a list tells of a message.
     *
     * @param pointer of the place in the file, as a JSON Pointer
     * @param asks what it asks that the case leaves open
     */
    public record Listed(List list, String pointer, String what, String fix, OpenQuestion asks) {

        public static final Listed NOWHERE = new Listed(List.NONE, "", "", "", OpenQuestion.NONE);

        private static Listed of(Message message) {
            List list = list(message);
            return list == List.NONE ? NOWHERE
                    : new Listed(list, message.place().pointer(), message.what(), message.fix(), message.asks());
        }

        private static List list(Message message) {
            return message.id() instanceof DraftMessages ? List.DRAFT : message.id() == ConsentMessages.STILL_DRAFT ? List.HEAD_OF_DRAFT
                    : message.id().leftToSource() ? List.SOURCE : List.NONE;
        }
    }

    public static Told of(Message message) {
        return new Told(message.place().file(), message.place().line(), message.place().column(), message.code(),
                message.severity(), MessageText.of(message), Listed.of(message));
    }

    public boolean isError() {
        return severity == Severity.ERROR;
    }
}
