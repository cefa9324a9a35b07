package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SawNote;
import borderwright.engine.garden.SectionNote;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** Which saw makes which cut: the first that reaches it, those with a length stop before those without. */
final class SawChoice {
    private final List<SawNote> saws;

    SawChoice(List<SawNote> saws) {
        this.saws = saws.stream()
                .sorted((a, b) -> Boolean.compare(b.hasStop(), a.hasStop()))
                .toList();
    }

    /** The saw for one end of a piece; null when none at hand reaches it safely. */
    @Nullable
    SawNote sawFor(EndCut end, Piece piece, @Nullable SectionNote section) {
        if (!end.inRange()) {
            return null;
        }
        for (SawNote saw : saws) {
            if (reaches(saw, end, piece, section)) {
                return saw;
            }
        }
        return null;
    }

    private static boolean reaches(SawNote saw, EndCut end, Piece piece, @Nullable SectionNote section) {
        if (end.tiltDeg() > saw.tiltDeg() || end.fenceDeg() > saw.mitreDeg()) {
            return false;
        }
        if (piece.length().mm() < saw.shortestMm() || section == null) {
            return section == null;
        }
        double across = section.width().mm() / StrictMath.cos(StrictMath.toRadians(end.fenceDeg()));
        double through = section.thickness().mm() / StrictMath.cos(StrictMath.toRadians(end.tiltDeg()));
        return across <= saw.crosscutMm() && through <= saw.depthMm();
    }
}
