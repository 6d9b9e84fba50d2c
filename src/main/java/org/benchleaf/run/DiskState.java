package org.benchleaf.run;

import java.nio.file.Path;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.read.CaseReader;
import org.benchleaf.read.LibraryReader;

/**
 * How the files of a studio stand on the disk, by size and time of the last change, in the groups on which different pages
 * depend.
 *
 * @param glossary its words stand on pages, and nothing is worked out with them; what they tell of a case is checked again with the case
 * @param classes each concerns the case that it works through
 * @param others what all cases share besides
 * @param templates how pages look
 * @param cases the files of each case, by its id
 */
record DiskState(Map<Path, String> glossary, Map<Path, String> classes, Map<Path, String> others, Map<Path, String> templates,
        SortedMap<String, Map<Path, String>> cases) {

    private static final String GLOSSARY = "glossary.yaml";
    private static final String CLASSES = "classes";

    /**
     * How they stand now.
     *
     * @throws java.io.UncheckedIOException if the disk fails, also where a file goes while it is looked at
     */
    static DiskState of(Path content, Optional<Path> templates) {
        Map<Path, String> shared = stand(content, LibraryReader::reads);
        SortedMap<String, Map<Path, String>> cases = new TreeMap<>();
        CaseReader.folders(content).forEach(folder ->
                cases.put(folder.getFileName().toString(), stand(folder, CaseReader::reads)));
        return new DiskState(only(shared, file -> content.relativize(file).startsWith(GLOSSARY)),
                only(shared, file -> content.relativize(file).startsWith(CLASSES)),
                only(shared, file -> !content.relativize(file).startsWith(GLOSSARY)
                        && !content.relativize(file).startsWith(CLASSES)),
                templates.map(folder -> stand(folder, path -> true)).orElse(Map.of()), cases);
    }

    private static Map<Path, String> stand(Path folder, Predicate<Path> wanted) {
        Map<Path, String> stand = new TreeMap<>();
        ContentHash.stand(folder, wanted, stand);
        return stand;
    }

    private static Map<Path, String> only(Map<Path, String> files, Predicate<Path> wanted) {
        Map<Path, String> some = new TreeMap<>(files);
        some.keySet().removeIf(wanted.negate());
        return some;
    }

    /** The ids of the cases of which a file differs, is new or is gone. */
    Set<String> casesOtherThanIn(DiskState before) {
        return differing(cases, before.cases);
    }

    /** The names, without their endings, of the files of classes that differ, are new or are gone. */
    Set<String> classesOtherThanIn(DiskState before) {
        return differing(classes, before.classes).stream().map(file -> file.getFileName().toString())
                .map(name -> name.substring(0, name.indexOf('.') < 0 ? name.length() : name.indexOf('.')))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static <K extends Comparable<? super K>, V> Set<K> differing(Map<K, V> now, Map<K, V> before) {
        return Stream.concat(now.keySet().stream(), before.keySet().stream())
                .filter(key -> !now.containsKey(key) || !now.get(key).equals(before.get(key)))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    /** How the pictures of a case stand. */
    Map<Path, String> pictures(Path content, String caseId) {
        return only(cases.getOrDefault(caseId, Map.of()), file -> file.startsWith(CasePictures.folder(content, caseId)));
    }
}
