package runtrue.cli;

import static com.tngtech.archunit.base.DescribedPredicate.describe;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.networknt.schema.Schema;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.library.GeneralCodingRules;
import dev.cel.compiler.CelCompiler;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.xmlbeans.XmlObject;
import org.assertj.core.api.Assertions;
import org.bimserver.plugins.renderengine.RenderEngineException;
import org.ifcopenshell.IfcGeomServerClient;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.snakeyaml.engine.v2.api.Load;
import picocli.CommandLine;
import tools.jackson.databind.ObjectMapper;
import tools.jackson.dataformat.yaml.YAMLMapper;

/**
 * Holds the arrows between modules to one direction, and each large library to the module that needs it. A rule about
 * a package that is gone fails, so that the list cannot rot.
 */
class ArchitectureTest {
    /** Each may know those before it. */
    private static final List<String> ORDER = List.of(
            "drop",
            "step",
            "ifc",
            "shape",
            "geometryserver",
            "roof",
            "wind",
            "ids",
            "rules",
            "cutting",
            "bill",
            "result",
            "report",
            "cli");

    private static final List<String> OUTSIDE_THE_ORDER = List.of("samples", "bench");

    private static final JavaClasses CLASSES = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("runtrue");

    static Stream<Arguments> laterModules() {
        return IntStream.range(0, ORDER.size() - 1)
                .mapToObj(i -> Arguments.of(ORDER.get(i), ORDER.subList(i + 1, ORDER.size())));
    }

    @ParameterizedTest(name = "{0} knows none of {1}")
    @MethodSource("laterModules")
    void a_module_knows_none_that_comes_after_it(String module, List<String> later) {
        String[] packages = later.stream().map(ArchitectureTest::everythingIn).toArray(String[]::new);
        noClasses()
                .that()
                .resideInAPackage(everythingIn(module))
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(packages)
                .check(CLASSES);
    }

    /** The samples are made without what reads them; wind, cutting and IDS are numbers and words, whatever from. */
    @ParameterizedTest
    @ValueSource(strings = {"samples", "wind", "cutting", "ids"})
    void some_modules_know_no_other(String module) {
        noClasses()
                .that()
                .resideInAPackage(everythingIn(module))
                .should()
                .dependOnClassesThat(anotherModule(module))
                .check(CLASSES);
    }

    @Test
    void no_module_knows_the_samples() {
        noClasses()
                .that()
                .resideOutsideOfPackages(everythingIn("samples"), everythingIn("bench"))
                .should()
                .dependOnClassesThat()
                .resideInAPackage(everythingIn("samples"))
                .check(CLASSES);
    }

    static Stream<Arguments> libraries() {
        return Stream.of(
                Arguments.of("org.apache.poi", Workbook.class, List.of("report")),
                Arguments.of("org.apache.xmlbeans", XmlObject.class, List.of("report")),
                Arguments.of("org.ifcopenshell", IfcGeomServerClient.class, List.of("geometryserver")),
                Arguments.of("org.bimserver", RenderEngineException.class, List.of("geometryserver")),
                Arguments.of("picocli", CommandLine.class, List.of("cli")),
                Arguments.of("org.ojalgo", ExpressionsBasedModel.class, List.of("cutting")),
                Arguments.of("dev.cel", CelCompiler.class, List.of("rules")),
                Arguments.of("tools.jackson.dataformat.yaml", YAMLMapper.class, List.of("rules")),
                Arguments.of("org.snakeyaml", Load.class, List.of("rules")),
                Arguments.of("com.networknt", Schema.class, List.of("rules")),
                Arguments.of("tools.jackson", ObjectMapper.class, List.of("rules", "result")));
    }

    @ParameterizedTest(name = "{0} only in {2}")
    @MethodSource("libraries")
    void a_library_stays_in_its_module(String library, Class<?> partOfIt, List<String> modules) {
        Assertions.assertThat(partOfIt.getName()).startsWith(library + ".");
        String[] packages = modules.stream().map(ArchitectureTest::everythingIn).toArray(String[]::new);
        noClasses()
                .that()
                .resideOutsideOfPackages(packages)
                .should()
                .dependOnClassesThat()
                .resideInAPackage(library + "..")
                .check(CLASSES);
    }

    @Test
    void only_the_command_line_prints() {
        noClasses()
                .that()
                .resideOutsideOfPackages(everythingIn("cli"), everythingIn("samples"), everythingIn("bench"))
                .should(GeneralCodingRules.ACCESS_STANDARD_STREAMS)
                .check(CLASSES);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "drop",
                "step",
                "ifc",
                "shape",
                "geometryserver",
                "roof",
                "wind",
                "ids",
                "rules",
                "cutting",
                "bill",
                "result",
                "report",
                "cli",
                "samples"
            })
    void every_module_named_here_exists(String module) {
        Assertions.assertThat(CLASSES.stream().filter(c -> c.getPackageName().equals("runtrue." + module)))
                .as("classes in runtrue.%s", module)
                .isNotEmpty();
    }

    @Test
    void every_package_belongs_to_a_module_named_here() {
        Set<String> known = Stream.concat(ORDER.stream(), OUTSIDE_THE_ORDER.stream())
                .map(m -> "runtrue." + m)
                .collect(Collectors.toSet());
        Assertions.assertThat(CLASSES)
                .extracting(JavaClass::getPackageName)
                .allSatisfy(p -> Assertions.assertThat(known).anyMatch(k -> (p + ".").startsWith(k + ".")));
    }

    private static String everythingIn(String module) {
        return "runtrue." + module + "..";
    }

    private static DescribedPredicate<JavaClass> anotherModule(String own) {
        return describe(
                "are in another module",
                c -> c.getPackageName().startsWith("runtrue.")
                        && !(c.getPackageName() + ".").startsWith("runtrue." + own + "."));
    }
}
