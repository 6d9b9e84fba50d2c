package org.benchleaf.command;

import java.net.URI;
import java.net.URISyntaxException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.message.Message;
import org.benchleaf.message.Place;
import org.benchleaf.message.Severity;

/**
 * Puts messages into a log that editors and build servers read.
 *
 * <p>Source: OASIS, Static Analysis Results Interchange Format (SARIF) Version 2.1.0, 2020.
 */
final class Sarif {

    private static final String SCHEMA = "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

    private Sarif() {
    }

    static Map<String, Object> log(List<Message> messages) {
        List<String> codes = new ArrayList<>(rules(messages).keySet());
        Map<String, Object> driver = ordered("name", "Benchleaf", "rules", List.copyOf(rules(messages).values()));
        Map<String, Object> run = ordered("tool", ordered("driver", driver), "columnKind", "utf16CodeUnits",
                "results", messages.stream().map(message -> result(message, codes.indexOf(message.code()))).toList());
        return ordered("$schema", SCHEMA, "version", "2.1.0", "runs", List.of(run));
    }

    private static Map<String, Object> rules(List<Message> messages) {
        Map<String, Object> rules = new TreeMap<>();
        messages.forEach(message -> rules.put(message.code(), ordered("id", message.code(),
                "shortDescription", ordered("text", message.id().what()),
                "fullDescription", ordered("text", message.id().why()),
                "help", ordered("text", message.id().fix()))));
        return rules;
    }

    private static Map<String, Object> result(Message message, int rule) {
        return ordered("ruleId", message.code(), "ruleIndex", rule, "level", level(message.severity()),
                "message", ordered("text", message.what() + " " + message.why() + " " + message.fix()),
                "locations", List.of(location(message.place())));
    }

    private static String level(Severity severity) {
        return switch (severity) {
            case ERROR -> "error";
            case WARNING -> "warning";
            case ADVICE -> "note";
        };
    }

    private static Map<String, Object> location(Place place) {
        Map<String, Object> physical = ordered("artifactLocation", ordered("uri", address(place.file())));
        if (place.line() > 0) {
            Map<String, Object> region = ordered("startLine", place.line());
            if (place.column() > 0) {
                region.put("startColumn", place.column());
                region.put("endColumn", place.column() + place.length());
            }
            physical.put("region", region);
        }
        Map<String, Object> location = ordered("physicalLocation", physical);
        if (!place.pointer().isEmpty()) {
            location.put("logicalLocations", List.of(ordered("fullyQualifiedName", place.pointer())));
        }
        return location;
    }

    /** A path as a relative reference or, where it is absolute, as a file address. */
    private static String address(String path) {
        try {
            return path.startsWith("/") ? new URI("file", "", path, null).toASCIIString()
                    : new URI(null, null, "./" + path, null).normalize().toASCIIString();
        } catch (URISyntaxException wrong) {
            throw new IllegalArgumentException("not a path: " + path, wrong);
        }
    }

    private static Map<String, Object> ordered(Object... pairs) {
        Map<String, Object> map = new LinkedHashMap<>();
        for (int i = 0; i < pairs.length; i += 2) {
            map.put((String) pairs[i], pairs[i + 1]);
        }
        return map;
    }
}
