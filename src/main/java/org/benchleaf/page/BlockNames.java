package org.benchleaf.page;

import java.util.Locale;

/** The names of blocks, each made from its record's once: a page asks for them by the hundred. */
final class BlockNames {

    private static final ClassValue<String> NAMES = new ClassValue<>() {
        @Override
        protected String computeValue(Class<?> block) {
            return block.getSimpleName().replaceAll("(?<=[a-z0-9])(?=[A-Z])", "-").toLowerCase(Locale.ROOT);
        }
    };

    private BlockNames() {
    }

    /** The name of a record's blocks: {@code StepStrip} becomes {@code step-strip}. */
    static String of(Class<?> block) {
        return NAMES.get(block);
    }
}
