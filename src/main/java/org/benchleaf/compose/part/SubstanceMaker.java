package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.hazard.Bottles;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.model.Material;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Source;
import org.benchleaf.model.Substance;
import org.benchleaf.page.Block;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Facts;
import org.benchleaf.page.Hazard;
import org.benchleaf.page.HazardCard;
import org.benchleaf.page.Note;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Section;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells what a material can do by itself, from the table of substances: hazards, limits in the air, waste, sources. */
public final class SubstanceMaker {

    private static final int MOST_PRECAUTIONS = 6;

    private final Sheet sheet;
    private final Words words;
    private final Reference reference;
    private final Bottles bottles;

    public SubstanceMaker(Sheet sheet) {
        this.sheet = sheet;
        this.words = sheet.words();
        this.reference = sheet.library().reference();
        this.bottles = new Bottles(reference, sheet.library().formulary());
    }

    /** The section of a material; empty for things that are no chemicals, such as a brush. */
    public Optional<Section> section(Material material) {
        return material.substance().map(reference.substances()::get).map(substance -> section(substance, bottles.of(material)))
                .or(() -> Optional.of(material).filter(Material::isChemical).map(this::unknown));
    }

    private Section section(List<Block> blocks) {
        return new Section("hazards", words.say("substance.heading"), Optional.of(words.say("substance.lead")), blocks);
    }

    private Note note(String key, String because) {
        return new Note("plain", words.say("notice.word"), RichText.of(words.say(key, "because", because)));
    }

    /** A chemical of which the studio does not say what it is. */
    private Section unknown(Material material) {
        return section(List.of(note("substance.not-known", words.say("substance.no-row")),
                new Facts(waste(bottles.of(material)))));
    }

    private Section section(Substance substance, Hazards asSold) {
        List<Block> blocks = new ArrayList<>();
        if (substance.hazards() != Substance.Answer.KNOWN) {
            blocks.add(note(substance.hazards() == Substance.Answer.NONE ? "substance.none" : "substance.not-known",
                    substance.because().orElse("")));
        } else {
            blocks.add(new HazardCard(hazard(substance), words.group("substance")));
        }
        blocks.add(new Facts(facts(substance, asSold)));
        return section(blocks);
    }

    /** All that the table knows of a substance, each with its source. */
    public List<Fact> everything(Substance substance) {
        List<Fact> facts = new ArrayList<>();
        facts.add(new Fact(words.say("substance.hazards"), cited(switch (substance.hazards()) {
            case KNOWN -> words.say("substance.known");
            case NONE -> words.say("substance.none", "because", substance.because().orElse(""));
            case UNKNOWN -> words.say("substance.not-known", "because", substance.because().orElse(""));
        }, substance.source())));
        facts.addAll(grounds(substance));
        facts.addAll(facts(substance, bottles.of(substance)));
        return facts;
    }

    private Hazard hazard(Substance substance) {
        List<Reference.Statement> pure = pure(substance);
        List<String> signals = pure.stream().flatMap(statement -> statement.signal().stream()).toList();
        List<String> pictograms = new ArrayList<>(pure.stream().flatMap(statement -> statement.pictogram().stream())
                .distinct().sorted().toList());
        if (pictograms.contains("GHS06")) {
            pictograms.remove("GHS07");
        }
        List<String> precautions = pure.stream().flatMap(statement -> statement.precautions().stream()).distinct()
                .filter(reference.statements()::containsKey)
                .sorted(Comparator.comparingInt((String code) -> reference.statements().get(code).rank())
                        .thenComparing(Comparator.naturalOrder())).limit(MOST_PRECAUTIONS).toList();
        return new Hazard("hazard-" + Paths.slug(substance.key()), substance.name(),
                signals.contains("Danger") ? Optional.of("Danger") : signals.stream().findFirst(),
                HazardMaker.pictograms(reference, pictograms),
                pure.stream().map(statement -> new Hazard.Statement(statement.code(), statement.naming(organs(substance)))).toList(),
                HazardMaker.statements(reference, precautions), grounds(substance), List.of());
    }

    /**
     * The statements of the pure substance: a class that ends at some share does not reach so far, and a stronger
     * statement on skin or eyes stands for the weaker one (Regulation (EC) No 1272/2008, articles 26 and 27).
     */
    private List<Reference.Statement> pure(Substance substance) {
        Set<String> codes = substance.classes().stream().filter(one -> one.below().isEmpty())
                .map(Substance.HazardClass::statement).collect(Collectors.toSet());
        if (codes.contains("H314")) {
            codes.removeAll(Set.of("H315", "H318", "H319"));
        }
        if (codes.contains("H318")) {
            codes.remove("H319");
        }
        return codes.stream().map(reference.statements()::get).filter(Objects::nonNull)
                .sorted(Comparator.comparingInt(Reference.Statement::rank).thenComparing(Reference.Statement::code))
                .toList();
    }

    /** The organs that statements name, by their codes, where they are known. */
    private static Map<String, List<String>> organs(Substance substance) {
        return substance.classes().stream().filter(one -> one.organs().isPresent()).collect(Collectors.toMap(
                Substance.HazardClass::statement, one -> one.organs().get().words(), (one, other) -> one));
    }

