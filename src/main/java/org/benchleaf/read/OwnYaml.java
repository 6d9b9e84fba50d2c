package org.benchleaf.read;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * One entry of a YAML file that is part of the program. A missing or unknown key is our own mistake, told with the
 * entry it stands in.
 */
final class OwnYaml {

    /** Read once in the life of the program, and never changed. */
    private static final Map<String, Object> LOADED = new ConcurrentHashMap<>();

    private final String where;
    private final Map<?, ?> entries;
    private final Set<String> asked = new HashSet<>();

    private OwnYaml(String where, Map<?, ?> entries) {
        this.where = where;
        this.entries = entries;
    }

    static List<OwnYaml> list(String path) {
        return entries(path, LOADED.computeIfAbsent(path, OwnYaml::load));
    }

    private static Object load(String path) {
        LoaderOptions options = new LoaderOptions();
        options.setAllowDuplicateKeys(false);
        return new Yaml(new SafeConstructor(options)).load(OwnFile.text(path));
    }

    String text(String key) {
        return optionalText(key).orElseThrow(() -> new IllegalStateException(where + " lacks '" + key + "'"));
    }

    Optional<String> optionalText(String key) {
        return asWritten(key).map(String::strip);
    }

    /** A text with the blanks and line breaks at its ends. */
    Optional<String> asWritten(String key) {
        asked.add(key);
        return Optional.ofNullable(entries.get(key)).map(String::valueOf);
    }

    Optional<Double> optionalNumber(String key) {
        return optionalText(key).map(Double::valueOf);
    }

    boolean flag(String key) {
        return optionalText(key).map("true"::equals).orElse(false);
    }

    List<String> texts(String key) {
        asked.add(key);
        Object value = entries.get(key);
        if (value == null) {
            return List.of();
        }
        if (value instanceof List<?> list) {
            return list.stream().map(String::valueOf).map(String::strip).toList();
        }
        throw new IllegalStateException(where + ": '" + key + "' is not a list");
    }

    List<OwnYaml> children(String key) {
        asked.add(key);
        Object value = entries.get(key);
        return value == null ? List.of() : entries(where + ", " + key, value);
    }

    /** Says that everything was asked for: a key that nobody reads is a slip of the pen. */
    void allRead() {
        for (Object key : entries.keySet()) {
            if (!asked.contains(String.valueOf(key))) {
                throw new IllegalStateException(where + " has the unknown key '" + key + "'");
            }
        }
    }

    String where() {
        return where;
    }

    private static List<OwnYaml> entries(String where, Object value) {
        if (!(value instanceof List<?> list)) {
            throw new IllegalStateException(where + " is not a list");
        }
        List<OwnYaml> entries = new ArrayList<>();
        for (Object each : list) {
            if (!(each instanceof Map<?, ?> map)) {
                throw new IllegalStateException(where + " has an entry that is not a set of keys: " + each);
            }
            Object name = map.containsKey("name") ? map.get("name") : map.get("key");
            entries.add(new OwnYaml(where + ", " + name, map));
        }
        return entries;
    }
}
