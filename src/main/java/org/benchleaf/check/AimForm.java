package org.benchleaf.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.IntStream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.model.Proposal;
import org.benchleaf.read.Node;

/** Ties the aims of the proposal to the results and trials that say under {@code answers} of which aims they tell, and how far. */
final class AimForm {

    private static final String ANSWERS = "answers";
    private static final String HOW_FAR = "how far";

    private final Fields root;

    AimForm(Fields root) {
        this.root = root;
    }

    /** The aims in their order; what a result answers that is no aim, or more than one, is told. */
    List<Proposal.Aim> read(List<String> aims) {
        List<List<Proposal.Answer>> told = aims.stream().<List<Proposal.Answer>>map(aim -> new ArrayList<>()).toList();
        root.groups("results").forEach(result -> tie(result, "measure", aims, told));
        root.groups("trials").forEach(trial -> tie(trial, "id", aims, told));
        return IntStream.range(0, aims.size()).mapToObj(i -> new Proposal.Aim(aims.get(i), told.get(i))).toList();
    }

    /**
     * Ties a result or a trial to the aims that it names.
     *
     * @param key whose place it is known by
     */
    private void tie(Fields telling, String key, List<String> aims, List<List<Proposal.Answer>> told) {
        for (Node.Scalar answer : telling.listed(ANSWERS)) {
            List<Integer> meant = IntStream.range(0, aims.size()).filter(i -> begins(aims.get(i), answer.text())).boxed().toList();
            if (meant.size() == 1) {
                told.get(meant.get(0)).add(new Proposal.Answer(telling.place(key), telling.text(HOW_FAR)));
            } else {
                root.messages().add(FormMessages.ANSWERS_NO_AIM.at(answer.place(), "found", answer.text().strip(),
                        "count", String.valueOf(meant.size()), "aims", String.join("; ", aims)));
            }
        }
    }

    /** Whether an aim begins with these words, whole words, whatever the case of their letters. */
    private static boolean begins(String aim, String words) {
        String wanted = words.strip().toLowerCase(Locale.ROOT);
        String told = aim.toLowerCase(Locale.ROOT);
        return !wanted.isEmpty() && told.startsWith(wanted)
                && (told.length() == wanted.length() || !Character.isLetterOrDigit(told.charAt(wanted.length())));
    }
}
