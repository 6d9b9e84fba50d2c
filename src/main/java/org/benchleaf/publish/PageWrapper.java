package org.benchleaf.publish;

import freemarker.core.HTMLOutputFormat;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.util.Optional;
import org.benchleaf.compose.Html;

/** Shows records to templates: clean HTML as markup, an empty optional as empty text, everything else as it is. */
final class PageWrapper extends DefaultObjectWrapper {

    PageWrapper(Version version) {
        super(version);
    }

    @Override
    public TemplateModel wrap(Object value) throws TemplateModelException {
        if (value instanceof Html html) {
            return HTMLOutputFormat.INSTANCE.fromMarkup(html.markup());
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? wrap(optional.get()) : new SimpleScalar("");
        }
        return super.wrap(value);
    }
}
