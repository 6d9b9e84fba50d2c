package org.benchleaf.compose.part;

import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.Meeting;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.Solution;
import org.benchleaf.model.Step;
import org.benchleaf.page.Caution;
import org.benchleaf.text.RichText;
import org.benchleaf.words.WholeSentence;
import org.benchleaf.words.Words;

/** Tells where a retold case has substances together that must not meet: at the step, and at the recipe of what brings them. */
public final class MeetingWords {

    private final Sheet sheet;
    private final CaseDesk desk;

    public MeetingWords(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** A caution for each meeting at a step. */
    public List<Caution> cautions(Optional<StepCare> care) {
        return cautions(care.map(StepCare::meetings).orElse(List.of()).stream());
    }

    /** A caution for each meeting of which a solution is part, and for what meets in the solution itself. */
    List<Caution> cautions(Solution solution) {
        Stream<Meeting> within = desk.treatment().sources().retelling().isEmpty() ? Stream.of()
                : Optional.ofNullable(desk.worked().hazards().get(solution.id())).map(Hazards::incompatible).orElse(List.of()).stream()
                        .map(this::within);
        Stream<Meeting> besides = desk.worked().care().values().stream().map(StepCare::meetings).flatMap(Collection::stream)
                .filter(meeting -> meeting.things().contains(solution.id()) && meeting.where() != Meeting.Where.SOLUTION);
        return cautions(Stream.concat(within, besides));
    }

    private Meeting within(Hazards.Clash clash) {
        return new Meeting(Meeting.Where.SOLUTION, name(clash.one()), name(clash.with()), clash.gives(), clash.why(), Set.of());
    }

    private String name(String substance) {
        return desk.library().reference().substances().get(substance).within();
    }

    /** What is done at a step and, behind it, what meets there. */
    public String instruction(Step step) {
        String meetings = sentences(step.id());
        return meetings.isEmpty() ? step.instruction() : WholeSentence.of(step.instruction()) + " " + meetings;
    }

    /** What meets at a step, in sentences; empty if nothing does. */
    String sentences(String step) {
        return Optional.ofNullable(desk.worked().care().get(step)).map(StepCare::meetings).orElse(List.of()).stream()
                .map(this::sentence).distinct().collect(Collectors.joining(" "));
    }

    private List<Caution> cautions(Stream<Meeting> meetings) {
        Words words = sheet.words();
        return meetings.map(this::sentence).distinct().map(sentence -> new Caution("danger", words.say("caution-level.danger"),
                words.say("meeting.name"), sheet.linked(sentence), RichText.of(""))).toList();
    }

    private String sentence(Meeting meeting) {
        return sheet.words().say("meeting." + meeting.where().name().toLowerCase(Locale.ROOT), "one", meeting.one(), "other",
                meeting.other(), "gives", meeting.gives(), "why", meeting.why());
    }
}
