package org.benchleaf.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.message.Messages;
import org.benchleaf.message.ReferenceMessages;
import org.benchleaf.model.ComparedKind;
import org.benchleaf.model.ComparedMaterial;
import org.benchleaf.model.Handling;
import org.benchleaf.model.HazardLimits;
import org.benchleaf.model.Precedence;
import org.benchleaf.model.PublicCare;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Source;
import org.benchleaf.model.Substance;
import org.benchleaf.model.Thesaurus;
import org.benchleaf.model.ThingWords;
import org.benchleaf.quantity.Dimension;

/**
 * Reads the tables of hazards, care, labels and claims: those shipped with the program, then the rows that a studio
 * adds or puts in their place in {@code content/reference/}. What the law words or numbers is not theirs to change.
 */
public final class ReferenceReader {

    private static final String SHIPPED = "/reference/";
    private static final String STUDIO = "reference/";
    private static final Set<String> OPEN_TO_STUDIOS = Set.of("substances", "cautions", "equipment", "waste",
            "first-aid", "claims", "blanks", "incompatible", "access", "home-care", "compared", "thesaurus");

    /** A table that comes in several files, one a theme. */
    private static final Map<String, List<String>> THEMES = Map.of("substances", List.of("substances",
            "substances-water", "substances-solvents", "substances-adhesives", "substances-residues"));

    private static final Set<String> THING_WORDS = Set.of("wet", "filling", "carrier", "tool");

    /** What equipment protects; of one kind the strictest is worn. */
    private static final Set<String> KINDS = Set.of("hands", "eyes", "breath", "body", "air", "light", "head");
    private static final int STRICTEST = 9;

    /** What advice for the owner of a sheet is about. */
    private static final Set<String> ABOUT = Set.of("deciding", "washing", "cleaning", "bleaching", "hopes", "handling",
            "light", "framing", "keeping", "trouble", PublicCare.Advice.PRICE, PublicCare.Advice.ASKING);

    /** The kinds of materials that are compared. */
    private static final Set<String> COMPARED = Stream.of(ComparedKind.values()).map(ComparedKind::word).collect(Collectors.toSet());
    private static final Set<String> FACETS = Stream.of(Thesaurus.Facet.values()).map(Thesaurus.Facet::word).collect(Collectors.toSet());

    /** Two groups must not meet: no more, no fewer. */
    private static final int PAIR = 2;

    private final Optional<ContentFolder> content;
    private final Messages messages;

    private ReferenceReader(Optional<ContentFolder> content, Messages messages) {
        this.content = content;
        this.messages = messages;
    }

    /**
     * The tables that hold for a content folder.
     *
     * @throws IllegalStateException if one of our own files is missing or wrong
     */
    public static Reference read(Path contentRoot, Messages messages) {
        return new ReferenceReader(Optional.of(new ContentFolder(contentRoot)), messages).reference();
    }

    /** The shipped tables alone. */
    public static Reference shipped() {
        return new ReferenceReader(Optional.empty(), new Messages()).reference();
    }

    /** The sources that the shipped tables cite. */
    public static List<Source> sources() {
        return OwnYaml.list(SHIPPED + "sources-hazards.yaml").stream().map(row -> new Source(row.text("key"),
                row.text("author"), row.text("year"), row.text("title"), row.text("where"),
                row.optionalText("address"), row.text("status"), !row.flag("unpublished"))).toList();
    }

