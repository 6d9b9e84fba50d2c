package org.benchleaf.rule;

/** Whether something holds, in the three-valued logic of Kleene (1952), Introduction to Metamathematics, § 64. */
enum Truth {
    YES, NO, CANNOT_TELL;

    static Truth of(boolean holds) {
        return holds ? YES : NO;
    }

    Truth not() {
        return switch (this) {
            case YES -> NO;
            case NO -> YES;
            case CANNOT_TELL -> CANNOT_TELL;
        };
    }
}
