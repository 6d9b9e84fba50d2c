package org.benchleaf.compose.chart;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies.Kind;
import org.benchleaf.derive.classes.ClassSupplies.LaidOut;
import org.benchleaf.model.Material;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.page.DrawingRow;
import org.benchleaf.quantity.Unit;
import org.benchleaf.words.Words;

/** The station as it is laid out: each thing of the list on the wet or the dry side, with its number in the list and how many. */
public final class StationDrawing {

    /** On which a wet sheet lies on its carrier. */
    private static final String PANEL = "draining-board";
    private static final int IN_A_ROW = 4;
    /** What has no number in the list stands with its name, which needs more room. */
    private static final int NAMED_IN_A_ROW = 2;
    private static final int ROW = 64;
    private static final int HEAD = 22;

    private final Sheet sheet;
    private final CaseDesk desk;

    public StationDrawing(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /**
     * One thing of the list.
     *
     * @param item as it was laid out
     * @param number in the list, from 1
     * @param name as the list has it
     * @param amount how many or how much, as the list has it; empty if it is not known
     */
    public record Placed(LaidOut item, int number, String name, Optional<String> amount) {

        private String told() {
            return number + " " + name + amount.map(much -> ", " + much).orElse("");
        }

        private String label() {
            boolean counted = item.all().filter(all -> all.unit() == Unit.COUNT).isPresent();
            return number + amount.map(much -> " (" + much + (counted ? " ×)" : ")")).orElse("");
        }
    }

    /** Something with its picture; what is worn or shared has no place on the bench. */
    private record Seen(DrawnThing thing, String label, String told, boolean wet) {
    }

    /** The drawing; empty where nothing on the list has a picture. */
    public Optional<DrawingRow> make(String id, List<Placed> list) {
        return make(id, list, List.of());
    }

    /**
     * The same at a station of a class.
     *
     * @param shared things of the room that all stations work at, with how many there are
     */
    public Optional<DrawingRow> make(String id, List<Placed> list, List<Placed> shared) {
        List<Seen> ofAll = shared.stream().flatMap(one -> DrawnThing.ofTool(one.item().id(), desk.library().reference()).stream()
                .map(thing -> new Seen(thing, one.name() + one.amount().map(much -> " (" + much + " ×)").orElse(""),
                        one.name() + one.amount().map(much -> ", " + much).orElse(""), true))).toList();
        List<Seen> seen = Stream.concat(tray(list), list.stream().flatMap(placed -> seen(placed).stream())).toList();
        List<Seen> wet = seen.stream().filter(Seen::wet).toList();
        List<Seen> dry = seen.stream().filter(one -> !one.wet()).toList();
        if (seen.isEmpty()) {
            return Optional.empty();
        }
        Words words = sheet.words();
        DrawingPen pen = new DrawingPen();
        int y = side(pen, 0, words.say("drawing.station-wet"), wet, IN_A_ROW);
        if (!wet.isEmpty() && !dry.isEmpty()) {
            pen.line("web", 0, y, DrawingPen.WIDTH, y);
        }
        int below = side(pen, y, words.say("drawing.station-dry"), dry, IN_A_ROW);
        if (!ofAll.isEmpty()) {
            pen.line("web", 0, below, DrawingPen.WIDTH, below);
            side(pen, below, words.say("drawing.station-shared"), ofAll, NAMED_IN_A_ROW);
        }
        List<String> told = new ArrayList<>();
        told(words.say("drawing.station-wet"), wet).ifPresent(told::add);
        told(words.say("drawing.station-dry"), dry).ifPresent(told::add);
        told(words.say("drawing.station-shared"), ofAll).ifPresent(told::add);
        return Optional.of(new DrawingRow(List.of(pen.drawing(id, words.say("drawing.station-title"), String.join(" ", told),
                words.say("drawing.station-caption")))));
    }

    private static Optional<String> told(String side, List<Seen> things) {
        return things.isEmpty() ? Optional.empty()
                : Optional.of(side + ": " + things.stream().map(Seen::told).collect(Collectors.joining("; ")) + ".");
    }

    /** Draws what lies on one side and returns the height below it. */
    private static int side(DrawingPen pen, int top, String name, List<Seen> things, int inARow) {
        if (things.isEmpty()) {
            return top;
        }
        int cell = DrawingPen.WIDTH / inARow;
        pen.words(2, top + 15, name);
        for (int i = 0; i < things.size(); i++) {
            int x = cell * (i % inARow);
            int y = top + HEAD + ROW * (i / inARow);
            things.get(i).thing().draw(pen, x + (cell - DrawnThing.FIELD) / 2, y, 1);
            pen.label(x + cell / 2.0, y + DrawnThing.FIELD + 14, things.get(i).label());
        }
        return top + HEAD + ROW * ((things.size() + inARow - 1) / inARow);
    }

    /** A bath whose tray is on no list stands in the sink, in a tray of the studio's. */
    private Stream<Seen> tray(List<Placed> list) {
        String tray = sheet.words().say("drawing.label-tray");
        boolean isTold = list.stream().anyMatch(placed -> placed.item().mark().isPresent());
        return !isTold && list.stream().flatMap(placed -> placed.item().steps().stream()).flatMap(id -> desk.treatment().step(id).stream())
                .anyMatch(step -> step.part(Part.Bath.class).isPresent())
                ? Stream.of(new Seen(DrawnThing.TRAY, tray, tray, true)) : Stream.empty();
    }

    private Optional<Seen> seen(Placed placed) {
        return thing(placed.item()).map(thing -> new Seen(thing, placed.label(), placed.told(), isWet(placed.item())));
    }

    private Optional<DrawnThing> thing(LaidOut item) {
        return switch (item.kind()) {
            case SHEET -> Optional.of(DrawnThing.PAPER);
            case SOLUTION -> Optional.of(DrawnThing.BEAKER);
            case WEIGHT -> Optional.of(DrawnThing.WEIGHT);
            case MATERIAL -> material(item.id()).filter(this::isLaidDown).flatMap(material ->
                    DrawnThing.called(material.name(), material.kind(), desk.library().reference()));
            case VESSEL -> item.mark().isPresent() ? Optional.of(DrawnThing.TRAY)
                    : DrawnThing.ofTool(item.id(), desk.library().reference());
            case BENCH -> item.mark().isPresent() ? Optional.of(DrawnThing.TRAY)
                    : DrawnThing.called(item.id(), item.id(), desk.library().reference());
            // With what is prepared, and what all share, lies elsewhere.
            case MAKING, SHARED, WORN -> Optional.empty();
        };
    }

    /** What is worn, and what draws the air away, stands on the list alone. */
    private boolean isLaidDown(Material material) {
        return desk.library().reference().worn(material).isEmpty();
    }

    private Optional<Material> material(String id) {
        return Optional.ofNullable(desk.library().materials().get(id));
    }

    /** What is liquid, or goes into the bath or the mist with the sheet. */
    private boolean isWet(LaidOut item) {
        return item.kind() == Kind.SOLUTION || item.mark().isPresent()
                || item.id().equals(PANEL)
                || item.kind() == Kind.VESSEL && item.steps().stream().flatMap(id -> desk.treatment().step(id).stream())
                        .anyMatch(step -> step.part(Part.Bath.class).isPresent())
                || material(item.id()).filter(material -> material.kind().equals("liquid")).isPresent()
                || item.steps().stream().flatMap(id -> desk.treatment().step(id).stream()).anyMatch(step -> wet(step).contains(item.id()));
    }

    private static Set<String> wet(Step step) {
        Stream<String> sprayer = step.part(Part.Mist.class).flatMap(Part.Mist::tool).stream();
        boolean soaks = step.part(Part.Mist.class).isPresent() || step.part(Part.Bath.class).isPresent();
        Stream<String> carrier = soaks ? step.part(Part.Support.class).stream().flatMap(support ->
                Stream.concat(Stream.of(support.under()), support.between().stream())) : Stream.empty();
        return Stream.concat(sprayer, carrier).collect(Collectors.toSet());
    }
}
