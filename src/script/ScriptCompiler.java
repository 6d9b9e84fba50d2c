import java.io.File;
import java.util.List;
import java.util.stream.Stream;
import org.teavm.backend.javascript.JSModuleType;
import org.teavm.diagnostics.Problem;
import org.teavm.tooling.TeaVMTargetType;
import org.teavm.tooling.TeaVMTool;
import org.teavm.vm.TeaVMOptimizationLevel;

/** Compiles the calculations to the script that pages load. Run by the build, from source. */
final class ScriptCompiler {

    private ScriptCompiler() {
    }

    /** Takes the folder of compiled classes and the file to write; ends with 1 and says why if it can't. */
    public static void main(String[] args) throws Exception {
        File target = new File(args[1]);
        TeaVMTool compiler = new TeaVMTool();
        compiler.setClassPath(Stream.concat(Stream.of(args[0]),
                Stream.of(System.getProperty("java.class.path").split(File.pathSeparator))).map(File::new).toList());
        compiler.setMainClass("org.benchleaf.script.PageCalculator");
        compiler.setEntryPointName("main");
        compiler.setTargetType(TeaVMTargetType.JAVASCRIPT);
        compiler.setJsModuleType(JSModuleType.UMD);
        compiler.setOptimizationLevel(TeaVMOptimizationLevel.ADVANCED);
        compiler.setObfuscated(true);
        compiler.setStrict(false);
        compiler.setTargetDirectory(target.getParentFile());
        compiler.setTargetFileName(target.getName());
        compiler.generate();
        List<Problem> problems = compiler.getProblemProvider().getSevereProblems();
        problems.forEach(problem -> System.err.println(problem.getText() + " " + List.of(problem.getParams())
                + (problem.getLocation() == null ? "" : " in " + problem.getLocation().getMethod())));
        System.exit(problems.isEmpty() ? 0 : 1);
    }
}
