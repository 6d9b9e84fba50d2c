package org.benchleaf.publish;

import freemarker.core.HTMLOutputFormat;
import freemarker.ext.beans.ClassMemberAccessPolicy;
import freemarker.ext.beans.MemberAccessPolicy;
import freemarker.template.DefaultObjectWrapper;
import freemarker.template.SimpleScalar;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import freemarker.template.Version;
import java.lang.reflect.Constructor;
import java.lang.reflect.Field;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.util.Optional;
import org.benchleaf.page.Hazard;
import org.benchleaf.page.Markup;
import org.benchleaf.text.RichText;
import org.benchleaf.text.TextBlock;

/** Shows records to templates: running text as HTML, an empty optional as empty text, everything else as it is. */
final class PageWrapper extends DefaultObjectWrapper {

    PageWrapper(Version version) {
        super(version);
        setMemberAccessPolicy(new OwnMembers());
    }

    /** Only what the program's own records say can be asked; nothing of Java's own classes, files and streams included. */
    private static final class OwnMembers implements MemberAccessPolicy {

        private static final String OWN = "org.benchleaf.";

        @Override
        public ClassMemberAccessPolicy forClass(Class<?> asked) {
            return new ClassMemberAccessPolicy() {
                @Override
                public boolean isMethodExposed(Method method) {
                    return !Modifier.isStatic(method.getModifiers())
                            && method.getDeclaringClass().getName().startsWith(OWN);
                }

                @Override
                public boolean isConstructorExposed(Constructor<?> constructor) {
                    return false;
                }

                @Override
                public boolean isFieldExposed(Field field) {
                    return false;
                }
            };
        }

        @Override
        public boolean isToStringAlwaysExposed() {
            return true;
        }
    }

    private static TemplateModel markup(String html) throws TemplateModelException {
        return HTMLOutputFormat.INSTANCE.fromMarkup(html);
    }

    @Override
    public TemplateModel wrap(Object value) throws TemplateModelException {
        if (value instanceof RichText text) {
            return markup(HtmlWriter.of(text.parts()));
        }
        if (value instanceof TextBlock block) {
            return markup(HtmlWriter.of(block));
        }
        if (value instanceof Markup own) {
            return markup(own.lines());
        }
        if (value instanceof Hazard.Drawing drawing) {
            return markup(HtmlWriter.of(drawing));
        }
        if (value instanceof Optional<?> optional) {
            return optional.isPresent() ? wrap(optional.get()) : new SimpleScalar("");
        }
        return super.wrap(value);
    }
}
