package org.benchleaf.check;

import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Untold;
import org.benchleaf.read.Node;

/** Finds the values of a case file that say themselves why there is none; what is private or still open is none of them. */
final class UntoldForm {

    private static final String PRIVATE = "/object/private";

    private final Map<String, MissingValue> found = new TreeMap<>();

    static Untold in(Node file) {
        UntoldForm form = new UntoldForm();
        form.find(file, "");
        return new Untold(form.found);
    }

    private void find(Node node, String pointer) {
        if (pointer.equals(PRIVATE)) {
            return;
        }
        if (node instanceof Node.Mapping group) {
            group.entries().forEach((key, entry) -> find(entry.value(), pointer + "/" + key));
        } else if (node instanceof Node.Sequence list) {
            for (int at = 0; at < list.items().size(); at++) {
                find(list.items().get(at), pointer + "/" + at);
            }
        } else if (node instanceof Node.Scalar scalar) {
            MissingValue.read(scalar.text()).filter(missing -> missing.kind() != MissingValue.Kind.NOT_YET_KNOWN)
                    .ifPresent(missing -> found.put(pointer, missing));
        }
    }
}
