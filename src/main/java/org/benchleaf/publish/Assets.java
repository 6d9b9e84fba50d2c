package org.benchleaf.publish;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;

/** The styles in one file, the scripts and drawings one by one. */
final class Assets {

    /** The layers' order, then these files first and last; those of the components stand between, by name. */
    private static final String LAYERS = "@layer tokens, reset, base, layout, components, print;\n";
    private static final List<String> FIRST = List.of("tokens", "reset", "base", "layout");
    private static final String LAST = "print";

    private static final String FONTS = "/fonts/";
    /** The style that names the fonts, the fonts, and their licence, which goes wherever they go. */
    private static final List<String> OF_FONTS = List.of("fonts.css", "serif.woff2", "serif-ext.woff2", "serif-italic.woff2",
            "sans.woff2", "sans-ext.woff2", "fonts-licence.txt");

    private static final String CALCULATIONS = "/script/calculations.js";

    private Assets() {
    }

    static List<SiteFile> of(TemplateFolder templates) {
        List<SiteFile> files = new ArrayList<>();
        files.add(SiteFile.text("assets/site.css", styles(templates)));
        templates.texts().forEach((name, text) -> {
            if (name.startsWith("script/") || name.startsWith("drawing/")) {
                files.add(SiteFile.text("assets/" + name.substring(name.indexOf('/') + 1),
                        name.startsWith("script/") ? bare(text) : text));
            }
        });
        return files;
    }

    static String styles(TemplateFolder templates) {
        StringBuilder css = new StringBuilder(LAYERS);
        FIRST.forEach(name -> css.append(templates.text("style/" + name + ".css")));
        templates.texts().forEach((file, text) -> {
            String name = file.replaceAll("^style/|\\.css$", "");
            if (file.startsWith("style/") && !FIRST.contains(name) && !name.equals(LAST)) {
                css.append(text);
            }
        });
        return packed(css.append(templates.text("style/" + LAST + ".css")).toString());
    }

    /** Comments and the room around rules are for those who read the sources; a reader's phone need not fetch them. */
    private static String packed(String css) {
        return css.replaceAll("(?s)/\\*.*?\\*/", "").replaceAll("(?m)^\\s+", "").replaceAll("\n{2,}", "\n")
                .replaceAll("(?<=[\\w-]): ", ":").replaceAll(" ?([{};>]|,(?= ))\\s*", "$1").replace(";}", "}");
    }

    /** A script without the comments that have lines of their own, and without the room before its lines. */
    static String bare(String script) {
        return script.contains("`") ? script : script
                .replaceAll("(?m)^\\h*/\\*[^*]*(?:\\*(?!/)[^*]*)*\\*/\\h*\n", "").replaceAll("(?m)^\\h+", "");
    }

    /** The fonts that a site brings along. */
    static List<SiteFile> fonts() {
        return OF_FONTS.stream().map(name -> new SiteFile("assets/" + name, bytes(FONTS + name))).toList();
    }

    /** The calculations as a script, compiled when the program was built; it holds nothing of the content. */
    static SiteFile calculations() {
        return new SiteFile("assets/calculations.js", bytes(CALCULATIONS));
    }

    private static byte[] bytes(String resource) {
        try (InputStream file = Assets.class.getResourceAsStream(resource)) {
            if (file == null) {
                throw new IllegalStateException(resource + " is missing from the program");
            }
            return file.readAllBytes();
        } catch (IOException broken) {
            throw new UncheckedIOException(resource + " cannot be read", broken);
        }
    }
}
