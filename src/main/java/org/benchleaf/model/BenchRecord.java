package org.benchleaf.model;

import java.time.LocalDateTime;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What one person wrote down at the bench.
 *
 * @param caseId folder of the case
 * @param sheet issue of the step sheet that was worked from
 * @param steps those at which something was written down
 */
public record BenchRecord(String caseId, Optional<String> sheet, List<Entry> steps) {

    public BenchRecord {
        steps = List.copyOf(steps);
    }

    /**
     * What was written down at one step; times are those of the place.
     *
     * @param step id
     * @param seen whether it showed what it should, in the words of the record
     * @param because what was seen instead
     * @param pictures names of photographs
     * @param readings what was read, bath by bath, as written, by keys of the case file
     * @param parts what else belongs under a part of the step, as written, by keys of the case file
     */
    public record Entry(String step, Optional<LocalDateTime> began, Optional<LocalDateTime> ended,
            Optional<Release> released, Optional<String> seen, Optional<String> because, Optional<String> pictures,
            List<Map<String, String>> readings, Map<String, Map<String, String>> parts) {
        public Entry {
            readings = List.copyOf(readings);
            parts = Collections.unmodifiableMap(new LinkedHashMap<>(parts));
        }
    }

    /** The release of a hold point: by whom, in which role, and when. */
    public record Release(String by, Optional<String> role, Optional<LocalDateTime> at) {
    }
}
