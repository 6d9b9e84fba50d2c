package org.benchleaf.message;

import java.util.Optional;

/**
 * What a message asks that the case leaves open.
 *
 * @param fact that is missing, as a clause such as {@code 'temperature:' under 'bath:' is not known}
 * @param step of which it is asked; empty where it is asked of no step
 */
public record OpenQuestion(String fact, Optional<String> step) {
}
