package org.benchleaf.check;

import static org.benchleaf.check.References.Kind.DAMAGE;
import static org.benchleaf.check.References.Kind.INDICATOR;
import static org.benchleaf.check.References.Kind.INSTRUMENT;
import static org.benchleaf.check.References.Kind.ITEM;
import static org.benchleaf.check.References.Kind.MATERIAL;
import static org.benchleaf.check.References.Kind.MEDIUM;
import static org.benchleaf.check.References.Kind.PICTURE;
import static org.benchleaf.check.References.Kind.SOLUTION;
import static org.benchleaf.check.References.Kind.STEP;
import static org.benchleaf.quantity.Dimension.AREA;
import static org.benchleaf.quantity.Dimension.COUNT;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.SHARE;
import static org.benchleaf.quantity.Dimension.TIME;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Nearest;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Instrument;
import org.benchleaf.model.Level;
import org.benchleaf.model.Material;
import org.benchleaf.model.Picture;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Result;
import org.benchleaf.model.Solution;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.StatedDay;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.TestResult;
import org.benchleaf.model.TestWords;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Trial;
import org.benchleaf.model.Untold;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.read.Draft;
import org.benchleaf.read.TestWordsReader;

/** Reads the front matter of a case into the model. */
final class CaseForm {

    private static final String PAPER = "paper";

    /** A count with what was counted: words of at least four letters, so that no slip in a unit passes for one. */
    private static final Pattern COUNTED = Pattern.compile(
            "([1-9]\\d{0,3})\\h+(?!inch|feet|foot|yard|metre|meter|micron|percent|degree)(\\p{Ll}{4,}(?:\\h\\p{L}+)*)");

    private final Context context;
    private final Fields root;

    CaseForm(Context context, Fields root) {
        this.context = context;
        this.root = root;
    }

    TreatmentCase read(Draft draft) {
        context.references().know(MEDIUM, Set.of(PAPER));
        Fields object = root.needGroup("object");
        PrintObject treated = new ObjectForm(context).read(object);
        List<Damage> condition = root.groups("condition").stream().map(this::damage).toList();
        List<SpotTest> tests = root.groups("tests").stream().map(this::test).toList();
        List<Instrument> instruments = root.groups("instruments").stream().map(this::instrument).toList();
        List<Solution> solutions = new SolutionForm(context).read(root.group("solutions"));
        List<Step> steps = new StepForm(context).read(root.groups("steps"));
        ResultForm measured = new ResultForm(context, instruments, treated.items());
        List<Result> results = measured.read(root.groups("results"));
        List<Trial> trials = new TrialForm(context).read(root.groups("trials"));
        List<Picture> pictures = pictures();
        List<Reason> reasons = root.groups("reasons").stream().map(this::reason).toList();
        String language = language();
        Publication publication = new PublicationForm(root.soundness()).read(root.needGroup("publication"));
        TreatmentCase own = new TreatmentCase(draft.id(), root.needText("title"), root.needText("summary"),
                level(root), language,
                publication, treated, condition, tests,
                proposal(root.group("proposal").orElse(new Fields(new org.benchleaf.read.Node.Mapping(Map.of(),
                        root.place()), root.soundness()))),
                instruments, solutions, steps, results, measured.days(), trials, pictures, reasons, draft.story(),
                new SourceForm(context, root).read(publication), List.of(),
                root.word("print", CaseForm::withWorkings).orElse(true),
                new ObjectForm(context).privateFields(object), draft.root().map(UntoldForm::in).orElse(Untold.NONE), root.place());
        return own.with(new TranslationForm(root.messages(), own, context.library())
                .read(draft.translations(), language, context.library().studio().languages()));
    }

    /** When the proposal was agreed: a day that has come, or the last day of a month or year that has begun. */
    private Optional<LocalDate> approved(Fields fields) {
        Optional<StatedDay> day = fields.day("approved");
        day.filter(one -> one.first().isAfter(context.today())).ifPresent(late -> fields.messages().add(
                FormMessages.DATE_TO_COME.at(fields.place("approved"), "found", fields.text("approved").orElse(""))));
        return day.map(StatedDay::last);
    }

