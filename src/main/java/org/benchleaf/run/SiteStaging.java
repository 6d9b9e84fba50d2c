package org.benchleaf.run;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import org.benchleaf.message.Messages;
import org.benchleaf.pack.KeptFile;
import org.benchleaf.pack.SiteGroup;
import org.benchleaf.pack.SitePacker;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.privacy.Searchable;
import org.benchleaf.publish.SiteFile;
import org.benchleaf.publish.TakenFile;
import org.benchleaf.publish.TakenFiles;

/**
 * Adds the files of a whole site to an edition, once those of its cases are in: each group is taken over as it is where what it is
 * made from is the same as at the last edition and its files still stand, and made anew otherwise.
 */
final class SiteStaging {

    /** More than that nobody takes along, and it would have to be held in memory. */
    private static final long MOST_BYTES = 200_000_000;

    private final Stages stages;
    private final WholeSite site;
    private final SitePacker packer;
    private final Consumer<Messages> said;

    /**
     * Prepares.
     *
     * @param site made from the cards of the cases in the edition
     * @param said is told what is the matter
     */
    SiteStaging(Stages stages, WholeSite site, SitePacker packer, Consumer<Messages> said) {
        this.stages = stages;
        this.site = site;
        this.packer = packer;
        this.said = said;
    }

    /** Adds the pages, the data and the index of the search, and looks through what is kept for private values that are new. */
    void pages(Progress.Shown shown) {
        String before = SiteNote.read(packer.note(SiteGroup.PAGES)).map(SiteNote::privateValues).orElse("");
        String mark = site.mark();
        Optional<SiteNote> same = packer.remembered(SiteGroup.PAGES, mark).flatMap(SiteNote::read);
        Optional<WholeSite.Pages> made = same.isPresent() ? Optional.empty() : Optional.of(made(shown));
        WholeSite.Found found = same.map(SiteNote::found).orElseGet(() -> made.orElseThrow().found());
        // Asked for only now: making the pages may be the first that reads them.
        String now = stages.privateValues().orElse(before);
        String note = new SiteNote(now, found).text();
        said.accept(made.map(pages -> packer.stage(SiteGroup.PAGES, mark, note, pages.files()))
                .orElseGet(() -> packer.keep(SiteGroup.PAGES, note)));
        search(found);
        if (!now.equals(before)) {
            searchKept(before);
        }
        if (made.isPresent() || !now.equals(before)) {
            said.accept(site.sources());
        }
    }

    private WholeSite.Pages made(Progress.Shown shown) {
        Messages messages = new Messages();
        WholeSite.Pages made = site.pages(shown, messages);
        said.accept(messages);
        return made;
    }

    private void search(WholeSite.Found found) {
        String mark = site.searchMark();
        if (packer.remembered(SiteGroup.SEARCH, mark).isPresent()) {
            said.accept(packer.keep(SiteGroup.SEARCH, ""));
            return;
        }
        Messages messages = new Messages();
        List<SiteFile> files = site.search(found, messages);
        said.accept(messages);
        said.accept(packer.stage(SiteGroup.SEARCH, mark, "", files));
    }

    /**
     * Looks through what was taken over for the private values that are new since it was made. What is made to be taken away holds
     * the words of pages that are looked through themselves, and more bytes than these.
     */
    private void searchKept(String before) {
        PrivateScan fresh = stages.newValues(before);
        Messages messages = new Messages();
        packer.kept().parallelStream().filter(kept -> !TakenFile.isOne(kept.path())).map(kept ->
                fresh.without(kept.caseId()).scan(Searchable.of(kept.read()))).toList()
                .forEach(leaks -> leaks.forEach(messages::add));
        said.accept(messages);
    }

    /**
     * Adds the first page and what can be taken away of the whole site, which it offers.
     *
     * @param isWhole whether there will be an edition; of none, nothing needs to be packed
     */
    void first(boolean isWhole) {
        TakenFiles taken = isWhole && packer.bytesOfCases() <= MOST_BYTES ? site.takenKey().map(this::taken).orElseGet(TakenFiles::none)
                : TakenFiles.none();
        String mark = site.mark() + note(taken);
        if (packer.remembered(SiteGroup.FIRST, mark).isPresent()) {
            said.accept(packer.keep(SiteGroup.FIRST, ""));
            return;
        }
        Messages messages = new Messages();
        SiteFile first = site.first(taken, messages);
        said.accept(messages);
        said.accept(packer.stage(SiteGroup.FIRST, mark, "", List.of(first)));
    }

    private TakenFiles taken(String key) {
        String mark = packer.mark(key);
        Optional<String> kept = packer.remembered(SiteGroup.TAKEN, mark);
        if (kept.isPresent()) {
            said.accept(packer.keep(SiteGroup.TAKEN, kept.get()));
            return offered(kept.get());
        }
        Messages messages = new Messages();
        List<SiteFile> files = new ArrayList<>(packer.soFar().stream().filter(file -> !TakenFile.isOne(file.path()))
                .map(KeptFile::read).toList());
        files.add(site.first(TakenFiles.none(), messages));
        TakenFiles made = site.taken(files, messages);
        said.accept(messages);
        said.accept(packer.stage(SiteGroup.TAKEN, mark, note(made), made.files()));
        return made;
    }

    private static String note(TakenFiles taken) {
        return taken.offered().entrySet().stream().map(each -> each.getKey() + "\t" + each.getValue().path() + "\t"
                + each.getValue().size()).collect(Collectors.joining("\n"));
    }

    private static TakenFiles offered(String note) {
        Map<String, TakenFile> offered = new LinkedHashMap<>();
        note.lines().map(line -> line.split("\t")).forEach(part -> offered.put(part[0], new TakenFile(part[1], part[2])));
        return TakenFiles.kept(offered);
    }
}
