package org.benchleaf.read;

import org.benchleaf.model.TestResult;
import org.benchleaf.model.TestWords;

/** Reads the program's table of words for the results of spot tests. */
public final class TestWordsReader {

    private static final String TABLE = "/reference/test-words.yaml";
    private static final TestWords SHIPPED = new TestWords(
            OwnYaml.list(TABLE).stream().map(TestWordsReader::set).toList());

    private TestWordsReader() {
    }

    /** The words that ship with the program. */
    public static TestWords read() {
        return SHIPPED;
    }

    private static TestWords.WordSet set(OwnYaml row) {
        TestWords.WordSet set = new TestWords.WordSet(row.text("key"), row.children("of").stream().map(TestWordsReader::indicator).toList(),
                row.texts("kinds"),
                row.children("words").stream().map(TestWordsReader::word).toList());
        row.allRead();
        return set;
    }

    private static TestWords.Indicator indicator(OwnYaml row) {
        TestWords.Indicator indicator = new TestWords.Indicator(row.text("name"), row.text("means"));
        row.allRead();
        return indicator;
    }

    private static TestWords.Word word(OwnYaml row) {
        TestResult.Group group = TestResult.Group.of(row.text("group")).orElseThrow(
                () -> new IllegalStateException(row.where() + " has an unknown group"));
        TestWords.Word word = new TestWords.Word(row.text("word"), group, row.text("means"), row.texts("also"));
        row.allRead();
        return word;
    }
}
