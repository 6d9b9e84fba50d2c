package org.benchleaf.command;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.function.UnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** What an author may do to the content between two runs, in an order that a seed decides; each kind comes up once. */
public final class Edits {

    private static final int MOST_AT_ONCE = 3;

    private static final Pattern LENGTH_OF_TIME = Pattern.compile("takes: \\d+ min");
    private static final String NEW_PICTURE = """
              - id: extra
                file: extra.png
                moment: before
                side: verso
                light: normal
                alt: The back of the sheet, evenly brown.
                caption: "Drawing made for the demo: the back."
                credit: Benchleaf demo
                licence: CC0-1.0
            ---

            ##""";

    /** Kinds of edits. */
    public enum Kind {
        PROSE, NUMBER, PICTURE_REPLACED, PICTURE_ADDED, PICTURE_REMOVED, PERMISSION_WITHDRAWN, EMBARGO, DAYS_PASS,
        TEMPLATE, STYLE, MATERIAL, GLOSSARY, STUDIO, SOURCES, TABLE, TRANSLATION_REMOVED, CASE_ADDED, CASE_REMOVED,
        CASE_RENAMED, FILE_TOUCHED, MISTAKE
    }

    private final Path content;
    private final Path templates;
    private final Random random;
    private final List<Kind> left = new ArrayList<>(List.of(Kind.values()));
    private int number;
    private int days;

    public Edits(Path content, Path templates, long seed) {
        this.content = content;
        this.templates = templates;
        this.random = new Random(seed);
        Collections.shuffle(left, random);
    }

    public boolean areLeft() {
        return !left.isEmpty();
    }

    /** Makes the next few edits, a mistake by itself; tells which. */
    public List<Kind> next() throws IOException {
        List<Kind> made = new ArrayList<>();
        days = 0;
        for (int more = 1 + random.nextInt(MOST_AT_ONCE); more > 0 && goesWith(made); more--) {
            made.add(left.remove(0));
            number++;
            edit(made.get(made.size() - 1), content.resolve("cases").resolve(someCase()));
        }
        return made;
    }

    private boolean goesWith(List<Kind> made) {
        return !left.isEmpty() && (made.isEmpty() || left.get(0) != Kind.MISTAKE && !made.contains(Kind.MISTAKE));
    }

    /** How many days passed with the last edits. */
    public int days() {
        return days;
    }

    private void edit(Kind kind, Path folder) throws IOException {
        Path file = folder.resolve("case.md");
        switch (kind) {
            case PROSE -> change(file, text -> text + "\nSentence " + number + ".\n");
            case NUMBER -> change(file, text -> LENGTH_OF_TIME.matcher(text)
                    .replaceFirst("takes: " + (5 + random.nextInt(20)) + " min"));
            case PICTURE_REPLACED -> draw(folder.resolve("pictures/before-recto.jpg"), "jpg");
            case PICTURE_ADDED -> {
                draw(folder.resolve("pictures/extra.png"), "png");
                change(file, text -> text.contains("id: extra") ? text : text.replaceFirst("---\n\n##",
                        Matcher.quoteReplacement(NEW_PICTURE)));
            }
            case PICTURE_REMOVED -> change(file, text -> text.replaceFirst("(?s)  - id: raking.*?CC0-1.0\n", ""));
            case PERMISSION_WITHDRAWN -> change(file, text -> text.replaceFirst(
                    "\\{for: \\[teaching, text, pictures\\], from: owner, on: 2026-03-09\\}",
                    "{for: [teaching, text, pictures], from: owner, on: 2026-03-09, withdrawn: 2026-06-"
                    + (10 + random.nextInt(15)) + "}"));
            case EMBARGO -> change(file, text -> text.replaceFirst("  state: cleared\n",
                    "  state: cleared\n  withhold until: 2026-06-" + (10 + random.nextInt(15)) + "\n"));
            case TABLE -> change(folder.resolve("waves.csv"), text -> text.replaceFirst(
                    "foot;\\d+", "foot;" + (6 + random.nextInt(3))));
            case TRANSLATION_REMOVED -> Files.deleteIfExists(folder.resolve("case.es.md"));
            case CASE_ADDED -> restore(content.resolve("cases").resolve("spring-" + number), snapshot(folder));
            case CASE_REMOVED -> removeUnlessNeeded(folder);
            case CASE_RENAMED -> {
                restore(content.resolve("cases").resolve("flood-" + number), snapshot(folder));
                removeUnlessNeeded(folder);
            }
            case FILE_TOUCHED -> change(file, text -> text);
            case MISTAKE -> change(file, text -> text + "\nIt took {wash.nonsense}.\n");
            default -> editShared(kind);
        }
    }

    private void editShared(Kind kind) throws IOException {
        switch (kind) {
            case DAYS_PASS -> days = 1 + random.nextInt(20);
            case TEMPLATE -> change(templates.resolve("page.ftl"), text -> text.replace("</body>", "\n</body>"));
            case STYLE -> change(templates.resolve("style/base.css"), text -> text + "/* " + number + " */\n");
            case MATERIAL -> change(content.resolve("materials/papers.yaml"), text -> text.replaceFirst(
                    "A thin Japanese paper", "A thin Japanese paper, number " + number + ","));
            case GLOSSARY -> change(content.resolve("glossary.yaml"), text -> text.replaceFirst(
                    "Bathing a sheet", "Bathing sheet " + number));
            case STUDIO -> change(content.resolve("studio.yaml"), text -> text.replaceFirst(
                    "name: [^\n]*", "name: Studio " + number));
            case SOURCES -> change(content.resolve("sources.yaml"), text -> text.replaceFirst(
                    "Wheat starch paste", "Wheat starch paste " + number));
            default -> throw new IllegalArgumentException("no edit of this kind: " + kind);
        }
    }

    private String someCase() throws IOException {
        try (Stream<Path> folders = Files.list(content.resolve("cases"))) {
            List<String> names = folders.map(folder -> folder.getFileName().toString()).sorted().toList();
            return names.get(random.nextInt(names.size()));
        }
    }

    /** A class needs this case. */
    private static void removeUnlessNeeded(Path folder) throws IOException {
        if (!folder.endsWith("tide")) {
            restore(folder, Map.of());
        }
    }

    private static void change(Path file, UnaryOperator<String> change) throws IOException {
        Files.writeString(file, change.apply(Files.readString(file)));
    }

    private void draw(Path file, String format) throws IOException {
        BufferedImage image = new BufferedImage(60, 40, BufferedImage.TYPE_INT_RGB);
        image.setRGB(random.nextInt(60), random.nextInt(40), Color.ORANGE.getRGB());
        ImageIO.write(image, format, file.toFile());
    }

    /** All files below a folder, by their paths in it. */
    public static Map<Path, byte[]> snapshot(Path folder) throws IOException {
        Map<Path, byte[]> files = new HashMap<>();
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                files.put(folder.relativize(file), Files.readAllBytes(file));
            }
        }
        return files;
    }

    /** Gives a folder these files and no others; no files, no folder. */
    public static void restore(Path folder, Map<Path, byte[]> files) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path old : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(old);
                }
            }
        }
        for (var file : files.entrySet()) {
            Path target = folder.resolve(file.getKey().toString());
            Files.createDirectories(target.getParent());
            Files.write(target, file.getValue());
        }
    }
}
