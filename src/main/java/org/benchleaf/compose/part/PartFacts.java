package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.model.Medium;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Part;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Tells what the parts of a step use and how they are set, as the case states it. */
public final class PartFacts implements Part.Kinds<List<Fact>> {

    private static final String TIME = "time";

    private final Sheet sheet;
    private final CaseDesk desk;

    public PartFacts(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    @Override
    public List<Fact> bath(Part.Bath part) {
        FactList facts = new FactList(part);
        facts.thing("of", part.of());
        String baths = part.counted() ? sheet.words().count("bench.baths", part.baths())
                : sheet.words().say("bench.baths-not-recorded");
        String lasting = part.each().size() == 1 ? "bench.baths-each" : "bench.baths-unlike";
        facts.text("baths", part.each().isEmpty() ? baths : sheet.words().say(lasting, "baths", baths, "time",
                part.each().stream().limit(part.baths()).map(new TimeWords(sheet)::of).collect(Collectors.joining(" + "))));
        part.atMost().ifPresent(most -> facts.text("most-baths", String.valueOf(most)));
        facts.needed("depth", part.depth());
        facts.amount("temperature", part.temperature());
        return facts.list;
    }

    @Override
    public List<Fact> mist(Part.Mist part) {
        FactList facts = new FactList(part);
        facts.thing("of", part.of());
        part.tool().ifPresent(tool -> facts.thing("tool", tool));
        facts.amount("distance", part.distance());
        part.water().ifPresent(water -> facts.text("water", water));
        part.cleaned().ifPresent(cleaned -> facts.text("cleaned", cleaned));
        return facts.list;
    }

    @Override
    public List<Fact> chamber(Part.Chamber part) {
        FactList facts = new FactList(part);
        facts.text("pack", part.pack());
        facts.thing("of", part.of());
        facts.amount("humidity", part.humidity());
        facts.amount("temperature", part.temperature());
        facts.time("look-every", part.lookEvery());
        return facts.list;
    }

    @Override
    public List<Fact> blotters(Part.Blotters part) {
        FactList facts = new FactList(part);
        part.blotter().ifPresent(blotter -> facts.thing("blotter", blotter));
        facts.text("layers", String.valueOf(part.layers()));
        return facts.list;
    }

    @Override
    public List<Fact> press(Part.Press part) {
        FactList facts = new FactList(part);
        if (part.weights() > 1) {
            facts.text("weights", String.valueOf(part.weights()));
        }
        facts.needed(part.weights() > 1 ? "weight-each" : "weight", "mass", part.mass());
        facts.things("between", part.between());
        facts.time("under-weight", part.time());
        return facts.list;
    }

    @Override
    public List<Fact> mend(Part.Mend part) {
        FactList facts = new FactList(part);
        facts.thing("tissue", part.tissue());
        facts.thing(part.activation().isPresent() ? "adhesive-dry" : "adhesive", part.with());
        part.activation().ifPresent(activation -> activated(facts, activation));
        facts.needed("strip", part.strip());
        facts.needed("lap", part.lap());
        part.piece().ifPresent(piece -> facts.amount("piece", Optional.of(piece)));
        part.grain().ifPresent(grain -> facts.text("grain", sheet.words().term("fibres-run", grain)));
        return facts.list;
    }

    private void activated(FactList facts, Part.Activation activation) {
        facts.text("activated", sheet.words().say("bench.activated-by-" + activation.by().word()));
        activation.with().ifPresent(with -> facts.thing("woken-with", with));
        facts.amount("window", activation.window());
    }

    @Override
    public List<Fact> heat(Part.Heat part) {
        FactList facts = new FactList(part);
        facts.thing("tool", part.tool());
        facts.needed("temperature", part.temperature());
        facts.time("rest", part.time());
        return facts.list;
    }

    @Override
    public List<Fact> support(Part.Support part) {
        FactList facts = new FactList(part);
        facts.thing("under", part.under());
        part.between().ifPresent(between -> facts.thing("next-to-sheet", between));
        if (part.rigid()) {
            facts.text("rigid", sheet.words().say("bench.rigid-yes"));
        }
        return facts.list;
    }

    @Override
    public List<Fact> cleaning(Part.Cleaning part) {
        FactList facts = new FactList(part);
        facts.things("tools", part.tools());
        if (part.extraction()) {
            facts.text("extraction", sheet.words().say("bench.extraction-yes"));
        }
        return facts.list;
    }

    @Override
    public List<Fact> fixing(Part.Fixing part) {
        FactList facts = new FactList(part);
        facts.text("protects", medium(sheet.words(), desk, part.medium()));
        facts.thing("fixative", part.with());
        facts.text("method", sheet.words().term("fixing-method", part.method()));
        part.faces().ifPresent(faces -> facts.text("faces", sheet.words().term("faces", faces)));
        facts.amount("beyond-medium", part.beyond());
        facts.time("rinse", part.rinse());
        part.rinses().ifPresent(count -> facts.text("rinses", String.valueOf(count)));
        part.clearBy().ifPresent(day -> facts.text("clear-by", sheet.numbers().date(day)));
        return facts.list;
    }

    @Override
    public List<Fact> weighing(Part.Weighing part) {
        FactList facts = new FactList(part);
        facts.needed("dry", part.dry());
        facts.amount("wet", part.wet());
        facts.amount("restrained", part.restrained());
        return facts.list;
    }

    @Override
    public List<Fact> housing(Part.Housing part) {
        FactList facts = new FactList(part);
        facts.things("housed-in", part.materials());
        facts.text("buffered", sheet.words().say("bench.buffered-" + part.buffered()));
        facts.amount("stored-at", "temperature", part.temperature());
        return facts.list;
    }

    @Override
    public List<Fact> layer(Part.Layer part) {
        FactList facts = new FactList(part);
        facts.thing("layer-of", part.of());
        facts.needed("thickness", part.thickness());
        facts.amount("place-height", part.height());
        facts.amount("place-width", part.width());
        facts.time("layer-lies", part.each());
        facts.text("layers-laid", String.valueOf(part.times()));
        part.between().ifPresentOrElse(between -> facts.thing("next-to-sheet", between),
                () -> facts.text("next-to-sheet", sheet.words().say("bench.direct-contact")));
        if (part.covered()) {
            facts.text("covered", sheet.words().say("bench.covered-yes"));
        }
        return facts.list;
    }

    @Override
    public List<Fact> suction(Part.Suction part) {
        FactList facts = new FactList(part);
        facts.thing("tool", part.tool());
        part.of().ifPresent(of -> facts.thing("of", of));
        facts.amount("suction", "pressure", part.pressure());
        facts.time("suction-for", part.time());
        return facts.list;
    }

    @Override
    public List<Fact> light(Part.Light part) {
        FactList facts = new FactList(part);
        facts.text("light", part.source().map(source -> sheet.words().term("light-source", source))
                .orElseGet(() -> facts.untold("source")));
        facts.amount("illuminance", part.illuminance());
        facts.text("ultraviolet", part.filtered().map(filtered -> sheet.words().say(filtered ? "bench.ultraviolet-filtered"
                : "bench.ultraviolet-reaches")).orElseGet(() -> facts.untold("ultraviolet")));
        facts.time("light-for", part.time());
        return facts.list;
    }

    @Override
    public List<Fact> gas(Part.Gas part) {
        FactList facts = new FactList(part);
        facts.thing("gas", part.of());
        facts.time("gas-for", part.time());
        part.tool().ifPresent(tool -> facts.thing("tool", tool));
        return facts.list;
    }

    @Override
    public List<Fact> tape(Part.Tape part) {
        FactList facts = new FactList(part);
        part.carrier().ifPresent(carrier -> facts.text("tape-carrier", sheet.words().told(carrier)));
        part.adhesive().ifPresent(adhesive -> facts.text("tape-adhesive", sheet.words().told(adhesive)));
        if (!part.means().isEmpty()) {
            facts.text("tape-by", sheet.words().list(part.means()));
        }
        return facts.list;
    }

    @Override
    public List<Fact> ageing(Part.Ageing part) {
        FactList facts = new FactList(part);
        facts.text("ageing-of", MissingValue.read(part.of()).map(missing -> facts.untold("of")).orElse(part.of()));
        facts.needed("temperature", part.temperature());
        part.humidityMissing().ifPresentOrElse(missing -> facts.text("humidity", sheet.words().missing(missing)),
                () -> facts.amount("humidity", part.humidity()));
        part.time().ifPresentOrElse(time -> facts.time("ageing-for", Optional.of(time)),
                () -> facts.text("ageing-for", facts.untold(TIME)));
        part.standard().ifPresent(standard -> facts.text("ageing-standard", standard));
        return facts.list;
    }

    /** The name of a solution, linked to its preparation, or of a material, linked to its page. */
    public static RichText thing(Sheet sheet, CaseDesk desk, String id) {
        String name = new HazardMaker(sheet, desk).name(id);
        Optional<String> to = desk.treatment().solution(id).isPresent()
                ? Optional.of(Paths.preparation(desk.treatment().id()) + "#" + prepared(id))
                        .filter(any -> desk.has("preparation") && desk.worked().preparations().stream()
                                .anyMatch(made -> made.solution().equals(id)))
                : Optional.of(Paths.material(id)).filter(any -> desk.library().materials().containsKey(id));
        return to.map(path -> RichText.of(sheet.hyperlink(name, path))).orElse(RichText.of(name));
    }

    /** The names of several, each as {@link #thing} tells it. */
    public static RichText things(Sheet sheet, CaseDesk desk, List<String> ids) {
        return RichText.joined(sheet.words().say("list.comma"), ids.stream().map(id -> thing(sheet, desk, id)).toList());
    }

    /** A medium as one points at it: its colour, what it is, where it stands; the word itself where none has it. */
    public static String medium(Words words, CaseDesk desk, String id) {
        return desk.treatment().medium(id).map(medium -> words.list(Stream.concat(Stream.of(coloured(words, medium)),
                medium.where().stream()).toList())).orElse(id);
    }

    /** A medium with its colour, in the order of the language; the medium alone where no colour is known. */
    public static String coloured(Words words, Medium medium) {
        return medium.colourBeside().map(colour -> words.say("medium.coloured", "colour", colour, "medium", medium.is()))
                .orElse(medium.is());
    }

    /** What a spot test is made on: a medium with its colour, or the paper itself. */
    public static String tested(Words words, CaseDesk desk, SpotTest test) {
        return desk.treatment().medium(test.medium()).map(medium -> coloured(words, medium))
                .orElseGet(() -> words.term("test-of", test.medium()));
    }

    /** How the liquid of a step is brought to the sheet, where the step says it itself. */
    public static Optional<Fact> applied(Words words, Step step) {
        return step.applied().map(word -> Fact.of(words.say("bench-fact.applied"), words.term("applied", word)));
    }

    /** The anchor of a solution on the preparation sheet. */
    public static String prepared(String solution) {
        return "prepare-" + Paths.slug(solution);
    }

    private final class FactList {
        private final List<Fact> list = new ArrayList<>();
        private final Part part;

        FactList(Part part) {
            this.part = part;
        }

        void text(String key, String value) {
            list.add(Fact.of(sheet.words().say("bench-fact." + key), value));
        }

        void amount(String key, Optional<Quantity> amount) {
            amount(key, key, amount);
        }

        /** An amount, if it is given, by its key in a case file; that it was not read is told. */
        void amount(String key, String written, Optional<Quantity> amount) {
            written(amount).or(() -> unread(written)).ifPresent(value -> text(key, value));
        }

        private Optional<String> unread(String written) {
            return desk.treatment().untold(part, written).filter(missing -> missing.kind() == MissingValue.Kind.NOT_READ)
                    .map(sheet.words()::missing);
        }

        /** An amount without which the step cannot be repeated; that it is not on record is told. */
        void needed(String key, Optional<Quantity> amount) {
            needed(key, key, amount);
        }

        void needed(String key, String written, Optional<Quantity> amount) {
            text(key, written(amount).orElseGet(() -> untold(written)));
        }

        /** What the case says in the place of a value. */
        String untold(String written) {
            return sheet.words().missing(desk.treatment().untold(part, written));
        }

        private Optional<String> written(Optional<Quantity> amount) {
            return amount.map(value -> sheet.numbers().written(value).text());
        }

        void time(String key, Optional<Quantity> time) {
            time.map(value -> sheet.numbers().duration(value).text()).or(() -> unread(TIME)).ifPresent(value -> text(key, value));
        }

        void thing(String key, String id) {
            list.add(new Fact(sheet.words().say("bench-fact." + key), PartFacts.thing(sheet, desk, id)));
        }

        void things(String key, List<String> ids) {
            if (!ids.isEmpty()) {
                list.add(new Fact(sheet.words().say("bench-fact." + key), PartFacts.things(sheet, desk, ids)));
            }
        }
    }
}
