package org.benchleaf.calculate;

/** Carries a refusal out of a calculation whose inputs contradict each other. */
final class NotAllowed extends RuntimeException {

    private final transient Refusal refusal;

    NotAllowed(Refusal refusal) {
        super(refusal.sentence());
        this.refusal = refusal;
    }

    Refusal refusal() {
        return refusal;
    }
}
