package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.Material;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Hazard;
import org.benchleaf.page.Paths;
import org.benchleaf.text.RichText;

/** Words what solutions and materials can do, from their classes and the tables of the library. */
public final class HazardMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Reference reference;

    public HazardMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.reference = desk.library().reference();
    }

    /** The hazard of a solution or material; empty if nothing about it has to be told. */
    Optional<Hazard> of(String id) {
        return Optional.ofNullable(desk.worked().hazards().get(id)).flatMap(this::told);
    }

    /** Hazards as a page tells them; empty if nothing about them has to be told. */
    Optional<Hazard> told(Hazards found) {
        return Optional.of(found).filter(hazards -> hazards.signal().isPresent() || !hazards.hazardStatements().isEmpty()
                || !hazards.grounds().isEmpty() || !hazards.known()).map(this::hazard);
    }

    /** What several together can do, as if each kept all its hazards; empty if nothing about any of them has to be told. */
    Optional<Hazard> ofAll(List<String> ids) {
        return ids.stream().flatMap(id -> of(id).stream()).reduce((one, other) -> new Hazard(one.anchor(), one.name(),
                Stream.of(one, other).flatMap(each -> each.signal().stream()).min(Comparator.comparing(signal ->
                        !signal.equals(signal("Danger")))), joined(one.pictograms(), other.pictograms()),
                joined(one.says(), other.says()), joined(one.does(), other.does()), joined(one.grounds(), other.grounds()),
                joined(one.unknown(), other.unknown())));
    }

    private static <T> List<T> joined(List<T> some, List<T> more) {
        return Stream.concat(some.stream(), more.stream()).distinct().toList();
    }

    /** The signal word as the language of the page has it; in English where that has no official one. */
    private String signal(String word) {
        return desk.library().phrases().of(word);
    }

    private Hazard hazard(Hazards hazards) {
        return new Hazard("hazard-" + Paths.slug(hazards.of()), name(hazards.of()), hazards.signal().map(this::signal),
                pictograms(reference, hazards.pictograms()), says(reference, hazards),
                statements(reference, hazards.precautions()), grounds(hazards),
                hazards.unknown().stream().map(one -> (one.why() + " " + one.remedy()).strip()).toList());
    }

    /** What to heed at a step, as sentences that follow those of its work: of a danger what can happen too. */
    public String cautions(String step) {
        return cautionsOf(step).stream().map(caution -> " " + told(caution)).collect(Collectors.joining());
    }

    /** What to heed at a step. */
    public List<Reference.Caution> cautionsOf(String step) {
        return Optional.ofNullable(desk.worked().care().get(step)).map(StepCare::cautions).orElse(List.of()).stream()
                .map(reference.cautions()::get).toList();
    }

    /** A caution as a sentence: of a danger what can happen too. */
    public String told(Reference.Caution caution) {
        return (caution.level().equals("danger") ? sheet.words().more(sheet.words().say("caution-level.danger"), caution.words() + " ")
                : "") + caution.doFirst();
    }

    /** What the label of a solution or material says or an indicator is called, in the language of the page; else the id. */
    public String name(String id) {
        return desk.treatment().solution(id).map(Solution::name).or(() -> Optional.ofNullable(desk.library().materials().get(id))
                .map(Material::name).map(desk.library().phrases()::of))
                .orElseGet(() -> sheet.words().told(sheet.words().term("indicator", id)));
    }

    static List<Hazard.Pictogram> pictograms(Reference reference, List<String> codes) {
        List<Hazard.Pictogram> pictograms = new ArrayList<>();
        for (String code : codes) {
            Optional.ofNullable(reference.pictograms().get(code)).ifPresent(pictogram ->
                    pictograms.add(new Hazard.Pictogram(code, pictogram.name(), new Hazard.Drawing(pictogram.svg().strip(),
                            pictogram.name() + ", " + code))));
        }
        return pictograms;
    }

    /** The hazard statements of a mixture, with what they name. */
    static List<Hazard.Statement> says(Reference reference, Hazards hazards) {
        return hazards.hazardStatements().stream().map(reference.statements()::get).filter(Objects::nonNull)
                .map(one -> new Hazard.Statement(one.code(), one.naming(hazards.named()))).toList();
    }

    /** What becomes of it: the words of its kind, those about the drain where it is shown that they fit; else why none is known. */
    static String waste(Reference reference, Hazards hazards) {
        return hazards.waste().group().map(reference.waste()::get).map(kind -> hazards.waste().drain()
                ? kind.words() + " " + kind.drain().orElse("") : kind.words()).orElse(hazards.waste().why());
    }

    /**
     * The same where some of it is collected in a way of its own.
     *
     * @param own what is told of the vessels of a kind, by its key; it counts also for what is weak enough for the drain elsewhere
     */
    static String waste(Reference reference, Hazards hazards, Map<String, String> own) {
        return hazards.waste().group().filter(own::containsKey).map(reference.waste()::get).map(kind -> kind.drain().isPresent()
                ? own.get(kind.key()) : kind.words() + " " + own.get(kind.key())).orElseGet(() -> waste(reference, hazards));
    }

    /** The same of a solution or material; empty if nothing is known of it. */
    public Optional<String> waste(String id, Map<String, String> own) {
        return Optional.ofNullable(desk.worked().hazards().get(id)).map(one -> waste(reference, one, own));
    }

    static List<Hazard.Statement> statements(Reference reference, List<String> codes) {
        List<Hazard.Statement> statements = new ArrayList<>();
        for (String code : codes) {
            Optional.ofNullable(reference.statements().get(code)).ifPresent(statement ->
                    statements.add(new Hazard.Statement(code, statement.text())));
        }
        return statements;
    }

    /** Why each class was given or not; one that several rules speak of has their sentences after each other. */
    private List<Fact> grounds(Hazards hazards) {
        Map<String, List<Hazards.Ground>> byClass = new LinkedHashMap<>();
        hazards.grounds().forEach(ground -> byClass.computeIfAbsent(ground.classification(), any -> new ArrayList<>()).add(ground));
        Set<String> given = hazards.grounds().stream().filter(Hazards.Ground::isGiven).flatMap(ground -> ground.of().stream())
                .collect(Collectors.toSet());
        return byClass.values().stream().map(same -> new Fact(named(same.get(0), given),
                RichText.joined(" ", same.stream().map(this::because).toList()))).toList();
    }

    /** A class that one ground does not give and another does is told so. */
    private String named(Hazards.Ground ground, Set<String> given) {
        boolean elsewhere = !ground.isGiven() && ground.of().filter(given::contains).isPresent();
        return elsewhere ? sheet.words().say("hazard.not-by-this", "not", named(ground)) : named(ground);
    }

    /** The name of a class is the same in every language; that it is not given is told in words. */
    private String named(Hazards.Ground ground) {
        return ground.of().filter(any -> !ground.isGiven()).map(of -> sheet.words().say("hazard.not", "class", of))
                .orElseGet(() -> desk.library().phrases().of(ground.classification()));
    }

    private RichText because(Hazards.Ground ground) {
        return sheet.cite(ground.source()).map(citation -> RichText.of(ground.because() + " ").then(citation.byNumber()))
                .orElse(RichText.of(ground.because()));
    }
}
