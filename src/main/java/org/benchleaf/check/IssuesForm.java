package org.benchleaf.check;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.benchleaf.model.ClassPapers;

/** Reads what the papers of a class stated when they were handed out. */
final class IssuesForm {

    private static final String JOINT = ", ";
    private static final String TIMES = " times";
    private static final int MOST_DIGITS = 6;

    private IssuesForm() {
    }

    static List<ClassPapers.Issued> read(Fields fields) {
        return fields.groups("issues").stream().map(IssuesForm::issue).toList();
    }

    private static ClassPapers.Issued issue(Fields issue) {
        Map<String, ClassPapers.Amount> amounts = new LinkedHashMap<>();
        issue.group("amounts").ifPresent(group -> group.keys().forEach(id -> amounts.put(id, amount(group, id))));
        Map<String, List<String>> cautions = new LinkedHashMap<>();
        issue.group("cautions").ifPresent(group -> group.keys().forEach(step -> cautions.put(step, group.texts(step))));
        return new ClassPapers.Issued(issue.need(issue.whole("number"), "number", 1), issue.needDate("on"),
                issue.needText("mark"), amounts, cautions);
    }

    private static ClassPapers.Amount amount(Fields amounts, String id) {
        if (amounts.isScalar(id)) {
            return joined(amounts.needText(id));
        }
        Fields made = amounts.needGroup(id);
        return new ClassPapers.Amount(made.needText("each"), made.need(made.whole("batches"), "batches", 1));
    }

    /** An amount alone; issues that were kept before batches had a key of their own have both in it: "5.8 L, 16 times". */
    private static ClassPapers.Amount joined(String text) {
        int comma = text.lastIndexOf(JOINT);
        String batches = comma >= 0 && text.endsWith(TIMES) ? text.substring(comma + JOINT.length(), text.length() - TIMES.length()) : "";
        boolean counted = !batches.isEmpty() && batches.length() <= MOST_DIGITS && batches.chars().allMatch(Character::isDigit);
        return counted ? new ClassPapers.Amount(text.substring(0, comma), Integer.parseInt(batches)) : new ClassPapers.Amount(text, 1);
    }
}
