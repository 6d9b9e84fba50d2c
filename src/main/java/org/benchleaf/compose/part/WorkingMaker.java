package org.benchleaf.compose.part;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.Origin;
import org.benchleaf.model.Method;
import org.benchleaf.page.Block;
import org.benchleaf.page.Link;
import org.benchleaf.page.Markup;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Amount;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.benchleaf.words.NumberText;
import org.benchleaf.words.Words;

/** Words the workings of figures, and tells the page which of them it has shown. */
public final class WorkingMaker {

    private static final Set<Quantity.Spread> EXPANDED = Set.of(Quantity.Spread.RESOLUTION, Quantity.Spread.TOLERANCE);

    private final Sheet sheet;

    public WorkingMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The working of a figure, which the page then has shown. */
    public Working make(Figure figure) {
        Optional<Method> method = sheet.library().formulary().method(figure.method());
        Amount amount = sheet.amount(figure);
        String anchor = sheet.show(figure.id());
        Optional<Link> formulaAt = sheet.formulaAt(figure.method(), Link.to(figure.label(), "#" + anchor));
        return new Working(figure.id(), anchor, figure.label(), amount,
                method.map(Method::title).orElse(figure.method()),
                sheet.way(Paths.METHODS + "#" + methodAnchor(figure.method())),
                method.filter(any -> formulaAt.isEmpty()).map(Method::mathml).filter(mathml -> !mathml.isBlank()).map(Markup::new),
                method.filter(any -> formulaAt.isEmpty()).map(Method::formula).orElse(""), formulaAt,
                figure.inputs().stream().map(given -> Resolution.isStated(figure) ? stated(given, amount) : given(given)).toList(),
                full(figure).filter(full -> !full.equals(amount.text())),
                hidden(figure) ? amount.text() : spread(figure),
                figure.sources().stream().map(sheet::cite).flatMap(Optional::stream).toList(),
                caveats(figure, method), sheet.said(figure).map(new PassageMaker(sheet)::make), reworkable(figure),
                sheet.words().group("working"));
    }

    /** The working of a figure by id, if the case has it and the page has not shown it yet. */
    public Optional<Working> once(String id) {
        return sheet.figure(id).filter(figure -> !sheet.shows(id)).map(this::make);
    }

    /** The working of a figure; where the page shows it already, the number alone, which leads there. */
    public Block onceOrLink(Figure figure) {
        if (!sheet.shows(figure.id())) {
            return make(figure);
        }
        List<Inline> told = List.of(new Inline.Text(figure.label() + " "),
                new Inline.WorkedNumber(Paths.working(figure.id()), sheet.amount(figure).text()));
        return new Prose(List.of(Prose.Passage.of(new TextBlock.Paragraph(told))));
    }

    /** Only what went in as the form has it, one value an input, can be put in again; strengths that are withheld cannot. */
    private boolean reworkable(Figure figure) {
        List<String> put = figure.inputs().stream().map(Figure.Given::key).toList();
        return sheet.tellsStrengths() && sheet.library().formulary().methods().stream()
                .filter(method -> method.name().equals(figure.method())).flatMap(method -> method.inputs().stream())
                .filter(input -> !input.example().contains("+")).map(Method.Input::key).toList().containsAll(put)
                && !put.isEmpty() && put.stream().distinct().count() == put.size();
    }

    /** Two solutions have a figure of the same label; the name of what it is of tells them apart. */
    private String named(Figure figure) {
        return sheet.owner(figure).map(of -> figure.label() + " (" + of + ")").orElse(figure.label());
    }

    public static String methodAnchor(String method) {
        return "method-" + Paths.slug(method);
    }

    private Working.Given stated(Figure.Given given, Amount told) {
        return new Working.Given(given.label(), told.text(), sheet.words().term("given", given.from().text()), Optional.empty());
    }

