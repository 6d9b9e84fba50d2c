/** The part of the program that is compiled to JavaScript, so that pages can work sums. */
package org.benchleaf.script;
