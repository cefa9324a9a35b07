package borderwright.engine;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.core.importer.ImportOption;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of docs/rules.md that a machine can hold. */
class ArchitectureTest {
    private static final String ROOT = "borderwright.engine.";

    /** The stages in the order of the job; none may reach a later one. */
    private static final List<String> STAGES = List.of(
            "problem",
            "measure",
            "geometry",
            "garden",
            "survey",
            "layout",
            "buildup",
            "strength",
            "ground",
            "filling",
            "planting",
            "stock",
            "buying",
            "cutting",
            "sequence",
            "options",
            "sitelog",
            "plan");

    private final JavaClasses engine = new ClassFileImporter()
            .withImportOption(ImportOption.Predefined.DO_NOT_INCLUDE_TESTS)
            .importPackages("borderwright.engine");

    @Test
    void everyClassLivesInAStage() {
        classes().should(liveInAStage()).check(engine);
    }

    @Test
    void noStageReachesALaterOne() {
        classes().should(reachNoLaterStage()).check(engine);
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
                .check(engine);
        noClasses().should().callMethod(System.class, "currentTimeMillis").check(engine);
        noClasses().should().callMethod(System.class, "nanoTime").check(engine);
        noClasses().should().accessField(System.class, "out").check(engine);
        noClasses().should().accessField(System.class, "err").check(engine);
        noClasses()
                .should()
                .dependOnClassesThat()
                .areAssignableTo(java.time.Clock.class)
                .check(engine);
        noClasses().should().callMethod(java.time.LocalDate.class, "now").check(engine);
        noClasses().should().callMethod(java.util.Locale.class, "getDefault").check(engine);
        noClasses().should().callMethod(Math.class, "random").check(engine);
        noClasses().should().callConstructor(java.util.Random.class).check(engine);
    }

    private static int stage(JavaClass javaClass) {
        String name = javaClass.getPackageName();
        if (!name.startsWith(ROOT)) {
            return -1;
        }
        String rest = name.substring(ROOT.length());
        int dot = rest.indexOf('.');
        return STAGES.indexOf(dot < 0 ? rest : rest.substring(0, dot));
    }

    private static ArchCondition<JavaClass> liveInAStage() {
        return new ArchCondition<>("live in the package of a stage") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (stage(item) < 0) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " is in no stage's package"));
                }
            }
        };
    }

    private static ArchCondition<JavaClass> reachNoLaterStage() {
        return new ArchCondition<>("reach no later stage") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                item.getDirectDependenciesFromSelf().forEach(dependency -> {
                    if (stage(dependency.getTargetClass()) > stage(item)) {
                        events.add(SimpleConditionEvent.violated(item, dependency.getDescription()));
                    }
                });
            }
        };
    }
}
