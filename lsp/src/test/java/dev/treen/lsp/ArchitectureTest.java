package dev.treen.lsp;

import static com.tngtech.archunit.core.domain.JavaClass.Predicates.resideInAnyPackage;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import org.junit.jupiter.api.Test;

/** The server reads what the compiler made, and nothing behind it. */
class ArchitectureTest {

    private static final JavaClasses SERVER = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("dev.treen.lsp");

    @Test
    void theServerNeverSeesTheGeneratedParser() {
        noClasses().should().dependOnClassesThat(resideInAnyPackage("org.antlr..", "dev.treen.grammar.."))
                .check(SERVER);
    }
}
