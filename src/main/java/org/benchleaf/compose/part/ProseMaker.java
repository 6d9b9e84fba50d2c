package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.List;
import org.benchleaf.calculate.Figure;
import org.benchleaf.page.Paths;
import org.benchleaf.page.Prose;
import org.benchleaf.page.Working;
import org.benchleaf.text.Inline;
import org.benchleaf.text.TextBlock;
import org.benchleaf.text.TextMapping;

/** Makes prose of a story's text: cited figures become numbers that lead to their working, terms become links. */
public final class ProseMaker {

    private final Sheet sheet;

    public ProseMaker(Sheet sheet) {
        this.sheet = sheet;
    }

    /** The blocks of a section as passages. */
    public Prose make(List<TextBlock> blocks) {
        return new Prose(blocks.stream().map(this::passage).toList());
    }

    private Prose.Passage passage(TextBlock block) {
        Numbers numbers = new Numbers();
        TextBlock numbered = block.ask(numbers);
        return new Prose.Passage(sheet.linked(numbered), numbers.workings);
    }

    /** Puts each number in its place, and makes the workings that the page has not shown yet. */
    private final class Numbers extends TextMapping {

        private final List<Working> workings = new ArrayList<>();

        @Override
        public List<Inline> citedFigure(Inline.CitedFigure cited) {
            if (sheet.figure(cited.figure()).isEmpty() && sheet.stated(cited.figure()).isPresent()) {
                return List.of(new Inline.Text(sheet.stated(cited.figure()).get()));
            }
            Figure figure = sheet.figure(cited.figure()).orElseThrow(() -> new IllegalStateException(
                    "the story cites a figure that was not worked out: " + cited.figure()));
            if (!sheet.shows(figure.id())) {
                workings.add(new WorkingMaker(sheet).make(figure));
            }
            // The number leads to the inside of its working, because browsers open a closed disclosure for such a link.
            return List.of(new Inline.WorkedNumber(Paths.working(figure.id()), sheet.amount(figure).text()));
        }

        @Override
        public List<Inline> hyperlink(Inline.Hyperlink link) {
            return List.of(new Inline.Hyperlink(sheet.rebased(link.href()), link.title(), link.language(), all(link.parts())));
        }
    }
}
