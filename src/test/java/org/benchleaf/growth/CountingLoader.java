package org.benchleaf.growth;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.lang.reflect.Method;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.objectweb.asm.ClassReader;
import org.objectweb.asm.ClassVisitor;
import org.objectweb.asm.ClassWriter;
import org.objectweb.asm.Label;
import org.objectweb.asm.MethodVisitor;
import org.objectweb.asm.Opcodes;
import org.objectweb.asm.Type;

/** Loads the program and the libraries that read and write texts for it so that they count their steps in {@link Work}. */
final class CountingLoader extends ClassLoader {

    private static final List<String> COUNTED = List.of("org.benchleaf.", "com.vladsch.flexmark.", "org.yaml.snakeyaml.",
            "org.jsoup.", "freemarker.", "com.networknt.");
    private static final String WORK = Type.getInternalName(Work.class);
    private static final Set<String> OWNERS = Set.of("java/lang/String", "java/lang/StringBuilder", "java/util/regex/Pattern",
            "java/util/regex/Matcher");
    /** What {@link Work} does in place of the Java library: name and parameters, what is called included. */
    private static final Set<String> REPLACED = Arrays.stream(Work.class.getMethods()).map(CountingLoader::signature)
            .collect(Collectors.toSet());

    CountingLoader() {
        super(CountingLoader.class.getClassLoader());
    }

    private static String signature(Method method) {
        return method.getName() + Type.getMethodDescriptor(method);
    }

    @Override
    protected Class<?> loadClass(String name, boolean resolve) throws ClassNotFoundException {
        boolean own = COUNTED.stream().anyMatch(name::startsWith) && !name.startsWith(Work.class.getName());
        if (!own) {
            return super.loadClass(name, resolve);
        }
        synchronized (getClassLoadingLock(name)) {
            Class<?> known = findLoadedClass(name);
            return known != null ? known : defined(name);
        }
    }

    private Class<?> defined(String name) throws ClassNotFoundException {
        try (InputStream in = getParent().getResourceAsStream(name.replace('.', '/') + ".class")) {
            if (in == null) {
                throw new ClassNotFoundException(name);
            }
            ClassReader reader = new ClassReader(in);
            ClassWriter writer = new ClassWriter(reader, ClassWriter.COMPUTE_MAXS);
            reader.accept(new CountingClass(writer), 0);
            byte[] bytes = writer.toByteArray();
            return defineClass(name, bytes, 0, bytes.length);
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    /** Hands on a class whose methods count. */
    private static final class CountingClass extends ClassVisitor {

        CountingClass(ClassVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public MethodVisitor visitMethod(int access, String name, String descriptor, String generic, String[] thrown) {
            return new CountingMethod(super.visitMethod(access, name, descriptor, generic, thrown));
        }
    }

    /** Hands on a method with a step at its beginning and before each jump. */
    private static final class CountingMethod extends MethodVisitor {

        CountingMethod(MethodVisitor next) {
            super(Opcodes.ASM9, next);
        }

        @Override
        public void visitCode() {
            super.visitCode();
            step();
        }

        @Override
        public void visitJumpInsn(int opcode, Label label) {
            step();
            super.visitJumpInsn(opcode, label);
        }

        @Override
        public void visitMethodInsn(int opcode, String owner, String name, String descriptor, boolean isInterface) {
            String instead = "(L" + owner + ";" + descriptor.substring(1);
            if (opcode == Opcodes.INVOKEVIRTUAL && OWNERS.contains(owner) && REPLACED.contains(name + instead)) {
                super.visitMethodInsn(Opcodes.INVOKESTATIC, WORK, name, instead, false);
            } else {
                super.visitMethodInsn(opcode, owner, name, descriptor, isInterface);
            }
        }

        private void step() {
            super.visitMethodInsn(Opcodes.INVOKESTATIC, WORK, "step", "()V", false);
        }
    }
}
