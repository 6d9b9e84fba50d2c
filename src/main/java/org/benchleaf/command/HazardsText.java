package org.benchleaf.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.derive.hazard.Bottles;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.MassShare;
import org.benchleaf.json.JsonText;
import org.benchleaf.model.Reference;

/** Puts the answer for a bottle into lines for a terminal or into JSON. */
final class HazardsText {

    private static final double PER_CENT = 100;

    private final Reference reference;
    private final Bottles.Told told;
    private final Hazards hazards;

    HazardsText(Reference reference, Bottles.Told told) {
        this.reference = reference;
        this.told = told;
        this.hazards = told.hazards();
    }

    /** The answer as JSON; shares are per cent by mass, the largest that a part can have. */
    String json() {
        Map<String, Object> answer = new LinkedHashMap<>();
        List<Object> parts = new ArrayList<>();
        told.parts().forEach((id, share) -> parts.add(part(id, share)));
        answer.put("parts", parts);
        answer.put("known", hazards.known());
        answer.put("unknown", unknown());
        answer.put("classes", hazards.hazardStatements().stream().map(code -> ordered("statement", code, "from",
                hazards.groundsOf(code).stream().map(Hazards.Ground::because).toList())).toList());
        answer.put("signal", hazards.signal().orElse(null));
        answer.put("pictograms", hazards.pictograms());
        answer.put("precautions", hazards.precautions());
        answer.put("protection", protection());
        answer.put("waste", ordered("group", hazards.waste().group().orElse(null), "why", hazards.waste().why()));
        answer.put("incompatible", hazards.incompatible().stream().map(clash -> ordered("with",
                clash.one() + " + " + clash.with(), "why", clash.gives() + ": " + clash.why())).toList());
        answer.put("public", isPublic());
        answer.put("trainee", hazards.access().trainee().word());
        answer.put("why", why());
        return JsonText.of(answer);
    }

    /** The answer in lines. */
    String text() {
        StringBuilder text = new StringBuilder();
        told.parts().forEach((id, share) -> text.append(String.format(Locale.ROOT, "  %-28s %s%.4g %% m/m%n", id,
                share.isRange() ? String.format(Locale.ROOT, "%.4g to ", PER_CENT * share.least()) : "",
                PER_CENT * share.most())));
        lines(text, "Not known", unknown());
        lines(text, hazards.signal().orElse("Statements"), hazards.hazardStatements().stream().map(this::worded).toList());
        lines(text, "Why", hazards.grounds().stream().map(ground -> ground.classification() + ": " + ground.because()
                + " [" + ground.source() + "]").toList());
        lines(text, "Pictograms", hazards.pictograms().stream().map(code -> code + " "
                + reference.pictograms().get(code).name()).toList());
        lines(text, "Precautions", hazards.precautions().stream().map(this::worded).toList());
        lines(text, "Protection", protection());
        lines(text, "Waste", waste());
        lines(text, "Must not meet", hazards.incompatible().stream().map(clash -> clash.one() + " and " + clash.with()
                + " give " + clash.gives() + ". " + clash.why()).toList());
        text.append("\nPublic pages: ").append(isPublic()).append("; trainees: ").append(hazards.access().trainee().word()).append('\n');
        why().forEach(line -> text.append("  ").append(line).append('\n'));
        return text.append("\nCompare the safety data sheet and local rules; they stand above this answer.").toString();
    }

    /** A part; the least of its share is told where it differs from the most. */
    private static Map<String, Object> part(String id, MassShare share) {
        Map<String, Object> part = ordered("id", id, "share", PER_CENT * share.most());
        if (share.isRange()) {
            part.put("least", PER_CENT * share.least());
        }
        return part;
    }

    private List<String> unknown() {
        return hazards.unknown().stream().map(one -> (one.why() + " " + one.remedy()).strip()).toList();
    }

    private List<String> protection() {
        Stream<String> known = hazards.wear().stream().map(reference.equipment()::get).filter(Objects::nonNull)
                .map(Reference.Equipment::words);
        return Stream.concat(known, Stream.of("protection-unknown").filter(any -> !hazards.known())
                .map(key -> reference.wordings().get(key).words())).toList();
    }

    private List<String> waste() {
        List<String> lines = new ArrayList<>();
        hazards.waste().group().map(reference.waste()::get).ifPresent(kind -> {
            lines.add(kind.name() + ": " + kind.words());
            kind.drain().filter(any -> hazards.waste().drain()).ifPresent(lines::add);
        });
        lines.add(hazards.waste().why());
        return lines;
    }

    private List<String> why() {
        List<String> why = new ArrayList<>();
        hazards.access().why().forEach(row -> why.add(row.why()
                + row.instead().map(instead -> " Instead: " + instead + ".").orElse("")));
        if (!hazards.known()) {
            why.add(reference.wordings().get("access-unknown").words());
        }
        return why.stream().distinct().collect(Collectors.toList());
    }

    private String isPublic() {
        return hazards.access().withheld() ? "withheld" : "shown";
    }

    private String worded(String code) {
        return code + " " + (reference.statements().containsKey(code) ? reference.statements().get(code).naming(hazards.named()) : "");
    }

    private static void lines(StringBuilder text, String heading, List<String> lines) {
        if (!lines.isEmpty()) {
            text.append('\n').append(heading).append('\n');
            lines.forEach(line -> text.append("  ").append(line).append('\n'));
        }
    }

    private static Map<String, Object> ordered(String first, Object one, String second, Object other) {
        Map<String, Object> map = new LinkedHashMap<>();
        map.put(first, one);
        map.put(second, other);
        return map;
    }
}
