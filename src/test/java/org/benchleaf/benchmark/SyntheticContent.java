package org.benchleaf.benchmark;

import java.awt.Color;
import java.awt.GradientPaint;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javax.imageio.ImageIO;

/** Writes content of any number of cases, each with about 3 kB of front matter and 6 kB of prose, always the same. */
public final class SyntheticContent {

    private static final String FRONT = """
            ---
            title: Sheet %1$d of the harbour office
            summary: A brown letterpress sheet, number %1$d of its set, is washed, dried and mended.
            level: foundation
            language: en
            publication:
              state: cleared
              licence: CC-BY-4.0
              strengths for the public: yes
              permissions:
                - {for: [treatment, teaching, text, pictures], from: owner, on: 2026-03-02}
            object:
              kind: broadside
              technique: letterpress
              made: {when: about 18%2$02d, evidence: the printer's imprint}
              support: {paper: rag, grammage: %3$d g/m², thickness: 0.11 mm, grain: along the height}
              size: {height: %4$d mm, width: %5$d mm}
              media:
                - {id: text, is: printing ink, colour: black}
              private: {owner: Orla Quillfeather-%11$s, kept at: "Bay %1$d, shelf %6$s", people: [Ines Okonkwo-Hale]}
            condition:
              - {id: tide, what: tideline, where: lower third, side: recto, extent: %5$d mm, degree: marked}
              - {id: t1, what: tear, where: right edge, side: recto, extent: %7$d mm, degree: moderate}
            tests:
              - {of: text, with: deionised-water, dwell: 24 h, result: stable}
              - {of: text, with: paste, dwell: 24 h, result: stable}
            proposal:
              approved: 2026-03-02
              steps: [testing, surface cleaning, washing, drying, mending]
              risks: {washing: The sheet may grow., mending: The mends stay visible.}
            solutions:
              paste:
                parts: {first: wheat-starch, second: deionised-water, parts: 1 + 5, by: mass, cooked: yes}
                least: 100 g
                keeps: 5 d
            steps:
              - {id: tests, kind: testing, do: Test every ink with every liquid., takes: 1 h to 2 h, until: no colour on the blotter}
              - {id: brush, kind: surface cleaning, do: Brush both sides., takes: 20 min to 40 min, \
            until: the brush stays clean, cleaning: {tools: [soft-brush]}, after: [tests]}
              - id: wash
                kind: washing
                do: Lower the sheet on its carrier into the bath.
                until: two baths in a row stay as clear as fresh water
                bath: {of: deionised-water, depth: 25 mm, margin: 40 mm, baths: %8$d, each: 20 min, \
            temperature: 21 °C, water: {source: deionised, pH: pH 5.9, conductivity: 1.2 µS/cm}}
                support: {under: polyester-film, between: polyester-web, margin: 30 mm}
                aim: take out soluble acid
                instead: Washing on blotters would leave it patchy.
                after: [brush]
              - id: dry
                kind: drying
                do: Drain, blot, and lay the sheet between blotters under the boards.
                until: the mass changes by less than 0.5 %% in a day
                blotters: {changes: [15 min, 30 min, 1 h, 3 h, overnight], blotter: blotter-300, layers: 1}
                press: {mass: %9$d kg, between: [polyester-web, felt], time: 3 d}
                weighing: {dry: 9.6 g, wet: 24.4 g, restrained: 15.8 g, blotted for: 10 min}
                after: [wash]
              - id: mend
                kind: mending
                do: Bridge each tear from the back with torn strips of tissue.
                until: no edge lifts in raking light
                mend: {damages: [t1], tissue: kozo-5, with: paste, strip: 8 mm, lap: 5 mm, piece: 40 mm}
                takes: 40 min to 70 min
                after: [dry]
            results:
              - measure: pH
                method: surface, flat electrode
                places: [head, foot, centre]
                before: [4.%10$d, 4.5, 4.4]
                after: [7.3, 7.%10$d, 7.2]
            reasons:
              - {rule: last-bath-carries-calcium, step: wash, why: The sheet holds chalk.}
            """;
    private static final String CONSONANTS = "bcdfghjklm";
    private static final int PROSE = 6_000;
    private static final List<String> SENTENCES = List.of(
            "The sheet had been folded twice and kept in a drawer near a stove.",
            "Every ink was tested with every liquid that would touch it, for as long as the liquid would stay.",
            "The water turned straw yellow in the first bath and stayed clear in the last.",
            "A soft brush took away the loose dirt, and an eraser the rest, always *away* from the tears.",
            "The blotters were changed after a quarter of an hour, and then at longer and longer times.",
            "Readings taken on the surface tell **nothing** of the inside of the sheet.",
            "Long fibres of kozo bridge a tear without a step that a finger could feel.",
            "Nothing was bleached, since the stain is part of what happened to this sheet.",
            "The paste was cooked in a double boiler and pressed twice through a sieve.",
            "In raking light the surface showed the press, the folds, and the hand that had smoothed them.");

