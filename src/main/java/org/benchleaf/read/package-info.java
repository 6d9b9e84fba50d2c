/**
 * Reads the files of a content folder into drafts: trees of values that know their place, and Markdown as clean HTML.
 *
 * <p>Start at {@code CaseReader} and {@code LibraryReader}. Owns the YAML and Markdown parsers. Private fields stop
 * here: a draft carries their names, and their values only sealed, for the search of the finished site. May see:
 * model, quantity, message.
 */
package org.benchleaf.read;
