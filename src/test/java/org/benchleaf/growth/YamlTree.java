package org.benchleaf.growth;

import java.io.StringReader;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.nodes.SequenceNode;

/** A YAML text whose values can be set; written again with every text between quotes. */
final class YamlTree {

    /** Written without quotes, as an author writes numbers and words. */
    private record Plain(String text) {
    }

    private final Map<String, Object> root;

    private YamlTree(Map<String, Object> root) {
        this.root = root;
    }

    static YamlTree read(String yaml) {
        return new YamlTree(mapping(value(new Yaml(new SafeConstructor(new LoaderOptions())).compose(new StringReader(yaml)))));
    }

    @SuppressWarnings("unchecked")
    private static Map<String, Object> mapping(Object value) {
        return (Map<String, Object>) value;
    }

    @SuppressWarnings("unchecked")
    private static List<Object> list(Object value) {
        return (List<Object>) value;
    }

    private static Object value(Node node) {
        if (node instanceof MappingNode mapping) {
            Map<String, Object> values = new LinkedHashMap<>();
            mapping.getValue().forEach(each -> values.put(((ScalarNode) each.getKeyNode()).getValue(), value(each.getValueNode())));
            return values;
        }
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(YamlTree::value).collect(Collectors.toCollection(ArrayList::new));
        }
        ScalarNode scalar = (ScalarNode) node;
        boolean plain = scalar.getScalarStyle() == DumperOptions.ScalarStyle.PLAIN && scalar.getValue().matches("[\\w.-]+");
        return plain ? new Plain(scalar.getValue()) : scalar.getValue();
    }

    /** Sets a value, and makes what leads to it where it is missing. */
    void set(List<String> way, String text) {
        Object at = root;
        for (int i = 0; i < way.size() - 1; i++) {
            boolean listed = way.get(i + 1).equals(TextField.ITEM);
            Object next = get(at, way.get(i));
            if (!(listed ? next instanceof List : next instanceof Map)) {
                next = listed ? new ArrayList<>() : new LinkedHashMap<String, Object>();
                put(at, way.get(i), next);
            }
            at = next;
        }
        put(at, way.get(way.size() - 1), text);
    }

    private static Object get(Object at, String key) {
        if (at instanceof List) {
            return list(at).isEmpty() ? null : list(at).get(0);
        }
        return key.equals(TextField.ANY) ? mapping(at).values().stream().findFirst().orElse(null) : mapping(at).get(key);
    }

    private static void put(Object at, String key, Object value) {
        if (at instanceof List) {
            list(at).add(0, value);
        } else {
            mapping(at).put(key.equals(TextField.ANY) ? mapping(at).keySet().stream().findFirst().orElse("a") : key, value);
        }
    }

    /** The text, each entry of the root on a line of its own. */
    String text() {
        return root.entrySet().stream().map(each -> quoted(each.getKey()) + ": " + text(each.getValue()) + "\n")
                .collect(Collectors.joining());
    }

    private static String text(Object value) {
        if (value instanceof Map) {
            return mapping(value).entrySet().stream().map(each -> quoted(each.getKey()) + ": " + text(each.getValue()))
                    .collect(Collectors.joining(", ", "{", "}"));
        }
        if (value instanceof List) {
            return list(value).stream().map(YamlTree::text).collect(Collectors.joining(", ", "[", "]"));
        }
        return value instanceof Plain plain ? plain.text() : quoted((String) value);
    }

    private static String quoted(String text) {
        return text.matches("[a-z][a-z -]*") ? text
                : "\"" + text.replace("\\", "\\\\").replace("\"", "\\\"").replace("\n", "\\n").replace("\t", "\\t") + "\"";
    }
}
