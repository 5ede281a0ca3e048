package dev.treen.lsp;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The server reads what the compiler made, and nothing behind it. */
class ArchitectureTest {

    private static final JavaClasses SERVER = new ClassFileImporter()
            // Wherever the build keeps its classes: target, target/quick, target/bench.
            .withImportOption(location -> !location.contains("/test-classes/"))
            .importPackages("dev.treen.lsp");

    @Test
    void theServerNeverSeesTheGeneratedParser() {
        noClasses().should().dependOnClassesThat(resideInAnyPackage("org.antlr..", "dev.treen.grammar.."))
                .check(SERVER);
    }
}
