package org.benchleaf.json;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonFactoryBuilder;
import com.fasterxml.jackson.core.JsonGenerator;
import com.fasterxml.jackson.core.StreamWriteFeature;
import com.fasterxml.jackson.core.json.JsonWriteFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;

/** How JSON is laid out. */
public enum JsonForm {
    /** On one line, without blanks. */
    COMPACT,
    /** On one line, fit to stand inside a script element. */
    SCRIPT,
    /** For people: each value on a line, two blanks a level. */
    INDENTED,
    /** A list that only programs read, each entry on a line, so that two of them can be compared by lines. */
    LINES;

    // Not the virtual machine's own way of writing numbers, which differs between its versions.
    static final JsonFactory FACTORY = new JsonFactoryBuilder().enable(StreamWriteFeature.USE_FAST_DOUBLE_WRITER)
            .disable(JsonWriteFeature.WRITE_HEX_UPPER_CASE).build();

    /** Sets a writer of the library to this form. */
    JsonGenerator on(JsonGenerator json) {
        if (this == SCRIPT) {
            json.setCharacterEscapes(new ScriptEscapes());
        } else if (this == INDENTED) {
            Separators separators = Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER)
                    .withObjectEmptySeparator("").withArrayEmptySeparator("");
            json.setPrettyPrinter(onLines(new DefaultPrettyPrinter(separators), "  "));
        } else if (this == LINES) {
            json.setPrettyPrinter(onLines(new DefaultPrettyPrinter(), " "));
        }
        return json;
    }

    private static DefaultPrettyPrinter onLines(DefaultPrettyPrinter printer, String indent) {
        DefaultIndenter lines = new DefaultIndenter(indent, "\n");
        return printer.withObjectIndenter(lines).withArrayIndenter(lines);
    }
}
