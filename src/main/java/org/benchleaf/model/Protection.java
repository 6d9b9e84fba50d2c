package org.benchleaf.model;

/**
 * What lifts a stop of the matrix: a medium was protected, and was stable when it was tested again afterwards.
 *
 * @param medium its id in the case file; where the layer is no medium, such as the paper itself, the layer's name
 * @param named what the medium is, in the words of the case
 * @param by the kind of step that protected it
 */
public record Protection(String medium, String named, StepKind by) {

    static final String SENTENCE = "The {medium} was protected beforehand, by {step}, and was stable when it was tested again.";

    /** The sentence for trainees and readers, in a language. */
    public String words(Phrases phrases) {
        return phrases.say(SENTENCE, "medium", named, "step", phrases.of(by.word()));
    }

    /** The same of the medium as a translated case names it. */
    public Protection in(TreatmentCase told) {
        return new Protection(medium, told.medium(medium).map(Medium::is).orElse(named), by);
    }
}
