package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.FailedCheckException;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Checks a cutting plan by laying every piece on its board in space; it shares no code with the planner.
 *
 * <p>A board is a bar: length {@code x} from its left end, {@code y} across its width, {@code z} through its thickness,
 * all from its middle. An end is a plane. A blade tilted by {@code t} against a fence turned by {@code f} leaves a plane with
 * the normal (cos t cos f, +/- cos t sin f, +/- sin t), so that along the board a cut of width {@code k} takes
 * {@code k / (cos t cos f)}. Planes of two ends are compared at the four long edges of the bar: between these they are
 * straight.
 */
public final class PlaneVerifier {
    /** A hundredth of a tick: planes are real numbers, positions whole ticks. */
    private static final double ROUNDING_MM = 0.01 / Length.TICKS_PER_MM;
    /** A shared cut may miss one of its ends by no more than this at any edge. */
    private static final double SHARED_MM = 0.02;

    private final CuttingJob job;
    private final CuttingPlan plan;
    private final double kerfMm;
    private final List<String> faults = new ArrayList<>();

    private PlaneVerifier(CuttingJob job, CuttingPlan plan) {
        this.job = job;
        this.plan = plan;
        double widest = job.saws().isEmpty() ? 3 : 0;
        for (SawSpec saw : job.saws()) {
            widest = Math.max(widest, saw.kerfMm());
        }
        this.kerfMm = widest;
    }

    /**
     * A plan that has no faults.
     *
     * @throws FailedCheckException when it has
     */
    public static CuttingPlan verified(CuttingJob job, CuttingPlan plan) {
        FailedCheckException.refuse("The cutting plan", faults(job, plan));
        return plan;
    }

    /** All that is wrong with a plan; empty when it is right. */
    public static List<String> faults(CuttingJob job, CuttingPlan plan) {
        PlaneVerifier verifier = new PlaneVerifier(job, plan);
        verifier.check();
        return verifier.faults;
    }

    /** Where a plane meets the four long edges of its board, mm from the board's left end. */
    private static final class Edges {
        private final double[] atMm = new double[4];

        Edges(double middleMm, double slopeY, double slopeZ, SectionSpec bar) {
            double byY = bar.width().mm() / 2 * slopeY;
            double byZ = bar.thickness().mm() / 2 * slopeZ;
            atMm[0] = middleMm - byY - byZ;
            atMm[1] = middleMm - byY + byZ;
            atMm[2] = middleMm + byY - byZ;
            atMm[3] = middleMm + byY + byZ;
        }
    }

    /** A piece as it lies: its ends, each in every plane that its description leaves open, and what their cuts take. */
    private record Placed(String label, List<Edges> left, List<Edges> right, double leftKerfMm, double rightKerfMm) {}

    private void check() {
        Map<String, Piece> pieces = new HashMap<>();
        job.pieces().forEach(piece -> pieces.put(piece.label(), piece));
        Map<Integer, BoardInHand> hand = new HashMap<>();
        job.boards().forEach(board -> hand.put(board.number(), board));
        Map<String, Integer> seen = new HashMap<>();
        Set<Integer> boards = new HashSet<>();
        for (CuttingPlan.BoardCuts board : plan.boards()) {
            BoardInHand there = hand.get(board.number());
            if (there == null || !boards.add(board.number())) {
                faults.add("board " + board.number() + " is not in hand, or used twice");
            } else {
                checkBoard(board, there, pieces, seen);
            }
        }
        plan.reserves().forEach(reserve -> seen.merge(reserve.label(), 1, Integer::sum));
        plan.uncut().forEach(uncut -> seen.merge(uncut.label(), 1, Integer::sum));
        for (Piece piece : job.pieces()) {
            if (seen.getOrDefault(piece.label(), 0) != 1) {
                faults.add("piece " + piece.label() + " is cut, kept or listed " + seen.getOrDefault(piece.label(), 0)
                        + " times");
            }
            if (piece.waits() && !plan.waiting().contains(piece.label())) {
                faults.add("piece " + piece.label() + " waits and is not on the wait list");
            }
        }
    }

