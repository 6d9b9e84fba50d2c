package org.benchleaf.read;

import org.benchleaf.model.AuthorGuide;

/** Reads what an author of case files is shown beside the keys of the files. */
public final class AuthorGuideReader {

    private static final String FIRST_CASE = "/reference/first-case.yaml";
    private static final String END_POINTS = "/reference/end-points.yaml";
    private static final String FIGURES = "/reference/citable-figures.yaml";

    private AuthorGuideReader() {
    }

    /** The guide that ships with the program. */
    public static AuthorGuide read() {
        return new AuthorGuide(OwnYaml.list(FIRST_CASE).stream().map(AuthorGuideReader::lesson).toList(),
                TestWordsReader.read(), OwnYaml.list(END_POINTS).stream().map(AuthorGuideReader::endPoint).toList(),
                SourceLicenceReader.known(),
                OwnYaml.list(FIGURES).stream().map(AuthorGuideReader::figure).toList());
    }

    private static AuthorGuide.Lesson lesson(OwnYaml row) {
        AuthorGuide.Lesson lesson = new AuthorGuide.Lesson(row.text("name"), row.texts("text"),
                row.children("change").stream().map(AuthorGuideReader::change).toList(), row.asWritten("facts"), row.asWritten("story"),
                row.text("tells"));
        row.allRead();
        return lesson;
    }

    private static AuthorGuide.Change change(OwnYaml row) {
        AuthorGuide.Change change = new AuthorGuide.Change(row.asWritten("from").orElseThrow(), row.asWritten("to").orElseThrow());
        row.allRead();
        return change;
    }

    private static AuthorGuide.EndPointWording endPoint(OwnYaml row) {
        row.text("source");
        AuthorGuide.EndPointWording wording = new AuthorGuide.EndPointWording(row.text("asks"), row.texts("written"), row.text("example"),
                row.text("read"));
        row.allRead();
        return wording;
    }

    private static AuthorGuide.CitableFigure figure(OwnYaml row) {
        AuthorGuide.CitableFigure figure = new AuthorGuide.CitableFigure(row.text("of"), row.text("cited"), row.text("means"));
        row.allRead();
        return figure;
    }
}
