package borderwright.engine.assembly;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Lays the walls of a box out, each seen from outside, its outside face up. */
final class WallBenchMaker {
    /** Ends whose two points differ by less are square. */
    private static final double SQUARE_MM = 0.05;

    private final BoxParts parts;
    private final HomeWalls homes;
    private final WallFixings fixings;

    WallBenchMaker(BoxParts parts) {
        this.parts = parts;
        this.homes = new HomeWalls(parts);
        this.fixings = new WallFixings(parts, homes);
    }

    List<WallBench> walls() {
        return parts.sides.stream().map(this::wall).toList();
    }

    private WallBench wall(SideFrame side) {
        List<Piece> pieces = parts.boards(side.side(), 0);
        Piece first = pieces.get(0);
        double start = corners(first, side, 0).fromMm();
        WorkFace face = new WorkFace(side.at(start, 0), side.along(), parts.bottomMm);
        List<BenchBoard> boards =
                pieces.stream().map(piece -> board(piece, face)).toList();
        WallBench.Parts all = new WallBench.Parts(
                parts.wallMm, boards, uprights(side, face), crosspieces(side, face), caps(side, face));
        return new WallBench(
                parts.box.plan().name(),
                WallBench.Kind.WALL,
                side.side(),
                face,
                hook(boards.get(0)),
                all,
                fixings.of(side, face, all));
    }

    private Span corners(Piece board, SideFrame side, double behindMm) {
        WorkFace whole = new WorkFace(side.at(0, 0), side.along(), parts.bottomMm);
        return whole.alongAt(board.place().plan(), behindMm, SQUARE_MM).orElseThrow();
    }

    static HookEnd hook(BenchBoard board) {
        double off = board.face().fromMm() - board.back().fromMm();
        if (StrictMath.abs(off) < SQUARE_MM) {
            return HookEnd.SQUARE;
        }
        return off < 0 ? HookEnd.LONG_POINT : HookEnd.SHORT_POINT;
    }

    /** A board of a wall or divider. */
    static BenchBoard board(Piece piece, WorkFace face) {
        Ring plan = piece.place().plan();
        Span depth = face.across(plan);
        Span near = face.alongAt(plan, depth.fromMm(), SQUARE_MM).orElseThrow();
        Span far = face.alongAt(plan, depth.toMm(), SQUARE_MM).orElseThrow();
        double lessMm = shortMm(piece, near, far);
        return new BenchBoard(
                piece.label(),
                piece.course(),
                near.shorterBy(lessMm),
                far.shorterBy(lessMm),
                face.heights(piece.place().bottomMm(), piece.place().topMm()),
                piece.length());
    }

    /**
     * By how much a piece is cut shorter than its place, since lengths are cut in whole steps, mm: it lies at the left end of its
     * place, and the tape reads at its right end what the cutting sheet gives as its length.
     */
    private static double shortMm(Piece piece, Span near, Span far) {
        return StrictMath.max(0, near.with(far).lengthMm() - piece.length().mm());
    }

    private List<BenchUpright> uprights(SideFrame side, WorkFace face) {
        List<BenchUpright> found = new ArrayList<>();
        for (Piece upright : parts.uprights()) {
            if (parts.holds(side.side(), upright)) {
                found.add(upright(upright, face, homes.isHome(side.side(), upright.label())));
            }
        }
        found.sort(Comparator.comparingDouble(u -> u.face().fromMm()));
        return found;
    }

    private BenchUpright upright(Piece upright, WorkFace face, boolean carried) {
        Ring plan = upright.place().plan();
        double deepest = face.across(plan).toMm();
        return new BenchUpright(
                upright.label(),
                upright.role(),
                face.alongAt(plan, parts.wallMm, BoxParts.STAND_OFF_MM).orElseThrow(),
                face.alongAt(plan, deepest, BoxParts.STAND_OFF_MM).orElseGet(() -> face.along(plan)),
                face.heights(upright.place().bottomMm(), upright.place().topMm()),
                deepest - parts.wallMm,
                carried ? BenchUpright.Place.CARRIED : BenchUpright.Place.NEIGHBOURS);
    }

    private List<BenchCrosspiece> crosspieces(SideFrame side, WorkFace face) {
        List<BenchCrosspiece> found = new ArrayList<>();
        for (Box.Hold hold : List.of(Box.Hold.TIE_TO_BRACE, Box.Hold.TIE_BRACKET)) {
            parts.joints(side.side(), hold).forEach(joint -> found.add(cross(parts.piece(joint.through()), face)));
        }
        for (int i = 0; i < parts.box.plan().dividers().size(); i++) {
            DividerLine divider = parts.box.plan().dividers().get(i);
            if (divider.fromSide() == side.side() || divider.toSide() == side.side()) {
                parts.dividerBoards(i).forEach(board -> found.add(cross(board, face)));
            }
        }
        found.sort(Comparator.comparingDouble((BenchCrosspiece c) -> c.inner().fromMm())
                .thenComparingDouble(c -> c.height().fromMm()));
        return found;
    }

    private BenchCrosspiece cross(Piece piece, WorkFace face) {
        return new BenchCrosspiece(
                piece.label(),
                piece.role(),
                face.alongAt(piece.place().plan(), parts.wallMm, BoxParts.STAND_OFF_MM)
                        .orElseThrow(),
                face.heights(piece.place().bottomMm(), piece.place().topMm()));
    }

    private List<BenchCap> caps(SideFrame side, WorkFace face) {
        List<BenchCap> found = new ArrayList<>();
        for (Piece cap : parts.where(p -> p.role() == Role.CAPPING && p.side() == side.side())) {
            Ring plan = cap.place().plan();
            Span behind = face.across(plan);
            Span outer = face.alongAt(plan, behind.fromMm(), SQUARE_MM).orElseThrow();
            Span inner = face.alongAt(plan, behind.toMm(), SQUARE_MM).orElseThrow();
            double lessMm = shortMm(cap, outer, inner);
            found.add(new BenchCap(
                    cap.label(),
                    outer.shorterBy(lessMm),
                    inner.shorterBy(lessMm),
                    behind,
                    face.heights(cap.place().bottomMm(), cap.place().topMm())));
        }
        found.sort(Comparator.comparingDouble(c -> c.outer().fromMm()));
        return found;
    }
}
