package org.benchleaf.check;

import static org.benchleaf.quantity.Dimension.TIME;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.util.Collection;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.message.FormMessages;
import org.benchleaf.message.Nearest;
import org.benchleaf.message.Place;
import org.benchleaf.model.ClassDay;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.ClassWork;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Quantity;

/** Reads the file of a class. */
final class ClassForm {

    private static final LocalDateTime STAND_IN = LocalDateTime.of(1970, 1, 1, 9, 0);

    private final Fields fields;
    private final Collection<String> caseIds;
    private final Collection<String> materials;
    private final Reference reference;

    ClassForm(Fields fields, Collection<String> caseIds, Collection<String> materials, Reference reference) {
        this.fields = fields;
        this.caseIds = caseIds;
        this.materials = materials;
        this.reference = reference;
    }

    /** The steps that a class names, with the place where it does. */
    static Map<String, Place> steps(CourseClass course) {
        Map<String, Place> steps = new LinkedHashMap<>();
        course.firstStep().ifPresent(id -> steps.put(id, course.place()));
        course.lastStep().ifPresent(id -> steps.putIfAbsent(id, course.place()));
        course.day().uses().forEach((id, use) -> steps.putIfAbsent(id, use.place()));
        course.day().limits().forEach(limit -> {
            steps.putIfAbsent(limit.from(), limit.place());
            steps.putIfAbsent(limit.to(), limit.place());
        });
        course.papers().making().ifPresent(making -> making.steps().forEach(id -> steps.putIfAbsent(id, making.place())));
        course.papers().outcomes().forEach(outcome -> steps.putIfAbsent(outcome.at(), outcome.place()));
        return steps;
    }

    /** The class of that name, with what of it was handed out before. */
    CourseClass read(String name, List<ClassPapers.Issued> issued) {
        String caseId = fields.needText("case");
        if (!caseId.isEmpty() && !caseIds.contains(caseId)) {
            fields.messages().add(FormMessages.UNKNOWN_CASE.at(fields.place("case"), "id", caseId,
                    "remedy", Nearest.to(caseId, caseIds).map(near -> "Did you mean '" + near + "'?")
                            .orElse("Write the name of a folder of 'cases'.")));
        }
        LocalDateTime starts = fields.need(moment("starts"), "starts", STAND_IN);
        int stations = fields.need(fields.whole("stations"), "stations", 1);
        ClassDay day = day();
        return new CourseClass(name, fields.needText("title"), caseId, starts, stations,
                fields.whole("sheets each").orElse(1), fields.text("first step"), fields.text("last step"), day,
                new ClassPapersForm(fields, starts.toLocalDate()).read(stations * day.traineesEach(), issued),
                new ClassStoresForm(fields, materials, reference).read(),
                fields.has("first step") ? fields.place("first step") : fields.place());
    }

    private Optional<LocalDateTime> moment(String key) {
        return fields.moment(key, STAND_IN);
    }

    private ClassDay day() {
        Optional<Fields> people = fields.group("people");
        return new ClassDay(moment("ends by"), fields.groups("breaks").stream().map(each -> new ClassDay.Break(
                each.time("from", LocalTime.MIN), each.time("to", LocalTime.MIN))).toList(),
                fields.word("rhythm", ClassDay.Rhythm::of).orElse(ClassDay.Rhythm.SHORTEST),
                fields.group("groups").map(each -> new ClassDay.Groups(each.need(each.whole("of"), "of", 1),
                        each.needPositive("every", TIME))),
                fields.whole("trainees each").orElse(1), people.flatMap(group -> group.whole("supervisors")),
                people.flatMap(group -> group.whole("most trainees each")), shared(), uses(),
                fields.groups("limits").stream().map(each -> new ClassDay.Between(each.needText("from"),
                        each.needText("to"), each.needPositive("within", TIME), each.place())).toList(),
                work());
    }

    private Map<String, Integer> shared() {
        Map<String, Integer> shared = new LinkedHashMap<>();
        fields.groups("shared").forEach(each -> shared.put(each.needText("thing"),
                each.need(each.whole("count"), "count", 1)));
        return shared;
    }

    private Map<String, ClassDay.Use> uses() {
        Map<String, ClassDay.Use> uses = new LinkedHashMap<>();
        fields.group("uses").map(Fields::named).orElse(Map.of()).forEach((id, use) -> uses.put(id,
                new ClassDay.Use(use.texts("at"), use.positive("takes", TIME),
                        use.word("by", ClassDay.Doer::of), use.text("look"), use.place())));
        return uses;
    }

    /** The times that the class states itself. */
    private Map<ClassWork, Quantity> work() {
        Map<ClassWork, Quantity> work = new EnumMap<>(ClassWork.class);
        fields.group("work").ifPresent(own -> own.keys().forEach(word -> ClassWork.of(word).ifPresent(kind ->
                own.positive(word, TIME).ifPresent(time -> work.put(kind, time)))));
        return work;
    }
}
