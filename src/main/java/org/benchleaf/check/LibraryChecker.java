package org.benchleaf.check;

import static org.benchleaf.quantity.Dimension.AMOUNT_PER_VOLUME;
import static org.benchleaf.quantity.Dimension.LENGTH;
import static org.benchleaf.quantity.Dimension.MASS;
import static org.benchleaf.quantity.Dimension.MASS_FRACTION;
import static org.benchleaf.quantity.Dimension.MASS_PER_AREA;
import static org.benchleaf.quantity.Dimension.MASS_PER_MASS;
import static org.benchleaf.quantity.Dimension.MASS_PER_VOLUME;
import static org.benchleaf.quantity.Dimension.RATE;
import static org.benchleaf.quantity.Dimension.TEMPERATURE;
import static org.benchleaf.quantity.Dimension.TIME;
import static org.benchleaf.quantity.Dimension.VOLUME;
import static org.benchleaf.quantity.Dimension.VOLUME_FRACTION;

import java.time.DayOfWeek;
import java.time.LocalTime;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Library;
import org.benchleaf.model.LibraryTexts;
import org.benchleaf.model.Material;
import org.benchleaf.model.Method;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Source;
import org.benchleaf.model.Studio;
import org.benchleaf.model.Substance;
import org.benchleaf.model.Term;
import org.benchleaf.model.TermDrawing;
import org.benchleaf.read.LibraryDraft;
import org.benchleaf.read.Node;
import org.benchleaf.read.PhrasesReader;
import org.benchleaf.read.ReferenceReader;
import org.benchleaf.read.TablesDraft;

/** Checks what all cases share and turns it into the library. */
public final class LibraryChecker {

    private final LibraryDraft draft;
    private final Messages messages = new Messages();
    private final Fields.Soundness soundness = new Fields.Soundness(messages);
    private final References references = new References(messages);

    private LibraryChecker(LibraryDraft draft) {
        this.draft = draft;
        messages.addAll(draft.messages());
    }

    /**
     * The library, and everything there is to say about its files. Where a file has errors the library holds
     * stand-ins, good enough to go on checking the cases, never to publish.
     */
    public static CheckedLibrary check(LibraryDraft draft) {
        return new LibraryChecker(draft).check();
    }

    /**
     * The tables of hazards that hold for a studio, with its own window for the drain; what is wrong with these alone is
     * added to the messages of the draft. Where they have errors the tables hold stand-ins, and no answer may rest on them.
     */
    public static Reference tables(TablesDraft draft) {
        return draft.studio().map(part -> new DrainWindow(draft.reference(), draft.messages())
                .of(new Fields(part.root(), new Fields.Soundness(draft.messages())))).orElse(draft.reference());
    }

    private CheckedLibrary check() {
        draft.studio().ifPresent(part -> Form.STUDIO.check(part.root(), messages));
        draft.materials().forEach(part -> Form.MATERIALS.check(part.root(), messages));
        draft.glossary().ifPresent(part -> Form.GLOSSARY.check(part.root(), messages));
        draft.sources().ifPresent(part -> Form.SOURCES.check(part.root(), messages));
        draft.classes().forEach(part -> Form.CLASS.check(part.root(), messages));
        draft.issues().forEach(part -> Form.ISSUES.check(part.root(), messages));
        Map<String, Source> sources = new LinkedHashMap<>();
        draft.formulary().sources().forEach(source -> sources.put(source.key(), source));
        draft.ruleBook().sources().forEach(source -> sources.put(source.key(), source));
        ReferenceReader.sources().forEach(source -> sources.putIfAbsent(source.key(), source));
        draft.sources().ifPresent(part -> sources.putAll(sources(fields(part))));
        references.know(References.Kind.SOURCE, sources.keySet());
        Map<String, Material> materials = new LinkedHashMap<>();
        draft.materials().forEach(part -> fields(part).named().forEach((id, fields) -> {
            references.declare(References.Kind.MATERIAL, id, fields(part).keyPlace(id));
            materials.putIfAbsent(id, material(id, fields, fields(part).keyPlace(id)));
        }));
        Studio studio = draft.studio().map(part -> studio(fields(part))).orElseGet(() -> studio(nothing()));
        List<CourseClass> classes = draft.classes().stream()
                .map(part -> new ClassForm(fields(part), draft.caseIds(), materials.keySet(), draft.reference()).read(part.name(),
                        issued(part.name()))).toList();
        tellIssuesOfNoClass();
        Map<String, Method> methods = new LinkedHashMap<>();
        draft.formulary().methods().forEach(method -> methods.put(method.name(), method));
        draft.formulary().plainMethods().forEach(method -> methods.put(method.name(), method));
        Library library = translated(new Library(studio, materials, terms(), sources, methods, classes,
                draft.studio().map(this::fields).map(new DrainWindow(draft.reference(), messages)::of).orElse(draft.reference()),
                draft.ruleBook().rules(), draft.ruleBook().matrix(), draft.formulary(), Map.of(), Phrases.ENGLISH));
        references.compare();
        if (!messages.hasErrors()) {
            soundness.unsound().ifPresent(place -> messages.add(FormMessages.WRONG_SHAPE.at(place,
                    "found", "something", "wanted", "another value", "example", "see 'Writing a case file'")));
        }
        return new CheckedLibrary(library, messages);
    }

