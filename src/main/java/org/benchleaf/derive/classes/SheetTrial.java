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
 * The trial of what practice sheets went through, liquid after liquid as the tests of the case tell it. A hand is at each sheet when a
 * drop is set, when it is blotted and the next is set, and when the last is blotted.
 *
 * @param liquids ids of what is tried, in order
 * @param dwells for how many minutes each of them stays: as long as the case tests it, and as long as the plan keeps a sheet wet with it
 * @param bath the first of them that stations make in their trays; empty if none is
 * @param keeps minutes for which the bath is fresh; empty if nobody says so
 */
record SheetTrial(List<String> liquids, List<Integer> dwells, Optional<String> bath, Optional<Integer> keeps) {

    SheetTrial {
        liquids = List.copyOf(liquids);
        dwells = List.copyOf(dwells);
    }

    /** Of a step of the case; without a liquid if it is no trial of what the sheets went through. */
    static SheetTrial of(Step step, Bench bench, List<String> through, List<Outlasting> outlasting) {
        Map<String, Integer> dwells = new LinkedHashMap<>();
        if (step.kind() == StepKind.TESTING) {
            bench.source().tests().stream().filter(test -> test.after().filter(through::contains).isPresent())
                    .forEach(test -> dwells.merge(test.with(), dwell(test), Math::max));
        }
        dwells.replaceAll((liquid, dwell) -> Outlasting.longest(outlasting, liquid).map(lasts -> Math.max(dwell,
                StationCut.minutes(lasts))).orElse(dwell));
        Optional<String> bath = dwells.keySet().stream().filter(id ->
                ClassProvider.isMadeInTrays(bench, id, bench.source().steps())).findFirst();
        return new SheetTrial(List.copyOf(dwells.keySet()), List.copyOf(dwells.values()), bath,
                bath.flatMap(bench.source()::solution).flatMap(Solution::keeps).map(time -> (int) Math.floor(time.lowIn(Unit.MINUTE))));
    }

    private static int dwell(SpotTest test) {
        return test.dwell().map(StationCut::minutes).orElse(0);
    }

    /** For how long the drops stay on one sheet, in minutes. */
    int lasts() {
        return dwells.stream().mapToInt(Integer::intValue).sum();
    }

    /** After how many minutes from the first drop a hand is at a sheet: at first, and when each drop is blotted. */
    List<Integer> touches() {
        List<Integer> touches = new ArrayList<>(List.of(0));
        dwells.forEach(dwell -> touches.add(touches.get(touches.size() - 1) + dwell));
        return touches;
    }

    /** How many minutes of the work on a sheet a hand is at it each time. */
    int touch(int hands) {
        return (hands + liquids.size()) / (liquids.size() + 1);
    }

    /**
     * How many sheets are tried one after the other, round by round: so few that no drop has to wait for another sheet's, and that all
     * have their drop of the bath out of one beaker while it is fresh; the earlier rounds have a sheet more. A sheet is begun every so
     * many minutes.
     */
    List<Integer> rounds(int sheets, int each) {
        int before = bath.map(id -> touches().get(liquids.indexOf(id))).orElse(0);
        int fresh = keeps.filter(any -> each > 0).map(time -> Math.max(1, 1 + Math.floorDiv(time - before, each))).orElse(sheets);
        int apart = each == 0 ? sheets : Math.max(1, dwells.stream().mapToInt(Integer::intValue).min().orElse(0) / each);
        int most = Math.min(fresh, apart);
        int count = (sheets + most - 1) / most;
        List<Integer> rounds = new ArrayList<>();
        for (int round = 0; round < count; round++) {
            rounds.add(sheets / count + (round < sheets % count ? 1 : 0));
        }
        return rounds;
    }
}
