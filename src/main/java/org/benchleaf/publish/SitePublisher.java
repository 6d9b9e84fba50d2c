package org.benchleaf.publish;

import freemarker.cache.StringTemplateLoader;
import freemarker.cache.StrongCacheStorage;
import freemarker.core.Environment;
import freemarker.core.ParseException;
import freemarker.core.TemplateClassResolver;
import freemarker.core._CoreAPI;
import freemarker.ext.util.WrapperTemplateModel;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import freemarker.template.TemplateExceptionHandler;
import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import freemarker.template.TemplateNotFoundException;
import freemarker.template.Version;
import java.io.IOException;
import java.lang.reflect.RecordComponent;
import java.nio.file.Path;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.benchleaf.message.EditionMessages;
import org.benchleaf.page.Block;
import org.benchleaf.page.DataFile;
import org.benchleaf.page.Markup;
import org.benchleaf.page.Page;
import org.benchleaf.page.SingleSheet;

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
    private static final int LONGEST_PROBLEM = 200;

    private final TemplateFolder templates;
    private final Configuration configuration;
    private final Pictures pictures;
    private final TakenFiles taken;

    private SitePublisher(TemplateFolder templates, Pictures pictures) {
        this.templates = templates;
        this.pictures = pictures;
        this.taken = TakenFiles.none();
        this.configuration = configure(templates);
    }

    /**
     * A publisher with the templates of a folder.
     *
     * @param pictures tells which files were made of each picture
     * @throws TemplateStop if a file of the folder cannot be used
     */
    public static SitePublisher with(Path templateFolder, Pictures pictures) {
        return new SitePublisher(TemplateFolder.at(templateFolder), pictures);
    }

    /** A publisher with the program's own templates. */
    public static SitePublisher withOwnTemplates(Pictures pictures) {
        return Own.PUBLISHER.with(pictures);
    }

    /** The program's own templates never change while it runs, so they are read and prepared once. */
    private static final class Own {

        static final SitePublisher PUBLISHER = new SitePublisher(TemplateFolder.packed(), Pictures.none());
    }

    /** The same templates with other pictures, such as those of the next case. */
    public SitePublisher with(Pictures others) {
        return new SitePublisher(templates, configuration, others, taken);
    }

    /** The same templates and pictures, with files that can be taken away. */
    public SitePublisher with(TakenFiles others) {
        return new SitePublisher(templates, configuration, pictures, others);
    }

    private SitePublisher(TemplateFolder templates, Configuration configuration, Pictures pictures, TakenFiles taken) {
        this.templates = templates;
        this.configuration = configuration;
        this.pictures = pictures;
        this.taken = taken;
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
        configuration.setOutputFormat(PageFormat.OF_PAGES);
        configuration.setAutoEscapingPolicy(Configuration.ENABLE_IF_SUPPORTED_AUTO_ESCAPING_POLICY);
        configuration.setObjectWrapper(new PageWrapper(BEHAVIOUR));
        configuration.setTemplateExceptionHandler(TemplateExceptionHandler.RETHROW_HANDLER);
        configuration.setLogTemplateExceptions(false);
        configuration.setLocalizedLookup(false);
        // Templates may come from others: they make text of what they are given, and reach nothing else.
        configuration.setNewBuiltinClassResolver(TemplateClassResolver.ALLOWS_NOTHING_RESOLVER);
        configuration.setAPIBuiltinEnabled(false);
        // Columns are told as an editor counts them.
        configuration.setTabSize(1);
        configuration.setTemplateUpdateDelayMilliseconds(Long.MAX_VALUE);
        configuration.setLocale(Locale.ROOT);
        // Numbers come finished; what is left are coordinates and sizes, which must not follow a locale.
        configuration.setNumberFormat("c");
        countLoops(configuration, templates);
        return configuration;
    }

    /** Gives each turn of a loop a step of its own, so that a loop around nothing is counted too. */
    private static void countLoops(Configuration configuration, TemplateFolder templates) {
        // Templates stay as they are prepared here.
        configuration.setCacheStorage(new StrongCacheStorage());
        templates.texts().keySet().stream().filter(name -> name.endsWith(".ftl")).forEach(name -> {
            try {
                _CoreAPI.addThreadInterruptedChecks(configuration.getTemplate(name));
            } catch (IOException slip) {
                forget(configuration, name);
            }
        });
    }

    /** A slip is told when a page is made with the template; kept, it would come back without its place. */
    private static void forget(Configuration configuration, String name) {
        try {
            configuration.removeTemplateFromCache(name);
        } catch (IOException impossible) {
            throw new IllegalStateException("the templates are in memory", impossible);
        }
    }

    /**
     * The HTML file of a page.
     *
     * @throws TemplateStop if a template is wrong
     */
    public SiteFile publish(Page page) {
        Map<String, Object> model = showing();
        model.put("page", page);
        return SiteFile.text(page.path(), filled("page.ftl", model, page.path()));
    }

    /**
     * The text of a page that needs no other file.
     *
     * @throws TemplateStop if a template is wrong
     */
    public String publish(SingleSheet sheet) {
        Map<String, Object> model = showing();
        model.put("sheet", sheet);
        model.put("style", new Markup("<style>\n" + Assets.styles(templates) + "</style>"));
        return filled("single.ftl", model, sheet.title());
    }

    /** What every template may ask for: how a block is shown, and the files made of a picture. */
    private Map<String, Object> showing() {
        Map<String, Object> model = new LinkedHashMap<>();
        model.put("parts", (TemplateMethodModelEx) arguments -> parts(block(arguments)));
        model.put("macroOf", (TemplateMethodModelEx) arguments -> macro(block(arguments)));
        model.put("renditions", (TemplateMethodModelEx) arguments -> renditions(arguments));
        model.put("takenOf", (TemplateMethodModelEx) arguments -> taken.of(arguments.get(0).toString()).stream().toList());
        return model;
    }

    private String filled(String name, Map<String, Object> model, String page) {
        try {
            Template template = configuration.getTemplate(name);
            PageText html = new PageText();
            Environment making = template.createProcessingEnvironment(model, html);
            making.setTemplateProcessingTracer(new PageSteps());
            making.process();
            return html.whole();
        } catch (ParseException slip) {
            throw slip(page, slip.getTemplateName(), slip.getLineNumber(), slip.getColumnNumber(), slip.getEditorMessage());
        } catch (TemplateException slip) {
            if (slip.getCause() instanceof ParseException inner) {
                throw slip(page, inner.getTemplateName(), inner.getLineNumber(), inner.getColumnNumber(), inner.getEditorMessage());
            }
            throw slip(page, slip.getTemplateSourceName(), orZero(slip.getLineNumber()), orZero(slip.getColumnNumber()),
                    slip.getMessageWithoutStackTop());
        } catch (TemplateNotFoundException missing) {
            throw slip(page, missing.getTemplateName(), 0, 0, "There is no such template.");
        } catch (IOException tooMuch) {
            throw slip(page, name, 0, 0, String.valueOf(tooMuch.getMessage()));
        } catch (PageSteps.TooMany endless) {
            throw slip(page, endless.template(), endless.line(), endless.column(), endless.getMessage());
        } catch (StackOverflowError endless) {
            throw slip(page, name, 0, 0, "A macro calls itself without end.");
        }
    }

    private TemplateStop slip(String page, String template, int line, int column, String problem) {
        return new TemplateStop(EditionMessages.TEMPLATE_SLIP.at(
                templates.place(template == null ? "page.ftl" : template, line, column),
                "page", page, "problem", firstSentence(String.valueOf(problem))));
    }

    private static int orZero(Integer number) {
        return number == null ? 0 : number;
    }

    /** The engine explains at length; its first line says what is wrong. */
    private static String firstSentence(String problem) {
        String line = problem.lines().map(String::strip).filter(each -> !each.isEmpty()).findFirst().orElse("it failed");
        String shown = line.length() > LONGEST_PROBLEM ? line.substring(0, LONGEST_PROBLEM) + "…" : line;
        return shown.replaceAll("(?<![.:])[.:]++$", "");
    }

    private static Block block(List<?> arguments) throws TemplateModelException {
        if (arguments.size() == 1 && arguments.get(0) instanceof WrapperTemplateModel model
                && model.getWrappedObject() instanceof Block block) {
            return block;
        }
        throw new TemplateModelException("a block of the page is expected in the brackets");
    }

    private List<Rendition> renditions(List<?> arguments) throws TemplateModelException {
        if (arguments.size() != 2) {
            throw new TemplateModelException("renditions(case, picture) needs both");
        }
        return pictures.of(arguments.get(0).toString(), arguments.get(1).toString());
    }

    /** A data file as it is written. */
    public SiteFile publish(DataFile file) {
        return SiteFile.text(file.path(), file.text());
    }

    /** The files that all pages share: the style and the scripts. */
    public List<SiteFile> assets() {
        return Assets.of(templates);
    }

    /** The fonts that a site brings along, the program's own. */
    public List<SiteFile> fonts() {
        return Assets.fonts();
    }

    /** The script with the calculations, which is the program's own and holds nothing of the content. */
    public SiteFile calculations() {
        return Assets.calculations();
    }

    /** What keeps the site on a device, at the site's root, since it has power over what lies beside and below it alone. */
    public SiteFile worker() {
        return SiteFile.text("sw.js", templates.text("worker/sw.js"));
    }

    /** The styles of what is taken away. */
    public TakenStyles takenStyles() {
        return new TakenStyles(templates.text("book/book.css"), templates.text("paper/sheet.css"), templates.text("paper/drawing.css"));
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
}
