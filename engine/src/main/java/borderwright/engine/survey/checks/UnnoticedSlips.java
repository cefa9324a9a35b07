package borderwright.engine.survey.checks;

import borderwright.engine.garden.SurveySpec.EdgeSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.survey.checks.SurveyReport.Unnoticed;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.IntToDoubleFunction;

/**
 * The largest slip in a reading that the other readings would not show, and what it does to the border.
 *
 * <p>With redundancy number {@code r} and standard deviation {@code s}, a slip shows from {@code 4.13 s / sqrt(r)} on (the
 * minimal detectable bias of W. Baarda, A testing procedure for use in geodetic networks, 1968: one reading tested at a false
 * alarm of 0.1 %, the slip found with a chance of 80 %). It moves the places by {@code Qa' / s2} times itself (external
 * reliability). A corner counts square to the edges that meet there, against the gap that is kept at each; the end of a
 * strip also along its edge.
 *
 * <p>Heights are not judged: a level is read once, and its table says that nothing checks it.
 *
 * <p>See docs/decisions/0012.
 */
public final class UnnoticedSlips {
    /** Room at an edge that keeps no gap: what a peg may be out and nobody minds (common practice, no source). */
    static final double ROOM_WITHOUT_GAP_MM = 50;

    /** A move of less than this by one standard deviation is none. */
    private static final double NO_MOVE_MM = 1e-6;

    private final Adjustment adjustment;
    private final List<Held> held = new ArrayList<>();

    /**
     * A corner, the direction in which it may not move, and the room there.
     *
     * @param unknown of its place
     * @param against unknown of the place that its move is measured from; itself where it is measured from the plan
     */
    private record Held(int unknown, int against, Point direction, double roomMm, String corner) {
        double moves(IntToDoubleFunction moves) {
            double x = moves.applyAsDouble(unknown);
            double y = moves.applyAsDouble(unknown + 1);
            if (against != unknown) {
                x -= moves.applyAsDouble(against);
                y -= moves.applyAsDouble(against + 1);
            }
            return StrictMath.abs(x * direction.xMm() + y * direction.yMm());
        }
    }

    /**
     * Where a slip moves a corner most against its room.
     *
     * @param movesMm how far
     */
    record Worst(double movesMm, double roomMm, String corner) {
        double share() {
            return movesMm / roomMm;
        }
    }

    public UnnoticedSlips(FieldBook book, Adjustment adjustment) {
        this.adjustment = adjustment;
        Network network = adjustment.network();
        List<Integer> corners = book.order().corners();
        int edges = book.order().closed() ? corners.size() : corners.size() - 1;
        for (int edge = 0; edge < edges; edge++) {
            int from = corners.get(edge);
            int to = corners.get((edge + 1) % corners.size());
            Point square = adjustment
                    .positions()
                    .at(to)
                    .minus(adjustment.positions().at(from))
                    .unit()
                    .left();
            double room = roomMm(book, edge);
            for (int corner : List.of(from, to)) {
                int unknown = network.placeUnknown(corner);
                held.add(new Held(unknown, unknown, square, room, network.name(corner)));
            }
        }
        if (!book.order().closed()) {
            int last = corners.size() - 1;
            end(corners.get(0), corners.get(1), roomMm(book, book.edges().size() - 1));
            end(corners.get(last), corners.get(last - 1), roomMm(book, last));
        }
    }

    /** The end of a strip may not move along its edge: what the run is laid out on is the length of that edge. */
    private void end(int corner, int next, double roomMm) {
        Network network = adjustment.network();
        Point along = adjustment
                .positions()
                .at(next)
                .minus(adjustment.positions().at(corner))
                .unit();
        held.add(new Held(
                network.placeUnknown(corner), network.placeUnknown(next), along, roomMm, network.name(corner)));
    }

    private static double roomMm(FieldBook book, int edge) {
        double gapMm = book.notes().edges().stream()
                .filter(note -> book.edges().number(note.edge()) == edge)
                .map(EdgeSpec::gap)
                .mapToDouble(gap -> gap.mm())
                .findFirst()
                .orElse(0);
        return gapMm > 0 ? gapMm : ROOM_WITHOUT_GAP_MM;
    }

    /** The place that suffers most where each unknown moves so far. */
    Worst worst(IntToDoubleFunction moves) {
        Worst worst = new Worst(0, ROOM_WITHOUT_GAP_MM, held.get(0).corner);
        for (Held one : held) {
            double far = one.moves(moves);
            if (far / one.roomMm > worst.share()) {
                worst = new Worst(far, one.roomMm, one.corner);
            }
        }
        return worst;
    }

    /** The largest slip in an observation that would not show, in the reading's own unit. */
    public Unnoticed of(FieldBook.Entry entry) {
        if (entry.kind() == FieldBook.Kind.STRAIGHT) {
            return Unnoticed.NOT_ON_THE_PLAN;
        }
        Observation its = adjustment.network().observations().get(entry.observation());
        Adjustment.Influence influence = adjustment.influence(its);
        Worst worst = worst(unknown -> influence.on(unknown) / its.sd());
        OptionalDouble least = adjustment.leastSlipThatShows(entry.observation());
        if (least.isPresent()) {
            double deviations = least.getAsDouble() / its.sd();
            return new Unnoticed(
                    OptionalDouble.of(deviations * entry.sd()),
                    OptionalDouble.of(deviations * worst.movesMm),
                    worst.corner,
                    worst.roomMm);
        }
        OptionalDouble moves = worst.movesMm < NO_MOVE_MM ? OptionalDouble.of(0) : OptionalDouble.empty();
        return new Unnoticed(OptionalDouble.empty(), moves, worst.corner, worst.roomMm);
    }
}
