package borderwright.app;

import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.classes;
import static com.tngtech.archunit.lang.syntax.ArchRuleDefinition.noClasses;

import com.tngtech.archunit.core.domain.JavaClass;
import com.tngtech.archunit.core.domain.JavaClasses;
import com.tngtech.archunit.core.importer.ClassFileImporter;
import com.tngtech.archunit.lang.ArchCondition;
import com.tngtech.archunit.lang.ConditionEvents;
import com.tngtech.archunit.lang.SimpleConditionEvent;
import java.util.List;
import org.junit.jupiter.api.Test;

/** The rules of docs/rules.md that a machine can hold for the app. */
class ArchitectureTest {
    private static final String ROOT = "borderwright.app";

    /** The rooms in order, each with the rooms that it is built from before it; none may reach a later one. */
    private static final List<String> ROOMS =
            List.of("exit", "folder", "usage", "progress", "document", "job", "plan", "cut", "form", "start", "");

    private static final JavaClasses APP = new ClassFileImporter()
            .withImportOption(location -> !location.contains("test-classes"))
            .importPackages(ROOT);

    @Test
    void everyClassLivesInARoomAndReachesNoLaterOne() {
        classes().should(liveInARoomAndReachNoLaterOne()).check(APP);
    }

    /** A browser, too, reads a document and orders a job: neither may print, end the program or know of a command line. */
    @Test
    void readingADocumentAndPlanningItKnowNoCommandLine() {
        noClasses()
                .that()
                .resideInAnyPackage(ROOT + ".document", ROOT + ".job")
                .should()
                .dependOnClassesThat()
                .resideInAnyPackage("picocli..")
                .orShould()
                .accessField(System.class, "out")
                .orShould()
                .accessField(System.class, "err")
                .orShould()
                .callMethod(System.class, "exit", int.class)
                .check(APP);
    }

    /** The command line takes an order and prints a result: what is planned is settled by the planner. */
    @Test
    void commandsPlanAndBuyThroughTheEnginesOwnDoors() {
        noClasses()
                .should()
                .dependOnClassesThat()
                .haveNameMatching(
                        "borderwright\\.engine\\..*(BoxBuilder|BorderLayout|BorderSurvey|BuildSequence|Filling|"
                                + "GroundWork|ShoppingList|CuttingPlanner)")
                .check(APP);
    }

    private static int room(JavaClass javaClass) {
        String name = javaClass.getPackageName();
        return name.equals(ROOT)
                ? ROOMS.indexOf("")
                : name.startsWith(ROOT + ".") ? ROOMS.indexOf(name.substring(ROOT.length() + 1)) : -1;
    }

    private static ArchCondition<JavaClass> liveInARoomAndReachNoLaterOne() {
        return new ArchCondition<>("live in a room of the list and reach no later one") {
            @Override
            public void check(JavaClass item, ConditionEvents events) {
                if (room(item) < 0) {
                    events.add(SimpleConditionEvent.violated(item, item.getName() + " is in no room of the list"));
                }
                item.getDirectDependenciesFromSelf().forEach(dependency -> {
                    if (room(dependency.getTargetClass()) > room(item)) {
                        events.add(SimpleConditionEvent.violated(item, dependency.getDescription()));
                    }
                });
            }
        };
    }
}
