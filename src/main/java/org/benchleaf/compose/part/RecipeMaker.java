package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import org.benchleaf.calculate.Digits;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.model.MissingValue;
import org.benchleaf.model.Part;
import org.benchleaf.model.Recipe;
import org.benchleaf.model.Solution;
import org.benchleaf.model.StatedValue;
import org.benchleaf.model.Step;
import org.benchleaf.model.Substance;
import org.benchleaf.page.Caution;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Link;
import org.benchleaf.page.Paths;
import org.benchleaf.page.RecipeCard;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Dimension;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.text.RichText;
import org.benchleaf.words.StepTitle;
import org.benchleaf.words.Words;

/** Puts one preparation into the order of making it: when to begin, what to measure, what to do, how it keeps. */
public final class RecipeMaker {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final HazardMaker hazards;
    private final BriefingMaker briefing;

    public RecipeMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
        this.hazards = new HazardMaker(sheet, desk);
        this.briefing = new BriefingMaker(sheet, desk);
    }

    /** The card of a preparation for the one sheet of the case. */
    public RecipeCard make(Preparation preparation) {
        Words words = sheet.words();
        Solution solution = desk.treatment().solution(preparation.solution()).orElseThrow();
        Optional<Working> batch = new WorkingMaker(sheet).once(solution.id() + ".batch");
        return new RecipeCard(PartFacts.prepared(solution.id()), solution.name(), batch,
                preparation.batches() > 1 ? Optional.of(words.say("prepare.times", "times", words.times(preparation.batches())))
                        : Optional.empty(),
                begin(preparation), preparation.measures().stream().map(one -> measure(preparation, one)).toList(),
                solution.how().stream().map(sheet::linked).toList(), facts(solution, preparation), cautions(solution, preparation),
                briefing.equipment(handling(solution).map(Hazards::wear).orElse(List.of())), hazards.of(solution.id()),
                workings(preparation), words.group("recipe"));
    }

    /** What a material or solution is called within a sentence; a substance by its own name, small as what consists of one. */
    private String named(String id) {
        Optional<MissingValue> missing = MissingValue.read(id);
        if (missing.isPresent()) {
            return sheet.words().say("label.liquid-missing", "missing", sheet.words().missing(missing.get()));
        }
        return desk.treatment().solution(id).map(Solution::name)
                .or(() -> Optional.ofNullable(desk.library().materials().get(id)).map(material -> {
                    String name = desk.library().phrases().of(material.name());
                    return material.substance().isPresent() ? Words.small(name) : name;
                }))
                .or(() -> Optional.ofNullable(desk.library().reference().substances().get(id))
                        .map(Substance::within)).orElse(id);
    }

    private Optional<String> begin(Preparation preparation) {
        Words words = sheet.words();
        return preparation.beginBefore().map(before -> {
            String time = sheet.numbers().duration(before).text();
            return preparation.handsOn().map(hands -> words.say("prepare.begin-hands", "time", time,
                    "hands", sheet.numbers().duration(hands).text())).orElseGet(() ->
                    words.say("prepare.begin", "time", time));
        });
    }

    /** What a meter decides is told as a hand works: with what to begin, what the case took, where to stop. */
    private String byMeter(String solution, Quantity least, Quantity most) {
        Words words = sheet.words();
        String from = sheet.numbers().roughly(least, 1).text();
        String to = sheet.numbers().roughly(most, 2).text();
        List<Quantity> added = added(solution);
        if (added.isEmpty()) {
            return words.say("prepare.dose-untried", "from", from, "to", to);
        }
        double low = added.stream().mapToDouble(one -> one.lowIn(Unit.MILLILITRE)).min().orElseThrow();
        double high = added.stream().mapToDouble(one -> one.highIn(Unit.MILLILITRE)).max().orElseThrow();
        return words.say("prepare.dose", "from", from, "usual",
                sheet.numbers().roughly(Quantity.range(low, high, Unit.MILLILITRE).exact(), 1).text(), "to", to);
    }

    private List<Quantity> added(String solution) {
        return desk.treatment().steps().stream().flatMap(step -> step.part(Part.Bath.class).stream())
                .filter(bath -> bath.of().equals(solution)).flatMap(bath -> bath.readings().stream())
                .flatMap(reading -> reading.added().stream()).toList();
    }

    private RecipeCard.Measure measure(Preparation preparation, Preparation.Measure measure) {
        return new RecipeCard.Measure(amount(preparation, measure), PartFacts.thing(sheet, desk, measure.of()), with(preparation, measure),
                sheet.figure(measure.figure()).map(figure -> Link.to(sheet.words().say("prepare.working", "what",
                        figure.label()), "#" + Paths.working(figure.id()))));
    }

    /** How much to measure out, as a hand measures it. */
    public String amount(Preparation preparation, Preparation.Measure measure) {
        Words words = sheet.words();
        String amount = measure.mark().isPresent()
                ? words.say("prepare.about", "amount", sheet.numbers().roughly(measure.exact(), 2).text())
                : measure.with().isPresent() ? sheet.numbers().poured(measure.measured()).text()
                : measure.from().map(from -> byMeter(preparation.solution(), from, measure.exact())).orElseGet(() ->
                        sheet.numbers().amount(measure.exact()).text());
        return measure.excess() ? words.say("prepare.about", "amount", amount) : amount;
    }

    /** With what it is measured and how near that comes; where it comes not near enough, what does better. */
    public String with(Preparation preparation, Preparation.Measure measure) {
        Words words = sheet.words();
        if (measure.mark().isPresent()) {
            return mark(sheet, measure.mark().get());
        }
        if (measure.with().isEmpty()) {
            String how = words.say(added(preparation.solution()).isEmpty() ? "prepare.by-meter" : "prepare.by-meter-added");
            return measure.dropper().map(dropper -> words.say(dropper.fillings() > 1 ? "prepare.dropper-again" : "prepare.dropper",
                    "vessel", dropper.vessel(), "times", words.times(dropper.fillings()), "how", how)).orElse(how);
        }
        String vessel = measure.with().get();
        if (measure.excess()) {
            return words.say("prepare.excess", "vessel", vessel);
        }
        String with = measure.within().map(within -> words.say("prepare.with-within", "vessel", vessel, "within",
                sheet.numbers().uncertainty(within).text())).orElseGet(() -> words.say("prepare.with", "vessel", vessel));
        return measure.coarse().map(share -> words.say("prepare.coarse", "with", with,
                "share", sheet.numbers().roughly(share, 2).text())).orElse(with);
    }

    /** In which tray, and how far it is filled. */
    public static String mark(Sheet sheet, Preparation.Mark mark) {
        return sheet.words().say("prepare.mark", "tray", mark.tray().map(sheet.library().phrases()::of)
                .orElseGet(() -> sheet.words().say("prepare.tray")), "depth", sheet.numbers().written(mark.depth()).text());
    }

    private List<Fact> facts(Solution solution, Preparation preparation) {
        Words words = sheet.words();
        List<Fact> facts = new ArrayList<>();
        strength(solution).ifPresent(strength -> facts.add(Fact.of(words.say("prepare.strength"), strength)));
        solution.keeps().ifPresent(keeps -> facts.add(Fact.of(words.say("prepare.keeps"),
                sheet.numbers().duration(keeps).text())));
        solution.kept().ifPresent(kept -> facts.add(Fact.of(words.say("prepare.kept"), kept)));
        preparation.surplus().ifPresent(why -> facts.add(Fact.of(words.say("prepare.surplus"), surplus(why, solution, preparation))));
        if (!preparation.usedIn().isEmpty()) {
            facts.add(Fact.of(words.say("prepare.used-in"), words.list(preparation.usedIn().stream()
                    .map(desk.treatment()::step).flatMap(Optional::stream).map((Step step) ->
                            new StepTitle(words, desk.treatment()).kind(step)).distinct().toList())));
        }
        facts.addAll(new ChoiceFacts(sheet, desk).of(solution));
        solution.source().flatMap(sheet::cite).ifPresent(citation -> facts.add(new Fact(words.say("prepare.source"),
                RichText.of(citation.link()))));
        return facts;
    }

    /** Why far more is made than is used, how long the rest keeps, and where its end is told. */
    private String surplus(Preparation.Surplus why, Solution solution, Preparation preparation) {
        Words words = sheet.words();
        String reason = words.say("prepare.surplus-" + why.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                "used", sheet.numbers().amount(preparation.needed()).text(), "made", sheet.numbers().amount(preparation.batch()).text());
        String rest = solution.keeps().map(keeps -> words.say("prepare.rest-keeps", "time", sheet.numbers().duration(keeps).text()))
                .orElseGet(() -> words.say("prepare.rest-unknown"));
        return reason + " " + rest + " " + words.say("prepare.rest-waste", "heading", words.say("briefing.waste"));
    }

    private Optional<Hazards> handling(Solution solution) {
        return Optional.ofNullable(desk.worked().hazards().get(solution.id()));
    }

    private List<Caution> cautions(Solution solution, Preparation preparation) {
        List<Caution> cautions = new ArrayList<>(new MeetingWords(sheet, desk).cautions(solution));
        handling(solution).ifPresent(one -> cautions.addAll(briefing.cautions(one.cautions(), one.subjects())));
        if (solution.recipe() instanceof Recipe.Adjust adjust) {
            cautions.add(byTheMeter(adjust));
        }
        if (measures(preparation, Set.of("mixture", "parts"))) {
            cautions.add(caution(sheet.words().say("prepare.may-shrink")));
        }
        if (!preparation.addsUp() && measures(preparation, Set.of("one-in", "dilution"))) {
            cautions.add(caution(sheet.words().say("prepare.make-up")));
        }
        return cautions;
    }

    private Caution caution(String words) {
        return new Caution("care", sheet.words().say("caution-level.care"), words, RichText.of(words), RichText.of(""));
    }

    /** Whether a volume is measured that one of these calculations gives, joined with others whose table nobody has. */
    private boolean measures(Preparation preparation, Set<String> methods) {
        return preparation.measures().stream().anyMatch(measure -> measure.exact().dimension() == Dimension.VOLUME
                && sheet.figure(measure.figure()).filter(figure -> methods.contains(figure.method())).isPresent());
    }

    /** A bath brought to a pH is measured, never trusted to its sum. */
    private Caution byTheMeter(Recipe.Adjust adjust) {
        return caution(byTheMeter("prepare.measure-ph", adjust));
    }

    /** A text with the pH to which a bath is brought: of a number both ends between which a meter may read, else as it is told. */
    public String byTheMeter(String key, Recipe.Adjust adjust) {
        return sheet.words().say(key, "ph", adjust.to().isNumber() ? between(adjust) : told(adjust.to()));
    }

    /** Between what a meter may read in a bath that is brought to a pH; empty where the pH is told as no number and no range. */
    public Optional<Quantity> window(Recipe.Adjust adjust) {
        Quantity to = adjust.to().value();
        return adjust.to().form() == StatedValue.Form.RANGE || to.spread() == Quantity.Spread.TOLERANCE ? Optional.of(to)
                : Optional.of(adjust.to()).filter(StatedValue::isNumber)
                        .map(number -> Quantity.plusMinus(to.value(), near().value(), Unit.PH));
    }

    private String between(Recipe.Adjust adjust) {
        return sheet.numbers().between(window(adjust).orElseThrow(),
                Math.max(Digits.decimalsOf(adjust.to().value().value()), Digits.decimalsOf(near().value()))).text();
    }

    private Quantity near() {
        return sheet.library().formulary().constant("near-the-ph").value();
    }

    /** The pH that is aimed at, without its sign. */
    private String told(StatedValue to) {
        String value = sheet.numbers().written(to.value().asStated()).text();
        return switch (to.form()) {
            case ABOUT -> sheet.words().say("stated.about", "value", value);
            case LESS_THAN -> sheet.words().say("stated.less", "value", value);
            case MORE_THAN -> sheet.words().say("stated.more", "value", value);
            case ONE, RANGE, MEAN -> value;
        };
    }

    /** A strength as it is written; of a bare per cent it is said that nobody recorded of what. */
    private String strong(Quantity strength) {
        String written = sheet.numbers().written(strength).text();
        return strength.dimension() == Dimension.SHARE ? sheet.words().say("label.bare-per-cent", "strength", written) : written;
    }

    private List<Working> workings(Preparation preparation) {
        return preparation.figures().stream().map(sheet::figure).flatMap(Optional::stream)
                .filter(figure -> !sheet.shows(figure.id())).map(new WorkingMaker(sheet)::make).toList();
    }

    /** The strength of a solution as a label tells it, with its kind. */
    public Optional<String> strength(Solution solution) {
        Words words = sheet.words();
        return solution.recipe().ask(new Recipe.Kinds<Optional<String>>() {
            @Override
            public Optional<String> mix(Recipe.Mix recipe) {
                return Optional.of(words.say("label.mix", "parts", recipe.shares().stream()
                        .map(share -> words.say("label.share", "strength", strong(share.strength()),
                                "liquid", named(share.liquid()))).collect(Collectors.joining(words.say("list.comma"))),
                        "rest", named(recipe.rest())));
            }

            @Override
            public Optional<String> dissolve(Recipe.Dissolve recipe) {
                return Optional.of(words.say("label.dissolved", "strength", strong(recipe.strength()),
                        "solid", named(recipe.solid()), "liquid", named(recipe.in())));
            }

            @Override
            public Optional<String> dilute(Recipe.Dilute recipe) {
                return diluted(recipe);
            }

            @Override
            public Optional<String> saturate(Recipe.Saturate recipe) {
                return Optional.of(saturated(solution, recipe));
            }

            @Override
            public Optional<String> adjust(Recipe.Adjust recipe) {
                return Optional.of(adjusted(recipe));
            }

            @Override
            public Optional<String> untold(Recipe.Untold recipe) {
                return Optional.of(RecipeMaker.this.untold(solution, recipe));
            }

            @Override
            public Optional<String> parts(Recipe.Parts recipe) {
                return Optional.of(words.say(recipe.byMass() ? "label.parts-mass" : "label.parts-volume",
                        "parts", recipe.portions().stream().map(RecipeMaker.this::portion)
                                .collect(Collectors.joining(words.say("label.portions-joined")))));
            }
        });
    }

    private String saturated(Solution solution, Recipe.Saturate recipe) {
        Words words = sheet.words();
        return recipe.at().map(at -> words.say("label.saturated", "at", sheet.numbers().written(at).text()))
                .orElseGet(() -> words.say("label.saturated-untold", "missing", untold(solution, "saturate", "at")));
    }

    /** Of a retold case, whose amounts nobody works out, with what it was brought to its pH. */
    private String adjusted(Recipe.Adjust recipe) {
        Words words = sheet.words();
        return desk.treatment().sources().retelling().isEmpty() ? words.say("label.ph", "ph", told(recipe.to()))
                : words.say("label.adjusted", "liquid", named(recipe.liquid()), "ph", told(recipe.to()), "with", named(recipe.with()));
    }

    private Optional<String> diluted(Recipe.Dilute recipe) {
        Words words = sheet.words();
        return recipe.strength().map(strength -> words.say("label.diluted", "strength", strong(strength),
                "stock", named(recipe.stock()), "with", named(recipe.with())))
                .or(() -> recipe.oneIn().map(parts -> words.say("label.one-in", "n", sheet.numbers().written(parts).text(),
                        "stock", named(recipe.stock()), "with", named(recipe.with()))));
    }

    private String untold(Solution solution, String way, String key) {
        return sheet.words().missing(desk.treatment().untold().at("solutions", solution.id(), way, key));
    }

    /** Why a solution cannot be made again, where nothing may be told of what is in it; empty where it can. */
    public Optional<String> open(Solution solution) {
        return !solution.recipe().isOpen() ? Optional.empty()
                : Optional.of(solution.recipe() instanceof Recipe.Untold one && !one.portions().isEmpty()
                        ? sheet.words().say("label.basis-untold", "missing", untold(solution, "parts", "by"))
                        : sheet.words().say("study.recipe-open"));
    }

    private String untold(Solution solution, Recipe.Untold recipe) {
        Words words = sheet.words();
        return recipe.portions().isEmpty()
                ? words.say("label.untold", "parts", words.list(recipe.ingredients().stream().map(this::named).toList()))
                : words.say("label.parts-untold", "parts", recipe.portions().stream().map(this::portion)
                        .collect(Collectors.joining(words.say("label.portions-joined"))),
                        "missing", untold(solution, "parts", "by"));
    }

    private String portion(Recipe.Portion portion) {
        boolean whole = portion.parts() == Math.rint(portion.parts());
        String what = named(portion.of());
        return whole ? sheet.words().count("label.portion", (long) portion.parts(), "what", what)
                : sheet.words().say("label.portion.other", "n", sheet.numbers().number(portion.parts()), "what", what);
    }
}
