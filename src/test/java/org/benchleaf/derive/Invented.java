package org.benchleaf.derive;

import java.time.DayOfWeek;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.message.Place;
import org.benchleaf.model.CaseSources;
import org.benchleaf.model.Citing;
import org.benchleaf.model.Damage;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Level;
import org.benchleaf.model.Library;
import org.benchleaf.model.LowReserve;
import org.benchleaf.model.Material;
import org.benchleaf.model.Matrix;
import org.benchleaf.model.Method;
import org.benchleaf.model.PaperSupport;
import org.benchleaf.model.Part;
import org.benchleaf.model.Phrases;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Proposal;
import org.benchleaf.model.Publication;
import org.benchleaf.model.Reason;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Result;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Source;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.StatedTime;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.model.Story;
import org.benchleaf.model.Studio;
import org.benchleaf.model.TreatmentCase;
import org.benchleaf.model.Untold;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.QuantityReader;
import org.benchleaf.read.MethodReader;
import org.benchleaf.read.ReferenceReader;

/** Small invented cases and studios for tests, written as they would stand in a file. */
public final class Invented {

    public static final Place PLACE = Place.file("content/cases/invented/case.md");
    private static final Formulary FORMULARY = MethodReader.read();

    public String height = "420 mm";
    public String width = "594 mm";
    Optional<String> grammage = Optional.of("100 g/m²");
    Optional<String> grain = Optional.empty();
    final List<Damage> damages = new ArrayList<>();
    final List<Solution> solutions = new ArrayList<>();
    public final List<SpotTest> tests = new ArrayList<>();
    final List<Step> steps = new ArrayList<>();
    final List<Result> results = new ArrayList<>();
    public final List<Reason> reasons = new ArrayList<>();
    final List<Story.Section> sections = new ArrayList<>();
    final List<Studio.Tray> trays = new ArrayList<>();
    public final List<Studio.Vessel> glassware = new ArrayList<>(List.of(
            vessel("50 mL"), vessel("100 mL"), vessel("250 mL"), vessel("1000 mL")));
    final List<Studio.Balance> balances = new ArrayList<>(List.of(
            new Studio.Balance("bench balance", q("500 g"), q("0.01 g")),
            new Studio.Balance("kitchen balance", q("5 kg"), q("1 g"))));
    public final Map<String, Material> materials = new LinkedHashMap<>();

    public Invented() {
        material("deionised-water", "liquid", "water", Optional.empty(), Optional.empty());
        material("ethanol-96", "liquid", "ethanol", Optional.of("96 % v/v"), Optional.empty());
        material("calcium-hydroxide", "solid", "calcium hydroxide", Optional.empty(), Optional.empty());
        material("wheat-starch", "solid", "wheat starch", Optional.empty(), Optional.empty());
        material("kozo-9", "tissue", "", Optional.empty(), Optional.of("9 g/m²"));
    }

    public static Quantity q(String text) {
        return QuantityReader.read(text).quantity().orElseThrow(() -> new IllegalArgumentException(text));
    }

    public static StatedTime time(String text) {
        return Stream.of(StatedValue.Form.ABOUT, StatedValue.Form.LESS_THAN, StatedValue.Form.MORE_THAN)
                .filter(form -> text.startsWith(word(form))).findFirst()
                .map(form -> StatedTime.told(form, q(text.substring(word(form).length())), FORMULARY))
                .orElseGet(() -> StatedTime.of(q(text)));
    }

    private static String word(StatedValue.Form form) {
        return form.name().toLowerCase(Locale.ROOT).replace('_', ' ') + " ";
    }

    static Studio.Vessel vessel(String volume) {
        return new Studio.Vessel("measuring cylinder", q(volume), "B", Optional.empty());
    }

    public void material(String id, String kind, String substance, Optional<String> strength, Optional<String> grammage) {
        material(id, kind, substance, strength, Optional.empty(), grammage);
    }

    public void material(String id, String kind, String substance, Optional<String> strength, Optional<String> rest,
            Optional<String> grammage) {
        materials.put(id, new Material(id, id, kind, "", Optional.of(substance).filter(name -> !name.isEmpty()),
                strength.map(Invented::q), rest, Optional.empty(), grammage.map(Invented::q), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(),
                PLACE));
    }

