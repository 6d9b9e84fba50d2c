package org.benchleaf;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Field;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.Handle;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;
import org.objectweb.asm.tree.AbstractInsnNode;
import org.objectweb.asm.tree.ClassNode;
import org.objectweb.asm.tree.InsnNode;
import org.objectweb.asm.tree.IntInsnNode;
import org.objectweb.asm.tree.InvokeDynamicInsnNode;
import org.objectweb.asm.tree.LdcInsnNode;
import org.objectweb.asm.tree.MethodInsnNode;
import org.objectweb.asm.tree.MethodNode;
import org.objectweb.asm.tree.analysis.Analyzer;
import org.objectweb.asm.tree.analysis.AnalyzerException;
import org.objectweb.asm.tree.analysis.Frame;
import org.objectweb.asm.tree.analysis.SourceInterpreter;
import org.objectweb.asm.tree.analysis.SourceValue;

/** Every regular expression of the program: in static fields, at calls in the compiled classes, and in the schemas. */
final class PatternFinder {

    /** How a pattern meets a text: as a whole, at any place in it, or, where that is not known, either way. */
    enum Use { WHOLE, ANY_PLACE, BOTH }

    record Found(String where, Pattern pattern, Use use) {

        @Override
        public String toString() {
            return where + " " + pattern;
        }
    }

    private static final Path CLASSES = Path.of("target/classes");
    private static final Set<String> OF_STRING = Set.of("matches", "replaceAll", "replaceFirst", "split");
    private static final Set<String> OF_PATTERN = Set.of("compile", "matches");

    private final List<Found> found = new ArrayList<>();
    private final List<String> computed = new ArrayList<>();

    private PatternFinder() {
    }

    static PatternFinder look() {
        PatternFinder finder = new PatternFinder();
        try (Stream<Path> files = Files.walk(CLASSES)) {
            for (Path file : files.filter(each -> each.toString().endsWith(".class")).sorted().toList()) {
                finder.readClass(file);
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
        finder.readSchemas();
        return finder;
    }

    List<Found> found() {
        return found;
    }

    /** Returns the methods that make a pattern of what only a run knows. */
    List<String> computed() {
        return computed.stream().distinct().toList();
    }

    private void readClass(Path file) throws IOException {
        ClassNode node = new ClassNode();
        try (InputStream in = Files.newInputStream(file)) {
            new ClassReader(in).accept(node, ClassReader.SKIP_DEBUG | ClassReader.SKIP_FRAMES);
        }
        node.fields.stream().filter(field -> field.desc.equals("Ljava/util/regex/Pattern;"))
                .filter(field -> (field.access & Opcodes.ACC_STATIC) != 0)
                .forEach(field -> add(new Found(name(node) + "." + field.name, value(name(node), field.name), Use.BOTH)));
        for (MethodNode method : node.methods) {
            readMethod(node, method);
        }
    }

    private void readMethod(ClassNode owner, MethodNode method) {
        Frame<SourceValue>[] frames;
        try {
            frames = new Analyzer<>(new SourceInterpreter()).analyze(owner.name, method);
        } catch (AnalyzerException impossible) {
            throw new IllegalStateException(owner.name + "." + method.name, impossible);
        }
        String where = name(owner) + "." + method.name;
        for (int at = 0; at < method.instructions.size(); at++) {
            AbstractInsnNode each = method.instructions.get(at);
            if (each instanceof MethodInsnNode call && takesPattern(call.owner, call.name) && frames[at] != null) {
                readCall(where, call, frames[at]);
            } else if (each instanceof InvokeDynamicInsnNode call && refersToPattern(call)) {
                computed.add(where);
            }
        }
    }

    /** Keeps the first of patterns that are the same and are used in the same way. */
    private void add(Found each) {
        if (found.stream().noneMatch(other -> other.use() == each.use() && other.pattern().flags() == each.pattern().flags()
                && other.pattern().pattern().equals(each.pattern().pattern()))) {
            found.add(each);
        }
    }

    private static boolean takesPattern(String owner, String name) {
        return owner.equals("java/lang/String") && OF_STRING.contains(name)
                || owner.equals("java/util/regex/Pattern") && OF_PATTERN.contains(name);
    }

    private static boolean refersToPattern(InvokeDynamicInsnNode call) {
        return Arrays.stream(call.bsmArgs).anyMatch(argument -> argument instanceof Handle handle
                && takesPattern(handle.getOwner(), handle.getName()) && handle.getDesc().startsWith("(Ljava/lang/String;"));
    }

    private void readCall(String where, MethodInsnNode call, Frame<SourceValue> frame) {
        int arguments = Type.getArgumentTypes(call.desc).length;
        SourceValue pattern = frame.getStack(frame.getStackSize() - arguments);
        boolean literal = pattern.insns.stream().allMatch(each -> each instanceof LdcInsnNode) && !pattern.insns.isEmpty();
        if (!literal) {
            computed.add(where);
            return;
        }
        boolean flagged = call.name.equals("compile") && arguments == 2;
        int flags = flagged ? number(frame.getStack(frame.getStackSize() - 1), where) : 0;
        Use use = call.name.equals("matches") ? Use.WHOLE : call.name.equals("compile") ? Use.BOTH : Use.ANY_PLACE;
        pattern.insns.forEach(each -> add(new Found(where, Pattern.compile((String) ((LdcInsnNode) each).cst, flags), use)));
    }

    private static int number(SourceValue value, String where) {
        AbstractInsnNode one = value.insns.iterator().next();
        if (one instanceof IntInsnNode pushed) {
            return pushed.operand;
        }
        if (one instanceof InsnNode && one.getOpcode() >= Opcodes.ICONST_0 && one.getOpcode() <= Opcodes.ICONST_5) {
            return one.getOpcode() - Opcodes.ICONST_0;
        }
        throw new IllegalStateException("flags of a pattern that are no constant: " + where);
    }

    private void readSchemas() {
        try (Stream<Path> files = Files.walk(CLASSES.resolve("schema"))) {
            for (Path file : files.filter(each -> each.toString().endsWith(".json")).sorted().toList()) {
                JsonNode schema = new ObjectMapper().readTree(file.toFile());
                schema.findValues("pattern").stream().filter(JsonNode::isTextual).map(JsonNode::asText).distinct()
                        .forEach(each -> add(new Found(file.getFileName().toString(), Pattern.compile(each), Use.BOTH)));
                if (!schema.findValues("patternProperties").isEmpty()) {
                    computed.add(file.getFileName() + " patternProperties");
                }
            }
        } catch (IOException impossible) {
            throw new UncheckedIOException(impossible);
        }
    }

    private static String name(ClassNode node) {
        return node.name.replace('/', '.');
    }

    private static Pattern value(String owner, String name) {
        try {
            Field field = Class.forName(owner).getDeclaredField(name);
            field.setAccessible(true);
            return (Pattern) field.get(null);
        } catch (ReflectiveOperationException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
