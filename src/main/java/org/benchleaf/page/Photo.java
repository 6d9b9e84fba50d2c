package org.benchleaf.page;

import java.util.Optional;

/**
 * A picture with its caption. The publisher knows its files and their sizes.
 *
 * @param caseId the case it belongs to
 * @param id of the picture in the case
 * @param alt what is seen and why it matters
 * @param caption what to look for
 * @param light how it was lit, in words
 * @param credit who made it and under which licence
 * @param tag such as "Before"; empty if it is not one of a pair
 * @param first whether it stands in the first view, so that it is not loaded late
 */
public record Photo(String caseId, String id, String alt, String caption, String light, String credit,
        Optional<String> tag, boolean first) implements Block {
}
