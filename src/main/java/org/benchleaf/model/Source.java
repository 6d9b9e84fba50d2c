package org.benchleaf.model;

import java.util.Optional;

/**
 * A published source, or what something rests on that is none, such as common practice.
 *
 * @param key how files refer to it
 * @param author who wrote it
 * @param year of publication; empty if unknown
 * @param title of the work
 * @param where journal and page, standard number, address in words
 * @param address of a page on the web that carries it; empty if none is stated
 * @param status how it was consulted: {@code read}, {@code read in part}, {@code secondary} or {@code from memory}
 * @param published whether it is a publication, which has a number in the list
 */
public record Source(String key, String author, String year, String title, String where, Optional<String> address,
        String status, boolean published) {
}
