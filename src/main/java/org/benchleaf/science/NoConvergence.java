package org.benchleaf.science;

/** Says that a solver stopped at its limit of steps without an answer, and what it was looking for. */
public final class NoConvergence extends ArithmeticException {

    NoConvergence(String what) {
        super(what);
    }
}
