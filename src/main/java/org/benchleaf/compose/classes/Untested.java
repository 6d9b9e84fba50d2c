package org.benchleaf.compose.classes;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiFunction;
import org.benchleaf.compose.part.HazardMaker;
import org.benchleaf.compose.part.PartFacts;
import org.benchleaf.compose.part.Sheet;
import org.benchleaf.derive.classes.Outlasting;
import org.benchleaf.model.TestedContact;
import org.benchleaf.page.Note;
import org.benchleaf.text.RichText;
import org.benchleaf.words.Words;

/** Where a bath touches a colour by the plan for longer than was tested, in words. */
record Untested(Sheet sheet, ClassDesk desk) {

    /** A note for each bath, with the colours and with the stations at which it lasts longer. */
    List<Note> ofClass() {
        Words words = sheet.words();
        Map<TestedContact, List<String>> stations = new LinkedHashMap<>();
        desk.plan().outlasting().forEach(one -> stations.computeIfAbsent(one.contact(), any -> new ArrayList<>())
                .add(words.say("class.outlasts-station", "n", one.station(), "time", sheet.numbers().duration(one.lasts()).text())));
        return joined(stations.keySet(), (contact, media) -> words.say("class.outlasts", "medium", media, "liquid", liquid(contact),
                "tested", tested(contact), "stations", String.join("; ", stations.get(contact))) + " "
                + tried(contact).map(time -> words.say("class.outlasts-tried", "time", time)).orElse(words.say("class.outlasts-do")));
    }

    /** The same at one station, with the time at which the tested time is over. */
    List<Note> ofStation(int station) {
        Map<TestedContact, Outlasting> here = new LinkedHashMap<>();
        desk.plan().outlasting().stream().filter(one -> one.station() == station).forEach(one -> here.put(one.contact(), one));
        return joined(here.keySet(), (contact, media) -> sheet.words().say("class.outlasts-here", "medium", media, "liquid",
                liquid(contact), "tested", tested(contact), "until", desk.clock(sheet, here.get(contact).testedUntil()), "end",
                desk.clock(sheet, here.get(contact).to())) + " " + tried(contact).map(time -> sheet.words().say(
                        "class.outlasts-here-tried", "time", time)).orElse(sheet.words().say("class.outlasts-here-do")));
    }

    /** Contacts of which the same is told but for the colour have one note. */
    private List<Note> joined(Collection<TestedContact> contacts, BiFunction<TestedContact, String, String> told) {
        Map<String, List<TestedContact>> alike = new LinkedHashMap<>();
        contacts.forEach(contact -> alike.computeIfAbsent(told.apply(contact, ""), any -> new ArrayList<>()).add(contact));
        return alike.values().stream().map(same -> note(told.apply(same.get(0), sheet.words().list(same.stream().map(this::medium)
                .distinct().toList())))).toList();
    }

    /** For how long the trial of the practice sheets keeps a drop of the liquid; empty where they are not tried with it. */
    private Optional<String> tried(TestedContact contact) {
        boolean tried = desk.plan().duties().stream().anyMatch(duty -> !duty.touches().isEmpty()
                && duty.with().containsKey(contact.liquid()));
        return Outlasting.longest(desk.plan().outlasting(), contact.liquid()).filter(any -> tried)
                .map(time -> sheet.numbers().duration(time).text());
    }

    private Note note(String told) {
        return new Note("plain", sheet.words().say("notice.word"), RichText.of(Words.capital(told)));
    }

    private String medium(TestedContact contact) {
        return PartFacts.tested(sheet.words(), desk.desk(), contact.test());
    }

    private String liquid(TestedContact contact) {
        return new HazardMaker(sheet, desk.desk()).name(contact.liquid());
    }

    private String tested(TestedContact contact) {
        return contact.test().dwell().map(dwell -> sheet.numbers().duration(dwell).text()).orElseThrow();
    }
}
