package org.benchleaf;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import org.benchleaf.check.CaseChecker;
import org.benchleaf.check.Checked;
import org.benchleaf.check.CheckedLibrary;
import org.benchleaf.check.LibraryChecker;
import org.benchleaf.compose.PageComposer;
import org.benchleaf.compose.SiteComposer;
import org.benchleaf.compose.SitePages;
import org.benchleaf.compose.cases.CasePages;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.Clearance;
import org.benchleaf.derive.Derived;
import org.benchleaf.derive.Deriver;
import org.benchleaf.message.Message;
import org.benchleaf.message.MessageText;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.Library;
import org.benchleaf.publish.Pictures;
import org.benchleaf.publish.SitePublisher;
import org.benchleaf.read.AuthorGuideReader;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.CheckValueReader;
import org.benchleaf.read.LibraryReader;

/** Sends a content folder through all stages up to the finished pages and holds what is said against what must be. */
final class WholeLine {

    private static final LocalDate DAY = LocalDate.of(2026, 6, 1);
    private static final SitePublisher PUBLISHER = SitePublisher.with(Path.of("templates"), Pictures.none());

    private WholeLine() {
    }

    /** What is wrong with how the program takes this content; nothing, whatever the content is. */
    static List<String> faults(Path content) {
        CheckedLibrary library = LibraryChecker.check(LibraryReader.read(content));
        List<String> faults = misplaced(library.messages());
        List<CasePages> pages = new ArrayList<>();
        for (Path each : CaseReader.folders(content)) {
            faults.addAll(faults(content, each, library, pages));
        }
        if (!library.messages().hasErrors()) {
            site(library.library(), pages);
        }
        return faults;
    }

    /** The same for one case beside a library that is known. */
    static List<String> faults(Path content, Path folder, CheckedLibrary library, List<CasePages> pages) {
        Checked checked = checked(content, folder, library);
        List<String> faults = faults(checked);
        if (checked.treatment().isEmpty() || library.messages().hasErrors() || checked.messages().hasErrors()) {
            return faults;
        }
        Clearance clearance = Clearance.on(DAY, checked.treatment().get().publication(), Audience.EVERYBODY);
        Derived derived = new Deriver(library.library()).derive(checked.treatment().get(), checked.findings());
        faults.addAll(misplaced(derived.messages()));
        if (!derived.messages().hasErrors()) {
            CasePages made = PageComposer.compose(derived.worked(), library.library(), clearance);
            made.pages().forEach(PUBLISHER::publish);
            pages.add(made);
        }
        return faults;
    }

    /** A case, read and checked. */
    static Checked checked(Path content, Path folder, CheckedLibrary library) {
        return CaseChecker.check(CaseReader.read(content, folder), library.library(), DAY, new Deriver(library.library())::ph);
    }

    /** What is wrong with how the program took a case up to the check. */
    static List<String> faults(Checked checked) {
        List<String> faults = misplaced(checked.messages());
        if (checked.treatment().isEmpty() && !checked.messages().hasErrors()) {
            faults.add("a case that cannot be understood, and nothing is said about it");
        }
        return faults;
    }

    private static void site(Library library, List<CasePages> pages) {
        SitePages site = SiteComposer.compose(library, pages.stream().map(CasePages::card).toList(),
                CheckValueReader.read(library.formulary()), AuthorGuideReader.read(), Audience.EVERYBODY);
        site.pages().forEach(PUBLISHER::publish);
    }

    /** Messages whose place is not in the file that they name. */
    private static List<String> misplaced(Messages messages) {
        List<String> misplaced = new ArrayList<>();
        for (Message message : messages.all()) {
            if (!isIn(message.place())) {
                misplaced.add("no such place: " + MessageText.of(message));
            }
        }
        return misplaced;
    }

    private static boolean isIn(Place place) {
        boolean named = !place.file().isBlank();
        if (place.line() == 0) {
            return named && place.column() == 0;
        }
        return named && place.line() > 0 && place.column() >= 0
                && place.column() <= place.text().line(place.line()).length() + 1;
    }
}
