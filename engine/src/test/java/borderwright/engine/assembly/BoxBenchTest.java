package borderwright.engine.assembly;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.SeededBoxes;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Walls and floors of random boxes on the bench, against the solids of their pieces. */
class BoxBenchTest {
    private static final int BOXES_A_SEED = 100;

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {1, 2, 3, 4, 5, 6})
    void screwsAddUpToTheTally(long seed) {
        List<Box> boxes = SeededBoxes.of(seed, BOXES_A_SEED);
        for (int i = 0; i < boxes.size(); i++) {
            Box box = boxes.get(i);
            Map<String, Integer> off = new TreeMap<>();
            box.fixings().forEach(fixing -> off.merge(name(fixing), -fixing.count(), Integer::sum));
            BoxBench.of(box, Footprints.SECTIONS)
                    .fixings()
                    .forEach(line -> off.merge(name(line.fixing()), line.count(), Integer::sum));
            off.values().removeIf(difference -> difference == 0);
            if (turnsACorner(box)) {
                // Where a mitred floor's parts meet, a slat may lie on a bearer of the next part: it is screwed to it
                // too.
                off.entrySet().removeIf(entry -> entry.getKey().contains("slats-to-bearers") && entry.getValue() > 0);
            }
            assertThat(off).as("seed %s box %s", seed, i).isEmpty();
        }
    }

    private static boolean turnsACorner(Box box) {
        Ring ring = box.plan().outline();
        for (int i = 0; i < ring.size(); i++) {
            if (ring.insideAngle(i) > StrictMath.PI + 0.01) {
                return true;
            }
        }
        return false;
    }

    private static String name(Box.Fixing fixing) {
        return fixing.hold() + " " + fixing.use().key() + " " + fixing.item();
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {7, 8, 9})
    void positionsAreTheSolidsOnTheirWall(long seed) {
        List<Box> boxes = SeededBoxes.of(seed, BOXES_A_SEED);
        int uprights = 0;
        for (Box box : boxes) {
            Map<String, Piece> pieces = new TreeMap<>();
            box.pieces().forEach(piece -> pieces.put(piece.label(), piece));
            Ring ring = box.plan().outline();
            for (WallBench wall : BoxBench.of(box, Footprints.SECTIONS).walls()) {
                if (wall.kind() == WallBench.Kind.DIVIDER) {
                    continue;
                }
                Point a = ring.corner(wall.index());
                Point along = ring.corner(wall.index() + 1).minus(a).unit();
                double hook = wall.face().hook().minus(a).dot(along);
                for (BenchBoard board : wall.parts().boards()) {
                    Piece piece = pieces.get(board.label());
                    isAt(piece, a, along, hook, 0, board.face());
                    isAt(piece, a, along, hook, wall.parts().thicknessMm(), board.back());
                    isHigh(box, piece, board.height());
                }
                for (BenchUpright upright : wall.carried()) {
                    Piece piece = pieces.get(upright.label());
                    isAt(piece, a, along, hook, wall.parts().thicknessMm(), upright.face());
                    isAt(piece, a, along, hook, wall.parts().thicknessMm() + upright.depthMm(), upright.back());
                    isHigh(box, piece, upright.height());
                    uprights++;
                }
                for (BenchCrosspiece cross : wall.parts().crosspieces()) {
                    Piece piece = pieces.get(cross.label());
                    isAt(piece, a, along, hook, wall.parts().thicknessMm(), cross.inner());
                    isHigh(box, piece, cross.height());
                }
            }
        }
        assertThat(uprights).isGreaterThan(1000);
    }

    /** The corners of a piece at a depth behind the outer face, measured anew from the wall's first corner. */
    private static void isAt(Piece piece, Point corner, Point along, double hook, double behind, Span span) {
        double from = Double.POSITIVE_INFINITY;
        double to = Double.NEGATIVE_INFINITY;
        for (Point p : piece.place().plan().corners()) {
            Point off = p.minus(corner);
            // The builder lets a face stand off by up to 1.2 mm before it bears no more.
            if (StrictMath.abs(along.cross(off) - behind) < 2.2) {
                from = StrictMath.min(from, off.dot(along) - hook);
                to = StrictMath.max(to, off.dot(along) - hook);
            }
        }
        assertThat(span.fromMm()).as(piece.label()).isCloseTo(from, within(0.01));
        assertThat(span.toMm()).as(piece.label()).isCloseTo(to, within(0.01));
    }

    private static void isHigh(Box box, Piece piece, Span height) {
        double bottom = box.courses().get(0).bottomMm();
        assertThat(height.fromMm()).isCloseTo(piece.place().bottomMm() - bottom, within(0.01));
        assertThat(height.toMm()).isCloseTo(piece.place().topMm() - bottom, within(0.01));
    }

    @ParameterizedTest(name = "seed {0}")
    @ValueSource(longs = {10, 11, 12})
    void everyPieceLiesSomewhereOnce(long seed) {
        for (Box box : SeededBoxes.of(seed, BOXES_A_SEED)) {
            BoxBench bench = BoxBench.of(box, Footprints.SECTIONS);
            List<String> laid = new ArrayList<>();
            List<String> crossing = new ArrayList<>();
            List<String> standing = new ArrayList<>();
            for (WallBench wall : bench.walls()) {
                wall.parts().boards().forEach(board -> laid.add(board.label()));
                wall.carried().forEach(upright -> laid.add(upright.label()));
                wall.parts().caps().forEach(cap -> laid.add(cap.label()));
                wall.parts().crosspieces().forEach(cross -> crossing.add(cross.label()));
                wall.parts().uprights().forEach(upright -> standing.add(upright.label()));
            }
            bench.floors().forEach(floor -> floor.strips().forEach(strip -> laid.add(strip.label())));
            assertThat(laid).doesNotHaveDuplicates();
            for (Piece piece : box.pieces()) {
                switch (piece.role()) {
                    case TIE ->
                        assertThat(crossing.stream().filter(piece.label()::equals))
                                .hasSize(2);
                    case POST, BRACE -> assertThat(standing).contains(piece.label());
                    default -> assertThat(laid).contains(piece.label());
                }
            }
        }
    }
}
