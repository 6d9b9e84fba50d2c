package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.figure.Preparation;
import org.benchleaf.derive.hazard.Bottles;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.model.Reference;
import org.benchleaf.model.Solution;
import org.benchleaf.page.LabelSheet;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** Makes a label for each prepared solution, as large as its bottle asks. */
public final class LabelMaker {

    private final Sheet sheet;
    private final CaseDesk desk;

    public LabelMaker(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The labels of all preparations, in their order. */
    public LabelSheet make() {
        Map<Preparation, Integer> once = new LinkedHashMap<>();
        desk.worked().preparations().forEach(preparation -> once.put(preparation, 1));
        return make(once);
    }

    private LabelSheet make(Map<Preparation, Integer> times) {
        return make(times, List.of());
    }

    /** So many labels of each preparation, then others. */
    public LabelSheet make(Map<Preparation, Integer> times, List<LabelSheet.Label> others) {
        List<LabelSheet.Label> labels = new ArrayList<>();
        times.forEach((preparation, count) -> labels.addAll(Collections.nCopies(count, label(preparation))));
        labels.addAll(others);
        // The small ones together, so that rows of a sheet are full.
        labels.sort(Comparator.comparing(label -> label.size() == 0));
        return new LabelSheet(labels, sheet.words().group("label-sheet"));
    }

    /**
     * The label of a vessel in which waste is collected.
     *
     * @param kind of the waste, in words
     * @param from ids of the solutions that go into it; none where what goes in is on no record
     * @param holds what the vessel holds
     */
    public LabelSheet.Label waste(String kind, List<String> from, Quantity holds) {
        List<Hazards> all = from.stream().flatMap(id -> Optional.ofNullable(desk.worked().hazards().get(id)).stream()).toList();
        HazardMaker maker = new HazardMaker(sheet, desk);
        boolean unclassified = !all.isEmpty() && all.stream().allMatch(Hazards::isUnclassified);
        return new LabelSheet.Label(size(holds, unclassified), sheet.words().say("label.waste", "kind", kind),
                from.isEmpty() ? Optional.empty() : Optional.of(sheet.words().list(from.stream().map(maker::name).toList())),
                Optional.empty(), maker.ofAll(from), unclassified,
                all.stream().flatMap(one -> one.care().stream()).distinct().toList(), true);
    }

    /**
     * The label of a vessel that is filled with a material as it is.
     *
     * @param vessel what it is called
     * @param id of the material
     * @param holds what the vessel holds
     */
    public LabelSheet.Label filled(String vessel, String id, Quantity holds) {
        // The case keeps the hazards of what has some; what it does not keep is asked as it is sold.
        Optional<Hazards> hazards = Optional.ofNullable(desk.worked().hazards().get(id)).or(() ->
                Optional.ofNullable(desk.library().materials().get(id)).map(new Bottles(desk.library().reference(),
                        desk.library().formulary())::of));
        boolean unclassified = hazards.filter(Hazards::isUnclassified).isPresent();
        HazardMaker maker = new HazardMaker(sheet, desk);
        return new LabelSheet.Label(size(holds, unclassified), vessel, Optional.of(maker.name(id)), Optional.empty(),
                hazards.flatMap(maker::told), unclassified, hazards.map(Hazards::care).orElse(List.of()));
    }

    private LabelSheet.Label label(Preparation preparation) {
        Solution solution = desk.treatment().solution(preparation.solution()).orElseThrow();
        Optional<Hazards> hazards = Optional.ofNullable(desk.worked().hazards().get(solution.id()));
        return new LabelSheet.Label(size(preparation.batch(), hazards.filter(Hazards::isUnclassified).isPresent()), solution.name(),
                new RecipeMaker(sheet, desk).strength(solution),
                solution.keeps().map(this::keeps),
                new HazardMaker(sheet, desk).of(solution.id()), hazards.filter(Hazards::isUnclassified).isPresent(),
                hazards.map(Hazards::care).orElse(List.of()));
    }

    /** How long it keeps; of what keeps for less than a day, the time is written beside the day. */
    private String keeps(Quantity keeps) {
        String time = sheet.numbers().duration(keeps).text();
        return keeps.highIn(Unit.DAY) < 1 ? sheet.words().say("label.with-the-time", "time", time) : time;
    }

    /**
     * The first size whose largest bottle holds the batch; a batch by mass is taken to be as dense as water. The sizes are those for
     * what is hazardous; what is not has one of its own, three to a row of a sheet of paper.
     */
    private int size(Quantity batch, boolean unclassified) {
        if (unclassified) {
            return 0;
        }
        double litres = batch.unit().dimension() == org.benchleaf.quantity.Dimension.MASS
                ? batch.in(Unit.KILOGRAM) : batch.in(Unit.LITRE);
        List<Reference.LabelSize> sizes = desk.library().reference().labels();
        for (int i = 0; i < sizes.size(); i++) {
            if (litres <= sizes.get(i).upTo().in(Unit.LITRE)) {
                return i + 1;
            }
        }
        return Math.max(1, sizes.size());
    }
}
