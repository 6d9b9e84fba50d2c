package org.benchleaf.calculate;

import static org.assertj.core.api.Assertions.assertThat;
import static org.benchleaf.derive.Invented.q;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.derive.Invented;
import org.benchleaf.model.Part;
import org.benchleaf.model.Step;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/** A figure says by a type whose it is and what it is called; its id is for prose and data, and nobody cuts it up. */
class FigureKeyTest {

    private static final Path CLASSES = Path.of("target/classes");
    private static final String CUTTING = "substring|startsWith|endsWith|indexOf|lastIndexOf|split|matches|contains";

    private static Invented bathAt(String step) {
        return new Invented()
                .step(step, new Part.Bath("deionised-water", Optional.of(q("50 mm")), Optional.of(q("30 mm")), 3, true, Optional.empty(),
                List.of(), Optional.empty(), 1, Optional.empty(), List.of(), Optional.empty(), Optional.empty()));
    }

    @Test
    void a_step_called_total_is_a_step_and_fills_no_totals() {
        Map<String, Figure> figures = bathAt("total").derived().worked().figures();
        assertThat(figures.get("total.volume").key().owner()).isEqualTo(FigureKey.Owner.STEP);
        assertThat(figures.get("total.total").key().role()).isEqualTo(FigureKey.Role.AT_HAND);
        assertThat(figures.values()).filteredOn(figure -> figure.key().role() == FigureKey.Role.TOTAL)
                .extracting(figure -> figure.key().of()).containsExactly("deionised-water");
    }

    @Test
    void a_figure_of_a_step_belongs_to_one_that_there_is() {
        Invented invented = bathAt("wash");
        Set<String> steps = new TreeSet<>(invented.treatment().steps().stream().map(Step::id).toList());
        assertThat(invented.derived().worked().figures().values())
                .filteredOn(figure -> figure.key().owner() == FigureKey.Owner.STEP).isNotEmpty()
                .extracting(figure -> figure.key().of()).isSubsetOf(steps);
    }

    /** The names by which case files cite figures; a contract, from the README. */
    @Test
    void ids_are_written_as_prose_cites_them() {
        assertThat(new FigureKey(FigureKey.Owner.STEP, "wash", "volume", "").id()).isEqualTo("wash.volume");
        assertThat(new FigureKey(FigureKey.Owner.STEP, "dry", "total", "bath").id()).isEqualTo("dry.bath-total");
        assertThat(FigureKey.ofResult("pH", "mean-before", "").id()).isEqualTo("results.pH.mean-before");
        assertThat(FigureKey.ofResult("colour", "de2000", "foot-margin").id()).isEqualTo("results.colour.de2000.foot-margin");
        assertThat(FigureKey.ofTotal("ethanol-96", "mass").id()).isEqualTo("total.ethanol-96-mass");
        assertThat(FigureKey.ofTimeline("total").id()).isEqualTo("timeline.total");
    }

    @Test
    void no_method_takes_the_id_of_a_figure_and_cuts_a_text() throws IOException {
        Set<String> cutting = new TreeSet<>();
        Set<String> asking = new TreeSet<>();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            files.filter(file -> file.toString().endsWith(".class")).forEach(file -> read(file, asking, cutting));
        }
        assertThat(asking).isNotEmpty();
        assertThat(cutting).isEmpty();
    }

    private static void read(Path file, Set<String> asking, Set<String> cutting) {
        ClassReader reader;
        try {
            reader = new ClassReader(Files.readAllBytes(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        reader.accept(new ClassVisitor(Opcodes.ASM9) {
            @Override
            public MethodVisitor visitMethod(int access, String method, String descriptor, String signature,
                    String[] exceptions) {
                String name = reader.getClassName() + "." + method;
                return new MethodVisitor(Opcodes.ASM9) {
                    private boolean asks;
                    private boolean cuts;

                    @Override
                    public void visitMethodInsn(int opcode, String owner, String called, String of, boolean isInterface) {
                        asks |= called.equals("id") && owner.matches("org/benchleaf/calculate/Figure(Key)?");
                        cuts |= owner.equals("java/lang/String") && called.matches(CUTTING);
                    }

                    @Override
                    public void visitEnd() {
                        if (asks) {
                            asking.add(name);
                        }
                        if (asks && cuts) {
                            cutting.add(name);
                        }
                    }
                };
            }
        }, 0);
    }
}
