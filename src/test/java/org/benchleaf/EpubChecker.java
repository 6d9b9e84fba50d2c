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

    /** What it tells of a book, from remarks on usage to fatal errors; nothing of one that is sound. */
    public static List<String> told(Path book) {
        ClassLoader before = Thread.currentThread().getContextClassLoader();
        Thread.currentThread().setContextClassLoader(OWN);
        try {
            StringWriter said = new StringWriter();
            Class<?> checker = OWN.loadClass("com.adobe.epubcheck.api.EpubCheck");
            Object check = checker.getConstructor(File.class, PrintWriter.class).newInstance(book.toFile(), new PrintWriter(said, true));
            int result = (int) checker.getMethod("doValidate").invoke(check);
            List<String> told = said.toString().lines().filter(line -> line.matches("(FATAL|ERROR|WARNING|USAGE).*")).toList();
            if (result != 0 && told.isEmpty()) {
                throw new IllegalStateException("the checker ended with " + result + " and said: " + said);
            }
            return told;
        } catch (ReflectiveOperationException broken) {
            throw new IllegalStateException("the checker of books cannot be asked", broken);
        } finally {
            Thread.currentThread().setContextClassLoader(before);
        }
    }
}
