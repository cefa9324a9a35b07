package borderwright.engine.stock.row;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;

class BoardNestTest {
    private static final EndShape SQUARE = EndShape.square(10);

    /** An end that stands back by {@code back} at the face that lies down. */
    private static EndShape longUp(long back) {
        return EndShape.planar(0, 0, back, back, 14);
    }

    private static BoardNest.Shape shape(long length, EndShape left, EndShape right, boolean mayTurn) {
        return new BoardNest.Shape(length, left, right, mayTurn);
    }

    @Test
    void squarePiecesLieAsGivenWithAKerfBetween() {
        BoardNest.Row row = BoardNest.of(List.of(shape(100, SQUARE, SQUARE, true), shape(50, SQUARE, SQUARE, true)));
        assertThat(row.extent()).isEqualTo(160);
        assertThat(row.pieces()).extracting(BoardNest.Laid::start).containsExactly(0L, 110L);
    }

    @Test
    void aTrapezoidTurnedOverSharesTheCutOfItsNeighbour() {
        // Both long points up: turned over, the second fits into the first, one cut of 14 between them.
        BoardNest.Shape trapezoid = shape(100, longUp(25), longUp(25), true);
        BoardNest.Row row = BoardNest.of(List.of(trapezoid, trapezoid));
        assertThat(row.extent()).isEqualTo(100 + 14 - 25 + 100);
        assertThat(row.pieces()).filteredOn(p -> p.way().turned()).hasSize(1);
        assertThat(row.pieces().get(1).sharesCut()).isTrue();
    }

    @Test
    void aBoardWithOneGoodFaceIsNotTurned() {
        BoardNest.Shape trapezoid = shape(100, longUp(25), longUp(25), false);
        BoardNest.Row row = BoardNest.of(List.of(trapezoid, trapezoid));
        assertThat(row.extent()).isEqualTo(100 + 14 + 100);
        assertThat(row.pieces()).noneMatch(p -> p.way().turned());
    }

    @Test
    void aMitreOfTheFaceNestsEndForEndWithoutTurning() {
        EndShape mitre = EndShape.planar(0, 150, 0, 150, 14);
        BoardNest.Shape capping = shape(1000, mitre, mitre, false);
        BoardNest.Row row = BoardNest.of(List.of(capping, capping));
        assertThat(row.extent()).isEqualTo(2000 + 14 - 150);
        assertThat(row.pieces()).extracting(p -> p.way().swapped()).contains(true);
    }

    @Test
    void theTableFindsTheLeastOfAllOrders() {
        for (long seed = 0; seed < 200; seed++) {
            List<BoardNest.Shape> shapes = some(seed, 4);
            boolean partedOff = seed % 2 == 0;
            BoardNest.Row row = partedOff ? BoardNest.partedOff(shapes) : BoardNest.of(shapes);
            long found = row.extent() + (partedOff ? row.lastKerf() : 0);
            assertThat(found).as("seed %d", seed).isEqualTo(least(shapes, partedOff));
        }
    }

    @Test
    void piecesThatAreAlikeAreCountedAndEachIsLaidOnce() {
        for (long seed = 0; seed < 100; seed++) {
            List<BoardNest.Shape> two = some(seed, 2);
            SplittableRandom random = new SplittableRandom(seed);
            List<BoardNest.Shape> shapes = new ArrayList<>();
            for (int i = 0; i < 5; i++) {
                shapes.add(two.get(random.nextInt(2)));
            }
            BoardNest.Row row = BoardNest.of(shapes);
            assertThat(row.extent()).as("seed %d", seed).isEqualTo(least(shapes, false));
            assertThat(row.pieces()).extracting(BoardNest.Laid::index).containsExactlyInAnyOrder(0, 1, 2, 3, 4);
        }
    }

