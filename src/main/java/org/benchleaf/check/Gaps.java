package org.benchleaf.check;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.message.DraftMessages;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.model.MissingValue;
import org.benchleaf.read.Node;

/**
 * What the author of a case has left open: values marked {@code not yet known} and, in a draft, empty values and needed
 * keys that are missing. In a draft each is listed; in any other case a mark is an error.
 */
final class Gaps {

    /** Messages that a draft gives rise to by what it does not say yet. */
    private static final Set<FormMessages> LACKS = EnumSet.of(FormMessages.RECIPE_WAYS, FormMessages.NO_READINGS,
            FormMessages.UNIT_FOR_READINGS, FormMessages.MIX_WITHOUT_PART, FormMessages.PARTS_OF,
            FormMessages.NEVER_USED, FormMessages.SOURCE_LICENCE_MISSING, FormMessages.NEEDED,
            FormMessages.SOURCE_NOT_ENTERED, FormMessages.FREE_STEP);
    /** Messages that compare values of one group with each other. */
    private static final Set<FormMessages> COMPARE = EnumSet.of(FormMessages.READINGS_COUNT,
            FormMessages.NOT_MEASURED_BUT_READ, FormMessages.MIX_STOCK, FormMessages.STOCK_OF_NO_PART,
            FormMessages.MIX_KINDS, FormMessages.PARTS_COUNT);
    private static final Set<MissingValue.Kind> UNKNOWN = EnumSet.of(MissingValue.Kind.NOT_KNOWN, MissingValue.Kind.NOT_READ);
    private static final String SOLUTIONS = "/solutions/";

    private final Node.Mapping written;
    private final boolean draft;
    private final Function<String, Optional<FieldDescription>> meanings;
    private final Map<String, Place> marked = new LinkedHashMap<>();
    private final Map<String, Message> open = new LinkedHashMap<>();
    private final List<Place> lacking = new ArrayList<>();
    /** Lists in which something is not known. */
    private final Set<String> untold = new HashSet<>();
    private final Node.Mapping known;

    /**
     * Finds the marks of a file.
     *
     * @param draft whether the file may leave something open
     * @param meanings what stands at a JSON Pointer; empty if nothing does by the form of the file
     */
    Gaps(Node.Mapping written, boolean draft, Function<String, Optional<FieldDescription>> meanings) {
        this.written = written;
        this.draft = draft;
        this.meanings = meanings;
        this.known = without(written, "");
    }

    /** The file without the values that are left open. */
    Node.Mapping known() {
        return known;
    }

