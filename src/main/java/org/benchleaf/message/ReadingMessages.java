package org.benchleaf.message;

/** What is said when a file cannot be read as it stands. */
public enum ReadingMessages implements Message.Id {
    NO_CONTENT("READ-001",
            "There is no content folder here.",
            "The studio, its materials and its cases are read from there.",
            "Name the folder with --content, or run the command in the folder that holds 'content'."),
    NO_STUDIO("READ-002",
            "The content folder has no studio.yaml.",
            "It says who publishes, and with which room, trays and glassware the figures are worked out.",
            "Write studio.yaml; the page 'Writing a case file' lists its keys."),
    NOT_A_FILE("READ-003",
            "There is no readable file of this name.",
            "A case is a folder that holds a file case.md.",
            "Put the file there, or take the folder out of 'cases'."),
    LINK_OUT_OF_CONTENT("READ-004",
            "This file is a link that leads out of the content folder.",
            "Only what lies in the content folder may become part of the site.",
            "Copy the file into the content folder."),
    FILE_TOO_LARGE("READ-005",
            "The file, or its front matter, is larger than {most} KiB.",
            "So much text is nearly always a slip, such as a picture or a table pasted in.",
            "Move tables into CSV files and pictures into the folder 'pictures'."),
    NOT_UTF_8("READ-006",
            "The file is not written in UTF-8 from here on.",
            "Signs such as ° or ² would come out wrong.",
            "Save the file again with the encoding UTF-8."),
    CONTROL_CHARACTER("READ-007",
            "A character stands here that no text should hold ({character}).",
            "It cannot be seen, and programs read it in different ways.",
            "Delete it and type the place again."),
    FRONT_MATTER_MISSING("READ-008",
            "The file does not begin with a line '---'.",
            "Between two such lines stand the facts of the case; the story follows below.",
            "Make '---' the first line of the file."),
    FRONT_MATTER_OPEN("READ-009",
            "The front matter that begins here never ends.",
            "Without a second line '---' the story cannot be told from the facts.",
            "Put a line '---' below the last fact."),
    NOT_YAML("READ-010",
            "{problem}",
            "The facts of the case cannot be read beyond this place.",
            "{remedy}"),
    YAML_TOO_DEEP("READ-011",
            "Values are nested here more than {most} deep.",
            "Nothing in a case needs that; it is a slip, or meant to stop the program.",
            "Close the brackets, or indent less."),
    KEY_TWICE("READ-012",
            "The key '{key}' stands here a second time.",
            "Only one of the two values could count, and the other would be lost unseen.",
            "Keep one of them, or put both values into a list."),
    ALIAS("READ-013",
            "A mark that begins with '&' or '*' stands here.",
            "YAML would copy another value to this place, which a reader of the file does not see.",
            "Write the value out, or put it into double quotes if it is text."),
    TAG("READ-014",
            "A type mark '{tag}' stands here.",
            "Values are read as they are written; marks that begin with '!' have no meaning here.",
            "Delete the mark, or put the value into double quotes if it is text."),
    KEY_NOT_A_WORD("READ-015",
            "A list or a group stands where a key is expected.",
            "A key is a word.",
            "Write 'key: value', and put a key with brackets into double quotes."),
    MANY_DOCUMENTS("READ-016",
            "A second document begins here.",
            "One file holds one set of facts; what follows would be lost unseen.",
            "Move what follows into a file of its own, or delete the line '---'."),
    NO_KEYS("READ-017",
            "There are no keys with values here.",
            "The file is read as 'key: value' lines.",
            "Write at least the keys that the page 'Writing a case file' marks as needed."),
    CASE_NAME("READ-018",
            "The folder's name '{name}' cannot be part of an address.",
            "The name becomes the address of the case's pages, on every kind of computer.",
            "Name the folder with small letters a to z, digits and single hyphens, such as 'tide-table'."),
    NOT_A_FOLDER("READ-019",
            "A file stands where the folder '{name}' is expected.",
            "What belongs into that folder would be taken for missing.",
            "Rename the file, or make a folder of that name and put its contents there."),
    STORY_TOO_LARGE("READ-020",
            "The story is longer than {most} KiB.",
            "That is more than a book; nobody reads it on one page.",
            "Tell the case in fewer words."),
    STORY_TOO_DEEP("READ-021",
            "Quotes, lists or blanks at the head of this line nest more than {most} deep.",
            "Nothing in a story needs that; it is a slip, or meant to stop the program.",
            "Begin the line further left."),
    STORY_TOO_MANY("READ-022",
            "There are too many {what} up to this place.",
            "A page with them would not be readable, and reading them can take minutes.",
            "Close them, or write a backslash before each one that is meant as a sign."),
    FILE_NAME("READ-023",
            "The name '{name}' cannot be used on every computer: {reason}.",
            "Content folders are carried from one kind of computer to another, and pages have the names of their cases.",
            "Rename it: letters, digits, full stops inside and single hyphens, no longer than {most} characters."),
    LINK_NOT_ALLOWED("READ-024",
            "This link leads to an address of a kind that is not printed.",
            "A page read from a folder can only follow http, https, mailto and addresses relative to itself.",
            "Write a whole address that begins with https://, or one relative to the page, such as ../../glossary.html."),
    PICTURE_IN_STORY("READ-025",
            "A picture is named inside the story.",
            "Pictures need an alternative text, a credit and a licence, and those stand in the front matter.",
            "Move it to 'pictures:' in the front matter."),
    HEADING_FIRST_LEVEL("READ-026",
            "A heading of the first level stands in the story.",
            "The first level is the title of the page; a second one misleads people who listen to it.",
            "Begin the heading with '##'."),
    HEADING_SKIPS("READ-027",
            "A heading of level {level} follows one of level {before}.",
            "People who listen to a page find their way by its levels, and a missing one misleads them.",
            "Take away one '#', or put a heading of the level between before it."),
    HEADING_ID_TOO_DEEP("READ-028",
            "A heading below the second level carries an id.",
            "Only a whole section belongs to a step.",
            "Make it a heading with '##', or take the id away."),
    HEADING_ID_TWICE("READ-029",
            "Two headings carry the id '{id}'.",
            "A section is found by its id.",
            "Put both texts under one heading, or give one of them another id."),
    FIGURE_OUT_OF_TEXT("READ-030",
            "A figure is cited inside {where}.",
            "A worked-out number with its unit can only be printed in running text.",
            "Cite it in a sentence, or write '\\{' if a brace is meant."),
    COMMENT_OPEN("READ-031",
            "A comment is opened with '<!--' and never closed.",
            "Where it ends cannot be told, and what stands in it was not meant for readers.",
            "Write '-->' where the comment ends."),
    TABLE_EMPTY("READ-040",
            "The table has no header.",
            "The first line names the columns.",
            "Put the names of the columns into the first line."),
    TABLE_ROW_LENGTH("READ-041",
            "This line has {cells} cells, the header has {header}.",
            "It cannot be told which reading is which.",
            "Give every line as many cells as the header; put text that holds the separating sign into double quotes."),
    TABLE_WITHOUT_ROWS("READ-042",
            "The table has no line below its header.",
            "A result without a reading would look as if it had been forgotten.",
            "Export the readings again, or delete the file.");

    private final String code;
    private final String what;
    private final String why;
    private final String fix;

    ReadingMessages(String code, String what, String why, String fix) {
        this.code = code;
        this.what = what;
        this.why = why;
        this.fix = fix;
    }

    @Override
    public String code() {
        return code;
    }

    @Override
    public Severity severity() {
        return Severity.ERROR;
    }

    @Override
    public String what() {
        return what;
    }

    @Override
    public String why() {
        return why;
    }

    @Override
    public String fix() {
        return fix;
    }
}