    @Test
    void manyPiecesAreLaidExactlyWhereManyAreAlike() {
        BoardNest.Shape trapezoid = shape(100, longUp(25), longUp(25), true);
        List<BoardNest.Shape> alike = Collections.nCopies(40, trapezoid);
        assertThat(BoardNest.isExactFor(alike)).isTrue();
        assertThat(BoardNest.of(alike).extent()).isEqualTo(40 * 100 + 39 * (14 - 25));
        assertThat(BoardNest.isExactFor(some(1, 12))).isTrue();
        assertThat(BoardNest.isExactFor(some(1, 13))).isFalse();
    }

    @Test
    void aLongRowIsNoLongerThanOneCutForEachPiece() {
        for (long seed = 0; seed < 50; seed++) {
            List<BoardNest.Shape> shapes = some(seed, 14);
            BoardNest.Row row = BoardNest.partedOff(shapes);
            long charged = shapes.stream()
                    .mapToLong(s -> s.length()
                            + Math.max(s.left().kerfTicks(), s.right().kerfTicks()))
                    .sum();
            assertThat(row.extent() + row.lastKerf()).as("seed %d", seed).isLessThanOrEqualTo(charged);
            assertThat(row.pieces().stream().map(BoardNest.Laid::index).distinct())
                    .hasSize(14);
        }
    }

    private static List<BoardNest.Shape> some(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<BoardNest.Shape> shapes = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            boolean mayTurn = random.nextBoolean();
            shapes.add(shape(random.nextInt(100, 400), end(random), end(random), mayTurn));
        }
        return shapes;
    }

    private static EndShape end(SplittableRandom random) {
        long back = 5L * random.nextInt(1, 5);
        return switch (random.nextInt(5)) {
            case 0 -> longUp(back);
            case 1 -> EndShape.planar(back, back, 0, 0, 12);
            case 2 -> EndShape.planar(0, back, 0, back, 13);
            case 3 -> EndShape.planar(back, 0, back, 0, 15);
            default -> SQUARE;
        };
    }

    /** Every order, each piece every way round, with ends as four numbers that are permuted here anew. */
    private static long least(List<BoardNest.Shape> shapes, boolean partedOff) {
        return place(shapes, new boolean[shapes.size()], new long[0], 0, shapes.size(), partedOff);
    }

    private static long place(
            List<BoardNest.Shape> shapes, boolean[] lies, long[] last, long at, int left, boolean partedOff) {
        if (left == 0) {
            return at + (partedOff ? last[4] : 0);
        }
        long least = Long.MAX_VALUE;
        for (int i = 0; i < lies.length; i++) {
            for (int way = 0; way < 4 && !lies[i]; way++) {
                boolean turned = way >= 2;
                boolean swapped = way % 2 == 1;
                if (turned && !shapes.get(i).mayTurn()) {
                    continue;
                }
                long[] start =
                        lying(swapped ? shapes.get(i).right() : shapes.get(i).left(), turned, swapped);
                long[] end =
                        lying(swapped ? shapes.get(i).left() : shapes.get(i).right(), turned, swapped);
                long from = at;
                if (last.length > 0) {
                    long pass = Long.MAX_VALUE;
                    for (int c = 0; c < 4; c++) {
                        pass = Math.min(pass, last[c] + start[c]);
                    }
                    from += Math.max(last[4], start[4]) - pass;
                }
                lies[i] = true;
                least = Math.min(
                        least, place(shapes, lies, end, from + shapes.get(i).length(), left - 1, partedOff));
                lies[i] = false;
            }
        }
        return least;
    }

    /** Setbacks at (up, upper), (up, lower), (down, upper), (down, lower), and the kerf, as the piece lies. */
    private static long[] lying(EndShape end, boolean turned, boolean swapped) {
        long[] setback = {end.faceUpper(), end.faceLower(), end.backUpper(), end.backLower()};
        long[] lies = new long[5];
        for (int c = 0; c < 4; c++) {
            int face = c / 2;
            int edge = c % 2;
            int from = (turned ? 1 - face : face) * 2 + (turned != swapped ? 1 - edge : edge);
            lies[c] = setback[from];
        }
        lies[4] = end.kerfTicks();
        return lies;
    }
}
