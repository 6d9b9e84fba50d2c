package org.benchleaf.command;

import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.message.MessageText;
import org.benchleaf.run.Publishing;

/** Tells what made the program fail in one message, and never by a trace or by words that might quote a case. */
public final class Failure {

    private static final String PROGRAM = "benchleaf";

    /** Made before it is needed: when memory is short there may be none left to make it. */
    private static final String NO_MEMORY = PROGRAM + ": error " + EditionMessages.PROGRAM_FAILED.code()
            + ": There is not enough memory.\n    why: The work was not finished; nothing was published.\n"
            + "    do:  Close other programs, or give it more: java -Xmx2g -jar benchleaf.jar …";

    private Failure() {
    }

    /** The message of a failure, whatever was thrown. */
    public static String told(Throwable thrown) {
        Throwable failure = cause(thrown);
        if (failure instanceof OutOfMemoryError) {
            return NO_MEMORY;
        }
        Path place = Path.of(PROGRAM);
        return MessageText.of(failure instanceof UncheckedIOException disk ? Publishing.unreadable(place, disk).told()
                : Publishing.fault(place, failure));
    }

    /** What happened, below what other threads and the loading of classes have wrapped around it. */
    private static Throwable cause(Throwable thrown) {
        Throwable cause = thrown;
        while (cause.getCause() != null && (cause instanceof CompletionException || cause instanceof ExecutionException
                || cause.getCause() instanceof Error)) {
            cause = cause.getCause();
        }
        return cause;
    }
}
