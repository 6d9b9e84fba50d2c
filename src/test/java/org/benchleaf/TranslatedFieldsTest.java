package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.lang.reflect.Constructor;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.message.Place;
import org.benchleaf.model.CaseTexts;
import org.benchleaf.model.Translation;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.quantity.Quantity;
import org.junit.jupiter.api.Test;

/**
 * Every text that a case may hold has a place in its translations, or stands with the reason among those that have none. A case is
 * made in which each text is the name of its own field, so that a field which is added later is found too.
 */
class TranslatedFieldsTest {

    private static final Path STAYS = Path.of("src/test/resources/translated-fields/stays.txt");

    /** The names of the fields that hold text, as they were met while the case was made. */
    private final Set<String> met = new TreeSet<>();

    @Test
    void every_text_of_a_case_can_be_translated_or_is_no_words() throws Exception {
        Set<String> translated = new TreeSet<>(CaseTexts.of((TreatmentCase) made(TreatmentCase.class, "")).values());
        Set<String> left = new TreeSet<>(met);
        left.removeIf(translated::contains);
        assertThat(translated).hasSizeGreaterThan(60);
        assertThat(left).isEqualTo(stays());
    }

    private static Set<String> stays() throws IOException {
        Map<String, String> reasons = new TreeMap<>();
        Files.readAllLines(STAYS).stream().filter(line -> !line.startsWith("#")).map(line -> line.split(" \\| "))
                .forEach(line -> reasons.put(line[0], line[1]));
        assertThat(reasons.values()).noneMatch(String::isBlank);
        return reasons.keySet();
    }

    /** One of each kind where there are several, so that a list of steps or results holds all. */
    private List<Object> all(Type type, String name) throws ReflectiveOperationException {
        if (type instanceof Class<?> kinds && kinds.isSealed() && kinds.isInterface()) {
            List<Object> all = new ArrayList<>();
            for (Class<?> kind : kinds.getPermittedSubclasses()) {
                all.addAll(all(kind, name));
            }
            return all;
        }
        return List.of(made(type, name));
    }

    private Object made(Type type, String name) throws ReflectiveOperationException {
        return type instanceof ParameterizedType holder ? held(holder, name) : made((Class<?>) type, name);
    }

    private Object held(ParameterizedType holder, String name) throws ReflectiveOperationException {
        Type of = holder.getActualTypeArguments()[0];
        // Running text is made of blocks in blocks; a story is asked for whole. A case is not translated in its own translation.
        if (of == Translation.class || of.getTypeName().startsWith("org.benchleaf.text.")) {
            return List.of();
        }
        if (holder.getRawType() == Map.class) {
            return Map.of(made(of, name), made(holder.getActualTypeArguments()[1], name));
        }
        List<Object> all = all(of, name);
        return holder.getRawType() == Optional.class ? Optional.of(all.get(0))
                : holder.getRawType() == Set.class ? new LinkedHashSet<>(all) : all;
    }

    private Object made(Class<?> type, String name) throws ReflectiveOperationException {
        if (type == String.class) {
            met.add(name);
            return name;
        }
        Map<Class<?>, Object> plain = Map.of(int.class, 1, Integer.class, 1, double.class, 1.0, Double.class, 1.0, boolean.class, true,
                Boolean.class, true, LocalDate.class, LocalDate.of(2026, 1, 1), Quantity.class, Quantity.count(1),
                Place.class, Place.file("case.md"));
        if (plain.containsKey(type)) {
            return plain.get(type);
        }
        if (type.isEnum()) {
            return type.getEnumConstants()[0];
        }
        return type.isSealed() ? all(type, name).get(0) : recorded(type, name);
    }

    private Object recorded(Class<?> type, String name) throws ReflectiveOperationException {
        RecordComponent[] fields = type.getRecordComponents();
        assertThat(fields).as(type + " of " + name).isNotNull();
        Object[] values = new Object[fields.length];
        for (int at = 0; at < fields.length; at++) {
            values[at] = made(fields[at].getGenericType(),
                    type.getName().replaceFirst(".*\\.", "").replace('$', ' ') + " " + fields[at].getName());
        }
        Constructor<?> whole = type.getDeclaredConstructor(
                Stream.of(fields).map(RecordComponent::getType).toArray(Class<?>[]::new));
        whole.setAccessible(true);
        return whole.newInstance(values);
    }
}
