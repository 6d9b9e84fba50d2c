package org.benchleaf.message;

import java.util.List;
import java.util.stream.Stream;

/** Everything that can be said to an author; the page of messages and the tests are made from it. */
public final class Catalogue {

    private static final List<Message.Id[]> ENTRIES = List.of(ReadingMessages.values(), FormMessages.values(),
            RuleMessages.values(), ReferenceMessages.values(), FigureMessages.values(), HazardMessages.values(),
            ClaimMessages.values(), PictureMessages.values(), ConsentMessages.values(),
            ClassMessages.values(), PlanMessages.values(), RecordMessages.values(), DraftMessages.values(), LeakMessages.values(),
            EditionMessages.values());

    private Catalogue() {
    }

    /** Every entry, in the order of the stages; the rules of the trade bring their own beside these. */
    public static List<Message.Id> all() {
        return ENTRIES.stream().flatMap(Stream::of).toList();
    }
}
