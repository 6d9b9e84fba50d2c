package org.benchleaf.derive.classes;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.benchleaf.derive.figure.Bench;
import org.benchleaf.model.Solution;
import org.benchleaf.model.SpotTest;
import org.benchleaf.model.Step;
import org.benchleaf.model.StepKind;
import org.benchleaf.quantity.Unit;

/**
 * The trial of what practice sheets went through, liquid after liquid as the tests of the case tell it.
 *
 * @param liquids ids of what is tried, in order
 * @param bath the first of them that stations make in their trays; empty if none is
 * @param before minutes for which other liquids stay on a sheet before the drop of the bath
 * @param keeps minutes for which the bath is fresh; empty if nobody says so
 */
record SheetTrial(List<String> liquids, Optional<String> bath, int before, Optional<Integer> keeps) {

    SheetTrial {
        liquids = List.copyOf(liquids);
    }

    /** Of a step of the case; without a liquid if it is no trial of what the sheets went through. */
    static SheetTrial of(Step step, Bench bench, List<String> through) {
        Map<String, Integer> dwells = new LinkedHashMap<>();
        if (step.kind() == StepKind.TESTING) {
            bench.source().tests().stream().filter(test -> test.after().filter(through::contains).isPresent())
                    .forEach(test -> dwells.merge(test.with(), dwell(test), Math::max));
        }
        Optional<String> bath = dwells.keySet().stream().filter(id ->
                ClassProvider.isMadeInTrays(bench, id, bench.source().steps())).findFirst();
        return new SheetTrial(List.copyOf(dwells.keySet()), bath, dwells.entrySet().stream()
                .takeWhile(one -> bath.filter(one.getKey()::equals).isEmpty()).mapToInt(Map.Entry::getValue).sum(),
                bath.flatMap(bench.source()::solution).flatMap(Solution::keeps).map(time -> (int) Math.floor(time.lowIn(Unit.MINUTE))));
    }

    private static int dwell(SpotTest test) {
        return test.dwell().map(StationCut::minutes).orElse(0);
    }

    /**
     * How many sheets have their drop of the bath out of one beaker while it is fresh, beaker by beaker: as few beakers as will do, the
     * earlier ones for a sheet more. A sheet is begun every so many minutes.
     */
    List<Integer> rounds(int sheets, int each) {
        int most = keeps.map(time -> each == 0 ? sheets : Math.max(1, 1 + Math.floorDiv(time - before, each))).orElse(sheets);
        int count = (sheets + most - 1) / most;
        List<Integer> rounds = new ArrayList<>();
        for (int round = 0; round < count; round++) {
            rounds.add(sheets / count + (round < sheets % count ? 1 : 0));
        }
        return rounds;
    }
}
