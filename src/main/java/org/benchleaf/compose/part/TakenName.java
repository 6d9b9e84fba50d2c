package org.benchleaf.compose.part;

import java.util.Arrays;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.page.CaseFiles;
import org.benchleaf.page.Paths;

/**
 * How a file that can be taken away is called: by what it holds, since it may stand only where all of that may.
 *
 * <p>A whole page is called after the page, and by whether it holds pictures; a book or a folder of several pages names
 * every kind of thing inside it.
 */
public final class TakenName {

    private static final String PAGE = ".html";
    private static final String WORDS = "-whole.html";
    private static final String PICTURES = "-whole-with-pictures.html";
    private static final String SHEET = "-sheet.pdf";
    private static final String SHEET_PICTURES = "-sheet-with-pictures.pdf";
    private static final Set<String> SHEETS = Set.of("steps.html", "preparation.html");
    private static final List<String> CLASS_SHEETS = List.of("-stations.html", "-preparation.html", "-labels.html");
    private static final String TAKEN = "taken-";
    private static final Pattern BUNDLE = Pattern.compile(TAKEN + "([a-z-]++)\\.(?:epub|zip)");
    private static final List<String> WHOLE = List.of(WORDS, PICTURES, SHEET, SHEET_PICTURES);
    private static final String READER = "course-reader.epub";
    private static final String SITE = "whole-site.zip";

    private TakenName() {
    }

    /** The kinds of files that a case has, as far as permissions tell them apart. */
    public enum Kind {
        /** The case study. */
        STUDY,
        /** The step sheet. */
        STEPS,
        /** The preparation sheet. */
        PREPARATION,
        /** The page of results. */
        RESULTS,
        /** The file of figures. */
        FIGURES,
        /** A picture. */
        PICTURES,
        /** Pages and calendars of a class that works through the case. */
        CLASSES,
        /** Any other file: tables of data. */
        DATA;

        private String word() {
            return name().toLowerCase(java.util.Locale.ROOT);
        }

        private static Kind of(String file) {
            return file.startsWith(Paths.OF_CLASS) ? CLASSES : switch (PageSearch.page(file)) {
                case "index.html", "reference.bib", "reference.ris", "reference.csl.json", Paths.LINKED_ART -> STUDY;
                case "steps.html" -> STEPS;
                case "preparation.html" -> PREPARATION;
                case "results.html" -> RESULTS;
                case Paths.MANIFEST -> PICTURES;
                default -> file.startsWith("pictures/") ? PICTURES : file.startsWith("figures.") ? FIGURES : DATA;
            };
        }
    }

    /** The path of the whole file of a page. */
    public static String whole(String page, boolean withPictures) {
        return cut(page, PAGE) + (withPictures ? PICTURES : WORDS);
    }

    /**
     * The path of a file that holds several files of one case.
     *
     * @param inside paths of these, from the site's root
     * @param ending with its point: {@code .epub} or {@code .zip}
     */
    public static String bundle(Collection<String> inside, String ending) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        inside.forEach(path -> kinds.add(Kind.of(CaseFiles.inFolder(path))));
        String first = inside.iterator().next();
        return cut(first, CaseFiles.inFolder(first)) + TAKEN + kinds.stream().map(Kind::word).collect(Collectors.joining("-")) + ending;
    }

    /** Whether a page is a sheet that is worked from on paper: of steps, of preparation, of a station, of labels. */
    public static boolean isSheet(String page) {
        String name = CaseFiles.inFolder(page);
        return SHEETS.contains(name) || name.startsWith(Paths.OF_CLASS) && CLASS_SHEETS.stream().anyMatch(name::endsWith);
    }

    /** By what the sheet of a page is offered. */
    public static String sheetOf(String page) {
        return page + " pdf";
    }

    /** The path of the file in which a page is laid out on paper. */
    public static String sheet(String page, boolean withPictures) {
        return cut(page, PAGE) + (withPictures ? SHEET_PICTURES : SHEET);
    }

    /** The path of the book of all cases. */
    public static String reader() {
        return READER;
    }

    /** The path of the file that holds the whole site. */
    public static String site() {
        return SITE;
    }

    /** Whether a file of the site is one to be taken away, which holds other files once more. */
    public static boolean isTaken(String path) {
        return path.equals(READER) || path.equals(SITE) || path.endsWith(WORDS) || path.endsWith(PICTURES)
                || path.endsWith(SHEET) || path.endsWith(SHEET_PICTURES) || BUNDLE.matcher(CaseFiles.inFolder(path)).matches();
    }

    /**
     * What a file of a case holds.
     *
     * @param file its path in the case's folder
     */
    public static Set<Kind> kinds(String file) {
        var bundle = BUNDLE.matcher(file);
        if (bundle.matches()) {
            Set<String> words = Set.copyOf(Arrays.asList(bundle.group(1).split("-")));
            return Arrays.stream(Kind.values()).filter(kind -> words.contains(kind.word()))
                    .collect(Collectors.toCollection(() -> EnumSet.noneOf(Kind.class)));
        }
        if (file.equals(Paths.MANIFEST)) {
            // It tells the words of the case study beside the pictures.
            return EnumSet.of(Kind.STUDY, Kind.PICTURES);
        }
        boolean withPictures = file.endsWith(PICTURES) || file.endsWith(SHEET_PICTURES);
        Set<Kind> kinds = EnumSet.of(Kind.of(WHOLE.stream().filter(file::endsWith).findFirst()
                .map(ending -> cut(file, ending) + PAGE).orElse(file)));
        if (withPictures) {
            kinds.add(Kind.PICTURES);
        }
        return kinds;
    }

    private static String cut(String path, String ending) {
        return path.substring(0, path.length() - ending.length());
    }
}
