package org.benchleaf.compose;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import org.benchleaf.model.Library;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.benchleaf.model.TreatmentCase;

/** Finds which of the studio's materials a case names: in its recipes, its steps and their parts. */
final class Materials {

    private Materials() {
    }

    /** Ids of materials in the order in which the case first names them. */
    static Set<String> used(TreatmentCase treatment, Library library) {
        Set<String> ids = new LinkedHashSet<>();
        treatment.solutions().forEach(solution -> ids.addAll(solution.recipe().ingredients()));
        treatment.steps().forEach(step -> ids.addAll(of(step)));
        ids.retainAll(library.materials().keySet());
        return ids;
    }

    /** Every id that a step names, of solutions too. */
    static List<String> of(Step step) {
        Set<String> ids = new LinkedHashSet<>(step.uses());
        step.parts().forEach(part -> ids.addAll(part.ask(new InPart())));
        return List.copyOf(ids);
    }

    private static final class InPart implements Part.Kinds<List<String>> {
        @Override
        public List<String> bath(Part.Bath part) {
            return List.of(part.of());
        }

        @Override
        public List<String> mist(Part.Mist part) {
            return Stream.concat(Stream.of(part.of()), part.tool().stream()).toList();
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
            return Stream.concat(Stream.of(part.tissue(), part.with()),
                    part.activation().flatMap(Part.Activation::with).stream()).toList();
        }

        @Override
        public List<String> heat(Part.Heat part) {
            return List.of(part.tool());
        }

        @Override
        public List<String> support(Part.Support part) {
            return Stream.concat(Stream.of(part.under()), part.between().stream()).toList();
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
            return Stream.concat(Stream.of(part.of()), part.between().stream()).toList();
        }

        @Override
        public List<String> suction(Part.Suction part) {
            return Stream.concat(Stream.of(part.tool()), part.of().stream()).toList();
        }

        @Override
        public List<String> light(Part.Light part) {
            return List.of();
        }

        @Override
        public List<String> gas(Part.Gas part) {
            return Stream.concat(Stream.of(part.of()), part.tool().stream()).toList();
        }

        @Override
        public List<String> tape(Part.Tape part) {
            return List.of();
        }

        @Override
        public List<String> ageing(Part.Ageing part) {
            return List.of();
        }
    }
}
