package borderwright.engine.cutting;

import borderwright.engine.TestCuts;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import java.util.List;

/** Made-up pieces of a wall, for tests of what is cut from which board; where they will stand is of no interest. */
public final class TestPieces {
    public static final EndCut SQUARE = TestCuts.square();

    private TestPieces() {}

    /** A piece that is cut now and does not touch the ground. */
    public static Piece piece(String section, String label, double mm, EndCut left, EndCut right) {
        return piece(section, label, mm, left, right, false, false);
    }

    public static Piece piece(
            String section, String label, double mm, EndCut left, EndCut right, boolean waits, boolean ground) {
        return Piece.builder()
                .label(label)
                .box("F1")
                .planter("F1")
                .role(Piece.Role.WALL)
                .course(1)
                .side(0)
                .section(section)
                .length(Length.ofMm(mm))
                .left(left)
                .right(right)
                .faceOut(FaceMessage.ANY_FACE_UP.of())
                .waits(waits)
                .touchesGround(ground)
                .place(new Prism(new Ring(List.of(new Point(0, 0), new Point(1, 0), new Point(1, 1))), 0, 1))
                .alongMm(new Piece.Axis(1, 0, 0))
                .build();
    }
}
