/**
 * JSON, written and read in one place: values as text, files piece by piece, records, trees, and trees held against a JSON Schema.
 *
 * <p>Start at {@link org.benchleaf.json.JsonText}. Owns Jackson and the schema validator, which is made of it. May see: nothing.
 */
package org.benchleaf.json;
