package org.benchleaf.compose;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.Crate;
import org.benchleaf.compose.part.Audience;
import org.benchleaf.compose.part.CaseCard;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Frames;
import org.benchleaf.compose.part.SiteDesk;
import org.benchleaf.model.AuthorGuide;
import org.benchleaf.model.Library;
import org.benchleaf.model.Permission;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** Tells which pages make a book, and what stands on its title. */
public final class Books {

    /** Pages of the whole site to which those of the cases send their readers. */
    private static final List<String> BEHIND = List.of(Paths.GLOSSARY, Paths.SOURCES);

    private Books() {
    }

    /** The book of one case: its own pages, not those of classes. */
    static Book ofCase(CaseDesk desk, List<String> pages) {
        return ofCase(desk, pages, desk.treatment().id(), Crate.of(desk, permitted(desk)));
    }

    /** The book of one case in another language, which is a book of its own. */
    static Book translated(CaseDesk told, List<String> pages) {
        return ofCase(told, pages, told.treatment().id() + "/" + told.folder().language(), Optional.empty());
    }

    private static Book ofCase(CaseDesk desk, List<String> pages, String name, Optional<Crate> crate) {
        TreatmentCase treatment = desk.treatment();
        Words words = Words.in(treatment.language());
        return new Book(treatment.title(), desk.library().studio().name(), treatment.language(),
                Frames.direction(words.language()), desk.library().studio().name() + "/" + name, permitted(desk),
                words.say("frame.licence", "licence", treatment.publication().licence()), words.group("book"),
                List.of(new Book.Part(treatment.title(), pages)), crate);
    }

    /** The day of the newest permission that counts: the same content is the same book on whatever day it is published. */
    private static LocalDate permitted(CaseDesk desk) {
        LocalDate day = desk.clearance().day();
        return desk.treatment().publication().permissions().stream().map(Permission::on).filter(on -> !on.isAfter(day))
                .max(Comparator.naturalOrder()).orElse(day);
    }

    /**
     * The book of all cases of a site, with the glossary and the sources behind them.
     *
     * @param day of the edition
     */
    public static Book ofLibrary(Library library, List<CaseCard> cards, LocalDate day) {
        SiteDesk desk = new SiteDesk(library, SiteDesk.ordered(cards), List.of(), AuthorGuide.EMPTY, Audience.EVERYBODY,
                PageMakers.NAMES);
        Words words = Words.in(desk.language());
        List<Book.Part> parts = new ArrayList<>();
        desk.cards().forEach(card -> parts.add(new Book.Part(card.title(), card.pages())));
        parts.add(new Book.Part(words.say("book.behind"), BEHIND));
        return new Book(words.say("book.reader", "site", library.studio().name()), library.studio().name(), desk.language(),
                Frames.direction(words.language()), library.studio().name(), day, "", words.group("book"), parts,
                Optional.empty());
    }
}
