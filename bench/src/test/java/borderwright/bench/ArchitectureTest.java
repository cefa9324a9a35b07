package borderwright.bench;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** What a machine can hold of the bench: nothing leans on it, and its solvers stay in it. */
class ArchitectureTest {
    private final JavaClasses all = new ClassFileImporter()
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages("borderwright");

    @Test
    void noModuleKnowsTheBench() {
        noClasses()
                .that()
                .resideOutsideOfPackage("borderwright.bench..")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("borderwright.bench..")
                .check(all);
    }

    @Test
    void solversToCompareWithAreUsedInTheBenchAlone() {
        noClasses()
                .that()
                .resideOutsideOfPackage("borderwright.bench.cutting")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("com.google.ortools..", "org.chocosolver..")
                .check(all);
    }

    @Test
    void packagesGoRoundInNoCircle() {
        slices().matching("borderwright.bench.(*)..").should().beFreeOfCycles().check(all);
    }
}