    private Working.Given given(Figure.Given given) {
        Optional<Figure> other = given.from() instanceof Origin.OfFigure figure ? sheet.figure(figure.key().id())
                : Optional.empty();
        return new Working.Given(given.label(), told(given),
                other.map(this::named).orElseGet(() -> sheet.words().term("given", given.from().text())),
                other.filter(figure -> sheet.shows(figure.id())).map(figure -> "#" + Paths.working(figure.id())));
    }

    /** More digits than the page tells, but never more than readings have, nor any of what is told only as less than a limit. */
    private Optional<String> full(Figure figure) {
        return hidden(figure) || Resolution.isStated(figure) || Resolution.isOfReadings(figure) || Resolution.isChance(figure)
                || sheet.isBelowUse(figure)
                ? Optional.empty()
                : Optional.of(sheet.numbers().unrounded(figure.value()).text());
    }

    private boolean hidden(Figure figure) {
        return !sheet.tellsStrengths() && StrengthFigures.isOne(figure.value());
    }

    private String told(Figure.Given given) {
        if (given.values().isEmpty()) {
            return sheet.library().phrases().of(given.text());
        }
        return sheet.tellsStrengths() || !StrengthFigures.isOne(given)
                ? sheet.numbers().spaced(sheet.numbers().shortened(given.text()))
                : sheet.words().say("strength.withheld");
    }

    private String spread(Figure figure) {
        Quantity value = figure.value();
        if (isInterval(figure)) {
            return sheet.words().say("spread.interval",
                    "ends", sheet.numbers().between(value, Resolution.of(figure).orElse(2)).text());
        }
        NumberText numbers = sheet.numbers();
        Words words = sheet.words();
        if (Resolution.isChance(figure) || sheet.isBelowUse(figure)) {
            return words.say(Resolution.isChance(figure) ? "spread.chance" : "spread.below-use");
        }
        if (Resolution.isStated(figure) && value.spread() != Quantity.Spread.TOLERANCE) {
            return words.say("spread.stated");
        }
        return switch (value.spread()) {
            case NONE -> words.say(hasOwnEnds(figure) ? "spread.own" : exactInputs(figure) ? "spread.none" : "spread.same");
            case RESOLUTION -> words.say("spread.resolution", "half", numbers.halfWidth(value, Resolution.of(figure)).text());
            case RANGE -> words.say("spread.range",
                    "low", numbers.amount(Quantity.of(value.low(), value.unit()), Resolution.of(figure)).text(),
                    "high", numbers.amount(Quantity.of(value.high(), value.unit()), Resolution.of(figure)).text());
            case TOLERANCE -> words.say("spread.tolerance", "half", numbers.halfWidth(value, Resolution.of(figure)).text());
        };
    }

    /** Whether all that went in is exact; a count may be exact though what it was counted from is not. */
    private static boolean exactInputs(Figure figure) {
        return figure.inputs().stream().flatMap(given -> given.values().stream())
                .allMatch(value -> value.spread() == Quantity.Spread.NONE);
    }

    private boolean hasOwnEnds(Figure figure) {
        return sheet.library().formulary().method(figure.method()).map(Method::ownEnds).orElse(false);
    }

    /** The caveats that no other working of this method has told on the page; what k means, where it first stands. */
    private List<String> caveats(Figure figure, Optional<Method> method) {
        return Stream.concat(Stream.of(sheet.words().say("spread.k")).filter(any -> isExpanded(figure)).filter(k -> sheet.isNewNote("", k)),
                Stream.concat(figure.notes().stream(), method.stream().flatMap(one -> one.caveats().stream())).distinct()
                        .filter(note -> sheet.isNewNote(figure.method(), note))).toList();
    }

    /** Whether its uncertainty is told with k. */
    private boolean isExpanded(Figure figure) {
        return !hidden(figure) && !isInterval(figure) && !Resolution.isChance(figure) && !sheet.isBelowUse(figure)
                && EXPANDED.contains(figure.value().spread());
    }

    /** Whether its ends are those of an interval of a test. */
    private static boolean isInterval(Figure figure) {
        return figure.method().equals("change") && figure.value().spread() == Quantity.Spread.TOLERANCE;
    }
}