    private Reference reference() {
        Map<String, Reference.Statement> statements = worded(table("statements", ReferenceReader::statement));
        Map<String, Reference.Equipment> equipment = table("equipment", row -> new Reference.Equipment(row.key(),
                row.text("name"), row.oneOf("kind", KINDS), row.optionalNumber("strictness", 1, STRICTEST).orElse(1.0).intValue(),
                row.texts("also"), row.text("words"), row.text("source")));
        Map<String, Reference.Caution> cautions = table("cautions",
                row -> caution(row, statements.keySet(), equipment.keySet()));
        Map<String, Reference.WasteKind> waste = table("waste", row -> waste(row, statements.keySet(), cautions.keySet()));
        Map<String, Set<String>> classes = table("hazard-classes", row -> classWord(row, statements.keySet()));
        Map<String, Substance> first = new HashMap<>();
        return new Reference(table("substances", row -> SubstanceRow.read(row, classes, waste.keySet(), first)),
                statements, table("pictograms", ReferenceReader::pictogram), equipment,
                list("mixture-limits", row -> MixtureRuleRow.read(row, statements.keySet())), cautions, waste,
                list("first-aid", row -> new Reference.FirstAid(row.key(),
                        Set.copyOf(row.textsOf("statements", statements.keySet())),
                        Set.copyOf(row.textsOf("cautions", cautions.keySet())), row.text("words"),
                        row.text("source"))),
                list("labels", row -> new Reference.LabelSize(row.quantity("up to", Dimension.VOLUME),
                        row.quantity("height", Dimension.LENGTH), row.quantity("width", Dimension.LENGTH),
                        row.quantity("pictogram", Dimension.LENGTH), row.quantity("x-height", Dimension.LENGTH),
                        row.text("source"))),
                list("claims", row -> new Reference.ClaimWord(row.text("language"), row.texts("words"),
                        row.oneOf("kind", Set.of("promise", "safety", "age", "authenticity", "strength")), row.texts("unless"),
                        row.texts("answered by"), row.text("instead"), row.text("source"))),
                list("incompatible", ReferenceReader::incompatible),
                list("access", row -> access(row, statements.keySet())),
                list("acute-toxicity", row -> MixtureRuleRow.acute(row, statements.keySet())),
                table("precedence", row -> new Precedence(row.key(),
                        Set.copyOf(row.textsOf("left out beside", statements.keySet())),
                        Set.copyOf(row.textsOf("no pictogram beside", statements.keySet())), row.text("source"))),
                table("hazard-words", row -> new Reference.Wording(row.key(), row.text("words"),
                        row.optionalText("do"))), limits(), publicCare(), things(),
                list("compared", ReferenceReader::compared), thesaurus(), LayOutReader.rows(), ThingShapeReader.rows(),
                classes, BenchNeedReader.rows(), BenchNoteReader.rows());
    }

    private PublicCare publicCare() {
        return new PublicCare(list("plain-words", row -> new PublicCare.PlainWord(row.key(), row.text("measure"),
                row.optionalQuantity("from", Dimension.ACIDITY), row.optionalQuantity("below", Dimension.ACIDITY), row.text("source"))),
                list("home-care", row -> new PublicCare.Advice(row.key(), row.oneOf("about", ABOUT), row.texts("where"),
                        row.optionalText("sheets").orElse(""), row.text("words"), row.optionalText("address"), row.text("source"))));
    }

    private static ComparedMaterial compared(ReferenceRow row) {
        Map<String, ComparedMaterial.Cell> cells = new LinkedHashMap<>();
        ComparedKind kind = ComparedKind.of(row.oneOf("kind", COMPARED)).orElse(ComparedKind.ADHESIVE);
        kind.groups().stream().flatMap(List::stream).forEach(property -> row.row(property).ifPresent(cell ->
                cells.put(property, new ComparedMaterial.Cell(cell.text("says"), cell.text("source"), cell.texts("with")))));
        return new ComparedMaterial(capital(row.key()), kind, row.set("substances"), row.texts("named"), row.yes("alone"), cells,
                row.has("speaks") ? row.rows("speaks").stream().map(ReferenceReader::argument).toList() : List.of());
    }

    private static ComparedMaterial.Argument argument(ReferenceRow row) {
        boolean favours = row.has("for");
        return new ComparedMaterial.Argument(row.texts("where"), favours, row.text(favours ? "for" : "against"), row.text("source"),
                row.optionalText("rule"));
    }

    private static String capital(String name) {
        return name.substring(0, 1).toUpperCase(Locale.ROOT) + name.substring(1);
    }

    private Thesaurus thesaurus() {
        return new Thesaurus(list("thesaurus", row -> new Thesaurus.Term(row.text("word"), facet(row.oneOf("facet", FACETS)),
                row.text("concept"), row.text("source"))));
    }

