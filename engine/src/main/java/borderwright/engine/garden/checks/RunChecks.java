package borderwright.engine.garden.checks;

import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** The runs of planters: do they follow edges of the border, and is their size said once? */
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
            found.add(new Problem(
                    "run-size",
                    where,
                    "The run `" + run.name() + "` does not say how many planters it has, nor how long one is.",
                    "Write `planters: 8` or `length: 1.2 m`."));
        } else if (run.planters() != null && run.length() != null && run.rows() == null) {
            found.add(new Problem(
                    "run-size",
                    where + ".length",
                    "The run `" + run.name() + "` gives both the number of planters and the length of one.",
                    "Keep `planters` or `length`; the other follows."));
        }
        if (run.falseFloor() != null && run.falseFloor().compareTo(run.height().to()) >= 0) {
            found.add(new Problem(
                    "platform-height",
                    where + ".false floor",
                    "The false floor of the run `" + run.name() + "` is as high as its walls or higher.",
                    "Write a height below that of the walls, so that there is room for soil."));
        }
        checkRows(run, where);
        checkCorners(run, where);
    }

    private void checkRows(GivenRun run, String where) {
        if (run.rows() == null) {
            return;
        }
        if (run.along().size() > 2) {
            found.add(new Problem(
                    "run-rows",
                    where + ".along",
                    "The rows of the run `" + run.name() + "` are to be parallel to more than one edge.",
                    "Name the two corners of one edge, and write a run for each direction."));
        }
        if (run.backGap() != null) {
            found.add(new Problem(
                    "run-rows",
                    where + ".back gap",
                    "The run `" + run.name() + "` says both a back gap and where its first row stands.",
                    "Keep `rows: {starts at: ..}`; a back gap is for a run along an edge."));
        }
        if (run.planters() != null && run.length() != null && !run.length().isFixed()) {
            found.add(new Problem(
                    "run-size",
                    where + ".length",
                    "The run `" + run.name() + "` gives the number of planters and a range for their length.",
                    "Give one length, or leave out one of the two."));
        }
    }

    private void checkAlong(Names along, String where) {
        if (along.size() == 1) {
            found.add(new Problem(
                    "names-count",
                    where,
                    "A run follows at least one edge, so it names two corners or more; here is 1.",
                    "Write the corners that it follows, such as `A B`."));
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
                found.add(new Problem(
                        "name-twice",
                        where,
                        "The run follows the edge `" + from + " " + to + "` twice.",
                        "Follow each edge once."));
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
                        "name-unknown",
                        at,
                        "The run does not turn at `" + corner + "`.",
                        turns.isEmpty()
                                ? "It follows one edge and turns nowhere."
                                : "It turns at " + String.join(", ", turns) + "."));
            } else if (!seen.add(corner)) {
                found.add(new Problem(
                        "name-twice", at, "The corner `" + corner + "` is treated twice.", "Keep one of them."));
            }
        }
    }
}
