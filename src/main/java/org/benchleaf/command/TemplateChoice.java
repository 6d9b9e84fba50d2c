package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;

/** Which templates pages are made with. */
public final class TemplateChoice {

    private static final String TEMPLATES = "templates";

    private TemplateChoice() {
    }

    /**
     * The folder of templates that is used.
     *
     * @param named by the author, if any
     * @return the one named, or that beside the content; the program's own if empty
     */
    public static Optional<Path> of(Path content, Optional<Path> named) {
        boolean hasName = content.getFileName() != null && !content.getFileName().toString().matches("\\.{0,2}");
        Path beside = (hasName ? content : content.toAbsolutePath().normalize()).resolveSibling(TEMPLATES);
        return named.or(() -> Optional.of(beside).filter(TemplateChoice::isOne));
    }

    /** Whether a folder holds templates. */
    static boolean isOne(Path folder) {
        return Files.isRegularFile(folder.resolve("page.ftl"));
    }

    /** What to answer to a folder that was named and holds none; empty if it does or none was named. */
    static Optional<String> refusal(Optional<Path> named) {
        return named.filter(folder -> !isOne(folder)).map(folder ->
                "--templates: '" + folder + "' has no page.ftl, so it is no folder of templates.");
    }
}
