package org.benchleaf.rule;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * A sound case with small changes made to it.
 *
 * <p>A change is a YAML file. {@code on} names other changes that are made first. Groups are merged; a list whose items
 * carry an id is merged item by item, new ones are added, and {@code gone: yes} takes one out; {@code key +} adds to a
 * list; {@code (none)} takes a key out; anything else replaces.
 */
final class Variation {

    static final Path FOLDER = Path.of("src/test/resources/rules");

    private static final String GONE = "(none)";

    private final Map<String, Object> root = mapping(load(FOLDER.resolve("base.yaml")));
    private final Set<Path> made = new LinkedHashSet<>();

    /** The front matter of the sound case with the changes of a file. */
    static Map<String, Object> of(Path change) {
        Variation variation = new Variation();
        variation.make(change);
        return variation.root;
    }

    /** The front matter of the sound case after named changes and one that is given. */
    static Map<String, Object> of(List<String> named, String change) {
        Variation variation = new Variation();
        named.forEach(name -> variation.make(FOLDER.resolve(name + ".yaml")));
        merge(variation.root, mapping(yaml().load(change)));
        return variation.root;
    }

    /** The front matter of the sound case with a treatment, told in one of the ways that its file gives. */
    static Map<String, Object> told(Path treatment, String way) {
        Map<String, Object> file = mapping(load(treatment));
        Variation variation = new Variation();
        if (file.get("on") instanceof List<?> first) {
            first.forEach(name -> variation.make(FOLDER.resolve(name + ".yaml")));
        }
        merge(variation.root, mapping(file.get("both")));
        merge(variation.root, Map.of("steps", file.get(way)));
        return variation.root;
    }

    /** The case as a file of a content folder. */
    static String file(Map<String, Object> root) {
        return "---\n" + yaml().dump(root) + "---\n\n## Story\n\nThe sheet was printed.\n";
    }

    private void make(Path change) {
        if (!made.add(change)) {
            return;
        }
        Map<String, Object> wanted = mapping(load(change));
        if (wanted.remove("on") instanceof List<?> first) {
            first.forEach(name -> make(FOLDER.resolve(name + ".yaml")));
        }
        merge(root, wanted);
    }

    private static void merge(Map<String, Object> into, Map<String, Object> change) {
        change.forEach((key, value) -> {
            if (GONE.equals(value)) {
                into.remove(key);
            } else if (key.endsWith(" +")) {
                String list = key.substring(0, key.length() - 2);
                List<Object> longer = new ArrayList<>((List<?>) into.getOrDefault(list, List.of()));
                longer.addAll((List<?>) value);
                into.put(list, longer);
            } else if (value instanceof Map<?, ?>) {
                Map<String, Object> inner = into.get(key) instanceof Map<?, ?> old ? mapping(old) : new LinkedHashMap<>();
                merge(inner, mapping(value));
                into.put(key, inner);
            } else if (value instanceof List<?> list && isNamed(list) && into.get(key) instanceof List<?> old && isNamed(old)) {
                into.put(key, mergedById(old, list));
            } else {
                into.put(key, value);
            }
        });
    }

    private static List<Object> mergedById(List<?> old, List<?> changes) {
        Map<Object, Map<String, Object>> byId = new LinkedHashMap<>();
        old.forEach(item -> byId.put(mapping(item).get("id"), mapping(item)));
        for (Object change : changes) {
            Object id = mapping(change).get("id");
            if (mapping(change).containsKey("gone")) {
                byId.remove(id);
            } else {
                merge(byId.computeIfAbsent(id, unknown -> new LinkedHashMap<>()), mapping(change));
            }
        }
        return new ArrayList<>(byId.values());
    }

    private static boolean isNamed(List<?> list) {
        return !list.isEmpty() && list.stream().allMatch(item -> item instanceof Map<?, ?> map && map.containsKey("id"));
    }

    private static Map<String, Object> mapping(Object value) {
        Map<String, Object> copy = new LinkedHashMap<>();
        ((Map<?, ?>) value).forEach((key, inner) -> copy.put(String.valueOf(key), inner));
        return copy;
    }

    /** What a file of the folder gives a reason for. */
    static Map<String, Object> reasons(String file) {
        return mapping(load(FOLDER.resolve(file)));
    }

    private static Object load(Path file) {
        try {
            return yaml().load(Files.readString(file));
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** YAML in which every single value stays the text that was written. */
    private static Yaml yaml() {
        LoaderOptions loading = new LoaderOptions();
        DumperOptions dumping = new DumperOptions();
        dumping.setDefaultFlowStyle(DumperOptions.FlowStyle.BLOCK);
        dumping.setWidth(200);
        return new Yaml(new SafeConstructor(loading), new Representer(dumping), dumping, loading, new Resolver() {
            @Override
            protected void addImplicitResolvers() {
                // None: a date stays a date's text, and "no" stays "no".
            }
        });
    }
}