    private SyntheticContent() {
    }

    /**
     * Writes content.
     *
     * @param library content whose studio, materials, glossary and sources are taken over
     * @param cases how many
     * @param pictures how many pictures each case has
     */
    public static void write(Path library, Path content, int cases, int pictures) throws IOException {
        copyLibrary(library, content);
        for (int number = 0; number < cases; number++) {
            add(content, number, pictures);
        }
    }

    /** Writes the case of a number into content. */
    static void add(Path content, int number, int pictures) throws IOException {
        Path folder = Files.createDirectories(content.resolve("cases").resolve(name(number)));
        Files.writeString(folder.resolve("case.md"), text(number, pictures));
        for (int picture = 0; picture < pictures; picture++) {
            draw(folder.resolve("pictures"), picture, number);
        }
    }

    static String name(int number) {
        return String.format("sheet-%05d", number);
    }

    private static void copyLibrary(Path library, Path content) throws IOException {
        try (Stream<Path> files = Files.walk(library)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                Path relative = library.relativize(file);
                if (!relative.startsWith("cases") && !relative.startsWith("classes")) {
                    Path copy = content.resolve(relative.toString());
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
    }

    static String text(int number, int pictures) {
        Random random = new Random(number);
        int height = 200 + random.nextInt(300);
        int width = 150 + random.nextInt(200);
        String front = FRONT.formatted(number, 50 + random.nextInt(49), 60 + random.nextInt(60), height, width,
                (char) ('A' + random.nextInt(26)), 20 + random.nextInt(60), 2 + random.nextInt(3),
                2 + random.nextInt(5), random.nextInt(9), inLetters(number));
        return front + picturesText(pictures) + "---\n\n" + prose(random, number);
    }

    /** A number as a name could be: names hold no digits, and without vowels it is no word, nor the short form of one. */
    private static String inLetters(int number) {
        return String.format("%05d", number).chars().mapToObj(digit -> String.valueOf(CONSONANTS.charAt(digit - '0')))
                .collect(Collectors.joining());
    }

    private static String picturesText(int pictures) {
        StringBuilder text = new StringBuilder(pictures == 0 ? "" : "pictures:\n");
        for (int picture = 0; picture < pictures; picture++) {
            text.append("""
                  - {id: p%1$d, file: p%1$d.jpg, moment: before, side: recto, light: normal, \
                alt: A brown sheet of printed columns with a dark stain., \
                caption: "Drawing, number %1$d.", credit: Benchleaf benchmark, licence: CC0-1.0}
                """.formatted(picture));
        }
        return text.toString();
    }

    private static String prose(Random random, int number) {
        StringBuilder prose = new StringBuilder();
        List<String> headings = List.of("Where the sheet came from", "What we did first {#tests}", "Into the water {#wash}",
                "Drying {#dry}", "What the numbers say", "What we did not do");
        for (String heading : headings) {
            prose.append("## ").append(heading).append("\n\n");
            while (prose.length() < PROSE * (headings.indexOf(heading) + 1) / headings.size()) {
                for (int sentence = 0; sentence < 5; sentence++) {
                    prose.append(SENTENCES.get(random.nextInt(SENTENCES.size()))).append('\n');
                }
                prose.append("\n- one tear of sheet ").append(number).append("\n- another\n\n");
            }
        }
        return prose.append("Each bath took {wash.volume} of water.\n").toString();
    }

    private static void draw(Path folder, int picture, int number) throws IOException {
        BufferedImage image = new BufferedImage(1600, 1200, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = image.createGraphics();
        pen.setPaint(new GradientPaint(0, 0, new Color(0xD9C8A0), 1600, 1200, new Color(0x8C6E3F + number % 64)));
        pen.fillRect(0, 0, 1600, 1200);
        pen.setColor(Color.DARK_GRAY);
        Random random = new Random(31L * number + picture);
        for (int line = 0; line < 40; line++) {
            pen.drawLine(random.nextInt(1600), random.nextInt(1200), random.nextInt(1600), random.nextInt(1200));
        }
        pen.dispose();
        Files.createDirectories(folder);
        ImageIO.write(image, "jpg", folder.resolve("p" + picture + ".jpg").toFile());
    }
}
