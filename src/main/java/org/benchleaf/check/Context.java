package org.benchleaf.check;

import java.time.LocalDate;
import java.util.Map;
import org.benchleaf.model.Library;
import org.benchleaf.read.ReadingsTable;

/**
 * What the parts of a case are read against.
 *
 * @param library what all cases share
 * @param today the day of the run
 * @param references who names whom
 * @param tables readings from instruments, by file name
 * @param retold whether the case says that it is retold from a publication
 * @param done whether it tells what was done: it is retold, or a reason of it says what became of a rule in the past
 */
record Context(Library library, LocalDate today, References references, Map<String, ReadingsTable> tables, boolean retold,
        boolean done) {
}
