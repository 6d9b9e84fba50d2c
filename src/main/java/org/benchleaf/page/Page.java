package org.benchleaf.page;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * One page of the site.
 *
 * @param path relative to the site's root, with forward slashes
 * @param kind such as {@code case-study}, {@code step-sheet}; the style may ask for it
 * @param title of the page alone; the frame adds case and site
 * @param description one sentence for the reader's search
 * @param language BCP 47 tag of the words
 * @param caseId of the case it belongs to; empty for a page of the whole site
 * @param frame what surrounds the content
 * @param blocks from top to bottom; the first one bears the page's only heading of the first level
 * @param scripts names of the scripts it loads, in order, without folder; the page is complete without them
 * @param linkedData what it says for programs, as JSON-LD fit for a script element, mirroring its visible text
 */
public record Page(String path, String kind, String title, String description, String language,
        Optional<String> caseId, Frame frame, List<Block> blocks, List<String> scripts, List<Markup> linkedData) {

    /** What asks the browser to keep the site on the device. */
    public static final String KEEPING_SCRIPT = "offline.js";

    public Page {
        blocks = List.copyOf(blocks);
        scripts = List.copyOf(scripts);
        linkedData = List.copyOf(linkedData);
    }

    /** The same page with a block more at its end. */
    public Page with(Block block) {
        return new Page(path, kind, title, description, language, caseId, frame,
                Stream.concat(blocks.stream(), Stream.of(block)).toList(), scripts, linkedData);
    }

    /** The same page as a preview shows it: with a script of the preview after the others, and never kept on a device. */
    public Page previewed(String script) {
        Stream<String> others = scripts.stream().filter(name -> !name.equals(KEEPING_SCRIPT));
        return new Page(path, kind, title, description, language, caseId, frame, blocks,
                Stream.concat(others, Stream.of(script)).toList(), linkedData);
    }

    /** The way from this page up to the site's root: empty, {@code ../} or {@code ../../}. */
    public String up() {
        return Paths.up(path);
    }
}
