package org.benchleaf.check;

import java.util.Collection;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;
import org.benchleaf.read.Node;

/**
 * The parts of a case that could not be read as they stand: the model holds stand-ins there, and nothing may be told
 * that rests on one.
 *
 * <p>An <em>area</em> is a key of the front matter, such as {@code steps}; an <em>element</em> is one entry of an area
 * whose entries stand by themselves, such as one step.
 */
final class UnsoundParts {

    /** Areas whose entries can be unsound one by one; of any other the whole is. */
    private static final Set<String> OF_ELEMENTS = Set.of("condition", "tests", "instruments", "solutions", "steps",
            "results", "trials", "pictures");
    private static final Set<String> OTHER_AREAS = Set.of("title", "summary", "level", "language", "publication",
            "object", "proposal", "reasons", "source");
    private static final String TRANSLATIONS = "translations";
    private static final String READINGS = "results";

    private final Node.Mapping root;
    private final String file;
    private final Set<String> areas = new TreeSet<>();
    private final Set<String> elements = new TreeSet<>();
    private final Set<String> wholeAreas = new TreeSet<>();
    private boolean everything;

    private UnsoundParts(Node.Mapping root) {
        this.root = root;
        this.file = root.place().file();
    }

    /**
     * Finds the unsound parts.
     *
     * @param told what was said about the form of the case and its references
     * @param spoiled where stand-ins were put
     */
    static UnsoundParts of(Node.Mapping root, List<Message> told, Collection<Place> spoiled) {
        UnsoundParts parts = new UnsoundParts(root);
        told.stream().filter(message -> message.severity() == Severity.ERROR).forEach(message -> {
            boolean whole = message.id() == FormMessages.ID_TWICE || message.id() == FormMessages.CIRCLE;
            parts.add(message.place(), whole, message.id() == FormMessages.UNKNOWN_KEY);
        });
        spoiled.forEach(place -> parts.add(place, false, false));
        return parts;
    }

    private void add(Place place, boolean whole, boolean unknownKey) {
        if (!place.file().equals(file)) {
            areas.add(place.file().endsWith(".md") ? TRANSLATIONS : READINGS);
            wholeAreas.add(place.file().endsWith(".md") ? TRANSLATIONS : READINGS);
            return;
        }
        String[] way = place.pointer().split("/", -1);
        if (way.length < 2) {
            missing(unknownKey);
        } else if (OF_ELEMENTS.contains(way[1])) {
            areas.add(way[1]);
            if (whole || way.length < 3) {
                wholeAreas.add(way[1]);
            } else {
                elements.add(way[1] + "/" + way[2]);
            }
        } else {
            everything |= !OTHER_AREAS.contains(way[1]);
            areas.add(way[1]);
            wholeAreas.add(way[1]);
        }
    }

    /** A message about the root speaks of areas that are missing; an unknown key may be any of them, misspelt. */
    private void missing(boolean unknownKey) {
        Set<String> absent = new HashSet<>(OTHER_AREAS);
        absent.addAll(OF_ELEMENTS);
        absent.removeAll(root.entries().keySet());
        areas.addAll(absent);
        wholeAreas.addAll(absent);
        everything |= unknownKey;
    }

    /** Whether everything in these areas was read as it stands. */
    boolean isSound(String... some) {
        return !everything && Stream.of(some).noneMatch(areas::contains);
    }

    /** Whether all that is unsound in an area are single elements, each known by its place. */
    boolean isKnownByElement(String area) {
        return !everything && !wholeAreas.contains(area);
    }

    boolean isEmpty() {
        return areas.isEmpty() && !everything;
    }

    /** Whether a place lies in an unsound part. */
    boolean holds(Place place) {
        if (everything) {
            return true;
        }
        if (!place.file().equals(file)) {
            return !isSound(place.file().endsWith(".md") ? TRANSLATIONS : READINGS);
        }
        String[] way = place.pointer().split("/", -1);
        return way.length >= 2 && (wholeAreas.contains(way[1])
                || way.length >= 3 && elements.contains(way[1] + "/" + way[2]));
    }

    /** Whether the element at a place names the id of an unsound one, other than as what it waits for. */
    boolean leansOn(Place place) {
        String[] way = place.pointer().split("/", -1);
        Set<String> ids = new HashSet<>();
        elements.forEach(element -> id(element).ifPresent(ids::add));
        return way.length >= 3 && element(way[1] + "/" + way[2]).filter(node -> names(node, ids)).isPresent();
    }

    private Optional<Node> element(String element) {
        int slash = element.indexOf('/');
        String key = element.substring(slash + 1);
        return root.get(element.substring(0, slash)).flatMap(area -> area instanceof Node.Mapping group ? group.get(key)
                : area instanceof Node.Sequence list ? Optional.of(list.items().get(Integer.parseInt(key)))
                : Optional.empty());
    }

    private Optional<String> id(String element) {
        int slash = element.indexOf('/');
        if (root.get(element.substring(0, slash)).filter(Node.Mapping.class::isInstance).isPresent()) {
            return Optional.of(element.substring(slash + 1));
        }
        return element(element).filter(Node.Mapping.class::isInstance).flatMap(node -> ((Node.Mapping) node).get("id"))
                .filter(Node.Scalar.class::isInstance).map(node -> ((Node.Scalar) node).text().strip());
    }

    private static boolean names(Node node, Set<String> ids) {
        if (node instanceof Node.Mapping mapping) {
            return mapping.entries().entrySet().stream().filter(entry -> !entry.getKey().equals("after"))
                    .map(Map.Entry::getValue).anyMatch(entry -> names(entry.value(), ids))
                    || mapping.entries().keySet().stream().anyMatch(ids::contains);
        }
        return node instanceof Node.Sequence list ? list.items().stream().anyMatch(item -> names(item, ids))
                : ids.contains(((Node.Scalar) node).text().strip());
    }
}
