package org.benchleaf.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.ClassPapers;

/** Reads what the papers of a class stated when they were handed out. */
final class IssuesForm {

    private IssuesForm() {
    }

    static List<ClassPapers.Issued> read(Fields fields) {
        return fields.groups("issues").stream().map(IssuesForm::issue).toList();
    }

    private static ClassPapers.Issued issue(Fields issue) {
        Map<String, String> amounts = new LinkedHashMap<>();
        issue.group("amounts").ifPresent(group -> group.keys().forEach(id -> group.text(id).ifPresent(
                text -> amounts.put(id, text))));
        Map<String, List<String>> cautions = new LinkedHashMap<>();
        issue.group("cautions").ifPresent(group -> group.keys().forEach(step -> cautions.put(step, group.texts(step))));
        return new ClassPapers.Issued(issue.need(issue.whole("number"), "number", 1), issue.needDate("on"),
                issue.needText("mark"), amounts, cautions);
    }
}
