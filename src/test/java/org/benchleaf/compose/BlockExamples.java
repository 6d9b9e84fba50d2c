package org.benchleaf.compose;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import java.lang.reflect.Constructor;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import org.benchleaf.page.Block;
import org.benchleaf.page.Frame;
import org.benchleaf.page.Link;
import org.benchleaf.page.Page;
import org.benchleaf.page.Paths;
import org.benchleaf.words.Words;

/** Finds every kind of block and the example that bears its name: {@code <Block>Example} in this package. */
public final class BlockExamples {

    private BlockExamples() {
    }

    /** The record classes that are blocks, in order of their names. */
    public static List<Class<?>> kinds() {
        return new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages("org.benchleaf.page").stream()
                .filter(type -> type.isAssignableTo(Block.class) && !type.isInterface())
                .sorted(java.util.Comparator.comparing(JavaClass::getName))
                .<Class<?>>map(JavaClass::reflect).toList();
    }

    /** The example of a kind of block; fails if there is none. */
    public static Block of(Class<?> kind) throws ReflectiveOperationException {
        Constructor<?> maker = Class.forName(BlockExamples.class.getPackageName() + "." + kind.getSimpleName() + "Example")
                .getDeclaredConstructor();
        maker.setAccessible(true);
        return (Block) ((Supplier<?>) maker.newInstance()).get();
    }

    /** A page that holds those blocks below a heading. */
    public static Page page(String path, List<Block> blocks) {
        Frame frame = new Frame("Tarn Quay Paper Studio", "Example - Tarn Quay Paper Studio", "ltr", Paths.up(path),
                List.of(new Link("Cases", "index.html", false)), List.of(), List.of(new Link("Cases", "index.html", false)),
                List.of(), Optional.empty(), Optional.empty(), List.of(), "Ask a paper conservator.", Optional.empty(),
                Optional.of(new Frame.Retold("Retold by a learner from:", Link.to("A book", "sources.html#source-a"), "In other words.")),
                Optional.empty(),
                Map.copyOf(Words.in("en").group("frame")), Optional.empty(), false);
        return new Page(path, "example", "Example", "An example of a part of a page.", "en", Optional.empty(), frame,
                blocks, List.of("disclosure.js"), List.of());
    }
}
