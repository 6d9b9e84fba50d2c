package org.benchleaf.browser;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** Programs of this machine. */
final class Programs {

    private static final List<Path> USUAL_PLACES = List.of(Path.of("/usr/bin"), Path.of("/usr/lib/chromium"),
            Path.of("/usr/local/bin"), Path.of("/snap/bin"));
    private static final long MINUTES_TO_INSTALL = 8;

    private Programs() {
    }

    /** The first program of one of these names, on the path or where Debian puts it. */
    static Optional<Path> found(List<String> names) {
        Stream<Path> path = Stream.of(Optional.ofNullable(System.getenv("PATH")).orElse("").split(File.pathSeparator))
                .filter(folder -> !folder.isEmpty()).map(Path::of);
        return Stream.concat(path, USUAL_PLACES.stream())
                .flatMap(folder -> names.stream().map(folder::resolve)).filter(Files::isExecutable).findFirst();
    }

    /** Installs packages on a Debian machine that lets us, one after another; elsewhere, or if that fails, does nothing. */
    static synchronized void installOnDebian(String... packages) {
        if (Files.isExecutable(Path.of("/usr/bin/apt-get")) && "root".equals(System.getProperty("user.name"))
                && ran("apt-get", "-qq", "update")) {
            ran(Stream.concat(Stream.of("apt-get", "-qq", "-y", "--no-install-recommends", "install", "-o", "DPkg::Lock::Timeout=300"),
                    Stream.of(packages))
                    .toArray(String[]::new));
        }
    }

    private static boolean ran(String... command) {
        try {
            ProcessBuilder builder = new ProcessBuilder(command).inheritIO();
            builder.environment().put("DEBIAN_FRONTEND", "noninteractive");
            Process process = builder.start();
            boolean ended = process.waitFor(MINUTES_TO_INSTALL, TimeUnit.MINUTES);
            process.destroy();
            return ended && process.exitValue() == 0;
        } catch (IOException broken) {
            return false;
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while installing " + String.join(" ", command), stopped);
        }
    }
}