    private String language() {
        String tag = root.needText("language");
        if (!tag.isEmpty() && !LanguageTags.isWellFormed(tag)) {
            root.messages().add(FormMessages.LANGUAGE_TAG.at(root.place("language"), "found", tag));
        }
        return tag;
    }

    private static Optional<Boolean> withWorkings(String word) {
        return word.equals("with workings") ? Optional.of(true)
                : word.equals("without workings") ? Optional.of(false) : Optional.empty();
    }

    /** For whom its step sheet is written; a retold case that says that it is not known has none. */
    private Optional<Level> level(Fields root) {
        return context.retold() && root.isScalar("level") && root.missing("level").isPresent() ? Optional.empty()
                : Optional.of(root.need(root.word("level", CaseForm::level), "level", Level.FOUNDATION));
    }

    private static Optional<Level> level(String word) {
        return Stream.of(Level.values()).filter(level -> level.word().equals(word)).findFirst();
    }

    private Damage damage(Fields fields) {
        fields.text("id").ifPresent(id -> context.references().declare(DAMAGE, id, fields.place("id")));
        Optional<Matcher> things = fields.isScalar("extent") ? fields.text("extent").map(COUNTED::matcher).filter(Matcher::matches)
                : Optional.empty();
        Optional<Quantity> extent = things.map(counted -> Quantity.count(Long.parseLong(counted.group(1)))).or(() -> howMuch(fields));
        fields.scalar("of").ifPresent(id -> context.references().use(id, ITEM));
        return new Damage(fields.text("id"), fields.needText("what"), fields.text("of"), told(fields, "where"),
                told(fields, "side"), extent,
                fields.isScalar("extent") ? fields.missing("extent") : Optional.empty(),
                things.map(counted -> counted.group(2)), told(fields, "degree"),
                fields.text("active"), fields.group("at").map(CaseForm::spot),
                fields.text("note"), fields.place());
    }

    private static Optional<Quantity> howMuch(Fields fields) {
        boolean share = fields.text("extent").filter(text -> text.endsWith("%")).isPresent();
        return share ? fields.within("extent", 0, 100, SHARE) : fields.reading("extent", LENGTH, AREA, COUNT, SHARE);
    }

    /** The words under a key; empty where they only say that there are none. */
    private static Optional<String> told(Fields fields, String key) {
        return fields.text(key).filter(text -> fields.missing(key).isEmpty());
    }

    private static Damage.Spot spot(Fields fields) {
        return new Damage.Spot(fields.needQuantity("left", LENGTH), fields.needQuantity("top", LENGTH));
    }

    private SpotTest test(Fields fields) {
        fields.scalar("of").ifPresent(id -> context.references().use(id, MEDIUM));
        fields.scalar("after").ifPresent(id -> context.references().use(id, STEP));
        return new SpotTest(fields.needText("of"), testedWith(fields), fields.text("after"),
                fields.positive("dwell", TIME), result(fields), fields.text("note"), fields.place());
    }

    /** Which liquid was tested; only a case that is retold may say that its publication does not name it. */
    private String testedWith(Fields fields) {
        if (fields.missing("with").isPresent()) {
            return context.retold() ? fields.needText("with") : fields.need(Optional.empty(), "with", "");
        }
        fields.scalar("with").ifPresent(id -> context.references().use(id, SOLUTION, MATERIAL, INDICATOR));
        return fields.needText("with");
    }

    /** A result outside the list is said, and read as not known, so that no rule takes it for a pass. */
    private TestResult result(Fields fields) {
        String written = fields.needText("result");
        TestWords.WordSet known = TestWordsReader.read().of(fields.needText("with"),
                fields.text("with").map(context.library().materials()::get).map(Material::kind));
        Optional<TestResult> read = known.read(written);
        if (read.isEmpty() && !written.isEmpty()) {
            List<String> words = known.words().stream().map(TestWords.Word::word).toList();
            List<String> all = known.words().stream()
                    .flatMap(word -> Stream.concat(Stream.of(word.word()), word.also().stream())).toList();
            fields.messages().add(FormMessages.TEST_RESULT_UNKNOWN.at(fields.place("result"), "found", written,
                    "near", Nearest.to(written, all).map(near -> "Did you mean '" + near + "'? ").orElse(""),
                    "words", String.join(", ", words)));
        }
        return read.orElseGet(() -> new TestResult(written, "not known", TestResult.Group.NOT_KNOWN));
    }

