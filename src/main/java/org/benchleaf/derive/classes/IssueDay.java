package org.benchleaf.derive.classes;

import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import org.benchleaf.derive.figure.Reading;
import org.benchleaf.message.ClassMessages;
import org.benchleaf.message.Messages;
import org.benchleaf.model.ClassPapers;
import org.benchleaf.model.CourseClass;

/** Says what would have to be begun or ordered before the class is issued. */
final class IssueDay {

    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ENGLISH);

    private final CourseClass course;
    private final ClassPapers.Issue issue;
    private final Messages messages;

    IssueDay(CourseClass course, ClassPapers.Issue issue, Messages messages) {
        this.course = course;
        this.issue = issue;
        this.messages = messages;
    }

    void check(List<ClassPlan.Start> starts, List<ClassSupplies.Order> orders) {
        starts.stream().filter(start -> isBefore(start.begin())).forEach(start -> messages.add(
                ClassMessages.BEGUN_TOO_LATE.at(issue.place(), "solution", start.solution(),
                        "by", MOMENT.format(start.begin()), "issued", issue.on())));
        orders.stream().filter(order -> order.orderBy().filter(by -> by.isBefore(issue.on())).isPresent())
                .forEach(order -> messages.add(ClassMessages.ORDER_TOO_LATE.at(
                        course.stores().supplies().get(order.material()).place(), "material", order.material(),
                        "by", order.orderBy().orElseThrow(), "issued", issue.on(),
                        "missing", order.missing().map(figure -> Reading.of(figure.value())).orElse(""))));
    }

    private boolean isBefore(LocalDateTime begin) {
        return begin.toLocalDate().isBefore(issue.on());
    }
}
