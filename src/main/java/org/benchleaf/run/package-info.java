/**
 * What every run does with a studio: reads it, keeps it warm, knows what an edit touches, makes editions and previews.
 *
 * <p>Start at {@code Publishing} and {@code WarmStudio}. May see every package but command.
 */
package org.benchleaf.run;
