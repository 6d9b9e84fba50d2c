package org.benchleaf.derive.classes;

import java.util.List;

/** What is done for the record or the room and not to the sheet, by the words of the plan for it. */
public final class BesideWork {

    /** A bath that stood ready is read before the sheet goes in. */
    public static final String READ_AGAIN = "read the bath again";
    /** A sample of the last bath is read. */
    public static final String READ_USED = "read the used bath";
    /** A tray is emptied for good. */
    public static final String EMPTY_TRAY = "empty the tray";
    public static final String WEIGH_DRY = "weigh the dry sheet";
    public static final String WEIGH_WET = "weigh the wet sheet";
    /** The sheet is weighed when it has been blotted, before boards are laid on it. */
    public static final String WEIGH_BLOTTED = "weigh the blotted sheet";
    /** The web that was weighed with the wet sheet is weighed by itself. */
    public static final String WEIGH_WEB = "weigh the wet web";
    /** The sheet is weighed when it has been taken out, as it was on the working day before. */
    public static final String WEIGH_DRIED = "weigh the dried sheet";

    static final List<String> ALL = List.of(READ_AGAIN, READ_USED, EMPTY_TRAY, WEIGH_DRY, WEIGH_WET, WEIGH_BLOTTED, WEIGH_WEB, WEIGH_DRIED);

    private BesideWork() {
    }
}
