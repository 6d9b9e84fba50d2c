/**
 * Running text as a tree: what is emphasised, linked, cited or quoted, and the paragraphs, lists and tables made of it.
 *
 * <p>Start at {@code RichText} and {@code TextBlock}. Sees nothing; HTML is made of it in publish alone.
 */
package org.benchleaf.text;
