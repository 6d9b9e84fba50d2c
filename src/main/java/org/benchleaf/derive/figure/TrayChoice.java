package org.benchleaf.derive.figure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Library;
import org.benchleaf.model.Part;
import org.benchleaf.model.PrintObject;
import org.benchleaf.model.Step;
import org.benchleaf.model.Studio;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.benchleaf.science.Sheets;

/** Chooses the studio's tray for a bath: the smallest in which the sheet lies with its margin, lengthwise or turned. */
public final class TrayChoice {

    private TrayChoice() {
    }

    /** The tray of a bath; empty where size or margin is not on record, or none of the studio's is large enough. */
    static Optional<Studio.Tray> of(Library library, PrintObject object, Step step, Part.Bath bath) {
        return of(object.sizeOf(step.of()).flatMap(size -> bath.margin().map(margin -> fitting(library, margin, size)))
                .orElse(List.of()), bath);
    }

    /** Of trays in which it lies, the smallest first, the first that is deep enough; else the smallest. */
    static Optional<Studio.Tray> of(List<Studio.Tray> fitting, Part.Bath bath) {
        return fitting.stream().filter(tray -> isDeepEnough(tray, bath)).findFirst().or(() -> fitting.stream().findFirst());
    }

    /** The trays in which it lies, the smallest first. */
    static List<Studio.Tray> fitting(Library library, Quantity margin, PrintObject.SheetSize size) {
        double high = side(Sheets.withMargins(size.height(), margin));
        double wide = side(Sheets.withMargins(size.width(), margin));
        return library.studio().trays().stream()
                .filter(tray -> Math.max(side(tray.height()), side(tray.width())) >= Math.max(high, wide)
                        && Math.min(side(tray.height()), side(tray.width())) >= Math.min(high, wide))
                .sorted(Comparator.comparingDouble(tray -> Sheets.lining(tray.height(), tray.width(),
                        library.formulary().constant("no-margin").value()).value())).toList();
    }

    /** The tray of a bath and how far it is filled; empty where the depth is not on record. */
    public static Optional<Preparation.Mark> mark(Library library, PrintObject object, Step step, Part.Bath bath) {
        return bath.depth().map(depth -> new Preparation.Mark(of(library, object, step, bath).map(Studio.Tray::id), depth));
    }

    /** Whether a tray can be filled to the depth of a bath. */
    static boolean isDeepEnough(Studio.Tray tray, Part.Bath bath) {
        return bath.depth().filter(depth -> side(tray.depth()) < depth.highIn(Unit.MILLIMETRE)).isEmpty();
    }

    private static double side(Quantity length) {
        return length.in(Unit.MILLIMETRE);
    }
}
