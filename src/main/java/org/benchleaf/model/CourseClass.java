package org.benchleaf.model;

import java.time.LocalDateTime;
import java.util.Optional;
import org.benchleaf.message.Place;
import org.benchleaf.quantity.Quantity;

/**
 * A class that works through a case.
 *
 * @param id the file's name
 * @param title of the class
 * @param caseId the case it follows
 * @param starts when the class begins
 * @param stations how many work at once
 * @param sheetsEach how many practice sheets at each station
 * @param spare share made over and above
 * @param firstStep id of the step with which the class begins
 * @param lastStep id of the step with which it ends
 * @param day how it is run
 */
public record CourseClass(String id, String title, String caseId, LocalDateTime starts, int stations, int sheetsEach,
        Quantity spare, Optional<String> firstStep, Optional<String> lastStep, ClassDay day, Place place) {
}
