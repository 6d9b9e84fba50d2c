/**
 * Asks the rules of the trade and the matrix of a case, and pairs what speaks with the reasons recorded in the file.
 *
 * <p>Start at {@link org.benchleaf.rule.TradeRules}. The rules are data; here is only what their building blocks mean.
 * May see: model, quantity, message.
 */
package org.benchleaf.rule;