    /** A tool of which the studio says that it holds nothing. */
    public Invented dry(String id) {
        materials.put(id, new Material(id, id, "tool", "", Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(),
                Set.of("dry"), Optional.empty(), PLACE));
        return this;
    }

    Invented blotter(String height, String width, String grammage, String uptake) {
        materials.put("blotter", new Material("blotter", "blotter", "absorbent", "", Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(q(grammage)), Optional.empty(), Optional.of(q(height)),
                Optional.of(q(width)), Optional.of(q(uptake)), Optional.empty(), Optional.empty(), Set.of(),
                Optional.empty(), PLACE));
        return this;
    }

    public Invented tear(String id, String extent) {
        damages.add(new Damage(Optional.of(id), "tear", Optional.empty(), Optional.empty(), Optional.empty(), Optional.of(q(extent)),
                Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), PLACE));
        return this;
    }

    public Invented solution(String id, Recipe recipe) {
        return solution(id, recipe, Map.of(), Optional.empty());
    }

    /** Keys: make, least, keeps, ready, hands. */
    public Invented solution(String id, Recipe recipe, Map<String, String> amounts, Optional<LocalDate> madeOn) {
        solutions.add(new Solution(id, id, recipe, amount(amounts, "make"), amount(amounts, "least"),
                amount(amounts, "keeps"), Optional.empty(), amount(amounts, "ready"), amount(amounts, "hands"),
                madeOn, List.of(), Optional.empty(), Optional.empty(), PLACE));
        return this;
    }

    public Invented tested(String id, Recipe recipe, Optional<LowReserve> test) {
        solutions.add(new Solution(id, id, recipe, Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), Optional.empty(), test, PLACE));
        return this;
    }

    private static Optional<Quantity> amount(Map<String, String> amounts, String key) {
        return Optional.ofNullable(amounts.get(key)).map(Invented::q);
    }

    public Invented step(String id, Part... parts) {
        return step(id, Map.of("takes", "1 h"), List.of(), parts);
    }

    public Invented step(String id, StepKind kind, Part... parts) {
        return step(id, Map.of("takes", "1 h", "kind", kind.name()), List.of(), parts);
    }

    /** Keys: takes, hands, most, on, overnight, people, kind, wait, sign. */
    public Invented step(String id, Map<String, String> keys, List<String> after, Part... parts) {
        Optional<StatedTime> hands = Optional.ofNullable(keys.get("hands")).map(text -> text.endsWith("%")
                ? StatedTime.of(QuantityReader.read(text, org.benchleaf.quantity.Dimension.SHARE).quantity().orElseThrow()) : time(text));
        steps.add(new Step(id, StepKind.valueOf(keys.getOrDefault("kind", "WASHING")), Optional.empty(), List.of(),
                "Do it.", Optional.empty(), Optional.empty(),
                Optional.empty(), Optional.empty(), List.of(), Optional.ofNullable(keys.get("takes")).map(Invented::time),
                Optional.empty(), hands, after,
                amount(keys, "wait").map(time -> new Step.Wait(Optional.of(StatedTime.of(time)), Optional.empty(), Optional.empty()))
                        .or(() -> Optional.ofNullable(keys.get("sign"))
                                .map(sign -> new Step.Wait(Optional.empty(), Optional.empty(), Optional.of(sign)))),
                amount(keys, "most"),
                Optional.empty(), "conservator", Integer.parseInt(keys.getOrDefault("people", "1")),
                keys.containsKey("overnight"), Optional.ofNullable(keys.get("on")).map(LocalDate::parse), Optional.empty(), "whole",
                Optional.empty(), Optional.empty(), List.of(), List.of(), false, Optional.empty(), Optional.empty(), Optional.empty(),
                Optional.empty(), List.of(parts), PLACE));
        return this;
    }

    Invented cites(String figure) {
        sections.add(new Story.Section("", "", List.of(), "", List.of(new Story.Citation(figure, PLACE)), PLACE));
        return this;
    }

    public static Part.Bath bath(String of, String margin, String depth, int baths) {
        return new Part.Bath(of, Optional.of(q(margin)), Optional.of(q(depth)), baths, true, Optional.empty(),
                List.of(time("20 min")),
                Optional.empty(), 1, Optional.empty(), List.of(), Optional.empty(), Optional.empty());
    }

    public static Part.Mist mist(String of, String amount) {
        return new Part.Mist(of, Optional.of(q(amount)), Optional.empty(), false, Optional.empty(), Optional.empty(), Optional.empty());
    }

    public static Part.Mend mend(List<String> damages, String with, String lap, String waste) {
        return new Part.Mend(damages, "kozo-9", with, Optional.of(q("8 mm")), Optional.of(q(lap)), Optional.of(q("40 mm")),
                Optional.of(q("0.03 g/cm²")), QuantityReader.read(waste,
                        org.benchleaf.quantity.Dimension.SHARE).quantity(), Optional.empty(), false, Optional.empty());
    }

    public Library library() {
        Studio studio = new Studio("Invented studio", "", List.of(), List.of(), List.of(), Optional.empty(), Optional.empty(), true,
                List.of("en"),
                EnumSet.range(DayOfWeek.MONDAY, DayOfWeek.FRIDAY), LocalTime.of(9, 0), LocalTime.of(17, 0),
                Optional.of(q("60 m³")), Optional.of(q("4 /h")), Optional.of(q("20 °C")),
                trays, glassware, balances, Studio.Publishing.ONE_SITE, Set.of(),
                Studio.Fonts.OF_THE_SITE, "", "", PLACE);
        Map<String, Method> methods = new LinkedHashMap<>();
        FORMULARY.methods().forEach(method -> methods.put(method.name(), method));
        FORMULARY.plainMethods().forEach(method -> methods.put(method.name(), method));
        Map<String, Source> sources = new LinkedHashMap<>();
        FORMULARY.sources().forEach(source -> sources.put(source.key(), source));
        return new Library(studio, materials, List.of(), sources, methods, List.of(), ReferenceReader.shipped(), List.of(),
                Matrix.EMPTY, FORMULARY, Map.of(), Phrases.ENGLISH);
    }

    public TreatmentCase treatment() {
        PaperSupport paper = new PaperSupport("rag", List.of(), grammage.map(Invented::q), Optional.empty(), Optional.empty(), grain,
                Optional.empty(), List.of(), PLACE);
        PrintObject object = new PrintObject("sheet", "letterpress", Optional.empty(), Optional.empty(), false, paper,
                Optional.of(new PrintObject.SheetSize(q(height), q(width))), Optional.empty(), Optional.empty(), List.of(), List.of(),
                List.of(), List.of(), List.of(), PLACE);
        return new TreatmentCase("invented", "An invented case", "", Optional.of(Level.FOUNDATION), "en", publication(), object,
                damages, tests, proposal(), List.of(), solutions, steps, results, List.of(), List.of(), List.of(), reasons,
                new Story(sections), CaseSources.NONE, List.of(), true, Set.of(), Untold.NONE, PLACE);
    }

    public Derived derived() {
        return new Deriver(library()).derive(treatment(), List.of());
    }

    public Figure figure(String id) {
        Derived derived = derived();
        return Optional.ofNullable(derived.worked().figures().get(id)).orElseThrow(() -> new AssertionError(
                "no figure " + id + " among " + derived.worked().figures().keySet() + "; said: "
                        + derived.messages().all().stream().map(org.benchleaf.message.Message::what).toList()));
    }

    public List<String> codes() {
        return derived().messages().all().stream().map(org.benchleaf.message.Message::code).toList();
    }


    private static Publication publication() {
        return new Publication(Publication.State.DRAFT, "CC-BY-4.0", Optional.empty(), Optional.empty(), Optional.of(false), List.of(),
                Citing.UNSAID, PLACE);
    }

    private static Proposal proposal() {
        return new Proposal(List.of(), List.of(), Optional.empty(), List.of(), Map.of(), List.of(), PLACE);
    }
}