    private static Thesaurus.Facet facet(String word) {
        return Stream.of(Thesaurus.Facet.values()).filter(facet -> facet.word().equals(word)).findFirst().orElse(Thesaurus.Facet.RECORD);
    }

    private HazardLimits limits() {
        Map<String, HazardLimits.Limit> rows = table("limits", row -> new HazardLimits.Limit(row.quantity("limit",
                Dimension.ACIDITY, Dimension.TEMPERATURE, Dimension.MASS_FRACTION, Dimension.VOLUME_FRACTION,
                Dimension.SHARE), row.text("source")));
        return new HazardLimits(rows.get("strongly alkaline"), rows.get("strongly acid"), rows.get("drain"), rows.get("weak up to"),
                rows.get("extremely flammable up to boiling point"), rows.get("highly flammable below"),
                rows.get("flammable up to"), rows.get("ethanol in water"), rows.get("benzene of note P below"),
                rows.get("sensitiser named from"), rows.get("harmful part counts from"),
                rows.get("poisonous part counts from"), rows.get("unknown toxicity left out above"),
                rows.get("vapour that may catch fire above"), rows.get("vapour that harms above"));
    }

    private static Reference.WasteKind waste(ReferenceRow row, Set<String> statements, Set<String> cautions) {
        return new Reference.WasteKind(row.key(), row.text("name"), Set.copyOf(row.textsOf("statements", statements)),
                Set.copyOf(row.textsOf("cautions", cautions)), row.optionalQuantity("ph below", Dimension.ACIDITY),
                row.optionalQuantity("ph above", Dimension.ACIDITY), row.set("never with"), row.optionalText("bottle"),
                row.text("words"), row.optionalText("drain"), row.text("source"));
    }

    private ThingWords things() {
        Map<String, String> rows = table("thing-words", row -> {
            row.text("source");
            return row.oneOf("is", THING_WORDS);
        });
        return new ThingWords(keys(rows, "wet"), keys(rows, "filling"), keys(rows, "carrier"), keys(rows, "tool"));
    }

    private static List<String> keys(Map<String, String> rows, String value) {
        return rows.entrySet().stream().filter(row -> row.getValue().equals(value)).map(Map.Entry::getKey).toList();
    }

    /** The statements that go with a class. */
    private static Set<String> classWord(ReferenceRow row, Set<String> statements) {
        row.text("source");
        return Set.copyOf(row.textsOf("statements", statements));
    }

    private static Reference.Incompatible incompatible(ReferenceRow row) {
        return new Reference.Incompatible(row.key(), row.texts("between", PAIR), row.text("gives"), row.text("words"),
                row.text("source"));
    }

    private static Reference.Access access(ReferenceRow row, Set<String> statements) {
        return new Reference.Access(row.key(), row.set("substances"),
                Set.copyOf(row.textsOf("statements", statements)), row.set("groups"),
                row.optionalQuantity("from", Dimension.MASS_FRACTION), row.yes("extreme ph"),
                row.optionalQuantity("more than", Dimension.VOLUME, Dimension.MASS), row.set("used by"),
                row.optionalWord("trainee", Reference.Trainee.values(), Reference.Trainee::word)
                        .orElse(Reference.Trainee.ALLOWED),
                row.optionalText("public").isPresent() && row.oneOf("public", Set.of("withheld")).equals("withheld"),
                row.optionalText("instead"), row.text("why"), row.text("source"));
    }

    /** The statements with every place filled that the law leaves to whoever labels the bottle. */
    private Map<String, Reference.Statement> worded(Map<String, Reference.Statement> official) {
        Map<String, Blanks> blanks = table("blanks", row -> Blanks.of(row, official));
        Map<String, Reference.Statement> worded = new LinkedHashMap<>();
        official.forEach((code, statement) -> worded.put(code, blanks.containsKey(code)
                ? statement.worded(blanks.get(code).filledInto(statement.official())) : statement));
        return worded;
    }

