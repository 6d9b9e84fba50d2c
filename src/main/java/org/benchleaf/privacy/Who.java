package org.benchleaf.privacy;

import java.util.List;

/** A person or an organisation that a private value names. */
sealed interface Who {

    /**
     * A person.
     *
     * @param given names or initials that come before the family's; may be empty
     * @param family words of the family's name, or the one name of somebody who has but one; without particles
     * @param particles words such as "van der" before the family's name
     */
    record Person(List<String> given, List<String> family, List<String> particles) implements Who {
    }

    /**
     * An organisation.
     *
     * @param words its whole name
     */
    record Organisation(List<String> words) implements Who {
    }
}