    private Proposal proposal(Fields fields) {
        Map<StepKind, String> risks = new LinkedHashMap<>();
        fields.group("risks").ifPresent(group -> group.keys().forEach(key -> StepKind.of(key).ifPresentOrElse(
                kind -> risks.put(kind, group.needText(key)), () -> group.soundness().spoil(group.keyPlace(key)))));
        return new Proposal(new AimForm(root).read(fields.texts("aims")),
                fields.groups("options").stream().map(option -> new Proposal.Option(option.needText("option"),
                        option.needText("why not"))).toList(),
                approved(fields), kinds(fields, "steps"), risks,
                fields.groups("amendments").stream().map(amendment -> new Proposal.Amendment(
                        amendment.need(amendment.latest("on"), "on", LocalDate.EPOCH),
                        kinds(amendment, "adds"), amendment.needText("why"))).toList(),
                fields.place());
    }

    private static List<StepKind> kinds(Fields fields, String key) {
        List<StepKind> kinds = new ArrayList<>();
        fields.texts(key).forEach(word -> StepKind.of(word)
                .ifPresentOrElse(kinds::add, () -> fields.soundness().spoil(fields.place(key))));
        return kinds;
    }

    private Instrument instrument(Fields fields) {
        String id = fields.needText("id");
        context.references().declare(INSTRUMENT, id, fields.place("id"));
        List<Quantity> buffers = new ArrayList<>();
        fields.scalars("buffers").forEach(buffer -> Amounts.read(buffer,
                List.of(org.benchleaf.quantity.Dimension.ACIDITY), fields.messages()).ifPresent(buffers::add));
        return new Instrument(id, fields.needText("is"), resolution(fields),
                fields.isScalar("calibrated") ? fields.past("calibrated", context.today()).stream().toList()
                        : fields.dates("calibrated"), buffers, fields.place("id"));
    }

    /** A resolution has the unit of whatever the instrument reads. */
    private static Optional<Quantity> resolution(Fields fields) {
        return fields.scalar("resolution").flatMap(scalar -> Amounts.readAny(scalar, fields.messages()));
    }

    private List<Picture> pictures() {
        List<Fields> groups = root.groups("pictures");
        List<Picture> pictures = groups.stream().map(this::picture).toList();
        for (int i = 0; i < pictures.size(); i++) {
            Picture one = pictures.get(i);
            Fields fields = groups.get(i);
            one.pair().flatMap(pair -> pictures.stream().filter(other -> other.id().equals(pair)).findFirst())
                    .filter(other -> !other.pair().equals(Optional.of(one.id())))
                    .ifPresent(other -> fields.messages().add(FormMessages.PAIR_ONE_SIDED.at(fields.place("pair"),
                            "id", one.id(), "pair", other.id())));
        }
        return pictures;
    }

    private Picture picture(Fields fields) {
        String id = fields.needText("id");
        context.references().declare(PICTURE, id, fields.place("id"));
        fields.scalar("step").ifPresent(step -> context.references().use(step, STEP));
        fields.scalar("pair").ifPresent(pair -> context.references().use(pair, PICTURE));
        return new Picture(id, fields.needText("file"), fields.needText("moment"), fields.needText("side"),
                fields.needText("light"), fields.text("alt").orElse(""), fields.text("caption").orElse(""),
                fields.text("credit").orElse(""), fields.text("licence").orElse(""), fields.text("step"),
                fields.text("pair"), fields.text("scale"), fields.text("target"), fields.text("caution"),
                fields.group("sheet in picture").map(CaseForm::extent), fields.place("id"));
    }

    private static Picture.Extent extent(Fields fields) {
        return new Picture.Extent(fields.needQuantity("left", SHARE), fields.needQuantity("top", SHARE),
                fields.needQuantity("width", SHARE), fields.needQuantity("height", SHARE));
    }

    private Reason reason(Fields fields) {
        fields.scalar("step").ifPresent(step -> context.references().use(step, STEP));
        return new Reason(fields.needText("rule"), fields.text("step"), fields.word("past", Reason.Past::named), fields.needText("why"),
                fields.place());
    }
}
