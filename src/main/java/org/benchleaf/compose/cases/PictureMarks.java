package org.benchleaf.compose.cases;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.benchleaf.compose.part.CaseDesk;
import org.benchleaf.page.ConditionMap;

/** The marks of the condition map as they lie in the picture under it. */
final class PictureMarks {

    /**
     * A side of the square around a mark, as a share of the picture's width: large enough to be pointed at (common practice, no source).
     */
    private static final double SIDE = 0.04;

    private final Optional<ConditionMap> map;

    PictureMarks(CaseDesk desk) {
        this.map = new ConditionMapMaker(desk.sheet(desk.pages().get(0)), desk).make();
    }

    /**
     * One mark.
     *
     * @param number that it has on the condition map
     * @param text number and what was found, as the list beside the map tells it
     * @param across the picture from its left edge, as a share of its width
     * @param down the picture from its upper edge, as a share of its height
     */
    record Mark(int number, String text, double across, double down) {

        /** The square around it in a picture of that size: a media fragment (W3C Media Fragments URI 1.0, 4.2.2) that lies inside. */
        String region(int width, int height) {
            int side = (int) Math.max(1, Math.min(Math.round(width * SIDE), Math.min(width, height)));
            return "xywh=" + start(across, width, side) + "," + start(down, height, side) + "," + side + "," + side;
        }

        private static long start(double share, int length, int side) {
            return Math.max(0, Math.min(length - side, Math.round(share * length - side / 2.0)));
        }
    }

    /** Those on a picture; none if the map lies over another picture or an outline. */
    List<Mark> on(String picture) {
        return map.filter(one -> one.under().filter(under -> under.id().equals(picture)).isPresent())
                .map(one -> one.marks().stream().map(mark -> mark(one, mark)).toList()).orElse(List.of());
    }

    private static Mark mark(ConditionMap map, ConditionMap.Mark mark) {
        ConditionMap.Underlay under = map.under().orElseThrow();
        ConditionMap.Entry entry = map.entries().stream().filter(one -> one.number() == mark.number()).findFirst().orElseThrow();
        String text = Stream.of(entry.what().plain(), entry.where(), entry.how())
                .filter(part -> !part.isEmpty()).collect(Collectors.joining("; ", mark.number() + " ", ""));
        return new Mark(mark.number(), text, (mark.x() - under.x()) / (double) under.width(),
                (mark.y() - under.y()) / (double) under.height());
    }
}
