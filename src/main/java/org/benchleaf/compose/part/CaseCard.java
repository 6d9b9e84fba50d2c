package org.benchleaf.compose.part;

import java.util.List;

/**
 * The little of a case that pages of the whole site need: strings only, so that ten thousand fit in memory and one
 * can be kept from an earlier run.
 *
 * @param id the case
 * @param title one line
 * @param summary one or two sentences; empty if the public text is not permitted
 * @param language BCP 47 tag of title and summary
 * @param level the level's word in the case file, such as {@code foundation}; empty if it has none
 * @param kind of object
 * @param technique of the object; empty if not given
 * @param damages the terms of its condition, each once
 * @param materials ids of the studio's materials it uses
 * @param substances keys of the substances that what it uses is made of
 * @param steps the words of its kinds of step, each once, in the order of the case
 * @param picture id of the picture that stands for it; empty if none may be shown
 * @param pictureAlt what that picture shows
 * @param sources keys of the sources its pages cite
 * @param found what the search knows of its pages
 * @param pages paths of its pages that exist
 * @param pictureFiles the published sizes of its picture, narrowest first: path, width and height with spaces between
 * @param paper of the object; empty if not known
 * @param evidence its results as those of other cases are compared with them; empty if its results may not be shown
 * @param made the solutions that it makes of materials; empty where their strengths or its step sheet are not permitted
 * @param lastChange when it last changed; {@link LastChange#NONE} if no day is on record or the public text is not permitted
 * @param translated the same case in other languages
 * @param retoldFrom key of the publication from which the case is retold; empty if it is not, or the public text is not permitted
 */
public record CaseCard(String id, String title, String summary, String language, String level, String kind,
        String technique, List<String> damages, List<String> materials, List<String> substances, List<String> steps, String picture,
        String pictureAlt, List<String> sources, List<SearchEntry> found, List<String> pages,
        List<String> pictureFiles, String paper, List<Evidence> evidence, List<CaseCard.Made> made,
        CaseCard.LastChange lastChange, List<CaseCard.Translated> translated, String retoldFrom) {

    /**
     * A solution made of a material.
     *
     * @param material its id
     * @param strength the solution in words of the case, such as "2.5 % m/v methyl cellulose in water"
     */
    public record Made(String material, String strength) {
    }

    /**
     * The last change of a case.
     *
     * @param on the day that its reference bears, as ISO 8601; empty if there is none
     * @param what is other than in the version before; empty if its author states no version, or not in the language of the card
     * @param edition which edition the day is of, from 1; 0 if its author states none
     */
    public record LastChange(String on, String what, int edition) {

        /** No day is on record. */
        public static final LastChange NONE = new LastChange("", "", 0);
    }

    /**
     * The case in another language.
     *
     * @param language BCP 47 tag
     * @param title one line, in the language of the original if it is not translated
     * @param summary likewise; empty if the public text is not permitted
     * @param kind of object, likewise
     * @param technique likewise; empty if not given
     * @param damages likewise
     * @param pictureAlt what the picture that stands for it shows, likewise
     * @param found what the search knows of its pages
     * @param pages paths of its pages that exist
     * @param made the solutions that it makes of materials
     * @param changed what its last change is; empty if its author states no version
     */
    public record Translated(String language, String title, String summary, String kind, String technique, List<String> damages,
            String pictureAlt, List<SearchEntry> found, List<String> pages, List<Made> made, String changed) {

        public Translated {
            damages = List.copyOf(damages);
            found = List.copyOf(found);
            pages = List.copyOf(pages);
            made = List.copyOf(made);
        }

        private Translated foundBy(List<SearchEntry> entries) {
            return new Translated(language, title, summary, kind, technique, damages, pictureAlt, entries, pages, made, changed);
        }
    }

    public CaseCard {
        damages = List.copyOf(damages);
        materials = List.copyOf(materials);
        substances = List.copyOf(substances);
        steps = List.copyOf(steps);
        sources = List.copyOf(sources);
        found = List.copyOf(found);
        pages = List.copyOf(pages);
        pictureFiles = List.copyOf(pictureFiles);
        evidence = List.copyOf(evidence);
        made = List.copyOf(made);
        translated = List.copyOf(translated);
    }

    /** The same card with the sizes of its picture, which are known only once they are made. */
    public CaseCard withPictureFiles(List<String> files) {
        return new CaseCard(id, title, summary, language, level, kind, technique, damages, materials, substances, steps, picture,
                pictureAlt, sources, found, pages, files, paper, evidence, made, lastChange, translated, retoldFrom);
    }

    /** The same card with what the search takes from its finished pages. */
    public CaseCard foundBy(List<SearchEntry> entries) {
        return new CaseCard(id, title, summary, language, level, kind, technique, damages, materials, substances, steps, picture,
                pictureAlt, sources, entries, pages, pictureFiles, paper, evidence, made, lastChange, translated, retoldFrom);
    }

    /** The same card with what the search takes from its finished pages in one of its other languages. */
    public CaseCard foundBy(String tag, List<SearchEntry> entries) {
        return new CaseCard(id, title, summary, language, level, kind, technique, damages, materials, substances, steps, picture,
                pictureAlt, sources, found, pages, pictureFiles, paper, evidence, made, lastChange, translated.stream()
                        .map(one -> one.language().equals(tag) ? one.foundBy(entries) : one).toList(), retoldFrom);
    }

    /** The same card without what the search takes from the pages of the case, which no page shows. */
    public CaseCard withoutSearch() {
        CaseCard left = foundBy(List.of());
        for (Translated one : translated) {
            left = left.foundBy(one.language(), List.of());
        }
        return left;
    }

    /** The card as a page in a language shows it: in the words of its translation, if it has one; else as it is. */
    public CaseCard in(String tag) {
        return translated.stream().filter(one -> one.language().equals(tag)).findFirst().map(one -> new CaseCard(id, one.title(),
                one.summary(), one.title().equals(title) ? language : tag, level, one.kind(), one.technique(), one.damages(), materials,
                substances, steps, picture, one.pictureAlt(), sources, one.found(), pages, pictureFiles, paper, evidence, one.made(),
                new LastChange(lastChange.on(), one.changed(), lastChange.edition()), translated, retoldFrom)).orElse(this);
    }

    /** The path of the case study. */
    public String path() {
        return "cases/" + id + "/index.html";
    }

    /** The path of the first page that the case has. */
    public String start() {
        return pages.isEmpty() ? path() : pages.get(0);
    }
}
