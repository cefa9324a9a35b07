package borderwright.pack;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;
import static com.tngtech.archunit.library.dependencies.SlicesRuleDefinition.slices;

import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import org.junit.jupiter.api.Test;

/** The rules of docs/rules.md that a machine can hold for the pack. */
class ArchitectureTest {
    private static final JavaClasses PACK = new ClassFileImporter()
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages("borderwright.pack");

    @Test
    void thePackReadsNoFilesNoNetworkAndNoClockAndKnowsNoFront() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("java.nio.file..", "java.net.http..", "java.sql..", "borderwright.app..")
                .check(PACK);
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(java.io.File.class)
                .check(PACK);
        noClasses().should().callMethod(java.time.LocalDate.class, "now").check(PACK);
        noClasses().should().callMethod(System.class, "currentTimeMillis").check(PACK);
        noClasses().should().callMethod(System.class, "nanoTime").check(PACK);
    }

    @Test
    void thePackWeighsPlansAndBuysNothing() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching(
                        "borderwright\\.engine\\..*(Weights|Filling|CautionFinder|GroundWork|Planner|BoxBuilder|BorderLayout|"
                                + "BorderSurvey|BuildSequence|ShoppingList|Shopper)")
                .check(PACK);
    }

    @Test
    void packagesGoRoundInNoCircle() {
        slices().matching("borderwright.pack.(*)..").should().beFreeOfCycles().check(PACK);
    }
}
