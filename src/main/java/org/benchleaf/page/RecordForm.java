package org.benchleaf.page;

import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * The form in which one station of a class writes down its day.
 *
 * @param caseId folder of the case
 * @param sheet which issue of the station's work; another word means that it was changed
 * @param course id of the class
 * @param issue number of the issue; empty if it has none
 * @param stations to choose from
 * @param steps in order
 * @param levels how much help was needed, from the most to the least
 * @param words fixed labels
 */
public record RecordForm(String caseId, String sheet, String course, String issue, List<Station> stations, List<Task> steps,
        List<String> levels, Map<String, String> words) implements Block {

    public RecordForm {
        stations = List.copyOf(stations);
        steps = List.copyOf(steps);
        levels = List.copyOf(levels);
    }

    /** A station, from 1, what it is called, and the codes of those who work there; none if the class names none. */
    public record Station(int number, String name, List<String> codes) {
        public Station {
            codes = List.copyOf(codes);
        }
    }

    /** A step: its id, what it is called, its hold point, what is measured, and what an assessor looks for. */
    public record Task(String id, String name, Optional<Hold> hold, List<NoteGroup> notes, List<Looked> outcomes) {
        public Task {
            notes = List.copyOf(notes);
            outcomes = List.copyOf(outcomes);
        }
    }

    /** What must not begin, who releases it, and what they look at. */
    public record Hold(String before, String who, Optional<String> look) {
    }

    /** What is measured together, such as in one bath. */
    public record NoteGroup(String name, List<BenchScreen.Note> notes) {
        public NoteGroup {
            notes = List.copyOf(notes);
        }
    }

    /**
     * An outcome that is marked for one of those who work at the station.
     *
     * @param number of the outcome within the class, from 1
     * @param place of the trainee within the station, from 1
     * @param will the deed, as the class words it
     * @param told the same as it stands on the page
     * @param metWhen the criterion
     * @param notYet what shows that it is not yet met; empty if not stated
     */
    public record Looked(int number, int place, String will, String told, String metWhen, Optional<String> notYet) {
    }
}
