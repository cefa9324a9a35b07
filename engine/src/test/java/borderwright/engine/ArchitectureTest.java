package borderwright.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import borderwright.engine.buying.Shopper;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.CuttingPlanner;
import borderwright.engine.cutting.PlaneVerifier;
import borderwright.engine.stock.CutVerifier;
import borderwright.engine.stock.Packing;
import borderwright.engine.stock.StockCase;
import borderwright.engine.stock.row.CuttingJob;
import com.tngtech.archunit.base.DescribedPredicate;
import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of docs/rules.md that a machine can hold. */
class ArchitectureTest {
    private static final String ROOT = "borderwright.engine.";

    /** The rooms in the order of the job, each with the rooms that it is built from before it; none may reach a later one. */
    private static final List<String> ROOMS = List.of(
            "measure",
            "message",
            "problem",
            "spelling",
            "reading",
            "geometry",
            "effort",
            "linear",
            "garden.vocabulary",
            "garden.vocabulary.ground",
            "garden.given",
            "garden",
            "garden.resolve",
            "garden.checks",
            "survey.network",
            "survey.fieldbook",
            "survey.shape",
            "survey.checks",
            "survey",
            "layout.plan",
            "layout.room",
            "layout.run",
            "layout.boxes",
            "layout",
            "buildup.parts",
            "buildup.draft",
            "buildup.walls",
            "buildup.uprights",
            "buildup.floor",
            "buildup.joints",
            "buildup",
            "strength.worked",
            "strength.soil",
            "strength.timber",
            "strength.rules",
            "strength.frame",
            "strength.box",
            "strength.loads",
            "strength",
            "strength.bracing",
            "ground",
            "filling",
            "planting",
            "cautions",
            "stock",
            "stock.row",
            "prices",
            "buying.list",
            "buying.boards",
            "buying.suppliers",
            "buying",
            "buying.why",
            "buying.nesting",
            "cutting",
            "assembly",
            "assembly.order",
            "sequence",
            "settingout",
            "shopping",
            "floors",
            "estimate",
            "sitelog",
            "plan");

    private static final JavaClasses ENGINE = new ClassFileImporter()
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages("borderwright.engine");

    @Test
    void everyClassLivesInARoom() {
        classes().should(liveInARoom()).check(ENGINE);
    }

    @Test
    void noRoomReachesALaterOne() {
        classes().should(reachNoLaterRoom()).check(ENGINE);
    }

    @Test
    void noStageTakesTheDocumentBeforeItIsResolved() {
        noClasses()
                .that()
                .resideOutsideOfPackages(
                        "borderwright.engine.garden.given",
                        "borderwright.engine.garden.resolve",
                        "borderwright.engine.garden.checks")
                .should()
                .dependOnClassesThat()
                .resideInAPackage("borderwright.engine.garden.given")
                .check(ENGINE);
    }

    @Test
    void theEngineKnowsNoFilesNoNetworkNoClockNoLocaleNoLogNoConsole() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage(
                        "java.io..",
                        "java.nio.file..",
                        "java.nio.channels..",
                        "java.net..",
                        "java.util.logging..",
                        "java.lang.management..",
                        "org.slf4j..",
                        "com.fasterxml..",
                        "java.sql..")
                .check(ENGINE);
        noClasses().should().callMethod(System.class, "currentTimeMillis").check(ENGINE);
        noClasses().should().callMethod(System.class, "nanoTime").check(ENGINE);
        noClasses().should().accessField(System.class, "out").check(ENGINE);
        noClasses().should().accessField(System.class, "err").check(ENGINE);
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(java.time.Clock.class)
                .check(ENGINE);
        noClasses().should().callMethod(java.time.LocalDate.class, "now").check(ENGINE);
        noClasses().should().callMethod(java.util.Locale.class, "getDefault").check(ENGINE);
        noClasses().should().callMethod(Math.class, "random").check(ENGINE);
        noClasses().should().callConstructor(java.util.Random.class).check(ENGINE);
    }

    /** What is planned or bought passes a check that shares no code with the search before anyone sees it. */
    @Test
    void everyPlanIsVerified() {
        classes()
                .that(DescribedPredicate.describe(
                        "have pieces cut",
                        type -> type.getMethodCallsFromSelf().stream()
                                .anyMatch(call -> call.getTargetOwner().isEquivalentTo(CuttingPlanner.class))))
                .and()
                .areNotAssignableTo(CuttingPlanner.class)
                .should()
                .callMethod(PlaneVerifier.class, "verified", CuttingJob.class, CuttingPlan.class)
                .check(ENGINE);
        classes()
                .that()
                .areAssignableTo(Shopper.class)
                .should()
                .callMethod(CutVerifier.class, "verified", StockCase.class, Packing.class)
                .check(ENGINE);
    }

    private static int room(JavaClass javaClass) {
        String name = javaClass.getPackageName();
        if (!name.startsWith(ROOT)) {
            return -1;
        }
        return ROOMS.indexOf(name.substring(ROOT.length()));
    }

    private static ArchCondition<JavaClass> liveInARoom() {
        return new ArchCondition<>("live in a room of the list") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (room(item) < 0) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " is in no room of the list"));
                }
            }
        };
    }

    private static ArchCondition<JavaClass> reachNoLaterRoom() {
        return new ArchCondition<>("reach no later room") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                item.getDirectDependenciesFromSelf().forEach(dependency -> {
                    if (room(dependency.getTargetClass()) > room(item)) {
                        events.add(SimpleConditionEvent.violated(item, dependency.getDescription()));
                    }
                });
            }
        };
    }
}
