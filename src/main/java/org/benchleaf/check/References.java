package org.benchleaf.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.read.Node;

/** Who is named and who names whom; both are gathered while a case is read and compared at its end. */
final class References {

    /** What an id can stand for. */
    enum Kind {
        MEDIUM("medium", false), DAMAGE("damage", false), STEP("step", false), SOLUTION("solution", true),
        MATERIAL("material", false), INSTRUMENT("instrument", false), PICTURE("picture", false),
        SOURCE("source", false), INDICATOR("indicator", false), SUBSTANCE("substance", false),
        ITEM("item", false), TRIAL("trial", false), ARM("arm", false);

        private final String word;
        private final boolean meantToBeUsed;

        Kind(String word, boolean meantToBeUsed) {
            this.word = word;
            this.meantToBeUsed = meantToBeUsed;
        }
    }

    private record Use(String id, Place place, List<Kind> kinds) {
    }

    private final Map<Kind, Map<String, Place>> declared = new EnumMap<>(Kind.class);
    private final Map<Kind, Set<String>> known = new EnumMap<>(Kind.class);
    private final List<Use> uses = new ArrayList<>();
    private final Messages messages;
    private Supplier<Optional<OtherNames>> otherNames = Optional::empty;
    /** Made of the whole library, so once for all ids that are not known. */
    private Optional<OtherNames> madeNames = Optional.empty();

    References(Messages messages) {
        this.messages = messages;
        Stream.of(Kind.values()).forEach(kind -> {
            declared.put(kind, new LinkedHashMap<>());
            known.put(kind, new HashSet<>());
        });
    }

    /** Ids that are known without being declared in the file. */
    void know(Kind kind, Collection<String> ids) {
        known.get(kind).addAll(ids);
    }

    /** By what else materials are called; asked only where an id is not known. */
    void alsoCalled(Supplier<OtherNames> names) {
        otherNames = () -> Optional.of(names.get());
    }

    /** An id declared in the file; a second time is a message. */
    void declare(Kind kind, String id, Place place) {
        if (id.isEmpty()) {
            return;
        }
        Place before = declared.get(kind).putIfAbsent(id, place);
        if (before != null) {
            messages.add(FormMessages.ID_TWICE.at(place, "id", id, "kind", kind.word, "line", before.line()));
        }
    }

    /** An id named where one of some kinds is expected. */
    void use(Node.Scalar written, Kind... kinds) {
        use(written.text().strip(), written.place(), kinds);
    }

    void use(String id, Place place, Kind... kinds) {
        uses.add(new Use(id, place, List.of(kinds)));
    }

    /** Says which ids nobody declared and which nobody uses. */
    void compare() {
        Map<Kind, Set<String>> used = new EnumMap<>(Kind.class);
        for (Use use : uses) {
            use.kinds().forEach(kind -> used.computeIfAbsent(kind, key -> new HashSet<>()).add(use.id()));
            if (use.kinds().stream().noneMatch(kind -> isKnown(kind, use.id()))) {
                messages.add(use.kinds().equals(List.of(Kind.SOURCE)) ? notEntered(use)
                        : FormMessages.UNKNOWN_REFERENCE.at(use.place(), "id", use.id(), "kinds",
                                String.join(" or ", use.kinds().stream().map(kind -> kind.word).toList()),
                        "remedy", remedy(use)));
            }
        }
        declared.forEach((kind, ids) -> ids.forEach((id, place) -> {
            if (kind.meantToBeUsed && !used.getOrDefault(kind, Set.of()).contains(id)) {
                messages.add(FormMessages.NEVER_USED.at(place, "id", id, "kind", kind.word));
            }
        }));
    }

    private Message notEntered(Use use) {
        return FormMessages.SOURCE_NOT_ENTERED.at(use.place(), "id", use.id(), "near",
                Nearest.to(use.id(), known.get(Kind.SOURCE)).map(near -> " Or did you mean '" + near + "'?").orElse(""));
    }

    private boolean isKnown(Kind kind, String id) {
        return known.get(kind).contains(id) || declared.get(kind).containsKey(id);
    }

    private Optional<OtherNames> otherNames() {
        if (madeNames.isEmpty()) {
            madeNames = otherNames.get();
        }
        return madeNames;
    }

    private String remedy(Use use) {
        Set<String> all = new TreeSet<>();
        use.kinds().forEach(kind -> {
            all.addAll(known.get(kind));
            all.addAll(declared.get(kind).keySet());
        });
        if (all.isEmpty()) {
            return "Declare it first; there is none yet.";
        }
        Optional<OtherNames> names = use.kinds().contains(Kind.MATERIAL) ? otherNames() : Optional.empty();
        return names.flatMap(other -> other.called(use.id()))
                .or(() -> Nearest.to(use.id(), all).map(near -> "Did you mean '" + near + "'?"))
                .or(() -> names.flatMap(other -> other.near(use.id())))
                .orElseGet(() -> all.size() <= 12 ? "Write one of: " + String.join(", ", all) + "; or declare it."
                        : "Declare it, or write the id of one that is declared.");
    }
}
