/**
 * Looks at the published site as its readers do: as files, in a real browser, by keyboard, at phone width, in the dark,
 * on paper, with scripts off.
 *
 * <p>Start at {@link org.benchleaf.browser.PagesAsWrittenIT} and {@link org.benchleaf.browser.PagesInTheBrowserIT}; every
 * rule stands in {@link org.benchleaf.browser.RuleBook} with the clause it comes from, and
 * {@link org.benchleaf.browser.SeededFaultsIT} plants faults to show that the rules see them.
 *
 * <p>Clauses such as 1.4.10 are success criteria of WCAG 2.2 (W3C Recommendation, 2024); "house" marks a rule of our own.
 */
package org.benchleaf.browser;
