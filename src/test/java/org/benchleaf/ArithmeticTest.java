package org.benchleaf;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.benchleaf.quantity.Quantity;
import org.benchleaf.quantity.Unit;
import org.junit.jupiter.api.Test;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.Handle;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;

/**
 * Only {@code science} and the calculations work sums on quantities: no other method takes a number out of a quantity, or
 * makes a quantity, and adds, multiplies or divides. Read from the compiled classes.
 */
class ArithmeticTest {

    private static final Path CLASSES = Path.of("target/classes");
    private static final String QUANTITY = "org/benchleaf/quantity/Quantity";
    private static final List<String> FREE = List.of("org/benchleaf/science/", "org/benchleaf/quantity/");

    /** The classes that may, and why; one that no longer does is taken out of here. */
    private static final Map<String, List<String>> MAY = Map.of(
            "part of how a calculation is done: ends carried through, a range held against its ends, values compared",
            List.of("calculate/Propagation", "calculate/InputReading", "calculate/CheckedValues"),
            "shares of a mixture, counted as the regulation on classification says, and told as hazards and not as figures",
            List.of("derive/hazard/AccessTable", "derive/figure/AmountConversion", "derive/hazard/BottleLine", "derive/hazard/BottleShares",
                    "derive/hazard/BoughtMaterials", "derive/hazard/Compositions", "derive/hazard/FlammableLiquids",
                    "derive/hazard/HazardAssessor", "derive/hazard/MixturePart",
                    "derive/hazard/MixturePh"),
            "times laid along a clock with all three of their ends",
            List.of("derive/time/StepTime", "derive/time/ShelfLife"),
            "a question of a rule, whose package sees no formulas",
            List.of("check/MixForm", "rule/ConditionAnswers", "rule/Contact", "rule/FieldReader",
                    "rule/Liquids", "rule/MeasuringAnswers"),
            "rounding for the page, a sign, a place in a drawing",
            List.of("compose/cases/BenchStepMaker", "compose/cases/ConditionMapMaker", "calculate/Digits",
                    "compose/cases/ResultMeaning", "compose/chart/TimelineChart"));

    /** One method as it is read. */
    private static final class Sums extends MethodVisitor {

        private final Runnable found;
        private boolean worksSums;
        private boolean knowsQuantities;

        Sums(Runnable found) {
            super(Opcodes.ASM9);
            this.found = found;
        }

        @Override
        public void visitInsn(int opcode) {
            worksSums |= Set.of(Opcodes.DADD, Opcodes.DSUB, Opcodes.DMUL, Opcodes.DDIV, Opcodes.DREM, Opcodes.DNEG)
                    .contains(opcode);
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            boolean makes = opcode == Opcodes.INVOKESTATIC && descriptor.endsWith(")L" + QUANTITY + ";")
                    || name.equals("<init>");
            knowsQuantities |= owner.equals(QUANTITY) && (makes || descriptor.endsWith(")D"));
        }

        @Override
        public void visitInvokeDynamicInsn(String name, String descriptor, Handle bootstrap, Object... arguments) {
            for (Object argument : arguments) {
                knowsQuantities |= argument instanceof Handle handle && handle.getOwner().equals(QUANTITY)
                        && handle.getDesc().endsWith(")D");
            }
        }

        @Override
        public void visitEnd() {
            if (worksSums && knowsQuantities) {
                found.run();
            }
        }
    }

    /** The outermost classes in which a sum is worked on quantities, each with its methods. */
    private static Map<String, Set<String>> sums(Stream<byte[]> classes) {
        Map<String, Set<String>> sums = new TreeMap<>();
        classes.forEach(bytes -> {
            ClassReader reader = new ClassReader(bytes);
            String name = reader.getClassName().replaceAll("\\$.*", "");
            reader.accept(new ClassVisitor(Opcodes.ASM9) {
                @Override
                public MethodVisitor visitMethod(int access, String method, String descriptor, String signature,
                        String[] exceptions) {
                    return new Sums(() -> sums.computeIfAbsent(name, none -> new TreeSet<>()).add(method));
                }
            }, 0);
        });
        return sums;
    }

    private static Stream<byte[]> classes() throws IOException {
        try (Stream<Path> files = Files.walk(CLASSES)) {
            return files.filter(file -> file.toString().endsWith(".class")).filter(file -> FREE.stream().noneMatch(
                    CLASSES.relativize(file).toString().replace('\\', '/')::startsWith)).map(ArithmeticTest::bytes).toList()
                    .stream();
        }
    }

    private static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
    }

    @Test
    void sums_on_quantities_are_worked_in_formulas_and_calculations_alone() throws IOException {
        Map<String, Set<String>> sums = sums(classes());
        Set<String> may = new TreeSet<>();
        MAY.values().forEach(names -> names.forEach(name -> may.add("org/benchleaf/" + name)));
        assertThat(sums.entrySet().stream().filter(each -> !may.contains(each.getKey())))
                .as("move the sum into science, and make it a calculation").isEmpty();
        assertThat(sums.keySet()).as("these need no leave any more").containsAll(may);
    }

    /** What the test must see. */
    private static final class Planted {

        private Planted() {
        }

        static Quantity area(Quantity height, Quantity width) {
            return Quantity.of(height.in(Unit.METRE) * width.in(Unit.METRE), Unit.SQUARE_METRE);
        }
    }

    @Test
    void a_sum_elsewhere_would_be_seen() throws IOException {
        assertThat(Planted.area(Quantity.of(2, Unit.METRE), Quantity.of(3, Unit.METRE)).value()).isEqualTo(6);
        try (InputStream own = ArithmeticTest.class.getResourceAsStream("ArithmeticTest$Planted.class")) {
            assertThat(sums(Stream.of(own.readAllBytes())).values()).containsExactly(Set.of("area"));
        }
    }
}