    private Node.Mapping without(Node.Mapping group, String pointer) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        group.entries().forEach((key, entry) -> {
            String inner = pointer + "/" + key.replace("~", "~0").replace("/", "~1");
            Node kept = isOpen(entry.value(), inner) ? standIn(entry.value(), inner)
                    : isUntold(entry.value(), inner) ? untold(entry.value(), inner)
                    : isUnknownWord(entry.value(), inner) ? word((Node.Scalar) entry.value()) : without(entry.value(), inner);
            if (kept != null) {
                entries.put(key, new Node.Entry(entry.keyPlace(), kept));
            }
        });
        return new Node.Mapping(entries, group.place());
    }

    private Node without(Node node, String pointer) {
        if (node instanceof Node.Mapping group) {
            return without(group, pointer);
        }
        if (!(node instanceof Node.Sequence list)) {
            return node;
        }
        if (list.items().stream().anyMatch(Gaps::isUntoldItem)) {
            untold.add(pointer);
        }
        List<Node> items = new ArrayList<>();
        for (int at = 0; at < list.items().size(); at++) {
            if (!isOpen(list.items().get(at), pointer + "/" + at) && !isUntoldItem(list.items().get(at))) {
                items.add(without(list.items().get(at), pointer + "/" + at));
            }
        }
        return new Node.Sequence(items, list.place());
    }

    /** Whether a value is left open, which is noted; a key that does not belong there is not. */
    private boolean isOpen(Node node, String pointer) {
        if (node instanceof Node.Scalar scalar && (isMark(scalar) || draft && scalar.isNothing())
                && meanings.apply(pointer).isPresent()) {
            marked.put(pointer, scalar.place());
            return true;
        }
        return false;
    }

    /** Words for a value that nobody recorded, where only a list, a group or one of some words can stand: the same as nothing. */
    private boolean isUntold(Node node, String pointer) {
        return isUntoldItem(node) && meanings.apply(pointer).filter(field -> !field.takesWords()).isPresent();
    }

    /** Whether it says of one of some words, among which 'not known' is one, that it is not known or not read. */
    private boolean isUnknownWord(Node node, String pointer) {
        return node instanceof Node.Scalar scalar
                && MissingValue.read(scalar.text()).filter(value -> UNKNOWN.contains(value.kind())).isPresent()
                && meanings.apply(pointer).filter(field -> field.takesWords() && field.closed()).isPresent();
    }

    /** The word for it alone: why it is not known, or not read, is told where the value would stand. */
    private static Node word(Node.Scalar written) {
        return new Node.Scalar(MissingValue.Kind.NOT_KNOWN.word(), written.plain(), written.place());
    }

    /** What stands for it: a list with nothing in it, as if the words stood in brackets; else nothing. */
    private Node untold(Node node, String pointer) {
        if (meanings.apply(pointer).filter(FieldDescription::list).isEmpty()) {
            return null;
        }
        untold.add(pointer);
        return new Node.Sequence(List.of(), node.place());
    }

    private static boolean isUntoldItem(Node node) {
        return node instanceof Node.Scalar scalar && MissingValue.read(scalar.text())
                .filter(value -> value.kind() != MissingValue.Kind.NOT_YET_KNOWN).isPresent();
    }

    private static boolean isMark(Node.Scalar scalar) {
        return MissingValue.read(scalar.text()).filter(value -> value.kind() == MissingValue.Kind.NOT_YET_KNOWN).isPresent();
    }

    /** A solution that is named and not described yet can still be referred to. */
    private static Node standIn(Node node, String pointer) {
        boolean solution = pointer.startsWith(SOLUTIONS) && pointer.indexOf('/', SOLUTIONS.length()) < 0;
        return solution ? new Node.Mapping(Map.of(), node.place()) : null;
    }

    /** Says what is marked. */
    void tellMarks(Messages messages) {
        marked.forEach((pointer, place) -> {
            if (draft) {
                list(pointer, place);
            } else {
                messages.add(FormMessages.NOT_YET_KNOWN.at(place, "where", where(pointer)));
            }
        });
    }

    /** A needed key that is not there: listed in a draft, else an error, and neither where it is marked. */
    void missing(Node group, String key, Message error, Messages messages) {
        String pointer = group.place().pointer() + "/" + key;
        if (marked.containsKey(pointer)) {
            return;
        }
        if (draft) {
            Place place = group.place();
            list(pointer, new Place(place.text(), place.line(), place.column(), place.length(), pointer));
        } else {
            messages.add(error);
        }
    }

    private void list(String pointer, Place place) {
        FieldDescription meaning = meanings.apply(pointer).orElseThrow();
        String key = pointer.substring(pointer.lastIndexOf('/') + 1);
        open.put(pointer, DraftMessages.STILL_OPEN.at(place, "where", where(pointer), "meaning", meaning.description(),
                "example", key.matches("\\d+") ? meaning.example() : key + ": " + meaning.example()));
    }

    /** Whether a list or group has too little in it only because something in it is left open. */
    boolean explains(Place place) {
        return untold.contains(place.pointer()) || marked.keySet().stream().anyMatch(pointer -> pointer.startsWith(place.pointer() + "/"));
    }

    /** What was said of the form, as far as it does not only follow from what is left open. */
    Messages sorted(Messages told) {
        Messages sorted = new Messages();
        open.values().forEach(sorted::add);
        for (Message message : told.all()) {
            if (draft && message.id() instanceof FormMessages id && LACKS.contains(id)) {
                if (!isBesideGap(message.place())) {
                    lacking.add(message.place());
                    sorted.add(DraftMessages.settle(message));
                }
            } else if (!(message.id() instanceof FormMessages id && COMPARE.contains(id) && isBesideGap(message.place()))) {
                sorted.add(message);
            }
        }
        return sorted;
    }

    /** Whether something is open in the group in which a place lies, or in the value there. */
    private boolean isBesideGap(Place place) {
        String pointer = place.pointer();
        String group = pointer.isEmpty() ? "" : pointer.substring(0, pointer.lastIndexOf('/') + 1);
        boolean ofArea = group.indexOf('/', 1) < 0 || group.matches("/[^/]+/");
        return places().stream().map(Place::pointer).anyMatch(open -> open.equals(pointer)
                || open.startsWith(pointer + "/") || !ofArea && open.startsWith(group));
    }

    /** Everything on which nothing may be said yet. */
    List<Place> places() {
        List<Place> places = new ArrayList<>(lacking);
        open.values().forEach(message -> places.add(message.place()));
        marked.forEach((pointer, place) -> places.add(place));
        return places;
    }

    boolean isEmpty() {
        return open.isEmpty() && marked.isEmpty() && lacking.isEmpty();
    }

    /** The way to a value in the author's words, such as {@code steps › wash › bath › depth}. */
    private String where(String pointer) {
        List<String> words = new ArrayList<>();
        Node node = written;
        for (String key : pointer.substring(1).split("/")) {
            String plain = key.replace("~1", "/").replace("~0", "~");
            if (node instanceof Node.Sequence list) {
                node = list.items().get(Integer.parseInt(plain));
                words.add(name(node, plain));
            } else {
                node = node instanceof Node.Mapping group ? group.get(plain).orElse(node) : node;
                words.add(plain);
            }
        }
        return String.join(" › ", words);
    }

    private static String name(Node item, String index) {
        return item instanceof Node.Mapping group && group.get("id").orElse(null) instanceof Node.Scalar id
                ? id.text().strip() : "number " + (Integer.parseInt(index) + 1);
    }
}
