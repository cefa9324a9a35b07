package borderwright.app.plan;

import borderwright.app.document.DocumentAnswer;
import borderwright.app.document.GardenReader;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.plan.Plan;
import borderwright.engine.plan.PlanAnswer;
import borderwright.engine.plan.Planner;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/** Plans of the examples for tests that only look at them: each is made once, however many ask. */
final class ExamplePlans {
    private static final Map<String, Plan> MADE = new ConcurrentHashMap<>();

    private ExamplePlans() {}

    /** All examples, by their names without an ending. */
    static List<String> names() throws IOException {
        try (Stream<Path> files = Files.list(Path.of("..", "examples"))) {
            return files.map(f -> f.getFileName().toString())
                    .filter(name -> name.endsWith(".yaml"))
                    .map(name -> name.replace(".yaml", ""))
                    .sorted()
                    .toList();
        }
    }

    /** The file of an example, by its name without an ending. */
    static Path file(String example) {
        return Path.of("..", "examples", example + ".yaml");
    }

    static Plan of(String example) {
        return MADE.computeIfAbsent(example, name -> {
            try {
                return plan(Files.readAllBytes(file(name)));
            } catch (IOException fault) {
                throw new UncheckedIOException(fault);
            }
        });
    }

    /** A plan of a garden document that must be sound and can be planned, after a short search for its basket. */
    static Plan plan(byte[] document) {
        DocumentAnswer.Sound sound = (DocumentAnswer.Sound) GardenReader.read(document);
        return ((PlanAnswer.Planned)
                        Planner.plan(GardenResolver.resolve(sound.document().garden()), Budget.ofSteps(2_000)))
                .plan();
    }
}
