package org.benchleaf.run;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Messages;
import org.benchleaf.model.Library;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.LibraryDraft;
import org.benchleaf.read.LibraryReader;

/**
 * What the cases of one content folder share, read and checked.
 *
 * @param draft as it was read
 * @param checked as it was checked; with errors it holds stand-ins, and nothing is worked out from those
 * @param deriver works cases out with it
 */
public record SharedContent(LibraryDraft draft, CheckedLibrary checked, Deriver deriver) {

    /**
     * Reads and checks.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static SharedContent read(Path content) {
        LibraryDraft draft = LibraryReader.read(content);
        CheckedLibrary checked = LibraryChecker.check(draft);
        return new SharedContent(draft, checked, new Deriver(checked.library(), CaseChecker::tested));
    }

    /**
     * A publisher that knows no pictures yet.
     *
     * @param templates the folder of templates; the program's own if empty
     * @throws org.benchleaf.publish.TemplateStop if one of them cannot be used
     */
    static SitePublisher publisher(Optional<Path> templates) {
        return templates.map(folder -> SitePublisher.with(folder, Pictures.none()))
                .orElseGet(() -> SitePublisher.withOwnTemplates(Pictures.none()));
    }

    public Library library() {
        return checked.library();
    }

    public Messages messages() {
        return checked.messages();
    }

    /** The sites that the studio publishes, that for the public first. */
    List<Audience> audiences() {
        return Audience.of(library().studio());
    }

    /** The name that stands on every page by the studio's own will. */
    public String studioName() {
        return library().studio().name();
    }
}