    private List<Fact> grounds(Substance substance) {
        return substance.classes().stream().map(one -> new Fact(one.name() + ", " + one.statement(), cited(
                words.list(Stream.of(one.from().map(share -> words.say("substance.from", "share", written(share))),
                        one.below().map(share -> words.say("substance.below", "share", written(share))))
                        .flatMap(Optional::stream).toList()), one.source()))).toList();
    }

    /** Its limits for the air of a workplace, each with its source. */
    public List<Fact> exposure(Substance substance) {
        return substance.exposure().stream().map(limit -> new Fact(words.say("substance.exposure"), cited(
                words.say("substance.exposure-words", "limit", written(limit.limit()), "kind", limit.kind(), "where", limit.where()),
                limit.source()))).toList();
    }

    private List<Fact> facts(Substance substance, Hazards asSold) {
        List<Fact> facts = new ArrayList<>();
        substance.cas().ifPresent(cas -> facts.add(fact("cas", cas)));
        facts.add(fact("synonyms", words.list(substance.synonyms().stream().map(sheet.library().phrases()::of)
                .filter(name -> !name.equals(substance.name())).distinct().toList())));
        facts.addAll(exposure(substance));
        substance.fire().ifPresent(fire -> facts.addAll(fire(fire)));
        substance.saturated().ifPresent(full -> facts.add(new Fact(words.say("substance.saturated"), cited(
                words.say("substance.saturated-words", "share", written(full.share()), "ph", written(full.ph())),
                full.source()))));
        measured("density", substance.density()).ifPresent(facts::add);
        measured("vapour-pressure", substance.vapourPressure()).ifPresent(facts::add);
        measured("viscosity", substance.viscosity()).ifPresent(facts::add);
        substance.gloves().ifPresent(gloves -> facts.add(new Fact(words.say("substance.gloves"),
                cited(gloves.words(), gloves.source()))));
        substance.note().ifPresent(note -> facts.add(fact("note", note)));
        facts.addAll(waste(asSold));
        facts.add(new Fact(words.say("substance.source"), cited(substance.edition(), substance.source())));
        facts.removeIf(fact -> fact.value().isBlank());
        return facts;
    }

    private List<Fact> fire(Substance.Fire fire) {
        List<Fact> facts = new ArrayList<>();
        fire.flashPoint().ifPresent(flash ->
                facts.add(new Fact(words.say("substance.flash"), cited(written(flash), fire.source()))));
        fire.boilingPoint().ifPresent(boiling -> facts.add(fact("boiling", written(boiling))));
        fire.lowerLimit().ifPresent(low -> fire.upperLimit().ifPresent(high -> facts.add(fact("burns",
                words.say("substance.burns-between", "low", written(low), "high", written(high))))));
        return facts;
    }

    /** How easily it burns and evaporates: flash point, boiling point, vapour pressure, each empty where the table has none. */
    public List<Optional<RichText>> volatility(Substance substance) {
        return List.of(substance.fire().flatMap(fire -> fire.flashPoint().map(flash -> cited(written(flash), fire.source()))),
                substance.fire().flatMap(fire -> fire.boilingPoint().map(boiling -> cited(written(boiling), fire.source()))),
                substance.vapourPressure().map(this::measured));
    }

    private Optional<Fact> measured(String key, Optional<Substance.Measured> value) {
        return value.map(one -> new Fact(words.say("substance." + key), measured(one)));
    }

    private RichText measured(Substance.Measured value) {
        return cited(written(value.value()) + value.at().map(at -> " (" + written(at) + ")").orElse(""), value.source());
    }

    /** What becomes of it as it is sold: by what is known of it, as labels and briefings tell it. */
    private List<Fact> waste(Hazards hazards) {
        List<Fact> facts = new ArrayList<>(List.of(new Fact(words.say("substance.waste"), cited(HazardMaker.waste(reference, hazards),
                hazards.waste().group().map(reference.waste()::get).map(Reference.WasteKind::source).orElse(""))),
                fact("emergency", sheet.library().phrases().of(sheet.library().studio().emergency()))));
        facts.removeIf(fact -> fact.value().isBlank());
        return facts;
    }

    private String written(Quantity quantity) {
        return sheet.numbers().written(quantity).text();
    }

    private Fact fact(String key, String value) {
        return Fact.of(words.say("substance." + key), value);
    }

    /**
     * Words with their source by number; a source that is words itself, such as common practice, in brackets. What was
     * never compared with a published text says so.
     */
    private RichText cited(String text, String source) {
        Source listed = sheet.library().sources().get(source);
        boolean remembered = listed != null && listed.status().equals("from memory");
        Stream<RichText> told = Stream.of(RichText.of(text), RichText.of(remembered ? words.say("substance.remembered") : ""),
                sheet.cite(source).map(Citation::link).map(RichText::of)
                        .orElse(RichText.of(source.isBlank() ? "" : "(" + sheet.library().phrases().of(source) + ")")));
        return RichText.joined(" ", told.filter(part -> !part.isBlank()).toList());
    }
}
