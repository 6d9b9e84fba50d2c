package org.benchleaf.compose.part;

/**
 * A page of the whole site that ways lead to.
 *
 * @param kind such as {@code glossary}; {@code way.<kind>} words the way to it
 * @param path where it stands
 * @param inMenu whether it stands in the menu at the head of each page; at the foot all stand
 */
public record SitePageName(String kind, String path, boolean inMenu) {
}
