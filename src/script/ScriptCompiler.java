import java.io.File;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import javax.tools.ToolProvider;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/** Compiles the calculations to the script that pages load. Run by the build, from source. */
final class ScriptCompiler {

    private ScriptCompiler() {
    }

    /**
     * Takes the folder of compiled classes, the source of the class that stands in the place of another in the script, and the
     * file to write; ends with 1 and says why if it can't.
     */
    public static void main(String[] args) throws Exception {
        File target = new File(args[2]);
        TeaVMTool compiler = new TeaVMTool();
        compiler.setClassPath(Stream.concat(Stream.of(compiled(args[1], Path.of(args[0]).resolveSibling("script-classes")), args[0]),
                Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))).map(File::new).toList());
        compiler.setMainClass("org.benchleaf.script.PageCalculator");
        compiler.setEntryPointName("main");
        compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
        compiler.setJsModuleType(JSModuleType.COMMON_JS);
        compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        compiler.setObfuscated(true);
        compiler.setStrict(false);
        compiler.setTargetDirectory(target.getParentFile());
        compiler.setTargetFileName(target.getName());
        compiler.generate();
        List<Problem> problems = compiler.getProblemProvider().getSevereProblems();
        problems.forEach(problem -> System.err.println(problem.getText() + " " + List.of(problem.getParams())
                + (problem.getLocation() == null ? "" : " in " + problem.getLocation().getMethod())));
        if (problems.isEmpty()) {
            // A line end behind or before one of these signs, or before what is declared after a block, parts nothing, and there are
            // hundreds that each phone would fetch.
            Path script = target.toPath();
            Files.writeString(script, Files.readString(script).replaceAll("([;,{(\\[])\n", "$1").replaceAll("\n(?=[=(])", "")
                    .replaceAll("\\}\n(?=let |function )", "}"));
        }
        System.exit(problems.isEmpty() ? 0 : 1);
    }

    /** Compiles a source into a folder; what lies there goes before the program's own class of the same name. */
    private static String compiled(String source, Path folder) throws Exception {
        Files.createDirectories(folder);
        if (ToolProvider.getSystemJavaCompiler().run(null, null, null, "-d", folder.toString(), "-cp",
                System.getProperty("java.class.path"), source) != 0) {
            System.exit(1);
        }
        return folder.toString();
    }
}
