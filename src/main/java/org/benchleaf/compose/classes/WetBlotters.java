package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.Comparator;
import java.util.List;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.model.Part;
import org.benchleaf.quantity.Unit;

/** The blotters of a class that hang up to dry. */
record WetBlotters(Sheet sheet, ClassDesk desk) {

    /** How many are not dry yet at the fullest moment of the plan, each for as long as a blotter takes at most; 0 where none is changed. */
    int most() {
        long minutes = (long) sheet.library().formulary().constant("drying-a-blotter").value().highIn(Unit.MINUTE);
        List<ScheduleReading.Turn> changes = desk.reading().turns().stream().filter(ScheduleReading.Turn::isBlotterChanged).toList();
        return changes.stream().map(ScheduleReading.Turn::to).map(moment -> changes.stream().filter(change -> isWet(change, moment,
                minutes)).mapToInt(this::takenAway).sum()).max(Comparator.naturalOrder()).orElse(0);
    }

    private static boolean isWet(ScheduleReading.Turn change, LocalDateTime moment, long minutes) {
        return !change.to().isAfter(moment) && change.to().plusMinutes(minutes).isAfter(moment);
    }

    /** Those of both faces. */
    private int takenAway(ScheduleReading.Turn change) {
        return desk.desk().treatment().step(change.step()).flatMap(step -> step.part(Part.Blotters.class))
                .map(part -> 2 * part.layers() * desk.course().sheetsEach()).orElse(0);
    }
}
