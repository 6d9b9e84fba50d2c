package org.benchleaf.compose;

import org.benchleaf.model.Passage;

/** Words where a publication tells something: the publication by its number, the place in it, its own words in quotation marks. */
final class PassageMaker {

    private final Sheet sheet;

    PassageMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The passage as the page shows it; nothing of the publication's own words is changed. */
    Html make(Passage passage) {
        return new Html(place(passage).markup() + passage.words().map(words -> ": " + quoted(words).markup()).orElse(""));
    }

    /** The publication by its number, and the place in it. */
    Html place(Passage passage) {
        String cited = sheet.cite(passage.source()).map(citation -> "<a href=\"" + Html.escape(citation.href()) + "\">["
                + citation.number() + "] " + Html.escape(citation.text()) + "</a>").orElse("");
        return new Html(cited + passage.where().map(where -> ", " + Html.escape(where)).orElse(""));
    }

    /** Words of a publication, marked as such. */
    static Html quoted(String words) {
        return new Html("<q>" + Html.escape(words) + "</q>");
    }
}
