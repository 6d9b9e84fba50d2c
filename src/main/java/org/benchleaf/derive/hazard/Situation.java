package org.benchleaf.derive.hazard;

import java.util.Collection;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import org.benchleaf.model.Reference;
import org.benchleaf.quantity.Unit;

/**
 * What a person meets at a step or while preparing a solution, as cautions ask for it.
 *
 * @param step the kind of step, in words; empty while preparing
 * @param parts words of the parts
 * @param statements H codes of what is handled
 * @param substances keys of the substances in it
 * @param traits traits of the materials
 * @param words everything written about it, in lower case
 * @param millilitres the most of one flammable liquid that is handled
 */
record Situation(Optional<String> step, Set<String> parts, Set<String> statements, Set<String> substances,
        Set<String> traits, String words, double millilitres) {

    /** The cautions that are due, in the order of the table. */
    List<Reference.Caution> due(Reference reference) {
        return reference.cautions().values().stream().filter(caution -> isDue(caution.when())).toList();
    }

    private boolean isDue(Reference.When when) {
        return (when.steps().isEmpty() || step.filter(when.steps()::contains).isPresent())
                && meets(when.parts(), parts) && meets(when.statements(), statements)
                && meets(when.substances(), substances) && meets(when.traits(), traits)
                && (when.words().isEmpty() || isWritten(when.words(), words))
                && when.atLeast().map(least -> millilitres >= least.in(Unit.MILLILITRE)).orElse(true);
    }

    /** Whether what is handled calls for a caution by its statements, substances or traits. */
    boolean brings(Reference.When when) {
        boolean asked = !when.statements().isEmpty() || !when.substances().isEmpty() || !when.traits().isEmpty();
        return asked && meets(when.statements(), statements) && meets(when.substances(), substances)
                && meets(when.traits(), traits);
    }

    /** Whether a caution that looks at words alone finds one of them in these, the names of what is handled. */
    static boolean isNamed(Reference.When when, String names) {
        return when.statements().isEmpty() && when.substances().isEmpty() && when.traits().isEmpty()
                && isWritten(when.words(), names);
    }

    private static boolean meets(Set<String> wanted, Set<String> there) {
        return wanted.isEmpty() || wanted.stream().anyMatch(there::contains);
    }

    private static boolean isWritten(Collection<String> wanted, String text) {
        return wanted.stream().anyMatch(word -> isWritten(word, text));
    }

    /** A word counts at its beginning, so that "warm" also finds "warmed". */
    private static boolean isWritten(String word, String text) {
        String wanted = word.toLowerCase(Locale.ROOT);
        for (int at = text.indexOf(wanted); at >= 0; at = text.indexOf(wanted, at + 1)) {
            if (at == 0 || !Character.isLetterOrDigit(text.charAt(at - 1))) {
                return true;
            }
        }
        return false;
    }

    /** Codes of the equipment that cautions ask for, of each kind the strictest, in the order of the table of equipment. */
    static List<String> wear(Collection<Reference.Caution> cautions, Reference reference) {
        Set<String> codes = new LinkedHashSet<>();
        cautions.forEach(caution -> codes.addAll(caution.wear()));
        return reference.strictest(codes);
    }
}
