package org.benchleaf.publish;

import freemarker.cache.StringTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.Version;
import freemarker.ext.util.WrapperTemplateModel;
import java.io.IOException;
import java.io.StringWriter;
import java.lang.reflect.RecordComponent;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.compose.Block;
import org.benchleaf.compose.DataFile;
import org.benchleaf.compose.Page;
import org.benchleaf.compose.UnitSpaces;

/**
 * Turns pages into HTML files and makes the files that all pages share.
 *
 * <p>One publisher serves several threads at once.
 */
public final class SitePublisher {

    static {
        // The engine would pick whatever log it finds; its failures reach the caller as exceptions, so it needs none.
        System.setProperty("org.freemarker.loggerLibrary", "none");
    }

    private static final Version BEHAVIOUR = Configuration.VERSION_2_3_34;

    private final TemplateFolder templates;
    private final Configuration configuration;
    private final Pictures pictures;

    private SitePublisher(TemplateFolder templates, Pictures pictures) {
        this.templates = templates;
        this.pictures = pictures;
        this.configuration = configure(templates);
    }

    /**
     * A publisher with the templates of a folder, or the program's own where there is no such folder.
     *
     * @param pictures tells which files were made of each picture
     */
    public static SitePublisher with(Path templateFolder, Pictures pictures) {
        return new SitePublisher(Files.isRegularFile(templateFolder.resolve("page.ftl"))
                ? TemplateFolder.at(templateFolder) : TemplateFolder.packed(), pictures);
    }

    /** The same templates with other pictures, such as those of the next case. */
    public SitePublisher with(Pictures others) {
        return new SitePublisher(templates, configuration, others);
    }

    private SitePublisher(TemplateFolder templates, Configuration configuration, Pictures pictures) {
        this.templates = templates;
        this.configuration = configuration;
        this.pictures = pictures;
    }

    private static Configuration configure(TemplateFolder templates) {
        StringTemplateLoader loader = new StringTemplateLoader();
        templates.texts().forEach((name, text) -> {
            if (name.endsWith(".ftl")) {
                loader.putTemplate(name, text);
            }
        });
        Configuration configuration = new Configuration(BEHAVIOUR);
        configuration.setTemplateLoader(loader);
        configuration.setDefaultEncoding("UTF-8");
        configuration.setOutputEncoding("UTF-8");
        configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
        configuration.setAutoEscapingPolicy(Configuration.ENABLE_IF_SUPPORTED_AUTO_ESCAPING_POLICY);
        configuration.setObjectWrapper(new PageWrapper(BEHAVIOUR));
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        configuration.setLocale(Locale.ROOT);
        // Numbers come finished; what is left are coordinates and sizes, which must not follow a locale.
        configuration.setNumberFormat("c");
        return configuration;
    }

    /** The HTML file of a page. */
    public SiteFile publish(Page page) {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("page", page);
        model.put("parts", (TemplateMethodModelEx) arguments -> parts((Block) unwrapped(arguments.get(0))));
        model.put("macroOf", (TemplateMethodModelEx) arguments -> macro((Block) unwrapped(arguments.get(0))));
        model.put("renditions", (TemplateMethodModelEx) arguments ->
                pictures.of(arguments.get(0).toString(), arguments.get(1).toString()));
        try {
            Template template = configuration.getTemplate("page.ftl");
            StringWriter html = new StringWriter();
            template.process(model, html);
            return SiteFile.text(page.path(), UnitSpaces.inPage(trimmed(html.toString())));
        } catch (TemplateException | IOException broken) {
            throw new IllegalStateException("the page " + page.path() + " cannot be rendered", broken);
        }
    }

    /** A data file as it is written. */
    public SiteFile publish(DataFile file) {
        return SiteFile.text(file.path(), file.text());
    }

    /** The files that all pages share: the style, the scripts, the search's library. */
    public List<SiteFile> assets() {
        return Assets.of(templates);
    }

    private static Object unwrapped(Object model) {
        return ((WrapperTemplateModel) model).getWrappedObject();
    }

    /** The record's components by name, which are the arguments of its macro, one for one. */
    private static Map<String, Object> parts(Block block) {
        Map<String, Object> parts = new LinkedHashMap<>();
        for (RecordComponent component : block.getClass().getRecordComponents()) {
            try {
                parts.put(component.getName(), component.getAccessor().invoke(block));
            } catch (ReflectiveOperationException broken) {
                throw new IllegalStateException("the block " + block.name() + " cannot be read", broken);
            }
        }
        return parts;
    }

    private static String macro(Block block) {
        String type = block.getClass().getSimpleName();
        return Character.toLowerCase(type.charAt(0)) + type.substring(1);
    }

    /** Templates leave empty lines and indents behind, a sixth of a page's weight; in {@code pre} they are text. */
    private static String trimmed(String html) {
        StringBuilder kept = new StringBuilder(html.length());
        boolean verbatim = false;
        for (String line : (Iterable<String>) html.lines()::iterator) {
            String shown = verbatim ? line : line.strip();
            if (verbatim || !shown.isEmpty()) {
                kept.append(shown).append('\n');
            }
            verbatim = line.lastIndexOf("<pre") > line.lastIndexOf("</pre>")
                    || verbatim && !line.contains("</pre>");
        }
        return kept.toString();
    }
}
