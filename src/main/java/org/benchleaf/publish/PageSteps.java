package org.benchleaf.publish;

import freemarker.core.Environment;
import freemarker.core.TemplateProcessingTracer;

/** Counts the steps in which a template makes one page: a template that would never end is stopped, writing or not. */
final class PageSteps implements TemplateProcessingTracer {

    /** The heaviest page that is let through, of 2 MB, takes fewer than a million. */
    private static final int MOST = 20_000_000;

    private int steps;

    /** A template has taken too many steps. */
    static final class TooMany extends RuntimeException {

        private static final long serialVersionUID = 1;

        private final String template;
        private final int line;
        private final int column;

        private TooMany(TracedElement at) {
            super("It does not end, or takes more than " + MOST / 1_000_000 + " million steps");
            this.template = at.getTemplate().getName();
            this.line = at.getBeginLine();
            this.column = at.getBeginColumn();
        }

        /** The name of the template that had the last step. */
        String template() {
            return template;
        }

        /** The line of that step, counted from 1. */
        int line() {
            return line;
        }

        /** The column of that step, counted from 1. */
        int column() {
            return column;
        }
    }

    @Override
    public void enterElement(Environment making, TracedElement element) {
        steps++;
        if (steps > MOST) {
            throw new TooMany(element);
        }
    }

    @Override
    public void exitElement(Environment making, TracedElement element) {
        // Only beginnings are counted.
    }
}
