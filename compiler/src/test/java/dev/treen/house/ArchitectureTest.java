package dev.treen.house;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAPackage;
import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.fields;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.GeneralCodingRules.ACCESS_STANDARD_STREAMS;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;
import static org.assertj.core.api.Assertions.assertThat;

import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.SequencedMap;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.DynamicTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestFactory;

/** Data goes one way, from text to plan: nothing later is known to anything earlier. */
class ArchitectureTest {

    /** Each package and what it may know directly; it may know what those know, too. */
    private static final SequencedMap<String, List<String>> KNOWS = new LinkedHashMap<>();

    static {
        KNOWS.put("spelling", List.of());
        KNOWS.put("quantity", List.of("spelling"));
        KNOWS.put("source", List.of());
        KNOWS.put("wood", List.of("quantity"));
        KNOWS.put("solid", List.of("quantity"));
        KNOWS.put("yield", List.of("quantity"));
        KNOWS.put("finding", List.of("source", "quantity"));
        KNOWS.put("syntax", List.of("finding"));
        // Whether what a part is bought of is wood, a sheet or neither stands in the tables of wood.
        KNOWS.put("model", List.of("syntax", "wood"));
        KNOWS.put("joinery", List.of("model", "solid", "wood"));
        KNOWS.put("check", List.of("joinery"));
        KNOWS.put("drawing", List.of("joinery"));
        // Between the solver, which knows only rectangles, and the project: an order needs the boards as they are cut.
        KNOWS.put("cutting", List.of("joinery", "yield"));
        KNOWS.put("order", List.of("cutting"));
        KNOWS.put("export", List.of("drawing"));
        KNOWS.put("plan", List.of("check", "order", "drawing"));
        KNOWS.put("rewrite", List.of("plan"));
        KNOWS.put("page", List.of("plan"));
        KNOWS.put("paper", List.of("page"));
        KNOWS.put("cli", List.of("paper", "export"));
    }

    private static final JavaClasses TREEN = new ClassFileImporter()
            // Wherever the build keeps its classes: target, target/quick, target/bench.
            .withImportOption(location -> !location.contains("/test-classes/"))
            .withImportOption(location -> !location.contains("/grammar/"))
            .importPackages("dev.treen");

    @TestFactory
    Stream<DynamicTest> everyPackageKnowsOnlyWhatComesBeforeIt() {
        return KNOWS.keySet().stream().map(name -> DynamicTest.dynamicTest(name, () -> classes()
                .that(resideInAPackage(packages(name)))
                .should().onlyDependOnClassesThat(ours().negate().or(resideInAnyPackage(allowedFor(name))))
                .allowEmptyShould(true)
                .check(TREEN)));
    }

    @Test
    void everyPackageHasItsPlace() {
        TreeSet<String> found = new TreeSet<>();
        for (JavaClass each : TREEN) {
            found.add(each.getPackageName().replaceFirst("^dev\\.treen\\.?", "").replaceFirst("\\..*", ""));
        }
        assertThat(KNOWS.keySet()).as("packages of dev.treen in the table above").containsAll(found);
    }

    @Test
    void nothingGoesInCircles() {
        slices().matching("dev.treen.(*)..").should().beFreeOfCycles().check(TREEN);
    }

    @Test
    void onlySyntaxSeesTheGeneratedParser() {
        noClasses().that(resideInAPackage("dev.treen.syntax..").negate())
                .should().dependOnClassesThat(resideInAnyPackage("org.antlr..", "dev.treen.grammar.."))
                .check(TREEN);
    }

    @Test
    void theCompilerSeesNoEditorProtocol() {
        noClasses().should().dependOnClassesThat(resideInAnyPackage("org.eclipse.lsp4j..", "dev.treen.lsp.."))
                .check(TREEN);
    }

    @Test
    void onlyTheCommandTalksToTheTerminal() {
        noClasses().that(resideInAPackage("dev.treen.cli..").negate()).should(ACCESS_STANDARD_STREAMS).check(TREEN);
    }

    @Test
    void nothingPublicCanBeChanged() {
        fields().that().arePublic().or().areProtected().should().beFinal().check(TREEN);
    }

    private static DescribedPredicate<JavaClass> ours() {
        // Who may see the generated parser has a rule of its own.
        return resideInAPackage("dev.treen..").and(resideInAPackage("dev.treen.grammar..").negate());
    }

    private static String[] allowedFor(String name) {
        TreeSet<String> allowed = new TreeSet<>();
        List<String> open = new ArrayList<>(List.of(name));
        while (!open.isEmpty()) {
            String next = open.removeLast();
            if (allowed.add(next)) {
                open.addAll(KNOWS.getOrDefault(next, List.of()));
            }
        }
        return allowed.stream().map(ArchitectureTest::packages).toArray(String[]::new);
    }

    private static String packages(String name) {
        return "dev.treen." + name + "..";
    }
}
