package org.benchleaf.read;

import java.util.ArrayList;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.events.AliasEvent;
import org.yaml.snakeyaml.events.CollectionStartEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.MappingEndEvent;
import org.yaml.snakeyaml.events.MappingStartEvent;
import org.yaml.snakeyaml.events.NodeEvent;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.StreamReader;

/**
 * Builds a tree of values from the parser's events.
 *
 * <p>Events and not the library's own composer, because only here can anchors, aliases, tags, doubled keys and depth
 * be refused one by one with their place, before anything is built from them; and a scalar stays the text that was
 * written, since no resolver ever sees it.
 */
final class YamlReader {

    static final int DEEPEST = 32;

    private final Lines lines;
    private final int start;
    private final int[] charOffsets;
    private final Messages messages;
    private final Iterator<Event> events;

    /** What can be read again with other lines: the events of one YAML text. */
    record Events(String text, int start, List<Event> list) {
    }

    private YamlReader(Events events, Lines lines, Messages messages) {
        this.lines = lines;
        this.start = events.start();
        this.charOffsets = charOffsets(events.text());
        this.messages = messages;
        this.events = events.list().iterator();
    }

    /** The events of a text that stands at an offset of a file; empty, with a message, if it is not YAML. */
    static Optional<Events> events(String yaml, int start, Lines lines, Messages messages) {
        List<Event> list = new ArrayList<>();
        Events found = new Events(yaml, start, list);
        YamlReader places = new YamlReader(found, lines, messages);
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(FrontMatter.MOST_BYTES);
        options.setProcessComments(false);
        ParserImpl parser = new ParserImpl(new StreamReader(yaml), options);
        int depth = 0;
        try {
            while (parser.peekEvent() != null) {
                Event event = parser.getEvent();
                depth += event instanceof CollectionStartEvent ? 1 : 0;
                depth -= event instanceof MappingEndEvent || event instanceof SequenceEndEvent ? 1 : 0;
                if (depth > DEEPEST) {
                    messages.add(ReadingMessages.YAML_TOO_DEEP.at(places.place(event, ""), "most", DEEPEST));
                    return Optional.empty();
                }
                list.add(event);
            }
        } catch (MarkedYAMLException wrong) {
            messages.add(YamlSlip.message(wrong, yaml, mark -> places.offset(mark) - start,
                    at -> lines.place(start + at, start + at, "")));
            return Optional.empty();
        }
        return Optional.of(found);
    }

    /** The tree of one document; empty if the text holds none. */
    static Optional<Node> tree(Events events, Lines lines, Messages messages) {
        return new YamlReader(events, lines, messages).document();
    }

    private Optional<Node> document() {
        Optional<Node> root = Optional.empty();
        while (events.hasNext()) {
            Event event = events.next();
            if (event instanceof DocumentStartEvent && root.isPresent()) {
                messages.add(ReadingMessages.MANY_DOCUMENTS.at(place(event, "")));
                return root;
            }
            if (event instanceof NodeEvent) {
                root = Optional.of(node(event, ""));
            }
        }
        return root;
    }

    private Node node(Event event, String pointer) {
        refuseExtras(event, pointer);
        if (event instanceof MappingStartEvent) {
            return mapping(event, pointer);
        }
        if (event instanceof SequenceStartEvent) {
            return sequence(event, pointer);
        }
        if (event instanceof ScalarEvent scalar) {
            refuseHidden(scalar, pointer);
            return new Node.Scalar(scalar.getValue(), scalar.isPlain(), place(event, pointer));
        }
        return new Node.Scalar("", false, place(event, pointer));
    }

    private Node sequence(Event opening, String pointer) {
        List<Node> items = new ArrayList<>();
        for (Event event = events.next(); !(event instanceof SequenceEndEvent); event = events.next()) {
            items.add(node(event, pointer + "/" + items.size()));
        }
        return new Node.Sequence(items, place(opening, pointer));
    }

    private Node mapping(Event opening, String pointer) {
        Map<String, Node.Entry> entries = new LinkedHashMap<>();
        for (Event event = events.next(); !(event instanceof MappingEndEvent); event = events.next()) {
            if (!(event instanceof ScalarEvent key)) {
                messages.add(ReadingMessages.KEY_NOT_A_WORD.at(place(event, pointer)));
                node(event, pointer);
                node(events.next(), pointer);
                continue;
            }
            String inner = pointer + "/" + escaped(key.getValue());
            refuseExtras(event, inner);
            refuseHidden(key, inner);
            Place keyPlace = place(event, inner);
            Node.Entry entry = new Node.Entry(keyPlace, node(events.next(), inner));
            if (entries.putIfAbsent(key.getValue(), entry) != null) {
                messages.add(ReadingMessages.KEY_TWICE.at(keyPlace, "key", key.getValue()));
            }
        }
        return new Node.Mapping(entries, place(opening, pointer));
    }

    private void refuseExtras(Event event, String pointer) {
        if (event instanceof AliasEvent || event instanceof NodeEvent named && named.getAnchor() != null) {
            messages.add(ReadingMessages.ALIAS.at(place(event, pointer)));
        }
        String tag = event instanceof ScalarEvent scalar ? scalar.getTag()
                : event instanceof CollectionStartEvent collection ? collection.getTag() : null;
        if (tag != null) {
            messages.add(ReadingMessages.TAG.at(place(event, pointer), "tag", tag));
        }
    }

    /** An escape in double quotes can write what the file itself may not hold. */
    private void refuseHidden(ScalarEvent scalar, String pointer) {
        ContentFolder.forbidden(scalar.getValue()).ifPresent(at -> messages.add(ReadingMessages.CONTROL_CHARACTER.at(
                place(scalar, pointer), "character", ContentFolder.number(scalar.getValue(), at))));
    }

    static String escaped(String key) {
        return key.replace("~", "~0").replace("/", "~1");
    }

    private Place place(Event event, String pointer) {
        return place(event.getStartMark(), event.getEndMark(), pointer);
    }

    private Place place(Mark from, Mark to, String pointer) {
        return lines.place(offset(from), offset(to), pointer);
    }

    private int offset(Mark mark) {
        int index = mark.getIndex();
        return start + (charOffsets.length == 0 ? index : charOffsets[Math.min(index, charOffsets.length - 1)]);
    }

    /** The character offset of every code point; empty where both are alike, which is nearly always. */
    private static int[] charOffsets(String text) {
        if (text.codePointCount(0, text.length()) == text.length()) {
            return new int[0];
        }
        int[] offsets = new int[text.codePointCount(0, text.length()) + 1];
        for (int at = 0, index = 0; at < text.length(); index++) {
            offsets[index] = at;
            at += Character.charCount(text.codePointAt(at));
        }
        offsets[offsets.length - 1] = text.length();
        return offsets;
    }
}
