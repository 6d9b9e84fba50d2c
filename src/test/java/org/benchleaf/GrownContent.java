package org.benchleaf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.BiFunction;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.message.MessageText;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.Draft;
import org.benchleaf.read.LibraryReader;

/**
 * Sends content through reading, checking, the search for private values and all stages up to the pages: the whole of it, or,
 * with a folder of a case, this alone beside a library that was read before. Gives what is wrong with how it was taken.
 */
public final class GrownContent implements BiFunction<Path, Path, List<String>> {

    private CheckedLibrary library;

    @Override
    public List<String> apply(Path content, Path caseFolder) {
        if (!caseFolder.startsWith(content.resolve("cases"))) {
            return WholeLine.faults(content);
        }
        if (library == null) {
            library = LibraryChecker.check(LibraryReader.read(content));
        }
        Draft draft = CaseReader.read(content, caseFolder);
        PrivateScan own = PrivateScan.ofCase(draft.id(), draft.confidential(), "");
        draft.sources().forEach(source -> own.scanSource(source).forEach(MessageText::of));
        WholeLine.checked(content, caseFolder, library).messages().all().forEach(MessageText::of);
        return WholeLine.faults(content, caseFolder, library, new ArrayList<>());
    }
}
