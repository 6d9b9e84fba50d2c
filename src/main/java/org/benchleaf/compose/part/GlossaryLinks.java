package org.benchleaf.compose.part;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import org.benchleaf.text.Inline;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;
import org.benchleaf.text.TextMapping;

/** Links each glossary term where one page uses it first, never inside a link, a quotation, a heading or code. */
final class GlossaryLinks extends TextMapping {

    private final GlossaryTerms terms;
    private final String glossaryHref;
    private final Set<String> used = new HashSet<>();

    GlossaryLinks(GlossaryTerms terms, String glossaryHref) {
        this.terms = terms;
        this.glossaryHref = glossaryHref;
    }

    /** The same text with terms not yet used on the page linked to the glossary. */
    RichText link(RichText text) {
        return new RichText(all(text.parts()));
    }

    /** The same block with terms not yet used on the page linked to the glossary. */
    TextBlock link(TextBlock block) {
        return block.ask(this);
    }

    @Override
    public List<Inline> text(Inline.Text words) {
        String text = words.text();
        Matcher matcher = terms.pattern().matcher(text);
        List<Inline> parts = new ArrayList<>();
        int from = 0;
        while (matcher.find()) {
            String id = terms.ids().get(matcher.group().toLowerCase(Locale.ROOT));
            if (id == null || !used.add(id)) {
                continue;
            }
            words(text.substring(from, matcher.start()), parts);
            parts.add(new Inline.TermLink(glossaryHref + "#" + GlossaryTerms.anchor(id), matcher.group()));
            from = matcher.end();
        }
        words(text.substring(from), parts);
        return parts;
    }

    private static void words(String text, List<Inline> parts) {
        if (!text.isEmpty()) {
            parts.add(new Inline.Text(text));
        }
    }

    @Override
    public List<Inline> hyperlink(Inline.Hyperlink hyperlink) {
        return List.of(hyperlink);
    }

    @Override
    public TextBlock subheading(TextBlock.Subheading subheading) {
        return subheading;
    }

    @Override
    protected List<List<TextBlock.Cell>> headRows(List<List<TextBlock.Cell>> rows) {
        return rows;
    }
}
