package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which saw makes which cut: the first that reaches it, those with a length stop before those without. */
final class SawChoice {
    private final List<SawSpec> saws;

    SawChoice(List<SawSpec> saws) {
        this.saws = saws.stream()
                .sorted((a, b) -> Boolean.compare(b.hasStop(), a.hasStop()))
                .toList();
    }

    /** The saw for one end of a piece; null when none at hand reaches it safely. */
    @Nullable
    SawSpec sawFor(EndCut end, Piece piece, @Nullable SectionSpec section) {
        if (!end.inRange()) {
            return null;
        }
        for (SawSpec saw : saws) {
            if (reaches(saw, end, piece, section)) {
                return saw;
            }
        }
        return null;
    }

    private static boolean reaches(SawSpec saw, EndCut end, Piece piece, @Nullable SectionSpec section) {
        if (end.tiltDeg() > saw.tiltDeg() || end.fenceDeg() > saw.mitreDeg()) {
            return false;
        }
        if (piece.length().mm() < saw.shortestPieceMm() || section == null) {
            return section == null;
        }
        double across = section.width().mm() / StrictMath.cos(StrictMath.toRadians(end.fenceDeg()));
        double through = section.thickness().mm() / StrictMath.cos(StrictMath.toRadians(end.tiltDeg()));
        return across <= saw.widestBoardMm() && through <= saw.thickestBoardMm();
    }
}
