package org.benchleaf.compose.classes;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.BesideWork;
import org.benchleaf.derive.classes.ScheduleReading;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Who has the one conductivity meter of the room first, where by the plan two stations read a bath at the same time. */
record OneForAll(Sheet sheet, ClassDesk desk) {

    /** As the table of what work needs calls it. */
    private static final String METER = "conductivity meter";

    /** Two stations that read a bath at the same time, the one that began first. */
    private record Both(ScheduleReading.Turn first, ScheduleReading.Turn then) {
    }

    /** A row for each time at which two read; empty where nobody waits, or the class counts its meters itself. */
    Optional<Table> readings() {
        Words words = sheet.words();
        List<List<RichText>> rows = both().stream().map(this::row).toList();
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("conductivity-turns", words.say("class.one-meter"),
                words.columns("class.from", "class.until", "class.has-it-first", "class.has-it-then"), rows, Optional.empty()));
    }

    /** That another station has it first; empty where the one of the turn has it at once. */
    String after(ScheduleReading.Turn turn) {
        return both().stream().filter(one -> one.then().equals(turn)).findFirst().map(one -> " "
                + sheet.words().say("class.meter-after", "n", one.first().station())).orElse("");
    }

    private List<Both> both() {
        List<Both> both = new ArrayList<>();
        List<ScheduleReading.Turn> read = isOne() ? desk.reading().turns().stream().filter(turn -> turn.isBathRead()
                || turn.work().equals(BesideWork.READ_USED)).sorted(Comparator.comparing(ScheduleReading.Turn::from)
                .thenComparing(ScheduleReading.Turn::station)).toList() : List.of();
        for (int first = 0; first < read.size(); first++) {
            ScheduleReading.Turn has = read.get(first);
            read.stream().skip(first + 1).takeWhile(then -> then.from().isBefore(has.to())).forEach(then -> both.add(new Both(has, then)));
        }
        return both;
    }

    private boolean isOne() {
        return !desk.course().day().shared().containsKey(METER) && desk.plan().supplies().layOut().stream().anyMatch(item ->
                item.id().equals(METER) && item.all().filter(all -> all.value() == 1).isPresent());
    }

    private List<RichText> row(Both both) {
        LocalDateTime until = both.first().to().isBefore(both.then().to()) ? both.first().to() : both.then().to();
        return List.of(RichText.of(desk.clock(sheet, both.then().from())), RichText.of(desk.clock(sheet, until)),
                station(both.first()), station(both.then()));
    }

    private RichText station(ScheduleReading.Turn turn) {
        return RichText.of(sheet.words().say("class.station-n", "n", turn.station()));
    }
}
