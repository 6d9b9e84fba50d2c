package org.benchleaf.model;

import java.util.List;

/**
 * Words by which the name of a thing tells what it may hold, in lower case.
 *
 * @param wet words that say that it is sold or kept with something in it
 * @param fillings what may be in it, or what it is
 * @param carriers things that are soaked with what they are named for
 * @param tools things that hold nothing by themselves
 */
public record ThingWords(List<String> wet, List<String> fillings, List<String> carriers, List<String> tools) {

    public ThingWords {
        wet = List.copyOf(wet);
        fillings = List.copyOf(fillings);
        carriers = List.copyOf(carriers);
        tools = List.copyOf(tools);
    }
}
