package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.ClassStores;
import org.benchleaf.model.CourseClass;
import org.benchleaf.model.Reference;

/** Says what would have to be begun or ordered before the class is issued. */
final class IssueDay {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final CourseClass course;
    private final ClassPapers.Issue issue;
    private final Reference reference;
    private final Messages messages;

    IssueDay(CourseClass course, ClassPapers.Issue issue, Reference reference, Messages messages) {
        this.course = course;
        this.issue = issue;
        this.reference = reference;
        this.messages = messages;
    }

    void check(List<ClassPlan.Start> starts, ClassSupplies supplies) {
        starts.stream().filter(start -> isBefore(start.begin())).forEach(start -> messages.add(
                ClassMessages.BEGUN_TOO_LATE.at(issue.place(), "solution", start.solution(),
                        "by", MOMENT.format(start.begin()), "issued", issue.on())));
        supplies.orders().stream().filter(order -> order.orderBy().filter(by -> by.isBefore(issue.on())).isPresent())
                .forEach(order -> messages.add(ClassMessages.ORDER_TOO_LATE.at(
                        course.stores().supplies().get(order.material()).place(), "material", order.material(),
                        "by", order.orderBy().orElseThrow(), "issued", issue.on(),
                        "missing", order.missing().map(figure -> Reading.of(figure.value())).orElse(""))));
        supplies.beside().stream().filter(bought -> bought.orderBy().filter(by -> by.isBefore(issue.on())).isPresent())
                .forEach(bought -> messages.add(ClassMessages.ORDER_TOO_LATE.at(
                        Optional.ofNullable(course.stores().supplies().get(bought.item().id())).map(ClassStores.Supply::place)
                                .orElse(issue.place()), "material", name(bought.item()), "by", bought.orderBy().orElseThrow(),
                        "issued", issue.on(), "missing", bought.item().all().map(Reading::of).orElse(""))));
    }

    /** What an author calls it. */
    private String name(ClassSupplies.LaidOut item) {
        return switch (item.kind()) {
            case SHEET -> "practice sheets";
            case WORN -> reference.equipment().get(item.id()).name();
            default -> item.id();
        };
    }

    private boolean isBefore(LocalDateTime begin) {
        return begin.toLocalDate().isBefore(issue.on());
    }
}
