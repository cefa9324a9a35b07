package borderwright.pack.bench;

import borderwright.engine.assembly.BenchBoard;
import borderwright.engine.assembly.BenchCap;
import borderwright.engine.assembly.BenchCrosspiece;
import borderwright.engine.assembly.BenchUpright;
import borderwright.engine.assembly.Span;
import borderwright.engine.assembly.WallBench;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.measure.Length;
import borderwright.pack.figures.PartWords;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.List;

/** The positions on a wall or divider, as lines of text. */
final class WallRows {
    /** Two figures that differ by less read the same. */
    private static final double SAME_MM = 0.5;

    private final WallBench wall;
    private final PrintedFigures f;
    private final HookedTape tape;

    WallRows(WallBench wall, PrintedFigures f) {
        this.wall = wall;
        this.f = f;
        this.tape = new HookedTape(f, HookedTape.On.BOARD);
    }

    List<BenchRow> rows() {
        List<BenchRow> rows = new ArrayList<>();
        wall.parts().uprights().forEach(upright -> rows.add(upright(upright)));
        wall.parts().crosspieces().forEach(cross -> rows.add(cross(cross)));
        wall.parts().boards().forEach(board -> rows.add(board(board)));
        wall.parts().caps().forEach(cap -> rows.add(cap(cap)));
        return rows;
    }

    private BenchRow upright(BenchUpright upright) {
        List<String> notes = new ArrayList<>();
        notes.add(f.text(BenchMessage.UPRIGHT_DEEP.of(f.piece(Length.ofMm(upright.depthMm())))));
        switch (upright.place()) {
            case CARRIED -> {}
            case NEIGHBOURS -> notes.add(f.text(BenchMessage.UPRIGHT_OF_NEIGHBOUR.of()));
            case NEAR_SIDE -> notes.add(f.text(BenchMessage.UPRIGHT_NEAR.of()));
            case FAR_SIDE -> notes.add(f.text(BenchMessage.UPRIGHT_FAR.of()));
        }
        if (differs(upright.face(), upright.back())) {
            notes.add(f.text(BenchMessage.UPRIGHT_FAR_EDGES.of(tape.range(upright.back()))));
        }
        return row(f.text(PartWords.role(upright.role())), upright.label(), upright.face(), upright.height(), notes);
    }

    private BenchRow cross(BenchCrosspiece cross) {
        return row(
                f.text(PartWords.role(cross.role())),
                cross.label(),
                cross.inner(),
                cross.height(),
                List.of(f.text(BenchMessage.BEHIND_WALL.of())));
    }

    private BenchRow board(BenchBoard board) {
        List<String> notes = new ArrayList<>();
        if (StrictMath.abs(board.length().mm() - board.face().lengthMm()) > SAME_MM) {
            notes.add(f.text(BenchMessage.BOARD_LONG.of(f.piece(board.length()))));
        }
        if (differs(board.face(), board.back())) {
            notes.add(f.text(BenchMessage.BOARD_OTHER_FACE.of(wall.kind(), tape.range(board.back()))));
        }
        return row(f.text(PartWords.role(role())), board.label(), board.face(), board.height(), notes);
    }

    private Role role() {
        return wall.kind() == WallBench.Kind.WALL ? Role.WALL : Role.DIVIDER;
    }

    private BenchRow cap(BenchCap cap) {
        List<String> notes = new ArrayList<>();
        notes.add(f.text(BenchMessage.CAP_OUTSIDE.of(f.length(-cap.behind().fromMm()))));
        if (differs(cap.outer(), cap.inner())) {
            notes.add(f.text(BenchMessage.CAP_INNER.of(tape.range(cap.inner()))));
        }
        return row(f.text(PartWords.role(Role.CAPPING)), cap.label(), cap.outer(), cap.height(), notes);
    }

    private BenchRow row(String what, String label, Span along, Span height, List<String> notes) {
        return new BenchRow(what, label, tape.range(along), f.length(height.fromMm()), f.length(height.toMm()), notes);
    }

    private static boolean differs(Span a, Span b) {
        return StrictMath.abs(a.fromMm() - b.fromMm()) > SAME_MM || StrictMath.abs(a.toMm() - b.toMm()) > SAME_MM;
    }
}
