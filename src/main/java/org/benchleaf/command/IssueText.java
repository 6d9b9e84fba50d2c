package org.benchleaf.command;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.benchleaf.derive.classes.IssuedPapers;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.ClassPapers;

/** Writes an issue of a class as it is kept beside the class. */
final class IssueText {

    static final String HEAD = "# What the papers of the class stated when they were handed out. 'benchleaf issue' adds to it.\nissues:\n";

    private IssueText() {
    }

    /** One entry of the list of issues, in YAML. */
    static String of(ClassPapers.Issue issue, IssuedPapers papers) {
        return "  - number: " + issue.number() + "\n    on: " + issue.on() + "\n    mark: " + JsonText.of(papers.mark()) + "\n"
                + "    amounts:\n" + lines(papers.amounts(), IssueText::amount)
                + "    cautions:\n" + lines(papers.cautions(), IssueText::list);
    }

    private static <T> String lines(Map<String, T> values, java.util.function.Function<T, String> written) {
        return values.isEmpty() ? "      {}\n" : values.entrySet().stream().map(one -> "      " + one.getKey() + ": "
                + written.apply(one.getValue()) + "\n").collect(Collectors.joining());
    }

    private static String amount(ClassPapers.Amount amount) {
        String each = JsonText.of(amount.each());
        return amount.batches() > 1 ? "{each: " + each + ", batches: " + amount.batches() + "}" : each;
    }

    private static String list(List<String> keys) {
        return keys.stream().map(JsonText::of).collect(Collectors.joining(", ", "[", "]"));
    }
}
