package org.benchleaf.derive.figure;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;

/** The ids of solutions, materials and tools that a part of a step names. */
public final class UsedThings implements Part.Kinds<List<String>> {

    private UsedThings() {
    }

    /** Every id that a step names, those of its parts before those that it uses besides. */
    public static List<String> of(Step step) {
        LinkedHashSet<String> ids = new LinkedHashSet<>();
        step.parts().forEach(part -> ids.addAll(part.ask(new UsedThings())));
        ids.addAll(step.uses());
        return List.copyOf(ids);
    }

    @Override
    public List<String> bath(Part.Bath part) {
        return List.of(part.of());
    }

    @Override
    public List<String> mist(Part.Mist part) {
        return with(part.of(), part.tool());
    }

    @Override
    public List<String> chamber(Part.Chamber part) {
        return List.of(part.of());
    }

    @Override
    public List<String> blotters(Part.Blotters part) {
        return part.blotter().stream().toList();
    }

    @Override
    public List<String> press(Part.Press part) {
        return part.between();
    }

    @Override
    public List<String> mend(Part.Mend part) {
        List<String> ids = new ArrayList<>(List.of(part.with(), part.tissue()));
        part.activation().flatMap(Part.Activation::with).ifPresent(ids::add);
        return ids;
    }

    @Override
    public List<String> heat(Part.Heat part) {
        return List.of(part.tool());
    }

    @Override
    public List<String> support(Part.Support part) {
        return with(part.under(), part.between());
    }

    @Override
    public List<String> cleaning(Part.Cleaning part) {
        return part.tools();
    }

    @Override
    public List<String> fixing(Part.Fixing part) {
        return List.of(part.with());
    }

    @Override
    public List<String> weighing(Part.Weighing part) {
        return List.of();
    }

    @Override
    public List<String> housing(Part.Housing part) {
        return part.materials();
    }

    @Override
    public List<String> layer(Part.Layer part) {
        return with(part.of(), part.between());
    }

    @Override
    public List<String> suction(Part.Suction part) {
        return with(part.tool(), part.of());
    }

    @Override
    public List<String> light(Part.Light part) {
        return List.of();
    }

    @Override
    public List<String> gas(Part.Gas part) {
        return with(part.of(), part.tool());
    }

    @Override
    public List<String> tape(Part.Tape part) {
        return part.means();
    }

    @Override
    public List<String> ageing(Part.Ageing part) {
        return List.of();
    }

    private static List<String> with(String one, Optional<String> other) {
        List<String> ids = new ArrayList<>(List.of(one));
        other.ifPresent(ids::add);
        return ids;
    }
}