    /** What was handed out of the class of that name. */
    private List<ClassPapers.Issued> issued(String course) {
        return draft.issues().stream().filter(part -> part.name().equals(course)).map(this::fields).map(IssuesForm::read)
                .findFirst().orElse(List.of());
    }

    private void tellIssuesOfNoClass() {
        List<String> names = draft.classes().stream().map(LibraryDraft.YamlPart::name).toList();
        draft.issues().stream().filter(part -> !names.contains(part.name())).forEach(part -> messages.add(
                ClassMessages.ISSUES_OF_NO_CLASS.at(part.place(), "class", part.name())));
    }

    /** With what the program and the studio say in each language that the studio lists or has words for. */
    private Library translated(Library library) {
        Map<String, Phrases> all = new LinkedHashMap<>();
        library.studio().languages().stream().skip(1).forEach(tag -> all.put(tag, PhrasesReader.in(tag)));
        Map<String, String> texts = LibraryTexts.byAddress(library);
        draft.words().forEach(part -> {
            if (!LanguageTags.isWellFormed(part.name())) {
                messages.add(FormMessages.LANGUAGE_TAG.at(part.place(), "found", part.name()));
            }
            StudioWords words = StudioWords.of(part, texts);
            tell(words, part.name(), Set.copyOf(texts.values()));
            all.put(part.name(), PhrasesReader.in(part.name()).and(part.name(), words.words()));
        });
        return library.toldIn(all);
    }

    private void tell(StudioWords words, String language, Set<String> said) {
        Map<String, Place> leftOver = new LinkedHashMap<>();
        words.unsaid().forEach((text, place) -> Nearest.to(text, said).ifPresentOrElse(near -> messages.add(unsaid(text, place,
                "Write '" + near + "' in its place, and see that the words fit it.", language)), () -> leftOver.put(text, place)));
        leftOver.entrySet().stream().findFirst().ifPresent(first -> messages.add(leftOver.size() == 1
                ? unsaid(first.getKey(), first.getValue(), "Write the text as it stands in the studio's files, or delete the line.",
                        language)
                : FormMessages.WORDS_OF_NO_TEXTS.at(first.getValue(), "count", leftOver.size(), "language", language,
                        "text", first.getKey())));
        words.outdated().forEach((text, place) -> messages.add(FormMessages.WORDS_OF_OLDER_TEXT.at(place, "text", text,
                "language", language)));
    }

    private static Message unsaid(String text, Place place, String remedy, String language) {
        return FormMessages.WORDS_OF_NO_TEXT.at(place, "text", text, "remedy", remedy, "language", language);
    }

    private Fields fields(LibraryDraft.YamlPart part) {
        return new Fields(part.root(), soundness);
    }

    private Fields nothing() {
        return new Fields(new Node.Mapping(Map.of(), Place.file("studio.yaml")), new Fields.Soundness(new Messages()));
    }

    private Map<String, Source> sources(Fields file) {
        Map<String, Source> sources = new LinkedHashMap<>();
        file.named().forEach((key, fields) -> sources.put(key, new Source(key, fields.needText("author"),
                fields.text("year").orElse(""), fields.needText("title"), fields.text("where").orElse(""),
                fields.text("address"), fields.text("status").orElse("from memory"), true)));
        return sources;
    }

    private Material material(String id, Fields fields, Place place) {
        fields.scalar("source").ifPresent(key -> references.use(key, References.Kind.SOURCE));
        return new Material(id, fields.needText("name"), fields.needText("kind"), fields.needText("plain"),
                substance(fields, "substance"),
                fields.positive("strength", VOLUME_FRACTION, MASS_FRACTION, MASS_PER_VOLUME, AMOUNT_PER_VOLUME),
                substance(fields, "rest"), fields.ph("pH"), fields.reading("grammage", MASS_PER_AREA),
                fields.missing("grammage"), fields.reading("height", LENGTH),
                fields.reading("width", LENGTH), fields.reading("uptake", MASS_PER_MASS),
                fields.positive("keeps", TIME), fields.text("kept"), Set.copyOf(fields.texts("traits")),
                fields.text("source"), place);
    }

    /** By whichever of its names: the row's own key is what the rest of the program asks by. */
    private Optional<String> substance(Fields fields, String key) {
        return fields.text(key).map(name -> draft.reference().substanceCalled(name).map(Substance::key).orElse(name));
    }

