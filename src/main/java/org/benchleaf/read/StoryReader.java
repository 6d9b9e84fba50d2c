package org.benchleaf.read;

import com.vladsch.flexmark.ast.AutoLink;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ast.Heading;
import com.vladsch.flexmark.ast.HtmlBlockBase;
import com.vladsch.flexmark.ast.HtmlInlineBase;
import com.vladsch.flexmark.ast.Image;
import com.vladsch.flexmark.ast.ImageRef;
import com.vladsch.flexmark.ast.IndentedCodeBlock;
import com.vladsch.flexmark.ast.Link;
import com.vladsch.flexmark.ast.LinkNode;
import com.vladsch.flexmark.ast.LinkRef;
import com.vladsch.flexmark.ast.MailLink;
import com.vladsch.flexmark.ast.Reference;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.ast.TextCollectingVisitor;
import com.vladsch.flexmark.util.data.MutableDataSet;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.Iterator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.benchleaf.message.Message;
import org.benchleaf.message.Messages;
import org.benchleaf.message.Place;
import org.benchleaf.message.ReadingMessages;
import org.benchleaf.model.Story;
import org.benchleaf.text.TextBlock;

/** Turns Markdown into the sections of a story: a tree of text that knows where figures are cited. */
final class StoryReader {

    private static final MutableDataSet OPTIONS = new MutableDataSet()
            .set(Parser.EXTENSIONS, List.of(TablesExtension.create()))
            .set(HtmlRenderer.ESCAPE_HTML, true)
            .set(HtmlRenderer.GENERATE_HEADER_ID, false)
            .set(HtmlRenderer.SUPPRESSED_LINKS, "");
    private static final Parser PARSER = Parser.builder(OPTIONS).build();
    private static final HtmlRenderer RENDERER = HtmlRenderer.builder(OPTIONS).build();

    private static final Pattern CITATION = Pattern.compile("(?<!\\\\)\\{([A-Za-z][A-Za-z0-9.-]*)}");
    private static final Pattern HEADING_ID = Pattern.compile("\\{#([A-Za-z][A-Za-z0-9-]*)}\\s*+$");
    private static final int SECTION_LEVEL = 2;
    /** So many letters of addresses may come out of links by name, which are short where they are used. */
    private static final int MOST_REPEATED = 200_000;
    private static final int MOST_CITATIONS = 1_000;

    private final Lines lines;
    private final String text;
    private final int bodyStart;
    private final Messages messages;
    private final List<Story.Section> sections = new ArrayList<>();
    private final Map<String, Integer> ids = new HashMap<>();

    private String id = "";
    private String heading = "";
    private List<TextBlock> body = List.of();
    private int begin;
    private final List<Integer> starts = new ArrayList<>();
    private List<int[]> comments = List.of();
    private int commented;
    private int cited;
    private long repeated;

    private StoryReader(Lines lines, String text, int bodyStart, Messages messages) {
        this.lines = lines;
        this.text = text;
        this.bodyStart = bodyStart;
        this.messages = messages;
    }

    /** The story that begins at an offset of a file; empty, with a message, where it cannot be read. */
    static Story read(Lines lines, String text, int bodyStart, Messages messages) {
        if (text.substring(bodyStart).getBytes(StandardCharsets.UTF_8).length > MarkdownGuard.MOST_BYTES) {
            messages.add(ReadingMessages.STORY_TOO_LARGE.at(Place.file(lines.file()),
                    "most", MarkdownGuard.MOST_BYTES / 1024));
            return new Story(List.of());
        }
        Optional<Message> refusal = MarkdownGuard.refusal(lines, text, bodyStart);
        if (refusal.isPresent()) {
            messages.add(refusal.get());
            return new Story(List.of());
        }
        return DeepStack.run(() -> new StoryReader(lines, text, bodyStart, messages).read()).orElseGet(() -> {
            messages.add(ReadingMessages.STORY_TOO_DEEP.at(Place.file(lines.file()), "most", MarkdownGuard.DEEPEST));
            return new Story(List.of());
        });
    }

    private Story read() {
        List<Story.Citation> citations = new ArrayList<>();
        String marked = marked(citations);
        if (citations.size() > MOST_CITATIONS) {
            messages.add(ReadingMessages.STORY_TOO_MANY.at(citations.get(MOST_CITATIONS).place(), "what", "cited figures"));
            return new Story(List.of());
        }
        Document document = PARSER.parse(marked);
        comments = StoryComments.ranges(document);
        StoryComments.remove(document).forEach(node ->
                messages.add(ReadingMessages.COMMENT_OPEN.at(place(node))));
        checkLinksAndCode(document);
        if (repeated > MOST_REPEATED) {
            messages.add(ReadingMessages.STORY_TOO_MANY.at(place(document.getLastChild()),
                    "what", "uses of long link addresses that are defined once"));
            return new Story(List.of());
        }
        Iterator<List<TextBlock>> bodies = bodies(document, citations).iterator();
        body = bodies.next();
        int level = 1;
        for (Node block = document.getFirstChild(); block != null; block = block.getNext()) {
            if (block instanceof Heading title) {
                level = checkLevel(title, level);
                if (title.getLevel() <= SECTION_LEVEL) {
                    endSection(citations, title.getStartOffset());
                    startSection(title);
                    body = bodies.next();
                }
            }
        }
        endSection(citations, text.length() - bodyStart);
        return new Story(sections);
    }

    /** The text of each section. One rendering of the whole: the renderer looks through the document anew each time it is asked. */
    private static List<List<TextBlock>> bodies(Document document, List<Story.Citation> citations) {
        StoryTree tree = new StoryTree(citations.stream().map(Story.Citation::figure).collect(Collectors.toSet()));
        return CleanHtml.sections(RENDERER.render(document)).stream().map(tree::blocks).toList();
    }

