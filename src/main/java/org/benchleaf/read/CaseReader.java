package org.benchleaf.read;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.PortableName;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Confidential;
import org.benchleaf.model.Story;

/** Reads the folder of one case into a draft. */
public final class CaseReader {

    private static final String PICTURES = "pictures";
    private static final Pattern TRANSLATION = Pattern.compile("(?s)case\\.(.+)\\.md");
    private static final Pattern SHOWN = Pattern.compile("(?s)[^.].*");
    private static final Pattern TABLE = Pattern.compile("(?s)^.*\\.csv");
    private static final Pattern CASE_NAME = Pattern.compile("[a-z0-9]++(-[a-z0-9]++)*+");
    private static final long MOST_BYTES = FrontMatter.MOST_BYTES + MarkdownGuard.MOST_BYTES + 64L;
    private static final long MOST_TABLE_BYTES = 1024 * 1024L;

    /** The 119 characters that a path of the site may have, without the longest path below the folder of a case. */
    private static final int LONGEST_NAME = 35;

    private CaseReader() {
    }

    /** Whether a folder of that name can hold a case. */
    public static boolean isCaseName(String name) {
        return CASE_NAME.matcher(name).matches();
    }

    /** The folders of all cases of a content folder, sorted by name. */
    public static List<Path> folders(Path contentRoot) {
        ContentFolder content = new ContentFolder(contentRoot);
        return content.list(content.resolve("cases"), SHOWN).stream()
                .filter(java.nio.file.Files::isDirectory).toList();
    }

    /** Whether a path in the folder of a case leads to something that is read: words, tables, pictures. */
    public static boolean reads(Path relative) {
        String first = relative.getName(0).toString();
        return first.equals(PICTURES) || relative.getNameCount() == 1
                && (first.equals(PublicationReader.CASE_FILE) || TRANSLATION.matcher(first).matches() || first.endsWith(".csv"));
    }

    /**
     * The draft of one case; what could not be read is left out and said in its messages.
     *
     * @param contentRoot the content folder, outside which nothing is opened
     * @param caseFolder the folder of the case
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static Draft read(Path contentRoot, Path caseFolder) {
        ContentFolder content = new ContentFolder(contentRoot);
        Messages messages = new Messages();
        String id = caseFolder.getFileName().toString();
        Path file = caseFolder.resolve(PublicationReader.CASE_FILE);
        if (!isCaseName(id)) {
            messages.add(ReadingMessages.CASE_NAME.at(Place.file(content.name(caseFolder)), "name", id));
        } else {
            PortableName.fault(id, LONGEST_NAME).ifPresent(reason -> messages.add(ReadingMessages.FILE_NAME.at(
                    Place.file(content.name(caseFolder)), "name", id, "reason", reason, "most", LONGEST_NAME)));
        }
        content.tellStrays(caseFolder, CaseReader::reads, messages);
        Sheet sheet = sheet(content, file, messages);
        List<Draft.Translated> translations = new ArrayList<>();
        List<SourceText> sources = new ArrayList<>(sheet.sources());
        for (Path other : content.list(caseFolder, TRANSLATION)) {
            Matcher name = TRANSLATION.matcher(other.getFileName().toString());
            if (name.matches()) {
                Sheet words = sheet(content, other, messages);
                sources.addAll(words.sources());
                translations.add(new Draft.Translated(name.group(1), words.root(), words.story(),
                        Place.file(content.name(other))));
            }
        }
        return new Draft(id, sheet.root(), sheet.story(), translations, tables(content, caseFolder, sources, messages),
                sheet.confidential(), sources, isUnfinished(contentRoot, caseFolder, sheet), messages, Place.file(content.name(file)));
    }

    /** The file beside the words of a case in which its translation into a language stands, whether there is one or not. */
    public static Path translationFile(Path caseFolder, String language) {
        return caseFolder.resolve("case." + language + ".md");
    }

    /** Whether a file, by its path, holds a translation of a case. */
    public static boolean isTranslation(String path) {
        return TRANSLATION.matcher(path.substring(path.lastIndexOf('/') + 1)).matches();
    }

    /**
     * A translation with all that its file holds; empty if there is no file, or it cannot be read, which {@link #read} tells.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static Optional<TranslationFile> translation(Path contentRoot, Path file) {
        return new ContentFolder(contentRoot).read(file, MOST_BYTES, new Messages()).flatMap(TranslationFile::read);
    }

    private static boolean isUnfinished(Path contentRoot, Path caseFolder, Sheet sheet) {
        Optional<Node> publication = sheet.root().isPresent() ? sheet.root().get().get(PublicationReader.KEY)
                : PublicationReader.find(contentRoot, caseFolder).map(PublicationReader.Found::node);
        return publication.filter(Node.Mapping.class::isInstance).flatMap(group -> ((Node.Mapping) group).get("state"))
                .filter(state -> state instanceof Node.Scalar word && word.text().strip().equals("draft")).isPresent();
    }

    /**
     * The private values of one case, without the rest of it; what cannot be read is told when the case is.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static Confidential confidential(Path contentRoot, Path caseFolder) {
        Messages told = new Messages();
        return new ContentFolder(contentRoot).read(caseFolder.resolve(PublicationReader.CASE_FILE), MOST_BYTES, told)
                .flatMap(text -> FrontMatter.find(text, told).map(front ->
                        YamlFile.read(text, front.start(), front.end(), told).confidential()))
                .orElse(Confidential.none());
    }

    private record Sheet(Optional<Node.Mapping> root, Story story, Confidential confidential, List<SourceText> sources) {
        static final Sheet EMPTY = new Sheet(Optional.empty(), new Story(List.of()), Confidential.none(),
                List.of());
    }

    private static Sheet sheet(ContentFolder content, Path file, Messages messages) {
        Optional<TextFile> read = content.read(file, MOST_BYTES, messages);
        if (read.isEmpty()) {
            return Sheet.EMPTY;
        }
        TextFile text = read.get();
        Optional<FrontMatter> front = FrontMatter.find(text, messages);
        if (front.isEmpty()) {
            return Sheet.EMPTY;
        }
        YamlFile yaml = YamlFile.read(text, front.get().start(), front.get().end(), messages);
        Story story = StoryReader.read(yaml.lines(), text.text(), front.get().body(), messages);
        return new Sheet(yaml.root(), story, yaml.confidential(), List.of(yaml.searched()));
    }

    private static Map<String, ReadingsTable> tables(ContentFolder content, Path folder,
            List<SourceText> sources, Messages messages) {
        Map<String, ReadingsTable> tables = new LinkedHashMap<>();
        List<Path> files = content.list(folder, TABLE);
        FileNames.look(content, files, messages);
        for (Path file : files) {
            String name = file.getFileName().toString();
            content.read(file, MOST_TABLE_BYTES, messages).ifPresent(text -> {
                sources.add(new SourceText(text.name(), text.text()));
                ReadingsTableReader.read(name, text, messages).ifPresent(table -> tables.put(name, table));
            });
        }
        return tables;
    }
}
