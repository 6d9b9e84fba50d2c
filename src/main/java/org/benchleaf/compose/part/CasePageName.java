package org.benchleaf.compose.part;

/**
 * A page that a case may have.
 *
 * @param kind such as {@code step-sheet}; {@code case-page.<kind>} words it
 * @param file the name of its file in the case's folder
 * @param output what of a case it is, for the permissions
 */
public record CasePageName(String kind, String file, Clearance.Output output) {

    /** The kind of the step sheet, which other pages lead to where a case has one. */
    public static final String STEP_SHEET = "step-sheet";
    /** The kind of the results, to which the case study leads. */
    public static final String RESULTS = "results";
}
