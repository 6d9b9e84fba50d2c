package org.benchleaf.publish;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import org.benchleaf.compose.cases.Book;
import org.benchleaf.compose.cases.Crate;
import org.benchleaf.compose.part.TakenName;
import org.benchleaf.page.CaseFiles;
import org.benchleaf.page.Paths;
import org.jsoup.nodes.Attribute;
import org.jsoup.nodes.Element;

/** A case as a folder of its own, which opens by its index without the site. */
final class CaseFolder {

    private static final String INDEX = "index.html";
    private static final String LEADS_AWAY = "nav.ways, nav.foot__ways, nav.languages, link[hreflang], form[action], "
            + FinishedPage.OFFERS + ", " + FinishedPage.FONTS;

    private final Map<String, SiteFile> inside = new LinkedHashMap<>();
    private final Map<String, SiteFile> others = new LinkedHashMap<>();
    private final Set<String> drawnOn = new TreeSet<>();
    /** Where its pages lie. */
    private final String folder;
    private final Function<SiteFile, FinishedPage> read;
    /** Where its pictures and data lie, which pages in every language share. */
    private final String home;
    /** From one of its pages up to the site's root, which in the packed folder is where the page lies. */
    private final String up;

    private CaseFolder(List<SiteFile> pages, List<SiteFile> data, List<SiteFile> others,
            Function<SiteFile, FinishedPage> read) {
        this.read = read;
        this.folder = pages.get(0).path().substring(0, pages.get(0).path().lastIndexOf('/') + 1);
        this.home = CaseFiles.FOLDER + CaseFiles.caseOf(folder).orElseThrow() + "/";
        this.up = Paths.up(folder);
        pages.forEach(page -> inside.put(page.path(), page));
        data.forEach(file -> inside.put(file.path(), file));
        others.forEach(file -> this.others.put(file.path(), file));
        this.others.values().stream().filter(file -> file.path().startsWith(home)).forEach(file -> inside.put(file.path(), file));
    }

    /**
     * A case, packed.
     *
     * @param book of the case, which may describe the folder for programs
     * @param pages finished, before they offer anything; all in one folder, which may be that of another language
     * @param data of the case, in its own folder
     * @param others its pictures, styles, scripts and drawings
     * @param read reads a page
     */
    static SiteFile pack(Book book, List<SiteFile> pages, List<SiteFile> data, List<SiteFile> others,
            Function<SiteFile, FinishedPage> read) {
        return new CaseFolder(pages, data, others, read).packed(book, pages);
    }

    private SiteFile packed(Book book, List<SiteFile> pages) {
        String name = home.substring(CaseFiles.FOLDER.length());
        List<SiteFile> files = new ArrayList<>();
        for (SiteFile file : inside.values()) {
            byte[] bytes = file.isPage() ? page(file) : file.bytes();
            files.add(new SiteFile(name + CaseFiles.inFolder(file.path()), bytes));
        }
        if (!inside.containsKey(folder + INDEX)) {
            // A case whose story is not told opens by the first page that it has.
            files.add(new SiteFile(name + INDEX, page(pages.get(0))));
        }
        drawnOn.forEach(path -> files.add(new SiteFile(name + path, others.get(path).bytes())));
        book.crate().ifPresent(crate -> files.add(SiteFile.text(name + Crate.FILE, crate.describe(sizes(name, files)))));
        return new SiteFile(TakenName.bundle(inside.keySet(), ".zip"), Archive.of(files));
    }

    private static SortedMap<String, Long> sizes(String folder, List<SiteFile> files) {
        SortedMap<String, Long> sizes = new TreeMap<>();
        files.forEach(file -> sizes.put(file.path().substring(folder.length()), (long) file.bytes().length));
        return sizes;
    }

    private byte[] page(SiteFile file) {
        FinishedPage finished = read.apply(file);
        finished.document().select(LEADS_AWAY).remove();
        finished.relink((to, there) -> to.startsWith("#") || inside.containsKey(there.replaceFirst("#.*+", "")) ? to : "");
        for (Element element : finished.document().getAllElements()) {
            for (Attribute attribute : element.attributes()) {
                // The sizes of a picture stand several in one attribute.
                attribute.setValue(attribute.getValue().replace(up + folder, "").replace(up + home, ""));
                if (attribute.getValue().startsWith(up) && others.containsKey(finished.path(attribute.getValue()))) {
                    attribute.setValue(drawnOn(finished.path(attribute.getValue())));
                }
            }
        }
        return finished.document().outerHtml().getBytes(StandardCharsets.UTF_8);
    }

    private String drawnOn(String path) {
        drawnOn.add(path);
        return path;
    }
}
