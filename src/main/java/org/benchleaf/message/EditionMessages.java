package org.benchleaf.message;

import static org.benchleaf.message.Severity.ADVICE;
import static org.benchleaf.message.Severity.ERROR;
import static org.benchleaf.message.Severity.WARNING;

/** What can be the matter with a whole edition: the disk, the site's folder, links between pages. */
public enum EditionMessages implements CatalogueEntry {

    /** Two runs at once. */
    ANOTHER_RUN("SITE-001", ERROR,
            "Another run is publishing into this folder.",
            "Two runs at once would mix their editions.",
            "Wait until the other run has ended, then publish again."),
    /** A file that Benchleaf did not write stands where one of the edition belongs. */
    FOREIGN_FILE("SITE-002", ERROR,
            "A {thing} that Benchleaf did not write stands where the edition puts '{path}'.",
            "What Benchleaf did not write is never overwritten.",
            "Move it out of the site's folder or rename it, then publish again."),
    /** The site's folder cannot be one. */
    NOT_A_FOLDER("SITE-003", ERROR,
            "The site's folder cannot be used: {reason}.",
            "The edition is written into a folder.",
            "Name a folder with --site, or make place for one."),
    /** The list of an earlier edition is damaged. */
    LIST_UNREADABLE("SITE-004", ERROR,
            "The list of the last edition cannot be read.",
            "Without it, Benchleaf's files cannot be told from yours, and yours are never touched.",
            "Put back edition.json from a copy, or publish into an empty folder."),
    /** The disk refused to take something. */
    CANNOT_WRITE("SITE-005", ERROR,
            "This cannot be written: {reason}.",
            "No page was made anew: the edition is made whole before it is moved in.",
            "{remedy}"),
    /** The disk refused to give something. */
    CANNOT_READ("SITE-006", ERROR,
            "This cannot be read: {reason}.",
            "An edition without it would be incomplete, so nothing was published.",
            "Look whether the file is there and may be read, then publish again."),
    /** A file was written to while it was read. */
    CHANGED_WHILE_READ("SITE-007", ERROR,
            "This file changed while it was being read.",
            "The edition could hold half of each version, so nothing was published.",
            "Save the file and publish again."),
    /** A link to a page or file that is not in the edition. */
    LINK_TO_NOTHING("SITE-008", ERROR,
            "The link '{link}' leads to nothing in this edition.",
            "A reader would find an error page.",
            "Put the link right in the case, or in the template that makes it."),
    /** A link to an anchor that the page does not have. */
    ANCHOR_MISSING("SITE-009", ERROR,
            "The link '{link}' leads to a place that its page does not have.",
            "A reader would land at the head of the page instead.",
            "Put the part after # right, or give the heading that id."),
    /** A page that no other page links to. */
    ORPHAN_PAGE("SITE-010", ERROR,
            "No way leads from the first page to this page.",
            "A reader who starts at index.html would never find it.",
            "Link to it from a page of the site, or leave it out."),
    /** A link that does not work from a folder. */
    LINK_NOT_RELATIVE("SITE-011", ERROR,
            "The link '{link}' does not work when the site is opened from a folder: {reason}.",
            "The site is read offline from any folder.",
            "Write the link relative to its page, with the file's name at its end."),
    /** A path that some system cannot hold. */
    PATH_NOT_PORTABLE("SITE-012", ERROR,
            "The path '{path}' cannot be used everywhere: {reason}.",
            "The site is copied to memory sticks, phones and hosts of every kind.",
            "Use lower-case letters, digits, full stops and hyphens, and keep it short."),
    /** Two files for one path. */
    PATH_TAKEN_TWICE("SITE-013", ERROR,
            "Two files of this edition want the path '{path}'.",
            "One would replace the other.",
            "Rename the case, picture or page that makes one of them."),
    /** A file of the last edition was changed by somebody else. */
    CHANGED_BY_HAND("SITE-014", WARNING,
            "The file '{path}' was changed by hand since the last edition; it was {done}.",
            "Benchleaf's own files are made anew from the content.",
            "Make the change in the content or the templates instead."),
    /** A page asks for something from another host. */
    FROM_ANOTHER_HOST("SITE-015", ERROR,
            "The page loads '{link}' from outside the site.",
            "The site is read offline, and no other host may learn who reads it.",
            "Put the file into the content or the templates and link to it there."),
    /** There is no case at all. */
    NO_CASE("SITE-016", ERROR,
            "There is no case in this folder.",
            "An edition without a case would empty the site; the folder is more likely the wrong one.",
            "Name the content's folder with --content; each case is a folder under cases with a case.md in it, which"
                    + " 'benchleaf draft NAME' begins."),
    /** An earlier run was cut off while it moved its files. */
    RUN_COMPLETED("SITE-017", ADVICE,
            "An earlier run was cut off while it moved its edition in; that edition was completed first.",
            "Old and new pages would otherwise stand side by side.",
            "Nothing needs to be done."),
    /** Moving the edition in stopped half way. */
    HALF_MOVED("SITE-018", ERROR,
            "The edition could not be moved in whole: {reason}.",
            "Every file is whole, but old and new pages stand side by side.",
            "Close programs that hold files of the site open, then publish again: the run is completed first."),
    /** The program itself failed. */
    PROGRAM_FAILED("SITE-019", ERROR,
            "Benchleaf itself failed here ({failure}).",
            "This is a fault of the program, not of the case; nothing was published.",
            "Report it with this line and, if it may be shared, the case file."),
    /** Files have left the site because they may not be public any more. */
    TAKEN_DOWN("SITE-020", WARNING,
            "Taken down: {number} of the files of the case '{case}' have left the site.",
            "What may not be public any more leaves before anything else is done.",
            "Bring the site as it is now to wherever it is copied to, and call back by hand what was handed out."),
    /** Files that should have left the site are still there. */
    NOT_TAKEN_DOWN("SITE-021", ERROR,
            "This file may not be public any more and could not be taken out of the site: {reason}.",
            "It stays in public until it is removed.",
            "Remove it by hand now, or make it removable and run 'publish --only-withdrawals' again."),
    /** Another file named a case that was taken down and could not be rewritten. */
    LEFT_TOO("SITE-022", WARNING,
            "'{path}' told of a case that was taken down and was taken out with it: {reason}.",
            "A page that still tells of the case would undo the withdrawal.",
            "Mend what else is told and publish: the page is then made anew, without the case."),
    /** The publication of a case cannot be read. */
    STANDING_UNKNOWN("SITE-023", ERROR,
            "It cannot be told from this file whether the case may still be public; its pages stay as they are.",
            "Its state or its permissions cannot be read, and what is not withdrawn is not taken down.",
            "Mend the lines under 'publication:'. To take its pages down at once, write 'state: withdrawn' there and run"
                    + " 'publish --only-withdrawals'."),
    /** The training site of an earlier edition, of a studio that has one site now. */
    TRAINING_SITE_ENDED("SITE-024", ADVICE,
            "The training site of an earlier edition was taken away: everything stands in one site now.",
            "What is not renewed would grow old beside the new edition.",
            "If the sheets should stand apart, write 'publishing: apart' in studio.yaml."),
    /** The day of this run lies before that of the last edition. */
    EARLIER_DAY("SITE-025", ERROR,
            "This run is of {day}, but the last edition in this folder is of {last}.",
            "Pages that are permitted only since then would leave, and permissions that have run out since would count"
                    + " again; nothing was published.",
            "Set the clock right, or name the day with --on. If the day of the last edition was the wrong one, add"
                    + " --earlier-day."),
    /** A large file of the content that no stage opens. */
    STRAY_FILE("SITE-030", ADVICE,
            "This large file lies in the content, and nothing reads it.",
            "A file that a case needs has another name or place; one that none needs is carried along with every copy.",
            "Move it out of the content, or give it the name and place of what it should be."),
    /** None of the cases of the site is in the content. */
    CASES_MISSING("SITE-026", WARNING,
            "The case '{case}' stands in the site, and neither this file nor that of any other case of the site is in the content.",
            "A case that is deleted leaves the site; but where all are missing, a wrong folder may be named with --content or a"
                    + " disk not be connected, so nothing was taken down for it.",
            "Name the folder of this site's cases. If this case is to leave the site, write this file with"
                    + " 'publication: {state: withdrawn}' between two lines '---' and run 'publish --only-withdrawals'."),
    /** A file of somebody else's in the folder of a case that was taken down. */
    FOREIGN_STAYS("SITE-027", WARNING,
            "Benchleaf did not write this file, so it stays in the folder of the case '{case}', files of which were taken down.",
            "What Benchleaf did not write is never removed, and this may tell of the case.",
            "Look at it, and remove it by hand if it must not be public."),
    /** A name that the machine cannot hold, mostly for want of letters. */
    NAME_NOT_HERE("SITE-031", ERROR,
            "'{name}' cannot be the name of a file here: {reason}.",
            "Java names files in the letters of the machine's locale, and fails on others.",
            "If a file has this name, start with the script bin/benchleaf or set LC_ALL to C.UTF-8, so that its letters are known;"
                    + " else correct the name."),
    /** A template that the engine does not understand, or that fails while a page is made. */
    TEMPLATE_SLIP("SITE-040", ERROR,
            "The template failed here while the page '{page}' was made: {problem}.",
            "Every page that uses the template would fail in the same way, so nothing was published.",
            "Put the template right, or leave out --templates to publish with the program's own."),
    /** A file of the templates that cannot be used at all. */
    TEMPLATE_UNUSABLE("SITE-041", ERROR,
            "This file of the templates cannot be used: {problem}.",
            "Templates are text files inside their own folder; nothing outside it becomes part of a page.",
            "Copy the file from the templates that came with the program, or take it out of the folder."),
    /** A page that is too heavy to be read. */
    PAGE_TOO_HEAVY("SITE-042", WARNING,
            "The page '{page}' has {size} MB of text and marks, more than {most} MB.",
            "A phone at the bench cannot show it, and so much comes from a slip or was meant to do harm.",
            "Say less in the case, or say the same link, table or list fewer times."),
    /** A sheet with a letter that the letters of paper do not have. */
    LETTER_NOT_PRINTED("SITE-043", WARNING,
            "'{letter}' on the page '{page}' cannot be printed, so no PDF was made of it.",
            "A PDF brings its letters along; they are Latin, Greek and Cyrillic letters and common signs, written from left to right.",
            "Write it with such letters, or take 'pdf' out of 'take along' in studio.yaml; a browser prints the page as it is.");

    private final Entry entry;

    EditionMessages(String code, Severity severity, String what, String why, String fix) {
        this.entry = new Entry(code, severity, what, why, fix);
    }

    @Override
    public Entry entry() {
        return entry;
    }
}
