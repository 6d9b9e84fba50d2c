package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.derive.figure.AsStated;
import org.benchleaf.model.CaseSources;
import org.benchleaf.model.Library;
import org.benchleaf.model.Passage;
import org.benchleaf.page.Block;
import org.benchleaf.page.Citation;
import org.benchleaf.page.Frame;
import org.benchleaf.page.Link;
import org.benchleaf.page.Markup;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/**
 * A page in the making: knows its own place, which terms it has already linked and which workings it has shown.
 *
 * <p>Ask in reading order: first use is what is asked first.
 */
public final class Sheet {

    /**
     * Below it the digits of a p-value tell nothing more: "p values smaller than 0.001 should be reported as p<0.001" (New England
     * Journal of Medicine, quoted by Aguinis, Vassar and Wayant 2019, doi 10.1136/bmjebm-2019-111264).
     */
    private static final double SMALL_CHANCE = 0.001;

    private final String path;
    private final String kind;
    private final String language;
    private final Library library;
    private Words words;
    private final NumberText numbers;
    private final Map<String, Figure> figures;
    private final PageNames names;
    private GlossaryLinks glossary;
    private final Sources sources;
    private final Map<String, Integer> worked = new HashMap<>();
    private final Map<String, Link> formulas = new HashMap<>();
    private final Map<String, Set<String>> notes = new HashMap<>();
    private final List<Block> blocks = new ArrayList<>();
    private final List<String> scripts = new ArrayList<>();
    private final List<Markup> linkedData = new ArrayList<>();
    private boolean strengths = true;
    private Audience audience = Audience.EVERYBODY;
    private CaseSources told = CaseSources.NONE;
    private Function<FigureKey, Optional<String>> owners = any -> Optional.empty();
    private Map<String, AsStated> stated = Map.of();
    private LanguageFolder folder = LanguageFolder.NONE;

    public Sheet(String path, String kind, String language, Library library, Map<String, Figure> figures,
            PageNames names) {
        this.path = path;
        this.kind = kind;
        this.language = language;
        this.library = library;
        this.words = Words.in(language);
        this.numbers = NumberText.in(words);
        this.figures = figures;
        this.names = names;
        this.glossary = new GlossaryLinks(GlossaryTerms.of(library), way(Paths.GLOSSARY));
        this.sources = Sources.of(library);
        scripts.add("disclosure.js");
        if (Installation.isWanted(library.studio())) {
            scripts.add(Page.KEEPING_SCRIPT);
        }
    }

    public String path() {
        return path;
    }

    public Library library() {
        return library;
    }

    public Words words() {
        return words;
    }

    /** Every kind of page. */
    public PageNames names() {
        return names;
    }

    public NumberText numbers() {
        return numbers;
    }

    /** Adds a block below those already there. */
    public Sheet add(Block block) {
        blocks.add(block);
        return this;
    }

    /** Lets the page load a script by the name of its file in the folder of scripts. */
    public Sheet script(String name) {
        scripts.add(name);
        return this;
    }

    /** Adds JSON-LD that mirrors what the page says. */
    public Sheet linkedData(String json) {
        linkedData.add(new Markup(json));
        return this;
    }

    /** The relative way from this page to a path or anchor. */
    public String way(String to) {
        return Paths.way(path, folder.of(to));
    }

    /** The way to where an author's link leads, who writes it for the page in the language of the original. */
    String rebased(String href) {
        return folder.rebased(path, href);
    }

    /** A link from this page to another. */
    public Link link(String text, String to) {
        return Link.to(text, way(to));
    }

    /** Words that lead from this page to another. */
    public Inline hyperlink(String words, String to) {
        return Inline.Hyperlink.to(way(to), words);
    }

    /** Plain text with each glossary term linked where this page uses it first. */
    public RichText linked(String text) {
        return glossary.link(RichText.of(text));
    }

    /** A block of running text with each glossary term linked where this page uses it first. */
    TextBlock linked(TextBlock block) {
        return glossary.link(block);
    }

    /** The figure of that id, if the case has it. */
    public Optional<Figure> figure(String id) {
        return Optional.ofNullable(figures.get(id));
    }

