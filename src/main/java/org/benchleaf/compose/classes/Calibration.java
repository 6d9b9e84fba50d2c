package org.benchleaf.compose.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/**
 * The meter of a class, which is calibrated before it is first used on a day.
 *
 * @param begin the latest time at which to begin
 * @param takes how long that usually takes
 * @param used when it is first used
 */
record Calibration(LocalDateTime begin, Quantity takes, LocalDateTime used) {

    /** With what the meter is calibrated. */
    static String buffers(Sheet sheet, ClassDesk desk) {
        return desk.plan().supplies().buffers().map(ClassSupplies.LaidOut::words).orElse(sheet.words().say("class.not-worked-out"));
    }

    /** One for each day on which the meter is used, in order; none where the class uses none. */
    static List<Calibration> of(Sheet sheet, ClassDesk desk) {
        Quantity takes = sheet.library().formulary().constant("calibrating-a-meter").value();
        Map<LocalDate, LocalDateTime> first = new TreeMap<>();
        desk.reading().turns().stream().filter(ScheduleReading.Turn::isMetered).map(ScheduleReading.Turn::from).forEach(time ->
                first.merge(time.toLocalDate(), time, (one, other) -> one.isBefore(other) ? one : other));
        long minutes = (long) takes.highIn(Unit.MINUTE);
        return first.values().stream().map(used -> new Calibration(used.minusMinutes(minutes), takes, used)).toList();
    }
}
