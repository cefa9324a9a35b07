package borderwright.engine.survey.checks;

import borderwright.engine.problem.Problem;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;

/** Triangles of tapes in which two sides together are shorter than the third. */
final class TapeTriangles {
    private final FieldBook book;

    TapeTriangles(FieldBook book) {
        this.book = book;
    }

    List<Problem> thatDoNotClose() {
        List<Problem> problems = new ArrayList<>();
        Network network = book.network();
        List<Observation.Distance> tapes = new ArrayList<>();
        for (Observation observation : network.observations()) {
            if (observation instanceof Observation.Distance tape) {
                tapes.add(tape);
            }
        }
        for (Observation.Distance longest : tapes) {
            for (Observation.Distance one : tapes) {
                for (Observation.Distance other : tapes) {
                    boolean closes = one.measured() + other.measured() >= longest.measured();
                    if (!closes && isTriangle(longest, one, other)) {
                        problems.add(problem(network, longest, one, other));
                    }
                }
            }
        }
        return problems;
    }

    /** Whether {@code one} leads from the start of {@code longest} to a point, and {@code other} on to its end. */
    private static boolean isTriangle(
            Observation.Distance longest, Observation.Distance one, Observation.Distance other) {
        int tip = one.a() == longest.a() ? one.b() : one.b() == longest.a() ? one.a() : longest.a();
        return tip != longest.a() && tip != longest.b() && other.isTape(tip, longest.b());
    }

    private static Problem problem(
            Network network, Observation.Distance longest, Observation.Distance one, Observation.Distance other) {
        return new Problem(
                "survey.measures",
                RefusalMessage.TRIANGLE_DOES_NOT_CLOSE.of(
                        name(network, one),
                        name(network, other),
                        one.measured() + other.measured(),
                        name(network, longest),
                        longest.measured()));
    }

    private static String name(Network network, Observation.Distance tape) {
        return network.name(tape.a()) + "-" + network.name(tape.b());
    }
}