    private List<Term> terms() {
        List<Term> terms = new ArrayList<>();
        draft.glossary().map(this::fields).map(Fields::named).orElse(Map.of()).forEach((id, fields) -> {
            fields.scalar("source").ifPresent(key -> references.use(key, References.Kind.SOURCE));
            terms.add(new Term(id, fields.needText("term"), fields.texts("also"), fields.needText("plain"),
                    fields.text("more"), fields.texts("see"), fields.text("source"), fields.text("drawing").flatMap(TermDrawing::of),
                    fields.place()));
        });
        List<String> known = terms.stream().map(Term::id).toList();
        draft.glossary().map(this::fields).map(Fields::named).orElse(Map.of()).values().forEach(fields ->
                fields.scalars("see").stream().filter(see -> !known.contains(see.text().strip())).forEach(see ->
                        messages.add(FormMessages.UNKNOWN_REFERENCE.at(see.place(), "id", see.text(), "kinds", "term",
                                "remedy", Nearest.to(see.text(), known).map(near -> "Did you mean '" + near + "'?")
                                        .orElse("Add the term to the glossary, or take it out of 'see'.")))));
        return terms.stream().sorted(Comparator.comparing((Term term) -> term.term().toLowerCase(Locale.ROOT))
                .thenComparing(Term::id)).toList();
    }

    private Studio studio(Fields fields) {
        Fields hours = fields.needGroup("hours");
        Fields room = fields.needGroup("room");
        List<String> languages = fields.texts("languages");
        fields.scalars("languages").stream().filter(tag -> !LanguageTags.isWellFormed(tag.text())).forEach(tag ->
                messages.add(FormMessages.LANGUAGE_TAG.at(tag.place(), "found", tag.text())));
        fields.text("web").filter(address -> !address.startsWith("https://") && !address.startsWith("http://")).ifPresent(address ->
                messages.add(FormMessages.WRONG_SHAPE.at(fields.place("web"), "found", "'" + address + "'", "wanted",
                        "an address that begins with https://", "example", "https://studio.example/cases/")));
        return new Studio(fields.needText("name"), fields.needText("about"), fields.texts("does"),
                fields.texts("people"), fields.texts("contact"), fields.text("web"), fields.text("licence"), fields.yes("demo", false),
                languages, days(hours),
                hours.time("opens", LocalTime.of(9, 0)), hours.time("closes", LocalTime.of(17, 0)),
                room.reading("volume", VOLUME), room.reading("air changes", RATE),
                room.asRead("temperature", room.quantity("temperature", TEMPERATURE)),
                fields.groups("trays").stream().map(LibraryChecker::tray).toList(),
                fields.groups("glassware").stream().map(LibraryChecker::vessel).toList(),
                fields.groups("balances").stream().map(LibraryChecker::balance).toList(),
                fields.word("publishing", word -> Stream.of(Studio.Publishing.values())
                        .filter(known -> known.words().equals(word)).findFirst()).orElse(Studio.Publishing.ONE_SITE),
                takeAlong(fields),
                fields.word("fonts", word -> Stream.of(Studio.Fonts.values())
                        .filter(known -> known.words().equals(word)).findFirst()).orElse(Studio.Fonts.OF_THE_SITE),
                fields.needText("emergency"), fields.needText("waste"), fields.place());
    }

    private static Set<Studio.TakeAlong> takeAlong(Fields fields) {
        Set<Studio.TakeAlong> forms = EnumSet.noneOf(Studio.TakeAlong.class);
        fields.texts("take along").forEach(word -> Stream.of(Studio.TakeAlong.values())
                .filter(form -> form.words().equals(word)).findFirst()
                .ifPresentOrElse(forms::add, () -> fields.soundness().spoil(fields.place("take along"))));
        return forms;
    }

    private static Set<DayOfWeek> days(Fields hours) {
        Set<DayOfWeek> days = EnumSet.noneOf(DayOfWeek.class);
        hours.texts("days").forEach(word -> Stream.of(DayOfWeek.values())
                .filter(day -> day.getDisplayName(TextStyle.SHORT, Locale.ENGLISH).equals(word)).findFirst()
                .ifPresentOrElse(days::add, () -> hours.soundness().spoil(hours.place("days"))));
        return days;
    }

    private static Studio.Tray tray(Fields fields) {
        return new Studio.Tray(fields.needText("id"), fields.needReading("height", LENGTH),
                fields.needReading("width", LENGTH), fields.needReading("depth", LENGTH));
    }

    private static Studio.Vessel vessel(Fields fields) {
        return new Studio.Vessel(fields.needText("kind"), fields.needPositive("volume", VOLUME),
                fields.text("class").orElse("B"), fields.positive("tolerance", VOLUME));
    }

    private static Studio.Balance balance(Fields fields) {
        return new Studio.Balance(fields.needText("id"), fields.needPositive("most", MASS),
                fields.needPositive("step", MASS));
    }
}
