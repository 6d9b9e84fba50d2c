package org.benchleaf.read;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.List;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.DumperOptions.FlowStyle;
import org.yaml.snakeyaml.DumperOptions.ScalarStyle;
import org.yaml.snakeyaml.emitter.Emitter;
import org.yaml.snakeyaml.events.DocumentEndEvent;
import org.yaml.snakeyaml.events.DocumentStartEvent;
import org.yaml.snakeyaml.events.Event;
import org.yaml.snakeyaml.events.ImplicitTuple;
import org.yaml.snakeyaml.events.ScalarEvent;
import org.yaml.snakeyaml.events.SequenceEndEvent;
import org.yaml.snakeyaml.events.SequenceStartEvent;
import org.yaml.snakeyaml.events.StreamStartEvent;

/**
 * Words as they stand in a file for an author: bare where YAML reads them as themselves, else in double quotes.
 *
 * <p>Numbers stand bare too, since this program reads every value as the text that was written.
 */
public final class YamlText {

    private YamlText() {
    }

    /** One line, for a place within braces or brackets: a comma there ends a value. */
    public static String inBraces(String words) {
        return written(words, FlowStyle.FLOW);
    }

    /** One line, for a place behind a key or a dash. */
    public static String onLine(String words) {
        return written(words, FlowStyle.BLOCK);
    }

    private static String written(String words, FlowStyle style) {
        boolean isBare = !words.isEmpty() && emitted(words, ScalarStyle.PLAIN, style).equals(words);
        return isBare ? words : emitted(words, ScalarStyle.DOUBLE_QUOTED, style);
    }

    private static String emitted(String words, ScalarStyle scalar, FlowStyle style) {
        DumperOptions options = new DumperOptions();
        options.setSplitLines(false);
        StringWriter text = new StringWriter();
        Emitter emitter = new Emitter(text, options);
        try {
            for (Event event : listOf(new ScalarEvent(null, null, new ImplicitTuple(true, true), words, null, null, scalar), style)) {
                emitter.emit(event);
            }
        } catch (IOException never) {
            throw new UncheckedIOException(never);
        }
        int after = style == FlowStyle.FLOW ? "]\n".length() : "\n".length();
        int before = style == FlowStyle.FLOW ? "[".length() : "- ".length();
        return text.toString().substring(before, text.getBuffer().length() - after);
    }

    private static List<Event> listOf(Event item, FlowStyle style) {
        return List.of(new StreamStartEvent(null, null), new DocumentStartEvent(null, null, false, null, null),
                new SequenceStartEvent(null, null, true, null, null, style), item, new SequenceEndEvent(null, null),
                new DocumentEndEvent(null, null, false));
    }
}
