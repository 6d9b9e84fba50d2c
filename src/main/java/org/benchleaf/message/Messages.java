package org.benchleaf.message;

import java.util.ArrayList;
import java.util.List;

/** A growing list of messages of one run or one case; not for use by several threads at once. */
public final class Messages {

    private final List<Message> list = new ArrayList<>();

    /** Adds a message. */
    public void add(Message message) {
        list.add(message);
    }

    /** Adds all of another list. */
    public void addAll(Messages others) {
        list.addAll(others.list);
    }

    /** Everything said, in reading order and each once. */
    public List<Message> all() {
        return list.stream().sorted(Message.READING_ORDER).distinct().toList();
    }

    /** Whether anything said forbids publishing. */
    public boolean hasErrors() {
        return list.stream().anyMatch(message -> message.severity() == Severity.ERROR);
    }

    /** Whether nothing was said. */
    public boolean isEmpty() {
        return list.isEmpty();
    }
}
