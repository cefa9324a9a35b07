package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The runs of planters: do they follow edges of the border, and is their size given once? */
final class RunChecks {
    private final BorderEdges edges;
    private final List<Problem> found = new ArrayList<>();

    private RunChecks(GivenGarden garden) {
        this.edges = new BorderEdges(garden.survey());
    }

    static List<Problem> check(GivenGarden garden) {
        RunChecks checks = new RunChecks(garden);
        List<GivenRun> runs = garden.runs();
        KnownNames.of("run", runs.stream().map(GivenRun::name).toList()).reportTwice("runs", checks.found);
        for (int i = 0; i < runs.size() && checks.found.size() < GardenChecks.MOST_FAULTS; i++) {
            checks.checkRun(runs.get(i), "runs[" + i + "]");
        }
        return checks.found;
    }

    private void checkRun(GivenRun run, String where) {
        checkAlong(run.along(), where + ".along");
        if (run.planters() == null && run.length() == null) {
            found.add(new Problem(where, RunMessage.RUN_WITHOUT_SIZE.of(run.name())));
        } else if (run.planters() != null && run.length() != null && run.rows() == null) {
            found.add(new Problem(where + ".length", RunMessage.RUN_SIZE_TWICE.of(run.name())));
        }
        if (run.falseFloor() != null && run.falseFloor().compareTo(run.height().to()) >= 0) {
            found.add(new Problem(where + ".false floor", RunMessage.FALSE_FLOOR_TOO_HIGH.of(run.name())));
        }
        checkRows(run, where);
        checkCorners(run, where);
    }

    private void checkRows(GivenRun run, String where) {
        if (run.rows() == null) {
            return;
        }
        if (run.along().size() > 2) {
            found.add(new Problem(where + ".along", RunMessage.ROWS_OF_SEVERAL_EDGES.of(run.name())));
        }
        if (run.backGap() != null) {
            found.add(new Problem(where + ".back gap", RunMessage.ROWS_WITH_BACK_GAP.of(run.name())));
        }
        if (run.planters() != null && run.length() != null && !run.length().isFixed()) {
            found.add(new Problem(where + ".length", RunMessage.RUN_SIZE_RANGE.of(run.name())));
        }
    }

    private void checkAlong(Names along, String where) {
        if (along.size() == 1) {
            found.add(new Problem(where, RunMessage.RUN_OF_ONE_CORNER.of()));
        }
        if (!edges.areCorners(along.list(), where, found)) {
            return;
        }
        Set<String> seen = new HashSet<>();
        for (int i = 1; i < along.size(); i++) {
            String from = along.get(i - 1);
            String to = along.get(i);
            if (!edges.isEdge(from, to)) {
                found.add(edges.notAnEdge(from, to, where));
            } else if (!seen.add(edges.sameEitherWay(Names.of(from, to)))) {
                found.add(new Problem(where, RunMessage.RUN_EDGE_TWICE.of(from + " " + to)));
            }
        }
    }

    /** A corner treated otherwise must be one that the run turns at. */
    private void checkCorners(GivenRun run, String where) {
        List<String> along = run.along().list();
        List<String> turns = along.size() > 2 ? along.subList(1, along.size() - 1) : List.of();
        Set<String> seen = new HashSet<>();
        for (int i = 0; i < run.otherTurns().size(); i++) {
            String corner = run.otherTurns().get(i).corner();
            String at = where + ".other turns[" + i + "].corner";
            if (corner.isBlank() || along.isEmpty()) {
                continue;
            }
            if (!turns.contains(corner)) {
                found.add(new Problem(
                        at,
                        turns.isEmpty()
                                ? RunMessage.RUN_TURNS_NOWHERE.of(corner)
                                : RunMessage.RUN_TURNS_ELSEWHERE.of(corner, turns)));
            } else if (!seen.add(corner)) {
                found.add(new Problem(at, RunMessage.RUN_CORNER_TWICE.of(corner)));
            }
        }
    }
}
