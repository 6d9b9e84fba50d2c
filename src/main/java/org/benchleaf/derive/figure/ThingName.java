package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.benchleaf.model.Material;
import org.benchleaf.model.ThingWords;

/** The name of a thing, word by word: whether it says that the thing holds something, and whether it says what the thing is. */
public final class ThingName {

    private static final String TOOL = "tool";
    private static final String DRY = "dry";

    /** Shorter words end others by chance; longer ones end compounds, such as "paintbrush". */
    private static final int LEAST_ENDING = 5;
    private static final Set<String> ASIDE = Set.of("for", "against", "without", "für", "gegen", "ohne", "pour", "contre", "sans");
    private static final Set<String> KEEPING_OFF = Set.of("resistant", "proof", "free", "tight");
    private static final Set<String> HOLDING = Set.of("with", "of", "in", "containing", "mit", "avec", "de", "d");
    private static final Set<String> NAMED_FOR_FILLINGS = Set.of(TOOL, "absorbent", "support", "indicator");
    private static final Pattern CLAUSE_ENDS = Pattern.compile("[,;()/]");
    private static final Pattern BETWEEN_WORDS = Pattern.compile("[^\\p{L}\\p{N}]++");

    private final Material material;
    private final ThingWords table;
    private final List<List<String>> clauses;

    public ThingName(Material material, ThingWords table) {
        this.material = material;
        this.table = table;
        this.clauses = Arrays.stream(CLAUSE_ENDS.split(material.name())).map(ThingName::words).map(ThingName::withoutAside).toList();
    }

    /** The word that says that the thing holds something; empty where it is called dry. */
    public Optional<String> holding() {
        return isDry() ? Optional.empty() : wet().or(this::filling);
    }

    /** Whether it is a tool by its kind, and no word of its name is that of a tool. */
    public boolean isUnfamiliar() {
        return material.kind().equals(TOOL) && !isDry() && clauses.stream().noneMatch(clause ->
                positions(clause).anyMatch(at -> ends(clause, at, table.tools()) || ends(clause, at, table.carriers())));
    }

    /** A tool for dry cleaning need not be dry. */
    private boolean isDry() {
        String name = " " + String.join(" ", words(material.id() + " " + material.name())) + " ";
        return material.traits().contains(DRY) || name.replace(" dry clean", " ").contains(" dry ");
    }

    private Optional<String> wet() {
        return Stream.concat(words(material.id()).stream(), clauses.stream().flatMap(List::stream))
                .filter(table.wet()::contains).findFirst();
    }

    private Optional<String> filling() {
        return NAMED_FOR_FILLINGS.contains(material.kind()) ? clauses.stream().flatMap(clause -> positions(clause)
                .filter(at -> isFilling(clause, at)).mapToObj(clause::get)).findFirst() : Optional.empty();
    }

    /**
     * A tool is only named for what it is used with, where the tool comes last; of another thing the filling itself comes last, or is in
     * it.
     */
    private boolean isFilling(List<String> clause, int at) {
        boolean named = ends(clause, at, table.fillings())
                && !(at + 1 < clause.size() && KEEPING_OFF.contains(clause.get(at + 1)));
        if (!named || material.kind().equals(TOOL)) {
            return named && IntStream.range(at, clause.size()).noneMatch(later -> ends(clause, later, table.tools()));
        }
        return at == clause.size() - 1 || clause.subList(0, at).stream().anyMatch(HOLDING::contains);
    }

    /** Whether a row of the table ends at this word: alone, in the plural, or as the end of a compound. */
    private static boolean ends(List<String> clause, int at, List<String> rows) {
        String before = " " + String.join(" ", clause.subList(0, at + 1));
        return rows.stream().anyMatch(row -> Stream.of(row, row + "s", row + "es").anyMatch(word ->
                before.endsWith(" " + word) || row.length() >= LEAST_ENDING && before.endsWith(word)));
    }

    private static IntStream positions(List<String> clause) {
        return IntStream.range(0, clause.size());
    }

    private static List<String> words(String text) {
        return Arrays.stream(BETWEEN_WORDS.split(text.toLowerCase(Locale.ROOT))).filter(word -> !word.isEmpty()).toList();
    }

    /** Without what the thing is for, or against. */
    private static List<String> withoutAside(List<String> words) {
        List<String> kept = new ArrayList<>();
        for (String word : words) {
            if (ASIDE.contains(word)) {
                break;
            }
            kept.add(word);
        }
        return kept;
    }
}
