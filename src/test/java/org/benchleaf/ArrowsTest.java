package org.benchleaf;

import static com.tngtech.archunit.library.Architectures.layeredArchitecture;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.syntax.ArchRuleDefinition;
import com.tngtech.archunit.library.Architectures.LayeredArchitecture;
import com.tngtech.archunit.library.dependencies.SliceAssignment;
import com.tngtech.archunit.library.dependencies.SliceIdentifier;
import com.tngtech.archunit.library.dependencies.SlicesRuleDefinition;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** States which package may see which, and who owns each outside library. */
class ArrowsTest {

    private static final String ROOT = "org.benchleaf";

    /** Each package with what it may see besides itself. */
    private static final Map<String, List<String>> MAY_SEE = new LinkedHashMap<>();

    static {
        MAY_SEE.put("quantity", List.of());
        MAY_SEE.put("message", List.of());
        MAY_SEE.put("plan", List.of());
        MAY_SEE.put("model", List.of("quantity", "message"));
        MAY_SEE.put("science", List.of("quantity"));
        MAY_SEE.put("rule", List.of("model", "quantity", "message"));
        MAY_SEE.put("read", List.of("model", "quantity", "message"));
        MAY_SEE.put("check", List.of("read", "rule", "model", "quantity", "message"));
        MAY_SEE.put("derive", List.of("check", "science", "plan", "model", "quantity", "message"));
        MAY_SEE.put("compose", List.of("derive", "model", "quantity", "message"));
        MAY_SEE.put("script", List.of("compose", "derive", "model", "quantity"));
        MAY_SEE.put("publish", List.of("compose", "model", "quantity", "message"));
        MAY_SEE.put("privacy", List.of("publish", "model", "message"));
        MAY_SEE.put("pack", List.of("publish", "model", "quantity", "message"));
        MAY_SEE.put("preview", List.of("publish", "message"));
    }

    private static JavaClasses classes;

    @BeforeAll
    static void load() {
        classes = new ClassFileImporter().withImportOption(new ImportOption.DoNotIncludeTests())
                .importPackages(ROOT);
    }

    @Test
    void no_two_types_share_a_simple_name() {
        Map<String, Long> times = classes.stream().filter(JavaClass::isTopLevelClass).map(JavaClass::getSimpleName)
                .filter(name -> !name.equals("package-info"))
                .collect(Collectors.groupingBy(name -> name, TreeMap::new, Collectors.counting()));
        assertThat(times).hasSizeGreaterThan(400);
        assertThat(times.entrySet()).filteredOn(each -> each.getValue() > 1).isEmpty();
    }

    @Test
    void every_package_sees_only_what_its_line_names() {
        LayeredArchitecture arrows = layeredArchitecture().consideringOnlyDependenciesInLayers()
                .withOptionalLayers(true)
                .layer("command").definedBy(ROOT, ROOT + ".command..");
        for (String name : MAY_SEE.keySet()) {
            arrows = arrows.layer(name).definedBy(ROOT + "." + name + "..");
        }
        for (Map.Entry<String, List<String>> line : MAY_SEE.entrySet()) {
            arrows = line.getValue().isEmpty()
                    ? arrows.whereLayer(line.getKey()).mayNotAccessAnyLayer()
                    : arrows.whereLayer(line.getKey()).mayOnlyAccessLayers(line.getValue().toArray(String[]::new));
        }
        arrows.check(classes);
    }

    @Test
    void no_package_stands_outside_the_arrows() {
        assertThat(classes.stream().map(JavaClass::getPackageName).distinct().filter(name -> !name.equals(ROOT))
                .map(name -> name.substring(ROOT.length() + 1).replaceAll("\\..*", "")).distinct())
                .isSubsetOf(Stream.concat(MAY_SEE.keySet().stream(), Stream.of("command")).toList());
    }

    /** A type and the types nested in it count as one. */
    @Test
    void no_classes_see_each_other_in_a_ring() {
        SlicesRuleDefinition.slices().assignedFrom(new SliceAssignment() {
            @Override
            public SliceIdentifier getIdentifierOf(JavaClass one) {
                return SliceIdentifier.of(one.getName().replaceAll("\\$.*", ""));
            }

            @Override
            public String getDescription() {
                return "types with those nested in them";
            }
        }).should().beFreeOfCycles().check(classes);
    }

    @ParameterizedTest
    @CsvSource({
        "org.yaml.snakeyaml, read",
        "com.vladsch.flexmark, read",
        "com.networknt, check",
        "freemarker, publish",
        "net.coobird, publish",
        "com.openhtmltopdf, publish",
        "org.apache.pdfbox, publish",
        "org.apache.fontbox, publish",
        "javax.imageio, publish",
        "org.tartarus.snowball, compose",
        "com.sun.net.httpserver, preview",
        "picocli, command",
        "me.tongfei, command",
        "org.teavm, script",
    })
    void each_outside_library_has_one_owner(String library, String owner) {
        ArchRuleDefinition.noClasses().that().resideOutsideOfPackages(ROOT + "." + owner + "..", ROOT)
                .should().dependOnClassesThat().resideInAPackage(library + "..").check(classes);
    }

    /** Of {@code derive} and {@code compose} these classes are compiled to the script that pages load. */
    private static final List<String> OF_THE_PAGE_SCRIPT = List.of("derive.Calculations", "derive.Args", "derive.Answers",
            "derive.Inputs", "derive.InputReading", "derive.Refusal", "derive.Outcome", "derive.NotAllowed", "derive.Propagation",
            "derive.Written", "derive.FormularyText", "derive.FigureChain", "derive.ExactText", "derive.Cells", "derive.SolutionFormulas", "derive.WaterFormulas",
            "derive.SheetFormulas", "derive.AmountFormulas", "derive.ReadingFormulas", "compose.Digits", "compose.Amount");

    /** Patterns would be a quarter of the script; the rest is missing there, large, or gives other results. */
    @Test
    void what_a_page_loads_uses_nothing_that_differs_in_a_browser() {
        DescribedPredicate<JavaClass> loaded = DescribedPredicate.describe("are compiled to the script of pages",
                type -> List.of("quantity", "science", "script").contains(type.getPackageName().replace(ROOT + ".", ""))
                        || OF_THE_PAGE_SCRIPT.contains(outermost(type).replace(ROOT + ".", "")));
        assertThat(classes.stream().map(ArrowsTest::outermost)).containsAll(OF_THE_PAGE_SCRIPT.stream()
                .map(name -> ROOT + "." + name).toList());
        ArchRuleDefinition.noClasses().that(loaded)
                .should().dependOnClassesThat().resideInAnyPackage("java.io..", "java.nio..", "java.lang.reflect..",
                        "java.time..", "java.text..", "java.util.regex..", "java.math..")
                .orShould().callMethod(String.class, "format", String.class, Object[].class)
                .orShould().callMethod(String.class, "split", String.class)
                .orShould().callMethod(String.class, "split", String.class, int.class)
                .orShould().callMethod(String.class, "replaceAll", String.class, String.class)
                .orShould().callMethod(String.class, "matches", String.class)
                .orShould().callMethod(Double.class, "valueOf", String.class)
                .orShould().callMethod(Math.class, "fma", double.class, double.class, double.class)
                .orShould().dependOnClassesThat().haveFullyQualifiedName("java.util.Locale").check(classes);
    }

    private static String outermost(JavaClass type) {
        return type.getName().replaceAll("\\$.*", "");
    }
}
