package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.SharedUnits;
import org.benchleaf.page.Table;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Which one of the things of which there are several serves which station, and when where it does not throughout. */
record WhichServes(Sheet sheet, ClassDesk desk) {

    /** A row for each one; empty where there are never two of a thing in use at once. */
    Optional<Table> table() {
        Words words = sheet.words();
        List<List<RichText>> rows = new ArrayList<>();
        desk.units().uses().stream().map(SharedUnits.Use::thing).distinct().forEach(thing -> {
            Map<Integer, List<SharedUnits.Use>> byNumber = desk.units().uses().stream().filter(use -> use.thing().equals(thing))
                    .collect(Collectors.groupingBy(SharedUnits.Use::number, TreeMap::new, Collectors.toList()));
            byNumber.forEach((number, uses) -> rows.add(List.of(RichText.of(desk.unit(sheet, thing, number)),
                    RichText.of(stations(uses)))));
        });
        return rows.isEmpty() ? Optional.empty() : Optional.of(new Table("serves-table", words.say("class.serves"),
                words.columns("class.thing", "class.serves-stations"), rows, Optional.empty()));
    }

    private String stations(List<SharedUnits.Use> uses) {
        Map<Integer, List<SharedUnits.Use>> byStation = uses.stream().collect(Collectors.groupingBy(use -> use.first().station(),
                TreeMap::new, Collectors.toList()));
        List<String> told = new ArrayList<>();
        byStation.forEach((station, own) -> told.add(isThroughout(station, own) ? String.valueOf(station)
                : sheet.words().say("class.serves-at", "n", station, "times", sheet.words().list(own.stream()
                        .map(use -> desk.clock(sheet, use.first().from())).toList()))));
        return String.join("; ", told);
    }

    private boolean isThroughout(int station, List<SharedUnits.Use> own) {
        SharedUnits.Use one = own.get(0);
        return desk.units().uses().stream().filter(use -> use.first().station() == station && use.thing().equals(one.thing()))
                .allMatch(use -> use.number() == one.number());
    }
}