    private void checkBoard(
            CuttingPlan.BoardCuts board, BoardInHand there, Map<String, Piece> pieces, Map<String, Integer> seen) {
        double trimMm = there.trim().mm();
        if (!board.length().equals(there.length()) || !board.section().equals(there.section())) {
            faults.add("board " + board.number() + " is not the one in hand");
        }
        SectionSpec bar = job.sections().stream()
                .filter(s -> s.name().equals(board.section()))
                .findFirst()
                .orElseThrow();
        List<Placed> placed = new ArrayList<>();
        for (CuttingPlan.Cut cut : board.cuts()) {
            Piece piece = pieces.get(cut.label());
            seen.merge(cut.label(), 1, Integer::sum);
            if (piece == null
                    || piece.waits()
                    || !piece.section().equals(board.section())
                    || !piece.length().equals(cut.length())) {
                faults.add(
                        board.number() + " " + cut.label() + " is no piece to be cut now from this section and length");
                continue;
            }
            if (cut.turnedOver() && !bar.mayBeTurned()) {
                faults.add("board " + board.number() + " " + cut.label() + " turns a board that has one good face");
            }
            checkSetUp(board.number(), cut, piece);
            placed.add(place(cut, piece, bar));
        }
        checkClear(board, placed, trimMm);
        checkFarEnd(board, placed, trimMm);
    }

    private static Placed place(CuttingPlan.Cut cut, Piece piece, SectionSpec bar) {
        EndCut left = cut.endForEnd() ? piece.right() : piece.left();
        EndCut right = cut.endForEnd() ? piece.left() : piece.right();
        double from = cut.start().mm();
        return new Placed(
                cut.label(),
                planes(left, cut, bar, from, 1),
                planes(right, cut, bar, from + cut.length().mm(), -1),
                1 / slantOf(left),
                1 / slantOf(right));
    }

    private static double slantOf(EndCut end) {
        return Math.cos(Math.toRadians(end.tiltDeg())) * Math.cos(Math.toRadians(end.fenceDeg()));
    }

    /**
     * The planes that an end may lie in: one, or two where it is cut at two angles and its long point names but a face or an
     * edge. {@code inwards} is +1 for a left end, -1 for a right one; the plane touches {@code longMm} and lies inwards of it.
     */
    private static List<Edges> planes(EndCut end, CuttingPlan.Cut cut, SectionSpec bar, double longMm, int inwards) {
        double perWidth = Math.tan(Math.toRadians(end.fenceDeg()));
        double perThickness = Math.tan(Math.toRadians(end.tiltDeg())) / Math.cos(Math.toRadians(end.fenceDeg()));
        List<Edges> planes = new ArrayList<>();
        for (int edge = -1; edge <= 1; edge += 2) {
            for (int face = -1; face <= 1; face += 2) {
                if (allows(end.longPoint(), edge, face)) {
                    // Long point at the edge y = edge and the face z = face of the piece as read; +1 is upper, marked.
                    int y = (cut.turnedOver() ? -1 : 1) * (cut.endForEnd() ? -1 : 1) * edge;
                    int z = (cut.turnedOver() ? -1 : 1) * face;
                    double half =
                            bar.width().mm() / 2 * perWidth + bar.thickness().mm() / 2 * perThickness;
                    planes.add(new Edges(
                            longMm + inwards * half, -inwards * y * perWidth, -inwards * z * perThickness, bar));
                }
            }
        }
        return planes;
    }

    private static boolean allows(EndCut.LongPoint point, int edge, int face) {
        return switch (point) {
            case NONE -> edge == 1 && face == 1;
            case MARKED_FACE -> face == 1;
            case HIDDEN_FACE -> face == -1;
            case UPPER_EDGE -> edge == 1;
            case LOWER_EDGE -> edge == -1;
        };
    }

    private void checkSetUp(int board, CuttingPlan.Cut cut, Piece piece) {
        EndCut right = cut.endForEnd() ? piece.left() : piece.right();
        if (cut.setUp() < 0 || cut.setUp() >= plan.setUps().size()) {
            faults.add("board " + board + " " + cut.label() + " names no set-up");
            return;
        }
        CuttingPlan.SetUp setUp = plan.setUps().get(cut.setUp());
        if (setUp.setting().tiltDeg() != right.tiltDeg()
                || setUp.setting().fenceDeg() != right.fenceDeg()
                || setUp.setting().cutFor() != SawSetting.CutFor.PIECE
                || setUp.setting().leanAsDrawn(cut) != cut.right().ofRightEnd()
                || !setUp.labels().contains(cut.label())) {
            faults.add("board " + board + " " + cut.label() + " is not cut at set-up " + setUp.number());
        }
    }

