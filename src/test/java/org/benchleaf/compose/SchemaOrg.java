package org.benchleaf.compose;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/** Knows the types of schema.org and the properties that each has, its own and inherited ones. */
public final class SchemaOrg {

    private static final Map<String, Set<String>> PROPERTIES = read();

    private SchemaOrg() {
    }

    private static Map<String, Set<String>> read() {
        try {
            return Files.readAllLines(Path.of("src/test/resources/open-data/schema-org-properties.txt")).stream()
                    .map(line -> line.split(": "))
                    .collect(Collectors.toMap(line -> line[0], line -> Set.copyOf(Arrays.asList(line[1].split(" ")))));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /**
     * Types that the vocabulary does not have, and properties that none of an object's types has.
     *
     * @param same other names of types and properties that a context maps to the vocabulary
     */
    public static List<String> findings(JsonNode node, Map<String, String> same) {
        List<String> findings = new ArrayList<>();
        if (node.has("@type")) {
            Set<String> properties = new HashSet<>();
            for (JsonNode type : node.get("@type").isArray() ? node.get("@type") : List.of(node.get("@type"))) {
                String name = same.getOrDefault(type.asText(), type.asText());
                if (PROPERTIES.containsKey(name)) {
                    properties.addAll(PROPERTIES.get(name));
                } else {
                    findings.add("no type is called " + name);
                }
            }
            node.fieldNames().forEachRemaining(name -> {
                if (!name.startsWith("@") && !properties.contains(same.getOrDefault(name, name))) {
                    findings.add(node.get("@type") + " has no " + name);
                }
            });
        }
        node.forEach(inside -> findings.addAll(findings(inside, same)));
        return findings;
    }
}
