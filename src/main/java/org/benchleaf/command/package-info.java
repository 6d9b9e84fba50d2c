/**
 * The command line: one class a command. Owns the command-line parser; sees every stage.
 */
package org.benchleaf.command;