    private void checkClear(CuttingPlan.BoardCuts board, List<Placed> placed, double trimMm) {
        double lastMm = board.length().mm() - trimMm;
        for (int i = 0; i < placed.size(); i++) {
            Placed piece = placed.get(i);
            if (least(piece.left) < trimMm - ROUNDING_MM || greatest(piece.right) > lastMm + ROUNDING_MM) {
                faults.add("board " + board.number() + " " + piece.label + " reaches into the trim or over the end");
            }
            for (int j = i + 1; j < placed.size(); j++) {
                Placed next = placed.get(j);
                double needMm = kerfMm * Math.max(piece.rightKerfMm, next.leftKerfMm);
                double gapMm = leastGap(piece.right, next.left);
                if (gapMm < needMm - ROUNDING_MM) {
                    faults.add("board " + board.number() + " " + piece.label + " and " + next.label + " lie " + gapMm
                            + " mm apart, their cuts need " + needMm);
                }
            }
            if (i > 0 && board.cuts().get(i).sharesCut()) {
                checkShared(board.number(), placed.get(i - 1), piece);
            }
        }
    }

    /** One cut makes both ends: the gap is one kerf at every edge. */
    private void checkShared(int board, Placed before, Placed after) {
        double needMm = kerfMm * Math.max(before.rightKerfMm, after.leftKerfMm);
        for (int c = 0; c < 4; c++) {
            double gap = after.left.get(0).atMm[c] - before.right.get(0).atMm[c];
            if (Math.abs(gap - needMm) > SHARED_MM) {
                faults.add("board " + board + " " + before.label + " and " + after.label + " cannot share a cut: " + gap
                        + " mm apart at an edge, the cut takes " + needMm);
                return;
            }
        }
    }

    private void checkFarEnd(CuttingPlan.BoardCuts board, List<Placed> placed, double trimMm) {
        double lastMm = board.length().mm() - trimMm;
        double endMm = trimMm;
        if (!placed.isEmpty()) {
            Placed last = placed.get(placed.size() - 1);
            endMm = greatest(last.right) + kerfMm * last.rightKerfMm;
        }
        if (board.offcut().ticks() > 0 && board.offcut().mm() > lastMm - endMm + ROUNDING_MM) {
            faults.add(board.number() + " keeps an offcut of " + board.offcut().mm() + " mm, there are "
                    + (lastMm - endMm));
        }
        double keptMm = 0;
        int kept = 0;
        for (CuttingPlan.Reserve reserve : plan.reservesOn(board.number())) {
            keptMm += reserve.length().mm() + (kept++ > 0 ? kerfMm : 0);
            job.pieces().stream()
                    .filter(p -> p.label().equals(reserve.label()))
                    .filter(p -> reserve.length().compareTo(p.length()) < 0
                            || !p.section().equals(board.section()))
                    .forEach(p -> faults.add(board.number() + " keeps too little for " + p.label()));
        }
        if (kept > 0 && keptMm > lastMm - endMm + ROUNDING_MM) {
            faults.add(board.number() + " keeps " + keptMm + " mm for pieces that wait, there are " + (lastMm - endMm));
        }
    }

    private static double leastGap(List<Edges> right, List<Edges> left) {
        double least = Double.POSITIVE_INFINITY;
        for (Edges a : right) {
            for (Edges b : left) {
                for (int c = 0; c < 4; c++) {
                    least = Math.min(least, b.atMm[c] - a.atMm[c]);
                }
            }
        }
        return least;
    }

    private static double least(List<Edges> planes) {
        double least = Double.POSITIVE_INFINITY;
        for (Edges plane : planes) {
            for (double at : plane.atMm) {
                least = Math.min(least, at);
            }
        }
        return least;
    }

    private static double greatest(List<Edges> planes) {
        double greatest = Double.NEGATIVE_INFINITY;
        for (Edges plane : planes) {
            for (double at : plane.atMm) {
                greatest = Math.max(greatest, at);
            }
        }
        return greatest;
    }
}
