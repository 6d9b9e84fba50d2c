package org.benchleaf.compose.classes;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.Calibration;
import org.benchleaf.derive.classes.ClassSupplies;
import org.benchleaf.derive.classes.Duty;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;

/** What the technician does with the meters of a class before they are used. */
final class MeterWork {

    /** As the table of what work needs calls it. */
    private static final String CONDUCTIVITY_METER = "conductivity meter";

    private MeterWork() {
    }

    /**
     * The conductivity meter, which is checked before the first calibration of a day.
     *
     * @param begin the latest time at which to begin
     * @param takes how long that usually takes
     * @param until by when it must be over
     */
    record Check(LocalDateTime begin, Quantity takes, LocalDateTime until) {
    }

    /** With what a meter is calibrated. */
    static String buffers(Sheet sheet, ClassDesk desk) {
        return desk.plan().supplies().buffers().map(ClassSupplies.LaidOut::words).orElse(sheet.words().say("class.not-worked-out"));
    }

    /** What is calibrated; of several meters, which. */
    static String name(Sheet sheet, Calibration one) {
        return one.of() == 1 ? sheet.words().say("class.calibrate")
                : sheet.words().say("class.calibrate-one", "n", one.meter(), "of", one.of());
    }

    /** How many there are, with those before the class. */
    static int count(Sheet sheet, ClassDesk desk) {
        return of(sheet, desk).size()
                + (int) desk.plan().duties().stream().filter(duty -> duty.kind() == Duty.Kind.METER_CALIBRATED).count();
    }

    /** Those of the days of the class. */
    static List<Calibration> of(Sheet sheet, ClassDesk desk) {
        return Calibration.of(desk.reading(), sheet.library().formulary().constant("calibrating-a-meter").value());
    }

    /** One for each of these days, where the class lays such a meter out. */
    static List<Check> checks(Sheet sheet, ClassDesk desk) {
        Quantity takes = sheet.library().formulary().constant("checking-conductivity").value();
        Map<LocalDate, LocalDateTime> days = new TreeMap<>();
        if (desk.plan().supplies().layOut().stream().anyMatch(item -> item.id().equals(CONDUCTIVITY_METER))) {
            of(sheet, desk).forEach(one -> days.merge(one.begin().toLocalDate(), one.begin(), (some, other) ->
                    some.isBefore(other) ? some : other));
        }
        return days.values().stream().map(first -> new Check(first.minusMinutes((long) takes.highIn(Unit.MINUTE)), takes, first)).toList();
    }
}