    private static Reference.Statement statement(ReferenceRow row) {
        return new Reference.Statement(row.key(), row.text("text"), row.text("text"),
                Integer.parseInt(row.text("rank")), row.optionalText("pictogram"), row.optionalText("signal"),
                row.texts("precautions"), row.text("source"), row.text("edition"));
    }

    private static Reference.Pictogram pictogram(ReferenceRow row) {
        return new Reference.Pictogram(row.key(), row.text("name"), row.text("meaning"),
                OwnFile.text(SHIPPED + "pictograms/" + row.key() + ".svg"), row.text("source"));
    }

    private static Reference.Caution caution(ReferenceRow row, Set<String> statements, Set<String> equipment) {
        Reference.When when = row.row("when").map(inner -> new Reference.When(inner.set("steps"), inner.set("parts"),
                Set.copyOf(inner.textsOf("statements", statements)), inner.set("substances"), inner.set("traits"),
                inner.set("words"), inner.optionalQuantity("at least", Dimension.VOLUME)))
                .orElseGet(() -> {
                    row.text("when");
                    return new Reference.When(Set.of(), Set.of(), Set.of(), Set.of(), Set.of(), Set.of(),
                            Optional.empty());
                });
        return new Reference.Caution(row.key(), row.oneOf("level", Set.of("danger", "care")),
                row.optionalText("name"), row.text("words"), row.text("do"), row.textsOf("wear", equipment), row.optionalText("turn"),
                handlings(row), when, row.text("source"));
    }

    private static Set<Handling> handlings(ReferenceRow row) {
        List<String> words = row.textsOf("at", Stream.of(Handling.values()).map(Handling::word).collect(Collectors.toSet()));
        return Stream.of(Handling.values()).filter(one -> words.contains(one.word())).collect(Collectors.toSet());
    }

    private <T> List<T> list(String name, Function<ReferenceRow, T> read) {
        return new ArrayList<>(table(name, read).values());
    }

    /** The rows of a table by their key: the studio's own rows first where the order counts, shipped ones after. */
    private <T> Map<String, T> table(String name, Function<ReferenceRow, T> read) {
        Map<String, T> shipped = new LinkedHashMap<>();
        Messages own = new Messages();
        shippedParts(name).forEach(part -> take(part, read, new RowExamples(), own, shipped));
        if (!own.isEmpty()) {
            throw new IllegalStateException("The table of " + name + " cannot be read: " + own.all());
        }
        Map<String, T> rows = new LinkedHashMap<>();
        String file = STUDIO + name + ".yaml";
        if (OPEN_TO_STUDIOS.contains(name)) {
            content.filter(folder -> folder.holds(file))
                    .flatMap(folder -> folder.read(folder.resolve(file), FrontMatter.MOST_BYTES, messages))
                    .flatMap(text -> YamlFile.read(text, 0, text.text().length(), messages).root())
                    .ifPresent(root -> take(root, read, examples(name), messages, rows));
        }
        shipped.forEach(rows::putIfAbsent);
        return Collections.unmodifiableMap(rows);
    }

    private static Stream<Node.Mapping> shippedParts(String name) {
        return THEMES.getOrDefault(name, List.of(name)).stream().map(part -> OwnFile.tree(SHIPPED + part + ".yaml"));
    }

    private static RowExamples examples(String name) {
        RowExamples examples = new RowExamples();
        shippedParts(name).forEach(examples::and);
        return examples;
    }

    private static <T> void take(Node.Mapping root, Function<ReferenceRow, T> read, RowExamples examples, Messages messages,
            Map<String, T> rows) {
        root.entries().forEach((key, entry) -> {
            if (!(entry.value() instanceof Node.Mapping mapping)) {
                messages.add(ReferenceMessages.TABLE_UNREADABLE.at(entry.keyPlace(), "problem",
                        "'" + key + "' has no keys of its own", "example", examples.row()));
                return;
            }
            ReferenceRow row = new ReferenceRow(key, mapping, examples, messages);
            T made = read.apply(row);
            if (row.isSound()) {
                rows.put(key, made);
            }
        });
    }
}