    /** The rounded number of a figure; words instead where it is a strength that this page must not tell. */
    public Amount amount(Figure figure) {
        if (!strengths && StrengthFigures.isOne(figure.value())) {
            return new Amount(words.say("strength.withheld"), "");
        }
        if (Resolution.isStated(figure)) {
            return new Amount(stated(figure.id()).orElseGet(() -> numbers.spaced(figure.inputs().get(0).text())), "");
        }
        if (Resolution.isReach(figure)) {
            return numbers.between(figure.value(), Resolution.of(figure).orElse(2));
        }
        if (Resolution.isMeanOfSpots(figure)) {
            return new Amount(numbers.fixed(figure.value().value(), 1) + " ("
                    + numbers.between(figure.value(), 1).number() + ")", "");
        }
        if (figure.method().equals("activity-ratio")) {
            return numbers.multiple(figure.value());
        }
        Optional<Amount> byHand = handAmounts().of(figure);
        if (byHand.isPresent()) {
            return byHand.get();
        }
        Optional<Quantity> step = Resolution.stepOf(figure);
        if (step.isPresent()) {
            return numbers.shownBy(figure.value(), step.get());
        }
        return Resolution.isChance(figure) ? chance(figure.value().value())
                : numbers.amount(figure.value(), Resolution.of(figure));
    }

    /** What a report states, as it was given, by the name under which a story cites it. */
    Optional<String> stated(String cited) {
        return Optional.ofNullable(stated.get(cited)).map(told -> told instanceof AsStated.Value value
                ? new StatedWords(words, numbers, value.unit()).cited(value.value()) : ((AsStated.InWords) told).text());
    }

    /** Whether a figure is told as less than anybody weighs or pours, so that no digit of it is of use. */
    boolean isBelowUse(Figure figure) {
        return handAmounts().isBelowUse(figure);
    }

    private HandAmounts handAmounts() {
        return new HandAmounts(words, numbers, library.formulary());
    }

    private Amount chance(double p) {
        return new Amount(p < SMALL_CHANCE ? words.say("statistics.p-small") : numbers.fixed(p, 3), "");
    }

    /** Whether this page has already shown the working of a figure; it does so once. */
    public boolean shows(String figure) {
        return worked.containsKey(figure);
    }

    /** Notes that this page shows the working of a figure, and tells the anchor of this one. */
    String show(String figure) {
        int times = worked.merge(figure, 1, Integer::sum);
        String anchor = Paths.working(figure);
        return times == 1 ? anchor : anchor + "-" + times;
    }

    /**
     * The working that tells the formula of a method on this page; empty if none has done so yet, and the one that is handed in does.
     *
     * @param here the working that is being made
     */
    Optional<Link> formulaAt(String method, Link here) {
        return Optional.ofNullable(formulas.putIfAbsent(method, here));
    }

    /** Whether no working of a method has told a note on this page yet; from now on one has. */
    boolean isNewNote(String method, String note) {
        return notes.computeIfAbsent(method, any -> new HashSet<>()).add(note);
    }

    /** A source by its number in the list of sources, if the library has it. */
    public Optional<Citation> cite(String key) {
        return sources.cite(key, way(Paths.SOURCES));
    }

    /** Makes it a page of the site for those people. */
    public Sheet madeFor(Audience people) {
        audience = people;
        return this;
    }

    /** Makes it a page of a case that rests on those publications. */
    public Sheet toldFrom(CaseSources publications) {
        told = publications;
        words = publications.retelling().filter(retelling -> !retelling.isWhole()).map(part -> words.ofPartlyRead()).orElse(words);
        return this;
    }

    /** Makes it one of the pages that lie in a folder of a language. */
    public Sheet lyingIn(LanguageFolder other) {
        folder = other;
        glossary = new GlossaryLinks(GlossaryTerms.of(library), way(Paths.GLOSSARY));
        return this;
    }

    /**
     * Names what figures are of.
     *
     * @param named the step, solution or other thing of which a figure is, as readers know it; empty if it is of the case itself
     */
    public Sheet naming(Function<FigureKey, Optional<String>> named) {
        owners = named;
        return this;
    }

    /** Tells what reports state, by the names under which a story cites it. */
    public Sheet stating(Map<String, AsStated> values) {
        stated = values;
        return this;
    }

    /** What the figure is of, as readers know it; empty if it is of the case itself. */
    Optional<String> owner(Figure figure) {
        return owners.apply(figure.key());
    }

    /** What a publication says to a figure, if the case names it. */
    Optional<Passage> said(Figure figure) {
        return told.ofFigure(figure.id());
    }

    /** Keeps the strengths of solutions off this page. */
    public Sheet withholdStrengths() {
        strengths = false;
        return this;
    }

    /** Whether strengths may stand on this page. */
    boolean tellsStrengths() {
        return strengths;
    }

    /** The finished page of the whole site. */
    public Page page(String title, String description) {
        return page(title, description, Optional.empty(), new Frames(library, words, audience, names.ofSite())
                .lyingIn(folder).ofSite(path, title));
    }

    /** The finished page. */
    public Page page(String title, String description, Optional<String> caseId, Frame frame) {
        return new Page(path, kind, title, description, language, caseId, frame, blocks, scripts, linkedData);
    }
}