    /** The Markdown with every citation's braces replaced by marks that no Markdown rule touches; offsets stay. */
    private String marked(List<Story.Citation> citations) {
        StringBuilder marked = new StringBuilder(text.substring(bodyStart));
        Matcher citation = CITATION.matcher(text).region(bodyStart, text.length());
        while (citation.find()) {
            marked.setCharAt(citation.start() - bodyStart, StoryTree.FIGURE_START);
            marked.setCharAt(citation.end() - 1 - bodyStart, StoryTree.FIGURE_END);
            starts.add(citation.start());
            citations.add(new Story.Citation(citation.group(1),
                    lines.place(citation.start(), citation.end(), "")));
        }
        return marked.toString();
    }

    private int checkLevel(Heading title, int levelBefore) {
        int level = title.getLevel();
        if (level == 1) {
            messages.add(ReadingMessages.HEADING_FIRST_LEVEL.at(place(title)));
            return 1;
        }
        if (level > levelBefore + 1) {
            messages.add(ReadingMessages.HEADING_SKIPS.at(place(title), "level", level, "before", levelBefore));
        }
        if (level > SECTION_LEVEL && HEADING_ID.matcher(title.getText().toString()).find()) {
            messages.add(ReadingMessages.HEADING_ID_TOO_DEEP.at(place(title)));
        }
        return level;
    }

    private void startSection(Heading title) {
        String words = new TextCollectingVisitor().collectAndGetText(title).strip();
        Matcher own = HEADING_ID.matcher(words);
        boolean named = own.find();
        heading = named ? words.substring(0, own.start()).stripTrailing() : words;
        id = named ? own.group(1) : "story-" + slug(heading);
        begin = title.getStartOffset();
        int uses = ids.merge(id, 1, Integer::sum);
        if (uses > 1 && named) {
            messages.add(ReadingMessages.HEADING_ID_TWICE.at(place(title), "id", id));
        } else if (uses > 1) {
            id = id + "-" + uses;
        }
        if (heading.indexOf(StoryTree.FIGURE_START) >= 0) {
            messages.add(ReadingMessages.FIGURE_OUT_OF_TEXT.at(place(title), "where", "a heading"));
        }
    }

    private static String slug(String words) {
        String plain = words.toLowerCase(java.util.Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]+", "-")
                .replaceAll("^-|-$", "");
        return plain.isEmpty() ? "section" : plain;
    }

    private void endSection(List<Story.Citation> citations, int end) {
        if (!heading.isEmpty() || !body.isEmpty()) {
            List<Story.Citation> own = new ArrayList<>();
            for (; cited < citations.size() && starts.get(cited) < bodyStart + end; cited++) {
                if (!isInComment(starts.get(cited) - bodyStart)) {
                    own.add(citations.get(cited));
                }
            }
            sections.add(new Story.Section(id, heading, body, written(end), own,
                    lines.place(bodyStart + begin, bodyStart + begin + 1, "")));
        }
        id = "";
        heading = "";
        body = List.of();
    }

    /** What an author noted beside the text cites nothing. */
    private boolean isInComment(int offset) {
        return comments.stream().anyMatch(range -> range[0] <= offset && offset < range[1]);
    }

    /** The same on every system, whichever line ends its editors write. */
    private String written(int end) {
        int from = commented;
        while (commented < comments.size() && comments.get(commented)[0] < end) {
            commented++;
        }
        return StoryComments.without(text.substring(bodyStart + begin, bodyStart + end), begin, comments.subList(from, commented))
                .replace("\r\n", "\n").strip();
    }

    private void checkLinksAndCode(Node parent) {
        for (Node node = parent.getFirstChild(); node != null;) {
            Node next = node.getNext();
            if (node instanceof Image || node instanceof ImageRef) {
                messages.add(ReadingMessages.PICTURE_IN_STORY.at(place(node)));
            } else if (node instanceof Code || node instanceof FencedCodeBlock || node instanceof IndentedCodeBlock
                    || node instanceof HtmlBlockBase || node instanceof HtmlInlineBase) {
                refuseFigure(node, node.getChars().toString(), "code or HTML");
            } else if (node instanceof LinkNode || node instanceof Reference) {
                checkAddress(node, node instanceof Reference reference ? reference.getUrl().unescape()
                        : node instanceof MailLink ? "mailto:" + ((MailLink) node).getText()
                        : node instanceof AutoLink auto ? auto.getUrl().unescape()
                        : node instanceof Link link ? link.getUrl().unescape() : "");
            }
            repeated += length(node);
            checkLinksAndCode(node);
            node = next;
        }
    }

    /** What a link by name takes on the page: each use repeats the address and the title of its definition. */
    private static long length(Node node) {
        if (!(node instanceof LinkRef link)) {
            return 0;
        }
        Reference definition = link.getReferenceNode(link.getDocument());
        return definition == null ? 0 : definition.getUrl().length() + definition.getTitle().length();
    }

    private void checkAddress(Node node, String address) {
        refuseFigure(node, address, "the address of a link");
        if (!LinkAddress.isAllowed(address)) {
            messages.add(ReadingMessages.LINK_NOT_ALLOWED.at(place(node)));
        }
    }

    private void refuseFigure(Node node, String content, String where) {
        if (content.indexOf(StoryTree.FIGURE_START) >= 0) {
            messages.add(ReadingMessages.FIGURE_OUT_OF_TEXT.at(place(node), "where", where));
        }
    }

    private Place place(Node node) {
        return lines.place(bodyStart + node.getStartOffset(), bodyStart + node.getEndOffset(), "");
    }
}
