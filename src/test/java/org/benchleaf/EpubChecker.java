package org.benchleaf;

import java.io.File;
import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

/** Asks EPUBCheck, the W3C's checker of EPUB 3.3, with classes of its own beside those of the checker of pages. */
public final class EpubChecker {

    private static final Path LIBRARIES = Path.of("target", "epubcheck");
    private static final ClassLoader OWN = loader();

    private EpubChecker() {
    }

    /**
     * What it counted and said of a book.
     *
     * @param fatal errors after which it read no further
     * @param errors what the standard forbids
     * @param warnings what it advises against
     * @param usage remarks on the use of features
     * @param said its messages
     */
    public record Verdict(int fatal, int errors, int warnings, int usage, String said) {

        /** Whether it found nothing at all. */
        public boolean isSound() {
            return fatal + errors + warnings + usage == 0;
        }
    }

    private static ClassLoader loader() {
        try (Stream<Path> jars = Files.list(LIBRARIES)) {
            List<URL> places = new ArrayList<>();
            for (Path jar : jars.sorted().toList()) {
                places.add(jar.toUri().toURL());
            }
            return new URLClassLoader(places.toArray(URL[]::new), ClassLoader.getPlatformClassLoader());
        } catch (IOException missing) {
            throw new UncheckedIOException("the build puts the checker into " + LIBRARIES, missing);
        }
    }

    /** What it tells of a book. */
    public static Verdict of(Path book) {
        ClassLoader before = Thread.currentThread().getContextClassLoader();
        Thread.currentThread().setContextClassLoader(OWN);
        try {
            StringWriter said = new StringWriter();
            Class<?> kind = OWN.loadClass("com.adobe.epubcheck.util.WriterReportImpl");
            Object report = kind.getConstructor(PrintWriter.class, String.class, boolean.class)
                    .newInstance(new PrintWriter(said, true), "", true);
            Class<?> checker = OWN.loadClass("com.adobe.epubcheck.api.EpubCheck");
            checker.getMethod("doValidate").invoke(checker.getConstructor(File.class,
                    OWN.loadClass("com.adobe.epubcheck.api.Report")).newInstance(book.toFile(), report));
            return new Verdict(count(report, "FatalError"), count(report, "Error"), count(report, "Warning"),
                    count(report, "Usage"), said.toString());
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("the checker of books cannot be asked", broken);
        } finally {
            Thread.currentThread().setContextClassLoader(before);
        }
    }

    private static int count(Object report, String severity) throws ReflectiveOperationException {
        return (int) report.getClass().getMethod("get" + severity + "Count").invoke(report);
    }
}
