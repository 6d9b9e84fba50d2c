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
import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.spi.ToolProvider;
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
    /** A line of what one type sees of another, each without the types nested in it. */
    private static final Pattern SEEN = Pattern.compile(
            "(?m)^ +(org\\.benchleaf[\\w.]*+)\\S* +-> (org\\.benchleaf[\\w.]*+)");
    private static final Map<String, List<String>> MAY_SEE = new LinkedHashMap<>();

    static {
        MAY_SEE.put("quantity", List.of());
        MAY_SEE.put("message", List.of());
        MAY_SEE.put("json", List.of());
        MAY_SEE.put("plan", List.of());
        MAY_SEE.put("text", List.of());
        MAY_SEE.put("page", List.of("text", "quantity"));
        MAY_SEE.put("model", List.of("text", "quantity", "message"));
        MAY_SEE.put("science", List.of("quantity"));
        MAY_SEE.put("calculate", List.of("science", "model", "quantity", "message"));
        MAY_SEE.put("rule", List.of("model", "quantity", "message"));
        MAY_SEE.put("read", List.of("text", "model", "quantity", "message"));
        MAY_SEE.put("check", List.of("json", "text", "read", "rule", "model", "quantity", "message"));
        MAY_SEE.put("derive.figure", List.of("text", "calculate", "science", "model", "quantity", "message"));
        MAY_SEE.put("derive.time", List.of("derive.figure", "model", "quantity", "message"));
        MAY_SEE.put("derive.hazard", List.of("derive.figure", "derive.time", "calculate", "science", "model", "quantity", "message"));
        MAY_SEE.put("derive.preparation", List.of("derive.figure", "derive.time", "derive.hazard", "calculate", "science", "model",
                "quantity", "message"));
        MAY_SEE.put("derive.classes", List.of("derive.figure", "derive.time", "derive.hazard", "derive.preparation", "calculate",
                "plan", "model", "quantity", "message"));
        MAY_SEE.put("derive", List.of("json", "text", "derive.figure", "derive.time", "derive.hazard", "derive.preparation",
                "derive.classes", "calculate", "science", "model", "quantity", "message"));
        MAY_SEE.put("words", List.of("text", "page", "calculate", "model", "quantity"));
        MAY_SEE.put("compose.part", List.of("json", "text", "derive", "derive.figure", "derive.hazard", "words", "page", "calculate",
                "model", "quantity", "message"));
        MAY_SEE.put("compose.chart", List.of("text", "compose.part", "derive", "derive.classes", "derive.time", "words", "page",
                "model", "quantity"));
        MAY_SEE.put("compose.bench", List.of("text", "calculate", "compose.part", "derive", "derive.hazard", "derive.time", "words", "page",
                "model", "quantity"));
        MAY_SEE.put("compose.site", List.of("json", "text", "compose.part", "compose.chart", "words", "page", "calculate", "model",
                "quantity"));
        MAY_SEE.put("compose.classes", List.of("json", "text", "compose.part", "compose.chart", "compose.bench", "derive", "derive.figure",
                "derive.classes", "words", "page", "calculate", "model", "quantity"));
        MAY_SEE.put("compose.cases", List.of("json", "text", "compose.part", "compose.chart", "compose.bench", "compose.classes",
                "compose.site", "derive", "derive.figure", "derive.hazard", "derive.time", "derive.classes", "words", "page",
                "calculate", "model", "quantity"));
        MAY_SEE.put("compose", List.of("text", "compose.part", "compose.cases", "compose.classes", "compose.site", "derive", "words",
                "page", "model", "quantity"));
        MAY_SEE.put("script", List.of("calculate", "model", "quantity"));
        MAY_SEE.put("publish", List.of("text", "compose", "compose.part", "compose.cases", "words", "page", "model", "quantity",
                "message"));
        MAY_SEE.put("privacy", List.of("publish", "model", "message"));
        MAY_SEE.put("pack", List.of("json", "publish", "page", "model", "quantity", "message"));
        MAY_SEE.put("preview", List.of("publish", "message"));
        // A run sees every stage; no command.
        MAY_SEE.put("run", List.copyOf(MAY_SEE.keySet()));
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
            arrows = arrows.layer(name).definedBy(ROOT + "." + name);
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
                .map(name -> name.substring(ROOT.length() + 1)))
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

    /** A constant is copied into the class that uses it, where only the reader of the tools of Java still finds whose it was. */
    @Test
    void no_types_see_each_other_in_a_ring_by_a_constant() {
        StringWriter told = new StringWriter();
        assertThat(ToolProvider.findFirst("jdeps").orElseThrow().run(new PrintWriter(told), new PrintWriter(told), "-v", "-filter:none",
                "target/classes")).isZero();
        Map<String, Set<String>> sees = new TreeMap<>();
        SEEN.matcher(told.toString()).results().filter(line -> !line.group(1).equals(line.group(2)))
                .forEach(line -> sees.computeIfAbsent(line.group(1), any -> new TreeSet<>()).add(line.group(2)));
        assertThat(sees).hasSizeGreaterThan(500);
        // What sees nothing that is still there stands in no ring.
        boolean isLess = true;
        while (isLess) {
            isLess = sees.values().removeIf(seen -> seen.stream().noneMatch(sees::containsKey));
        }
        assertThat(sees.keySet()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({
        "org.yaml.snakeyaml, read",
        "com.vladsch.flexmark, read",
        "com.fasterxml.jackson, json",
        "com.networknt, json",
        "freemarker, publish",
        "net.coobird, publish",
        "com.openhtmltopdf, publish",
        "org.apache.pdfbox, publish",
        "org.apache.fontbox, publish",
        "javax.imageio, publish",
        "org.tartarus.snowball, compose",
        "com.sun.net.httpserver, preview",
        "picocli, command",
        "me.tongfei, run",
        "org.teavm, script",
    })
    void each_outside_library_has_one_owner(String library, String owner) {
        ArchRuleDefinition.noClasses().that().resideOutsideOfPackages(ROOT + "." + owner + "..", ROOT)
                .should().dependOnClassesThat().resideInAPackage(library + "..").check(classes);
    }

    /** A tree of HTML is what these hand to each other: it has no owner, and no further user. */
    @Test
    void trees_of_html_stay_with_those_that_read_write_and_change_pages() {
        ArchRuleDefinition.noClasses().that().resideOutsideOfPackages(Stream.of("read", "words", "compose", "publish", "pack")
                        .map(name -> ROOT + "." + name + "..").toArray(String[]::new))
                .should().dependOnClassesThat().resideInAPackage("org.jsoup..").check(classes);
    }

    /** These packages are compiled to the script that pages load. */
    private static final List<String> OF_THE_PAGE_SCRIPT = List.of("quantity", "science", "calculate", "script");

    /** Patterns would be a quarter of the script; the rest is missing there, large, or gives other results. */
    @Test
    void what_a_page_loads_uses_nothing_that_differs_in_a_browser() {
        DescribedPredicate<JavaClass> loaded = DescribedPredicate.describe("are compiled to the script of pages",
                type -> OF_THE_PAGE_SCRIPT.contains(type.getPackageName().replace(ROOT + ".", "")));
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
}
