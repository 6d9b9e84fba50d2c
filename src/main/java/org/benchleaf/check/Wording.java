package org.benchleaf.check;

import org.benchleaf.message.Place;

/**
 * Words of a case, with where they stand.
 *
 * @param where in words, to begin a sentence with
 * @param text what is written
 * @param language BCP 47 tag of the words
 * @param onPublicPage whether the case study prints them; the sheets print the others
 * @param place of the step, picture or other thing that they belong to
 */
record Wording(String where, String text, String language, boolean onPublicPage, Place place) {
}
