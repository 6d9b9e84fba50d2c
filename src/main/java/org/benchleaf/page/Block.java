package org.benchleaf.page;

/**
 * A part of a page, finished but for its elements: its words are worded and its numbers rounded.
 *
 * <p>Each block is a record; the template {@code blocks/<name>.ftl}, the style {@code style/<name>.css} and the
 * example used in tests bear its name in lower case with hyphens.
 */
public interface Block {

    /** The name shared by record, template, style and example: {@code StepStrip} becomes {@code step-strip}. */
    default String name() {
        return BlockNames.of(getClass());
    }
}
