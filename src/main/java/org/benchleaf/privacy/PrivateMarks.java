package org.benchleaf.privacy;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.HashMap;
import java.util.HexFormat;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.benchleaf.model.Confidential;

/** A short mark of the private values of each case, by which a later run knows whose are new. */
public final class PrivateMarks {

    /** So short that many names share a mark, and nobody can find one by trying; a change goes unseen once in a million. */
    private static final int LENGTH = 5;

    private PrivateMarks() {
    }

    /** The marks of all cases as one text, the same for the same values. */
    public static String of(Map<String, Confidential> byCase) {
        return new TreeMap<>(byCase).entrySet().stream().map(each -> each.getKey() + "=" + mark(each.getValue()))
                .collect(Collectors.joining(" "));
    }

    /** The values of those cases whose mark does not stand among earlier marks. */
    public static Map<String, Confidential> newSince(String before, Map<String, Confidential> byCase) {
        Map<String, String> known = new HashMap<>();
        for (String each : before.split(" ")) {
            int at = each.indexOf('=');
            known.put(at < 0 ? "" : each.substring(0, at), each.substring(at + 1));
        }
        Map<String, Confidential> fresh = new TreeMap<>();
        byCase.forEach((caseId, values) -> {
            if (!mark(values).equals(known.get(caseId))) {
                fresh.put(caseId, values);
            }
        });
        return fresh;
    }

    private static String mark(Confidential values) {
        StringBuilder all = new StringBuilder();
        values.secrets().forEach(secret -> all.append(secret.field()).append('\0').append(secret.parts()).append('\0'));
        try {
            return HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256")
                    .digest(all.toString().getBytes(StandardCharsets.UTF_8))).substring(0, LENGTH);
        } catch (NoSuchAlgorithmException impossible) {
            throw new IllegalStateException("every Java has SHA-256", impossible);
        }
    }
}
