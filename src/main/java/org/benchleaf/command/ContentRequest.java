package org.benchleaf.command;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.benchleaf.model.CourseClass;
import org.benchleaf.read.CaseReader;
import picocli.CommandLine.Model.CommandSpec;

/** What a command is asked of the content of a studio: what it names and is not there is refused, with what is there. */
final class ContentRequest {

    /** The exit code of a command that cannot be carried out as it was written. */
    static final int REFUSED = 2;

    private final CommandSpec spec;
    private final Path content;

    ContentRequest(CommandSpec spec, Path content) {
        this.spec = spec;
        this.content = content;
    }

    /** Whether the folder of the content is there; tells it where it is not. */
    boolean isThere() {
        boolean there = Files.isDirectory(content);
        if (!there) {
            refuse(missing(content));
        }
        return there;
    }

    /** That there is no folder of that name, and how to come to one. */
    static String missing(Path content) {
        return "there is no content folder '" + content + "'; name the one that holds studio.yaml with --content, or make it and write"
                + " studio.yaml in it, for which 'benchleaf check' then asks key by key";
    }

    /** The folder of a case; empty, and told, where there is none. */
    Optional<Path> caseFolder(String name) {
        if (!isThere()) {
            return Optional.empty();
        }
        List<Path> folders = CaseReader.folders(content);
        Optional<Path> folder = folders.stream().filter(one -> one.getFileName().toString().equals(name)).findFirst();
        if (folder.isEmpty()) {
            refuse("no case is called '" + name + "'; " + (folders.isEmpty()
                    ? "there is none yet, and 'benchleaf draft " + name + "' begins it"
                    : "the cases are " + String.join(", ", folders.stream().map(one -> one.getFileName().toString()).toList())));
        }
        return folder;
    }

    /** A class among those of the content; empty, and told, where there is none of that name. */
    Optional<CourseClass> course(String name, List<CourseClass> classes) {
        Optional<CourseClass> course = classes.stream().filter(one -> one.id().equals(name)).findFirst();
        if (course.isEmpty()) {
            refuse("no class is called '" + name + "'; " + (classes.isEmpty() ? "there is none, and each is a file in the folder classes"
                    : "the classes are " + String.join(", ", classes.stream().map(CourseClass::id).toList())));
        }
        return course;
    }

    /** Tells in one sentence why the command is refused, and gives its exit code. */
    int refuse(String sentence) {
        spec.commandLine().getErr().println(spec.name() + ": error: " + sentence);
        return REFUSED;
    }
}
