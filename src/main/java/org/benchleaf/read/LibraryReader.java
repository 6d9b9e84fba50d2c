package org.benchleaf.read;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import java.util.regex.Pattern;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.message.SourceText;
import org.benchleaf.model.Formulary;
import org.benchleaf.model.Matrix;
/** Reads what all cases of a content folder share. */
public final class LibraryReader {

    private static final List<String> FOLDERS = List.of("cases", "classes", "materials", "reference");
    private static final List<String> SHARED_FOLDERS = FOLDERS.subList(1, FOLDERS.size());
    private static final Pattern YAML = Pattern.compile("(?s)^[^.].*\\.yaml");

    static final String WORDS_OF = "words.";
    private static final Pattern WORDS = Pattern.compile("(?s)^words\\.[^.].*\\.yaml");
    private static final Pattern ISSUES = Pattern.compile("(?s)^[^.].*\\.issues\\.yaml");
    private static final Pattern CLASS = Pattern.compile("(?s)^[^.].*(?<!\\.issues)\\.yaml");

    private final ContentFolder content;
    private final Messages messages = new Messages();
    private final List<SourceText> texts = new ArrayList<>();

    private LibraryReader(ContentFolder content) {
        this.content = content;
    }

    /**
     * The studio, materials, glossary, sources and classes of a content folder.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static LibraryDraft read(Path contentRoot) {
        return new LibraryReader(new ContentFolder(contentRoot)).library(contentRoot);
    }

    /**
     * The tables of hazards of a content folder and its studio file, which tells the drain window; nothing else of it has to
     * be there or sound. A folder without a studio file is told, as the answers would be those of another studio.
     *
     * @throws java.io.UncheckedIOException if the disk fails
     */
    public static TablesDraft tables(Path contentRoot) {
        LibraryReader reader = new LibraryReader(new ContentFolder(contentRoot));
        if (!Files.isDirectory(contentRoot)) {
            reader.tellMissing(contentRoot);
            return new TablesDraft(Optional.empty(), ReferenceReader.shipped(), reader.messages);
        }
        reader.tellNoStudio(contentRoot);
        return new TablesDraft(reader.one("studio.yaml"), ReferenceReader.read(contentRoot, reader.messages), reader.messages);
    }

    /** Whether a path in the content folder leads to something that cases share: a table in it or in one of its folders. */
    public static boolean reads(Path relative) {
        boolean isTable = relative.toString().endsWith(".yaml");
        Path first = relative.getName(0);
        boolean isFolder = SHARED_FOLDERS.contains(first.toString());
        return relative.getNameCount() == 1 ? isTable || isFolder : relative.getNameCount() == 2 && isTable && isFolder;
    }

    private LibraryDraft library(Path contentRoot) {
        if (!Files.isDirectory(contentRoot)) {
            tellMissing(contentRoot);
            return new LibraryDraft(Optional.empty(), List.of(), Optional.empty(), Optional.empty(),
                    MethodReader.read(), new RuleBook(List.of(), Matrix.EMPTY, List.of()), ReferenceReader.shipped(),
                    List.of(), List.of(), List.of(), List.of(), List.of(), messages);
        }
        // Beside the studio's files: a short command spends more time on reading than on anything else.
        ForkJoinTask<Formulary> ours = ForkJoinPool.commonPool().submit(MethodReader::read);
        Optional<LibraryDraft.YamlPart> studio = one("studio.yaml");
        tellNoStudio(contentRoot);
        FOLDERS.stream().filter(content::holds).map(content::resolve).filter(path -> !Files.isDirectory(path))
                .forEach(path -> messages.add(ReadingMessages.NOT_A_FOLDER.at(Place.file(content.name(path)),
                        "name", path.getFileName())));
        content.tellStrays(contentRoot, path -> path.startsWith("cases") || reads(path), messages);
        Optional<LibraryDraft.YamlPart> sources = one("sources.yaml");
        List<LibraryDraft.YamlPart> materials = all("materials", YAML);
        Optional<LibraryDraft.YamlPart> glossary = one("glossary.yaml");
        Formulary formulary = ours.join();
        Set<String> cited = new HashSet<>();
        formulary.sources().forEach(source -> cited.add(source.key()));
        ReferenceReader.sources().forEach(source -> cited.add(source.key()));
        sources.ifPresent(part -> cited.addAll(part.root().entries().keySet()));
        return new LibraryDraft(studio, materials, glossary, sources, formulary,
                RuleReader.read(contentRoot, cited, messages), ReferenceReader.read(contentRoot, messages),
                all("classes", CLASS), all("classes", ISSUES),
                words(),
                CaseReader.folders(contentRoot).stream().map(folder -> folder.getFileName().toString()).toList(),
                texts, messages);
    }

    /** The studio's words in other languages, each part named by its language. */
    private List<LibraryDraft.YamlPart> words() {
        return all("", WORDS).stream().map(part -> new LibraryDraft.YamlPart(part.name().substring(WORDS_OF.length()), part.root(),
                part.place())).toList();
    }

    private void tellMissing(Path contentRoot) {
        messages.add(ReadingMessages.NO_CONTENT.at(Place.file(content.name(contentRoot))));
    }

    private void tellNoStudio(Path contentRoot) {
        if (!content.holds("studio.yaml")) {
            messages.add(ReadingMessages.NO_STUDIO.at(Place.file(content.name(contentRoot.resolve("studio.yaml")))));
        }
    }

    private Optional<LibraryDraft.YamlPart> one(String name) {
        return content.holds(name) ? part(content.resolve(name)) : Optional.empty();
    }

    private List<LibraryDraft.YamlPart> all(String folder, Pattern names) {
        List<Path> files = content.list(content.resolve(folder), names);
        FileNames.look(content, files, messages);
        return files.stream().map(this::part).flatMap(Optional::stream).toList();
    }

    private Optional<LibraryDraft.YamlPart> part(Path file) {
        String name = file.getFileName().toString().replaceFirst("(\\.issues)?\\.yaml$", "");
        return content.read(file, FrontMatter.MOST_BYTES, messages).flatMap(text -> part(name, text));
    }

    private Optional<LibraryDraft.YamlPart> part(String name, TextFile text) {
        YamlFile file = YamlFile.read(text, 0, text.text().length(), messages);
        texts.add(file.lines().shown());
        return file.root()
                .map(root -> new LibraryDraft.YamlPart(name, root, Place.file(text.name())));
    }
}
