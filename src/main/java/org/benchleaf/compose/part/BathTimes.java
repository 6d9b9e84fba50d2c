package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.benchleaf.calculate.Figure;
import org.benchleaf.calculate.FigureKey;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.Fact;
import org.benchleaf.page.Working;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.text.RichText;

/** How long the baths of a step take to fill and to change, as the case says or as is usual. */
public final class BathTimes {

    private final Sheet sheet;
    private final CaseDesk desk;
    private final Step step;

    public BathTimes(Sheet sheet, CaseDesk desk, Step step) {
        this.sheet = sheet;
        this.desk = desk;
        this.step = step;
    }

    /** What the step sheet tells of it; nothing where the case tells the time of the step in all. */
    public List<Fact> facts() {
        List<Fact> facts = new ArrayList<>();
        step.part(Part.Bath.class).filter(bath -> step.takes().isEmpty() && bath.isTimed()).ifPresent(bath -> {
            facts.add(fact("filling", bath.filling(), "filling-time"));
            if (bath.baths() > 1) {
                facts.add(fact("changing", bath.changing(), "change-time"));
            }
        });
        return facts;
    }

    /** From the begin of the step to the end of its last bath; empty where that is not known. */
    public Optional<Quantity> inAll() {
        return figure("bath-time").map(Figure::value);
    }

    /** How that was worked out; empty where the case tells the time of the step in all, or the page has it already. */
    public Optional<Working> working() {
        return figure("bath-time").filter(any -> step.takes().isEmpty()).flatMap(figure -> new WorkingMaker(sheet).once(figure.id()));
    }

    private Fact fact(String key, Optional<Quantity> told, String name) {
        String label = sheet.words().say("bench-fact." + key);
        return figure(name).map(figure -> {
            String time = sheet.numbers().duration(figure.value()).text();
            return new Fact(label, Working.marked(figure.id(), RichText.of(told.isPresent() ? time
                    : sheet.words().say("bench.usual-time", "time", time))));
        }).orElseGet(() -> Fact.of(label, told.map(time -> sheet.numbers().duration(time).text())
                .orElse(sheet.words().notRecorded())));
    }

    private Optional<Figure> figure(String name) {
        return desk.worked().figures().values().stream().filter(figure -> figure.key().owner() == FigureKey.Owner.STEP
                && figure.key().of().equals(step.id()) && figure.key().name().equals(name)).findFirst();
    }
}
