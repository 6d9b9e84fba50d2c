package org.benchleaf.run;

import java.nio.file.Path;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentHashMap;
import org.benchleaf.model.Confidential;
import org.benchleaf.privacy.PrivateScan;
import org.benchleaf.read.CaseReader;

/** The private values of all cases of a studio, kept from one look to the next. */
final class PrivateFacts {

    private final Path content;
    private final Map<String, Confidential> fresh = new ConcurrentHashMap<>();
    private List<Object> searched = List.of();
    private PrivateScan scan = PrivateScan.ofAll(Map.of(), "");

    PrivateFacts(Path content) {
        this.content = content;
    }

    /** Reads these cases again when they are asked for. */
    void forget(Collection<String> caseIds) {
        fresh.keySet().removeAll(caseIds);
    }

    /**
     * Looks for the values of all cases; the same search as before if all are the same.
     *
     * @param studioName which stands on every page by the studio's own will
     */
    PrivateScan scan(Collection<String> caseIds, String studioName) {
        fresh.keySet().retainAll(caseIds);
        caseIds.parallelStream().filter(id -> !fresh.containsKey(id)).forEach(id ->
                fresh.put(id, CaseReader.confidential(content, content.resolve("cases").resolve(id))));
        List<Object> now = List.of(studioName, texts());
        if (!now.equals(searched)) {
            scan = PrivateScan.ofAll(fresh, studioName);
            searched = now;
        }
        return scan;
    }

    private Map<String, List<Map<String, String>>> texts() {
        Map<String, List<Map<String, String>>> texts = new TreeMap<>();
        fresh.forEach((id, values) -> texts.put(id, values.secrets().stream().map(Confidential.Secret::parts).toList()));
        return texts;
    }
}
