package org.benchleaf.publish;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.TemplateModelException;
import java.io.IOException;
import java.io.Writer;
import org.benchleaf.words.UnitSpaces;

/** Escapes what templates write, and sets each unit to its number where that is running text. */
final class PageFormat extends HTMLOutputFormat {

    static final PageFormat OF_PAGES = new PageFormat();

    private PageFormat() {
    }

    @Override
    public void output(String text, Writer page) throws IOException, TemplateModelException {
        String spaced = UnitSpaces.in(text);
        super.output(!spaced.equals(text) && page instanceof PageText made && made.isInRunningText() ? spaced : text, page);
    }

    /** What {@link HtmlWriter} has written, and what a template keeps to write it later, is HTML of the engine's own kind. */
    @Override
    public boolean isOutputFormatMixingAllowed() {
        return true;
    }
}
