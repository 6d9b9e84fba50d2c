package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.benchleaf.derive.hazard.Hazards;
import org.benchleaf.derive.hazard.StepCare;
import org.benchleaf.model.Reference;
import org.benchleaf.page.Caution;

/** Danger and protection of a step in one line, each word of which stands in full in what opens below it. */
public final class CareLine {

    /** More names than these are counted and not told: the line is read at arm's length. */
    private static final int NAMES = 2;

    private final Sheet sheet;
    private final CaseDesk desk;

    public CareLine(Sheet sheet, CaseDesk desk) {
        this.sheet = sheet;
        this.desk = desk;
    }

    /** The gravest level with its first names, how many more there are, what is not known, and what to wear. */
    public String shortened(List<Caution> cautions, Optional<StepCare> care) {
        return line(gravest(cautions).stream(), care);
    }

    /** The names of all cautions level by level, what is not known, and what to wear. */
    public String all(List<Caution> cautions, Optional<StepCare> care) {
        Map<String, List<String>> names = new LinkedHashMap<>();
        cautions.forEach(caution -> names.computeIfAbsent(caution.word(), any -> new ArrayList<>()).add(caution.name()));
        return line(names.entrySet().stream().map(level -> sheet.words().more(level.getKey(), sheet.words().list(level.getValue()))), care);
    }

    private String line(Stream<String> cautions, Optional<StepCare> care) {
        List<String> parts = new ArrayList<>(cautions.toList());
        if (care.stream().flatMap(one -> one.access().keySet().stream()).anyMatch(this::isUnknown)) {
            parts.add(sheet.words().say("bench-care.unknown"));
        }
        care.map(StepCare::wear).orElse(List.of()).stream().map(desk.library().reference().equipment()::get)
                .map(Reference.Equipment::name).forEach(parts::add);
        return parts.isEmpty() ? sheet.words().say("bench-care.none") : String.join(" · ", parts);
    }

    private Optional<String> gravest(List<Caution> cautions) {
        if (cautions.isEmpty()) {
            return Optional.empty();
        }
        List<String> names = new ArrayList<>(cautions.stream()
                .filter(one -> one.level().equals(cautions.get(0).level())).limit(NAMES).map(Caution::name).toList());
        if (cautions.size() > names.size()) {
            names.add(sheet.words().count("bench-care.more", cautions.size() - names.size()));
        }
        return Optional.of(sheet.words().more(cautions.get(0).word(), sheet.words().list(names)));
    }

    private boolean isUnknown(String id) {
        return Optional.ofNullable(desk.worked().hazards().get(id)).map(Hazards::unknown).filter(list -> !list.isEmpty())
                .isPresent();
    }
}
