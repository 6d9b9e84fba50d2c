package org.benchleaf.benchmark;

import com.vladsch.flexmark.ext.attributes.AttributesExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.data.MutableDataSet;
import freemarker.cache.StringTemplateLoader;
import freemarker.core.HTMLOutputFormat;
import freemarker.template.Configuration;
import freemarker.template.Template;
import freemarker.template.TemplateException;
import java.io.IOException;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;

/**
 * The floor to compare with: reads the same files, gives YAML, Markdown and template the least that they can do, and
 * writes as many files of the same sizes. With {@code bytes} instead of {@code bare} it only reads and writes.
 */
public final class BareLoop {

    private static final String TEMPLATE = """
            <!doctype html><html lang="en"><head><meta charset="utf-8"><title>${title}</title></head><body>
            <h1>${title}</h1>
            <#list 1..rounds as round>
            <#list front as key, value><section><h2>${key}</h2><p class="value">${value}</p></section>
            </#list></#list>
            ${story?no_esc}
            </body></html>
            """;

    private final boolean bytesOnly;
    private final Path content;
    private final Path out;
    private final int[] sizes;

    private BareLoop(boolean bytesOnly, Path content, Path out, int[] sizes) {
        this.bytesOnly = bytesOnly;
        this.content = content;
        this.out = out;
        this.sizes = sizes;
    }

    /** Takes {@code bytes} or {@code bare}, the content, the output folder, the threads, and the sizes of a case's files. */
    public static void main(String[] arguments) throws Exception {
        int[] sizes = Stream.of(arguments).skip(4).mapToInt(Integer::parseInt).toArray();
        new BareLoop(arguments[0].equals("bytes"), Path.of(arguments[1]), Path.of(arguments[2]), sizes)
                .run(Integer.parseInt(arguments[3]));
    }

    private void run(int threads) throws Exception {
        List<Path> cases;
        try (Stream<Path> folders = Files.list(content.resolve("cases"))) {
            cases = folders.sorted().toList();
        }
        AtomicInteger next = new AtomicInteger();
        ExecutorService pool = Executors.newFixedThreadPool(threads);
        List<Future<?>> workers = Stream.generate(() -> pool.submit(() -> {
            One one = new One();
            for (int at = next.getAndIncrement(); at < cases.size(); at = next.getAndIncrement()) {
                one.work(cases.get(at));
            }
            return null;
        })).limit(threads).<Future<?>>map(future -> future).toList();
        for (Future<?> worker : workers) {
            worker.get();
        }
        pool.shutdown();
    }

    /** One thread's tools. */
    private final class One {

        private final Yaml yaml = new Yaml(new SafeConstructor(new LoaderOptions()));
        private final MutableDataSet options = new MutableDataSet().set(Parser.EXTENSIONS,
                List.of(TablesExtension.create(), AttributesExtension.create()));
        private final Parser markdown = Parser.builder(options).build();
        private final HtmlRenderer html = HtmlRenderer.builder(options).build();
        private final Template template;

        One() throws IOException {
            StringTemplateLoader loader = new StringTemplateLoader();
            loader.putTemplate("page", TEMPLATE);
            Configuration configuration = new Configuration(Configuration.VERSION_2_3_34);
            configuration.setTemplateLoader(loader);
            configuration.setOutputFormat(HTMLOutputFormat.INSTANCE);
            template = configuration.getTemplate("page");
        }

        void work(Path folder) throws IOException, TemplateException {
            byte[] read = Files.readAllBytes(folder.resolve("case.md"));
            Path into = Files.createDirectories(out.resolve(folder.getFileName().toString()));
            if (bytesOnly) {
                for (int file = 0; file < sizes.length; file++) {
                    byte[] bytes = new byte[sizes[file]];
                    System.arraycopy(read, 0, bytes, 0, Math.min(bytes.length, read.length));
                    Files.write(into.resolve(file + ".html"), bytes);
                }
                return;
            }
            String text = new String(read, StandardCharsets.UTF_8);
            int end = text.indexOf("\n---\n", 4);
            Map<String, Object> front = yaml.load(text.substring(4, end));
            String story = html.render(markdown.parse(text.substring(end + 5)));
            front.replaceAll((key, value) -> value.toString());
            for (int file = 0; file < sizes.length; file++) {
                Files.write(into.resolve(file + ".html"), page(front, file == 0 ? story : "", sizes[file]));
            }
        }

        private byte[] page(Map<String, Object> front, String story, int size) throws IOException, TemplateException {
            int once = front.values().stream().mapToInt(value -> value.toString().length() + 60).sum();
            int rounds = Math.max(1, (size - story.length()) / once);
            StringWriter page = new StringWriter();
            template.process(Map.of("title", front.get("title"), "front", front, "story", story, "rounds", rounds), page);
            return java.util.Arrays.copyOf(page.toString().getBytes(StandardCharsets.UTF_8), size);
        }
    }
}
