package borderwright.engine.cutting;

import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.BoardNest;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Which piece comes from which board, at which saw set-up, in which order.
 *
 * @param boards boards in the order in which they are cut
 * @param setUps saw set-ups in order; each cut belongs to one
 * @param waiting labels of pieces that are not cut until their gap has been re-measured
 * @param heldBack boards kept uncut until the last planter stands, by number
 * @param uncut pieces that no board can give, with the reason
 * @param reserves where the waiting pieces will come from: the far end of these boards stays uncut until then
 * @param done labels of pieces that were cut before this plan was made
 */
public record CuttingPlan(
        List<BoardCuts> boards,
        List<SetUp> setUps,
        List<String> waiting,
        List<Integer> heldBack,
        List<Uncut> uncut,
        List<Reserve> reserves,
        List<String> done) {
    /** A plan that says nothing of where waiting pieces will come from. */
    public CuttingPlan(
            List<BoardCuts> boards,
            List<SetUp> setUps,
            List<String> waiting,
            List<Integer> heldBack,
            List<Uncut> uncut) {
        this(boards, setUps, waiting, heldBack, uncut, List.of(), List.of());
    }

    public CuttingPlan {
        boards = List.copyOf(boards);
        setUps = List.copyOf(setUps);
        waiting = List.copyOf(waiting);
        heldBack = List.copyOf(heldBack);
        uncut = List.copyOf(uncut);
        reserves = List.copyOf(reserves);
        done = List.copyOf(done);
    }

    /** The same plan after some pieces were cut. */
    public CuttingPlan after(List<String> cut) {
        return new CuttingPlan(boards, setUps, waiting, heldBack, uncut, reserves, cut);
    }

    /** The set-up of the cut that makes a piece's left end; none where the cut before has made it. */
    public Optional<SetUp> leftSetUp(Cut cut) {
        return setUps.stream()
                .filter(setUp -> setUp.setting().cutFor() == SawSetting.CutFor.FRESH_END
                        && setUp.labels().contains(cut.label()))
                .findFirst();
    }

    /** The set-up of the cut that makes a piece's right end; none where it names none. */
    public Optional<SetUp> rightSetUp(Cut cut) {
        return cut.setUp() < 0 || cut.setUp() >= setUps.size()
                ? Optional.empty()
                : Optional.of(setUps.get(cut.setUp()));
    }

    /** What is kept at the far end of a board. */
    public List<Reserve> reservesOn(int board) {
        return reserves.stream().filter(reserve -> reserve.board() == board).toList();
    }

    /**
     * A length kept at the far end of a board for a piece that waits.
     *
     * @param board number of the board
     * @param label the piece that waits
     * @param length length kept for it, allowance included
     */
    public record Reserve(int board, String label, Length length) {}

    /**
     * One board and what is cut from it.
     *
     * @param number from 1, chalked on it
     * @param section its section
     * @param length its length
     * @param from supplier, or where in the shed it lies
     * @param owned whether it is already in the shed
     * @param trim cut off each end first, kerf included
     * @param cuts in order from the left end
     * @param offcut what is left at the right end, kerf taken off
     * @param keep whether the offcut is long enough to keep
     */
    public record BoardCuts(
            int number,
            String section,
            Length length,
            String from,
            boolean owned,
            Length trim,
            List<Cut> cuts,
            Length offcut,
            boolean keep) {
        public BoardCuts {
            cuts = List.copyOf(cuts);
        }

        BoardCuts numbered(int with) {
            return new BoardCuts(with, section, length, from, owned, trim, cuts, offcut, keep);
        }

        public static Builder of(BoardInHand board) {
            return new Builder(board);
        }

        /** What is cut from a board in hand; nothing, where nothing is set. */
        public static final class Builder {
            private final BoardInHand board;
            private List<Cut> cuts = List.of();
            private Length offcut = Length.ZERO;
            private boolean keep;

            private Builder(BoardInHand board) {
                this.board = board;
            }

            public Builder cuts(List<Cut> inOrder) {
                cuts = inOrder;
                return this;
            }

            public Builder offcut(Length left) {
                offcut = left;
                return this;
            }

            public Builder keep(boolean set) {
                keep = set;
                return this;
            }

            public BoardCuts build() {
                return new BoardCuts(
                        board.number(),
                        board.section(),
                        board.length(),
                        board.from(),
                        board.owned(),
                        board.trim(),
                        cuts,
                        offcut,
                        keep);
            }
        }
    }

    /**
     * One piece on a board.
     *
     * @param label the piece's label
     * @param start where it starts, from the board's left end to its left long point
     * @param length long point to long point
     * @param setUp index into the plan's list of set-ups for the cut at its right end
     * @param turnedOver whether the board is turned over for it
     * @param endForEnd whether it lies end for end: its right end to the left
     * @param sharesCut whether one cut makes its left end and the right end of the piece before it
     * @param left how its left end on the board slants
     * @param right how its right end on the board slants
     */
    public record Cut(
            String label,
            Length start,
            Length length,
            int setUp,
            boolean turnedOver,
            boolean endForEnd,
            boolean sharesCut,
            Slant left,
            Slant right) {
        public static Builder of(String label, Length length) {
            return new Builder(label, length);
        }

        /** How a piece lies and is cut; as it lies for reading, between square ends, where nothing is set. */
        public static final class Builder {
            private final String label;
            private final Length length;
            private Length start = Length.ZERO;
            private int setUp;
            private BoardNest.Way way = BoardNest.Way.AS_READ;
            private boolean sharesCut;
            private Slant left = Slant.SQUARE;
            private Slant right = Slant.SQUARE;

            private Builder(String label, Length length) {
                this.label = label;
                this.length = length;
            }

            public Builder start(Length fromLeftEnd) {
                start = fromLeftEnd;
                return this;
            }

            public Builder setUp(int index) {
                setUp = index;
                return this;
            }

            public Builder way(BoardNest.Way round) {
                way = round;
                return this;
            }

            public Builder sharesCut(boolean set) {
                sharesCut = set;
                return this;
            }

            public Builder slants(Slant ofLeft, Slant ofRight) {
                left = ofLeft;
                right = ofRight;
                return this;
            }

            public Cut build() {
                return new Cut(label, start, length, setUp, way.turned(), way.swapped(), sharesCut, left, right);
            }
        }
    }

    /**
     * How far an end stands back from its long point as the board lies on the saw, as it is drawn.
     *
     * @param upper at the upper edge, for a fence angle; at the upper face, for a blade tilt
     * @param lower at the lower edge or face
     */
    public record Slant(Length upper, Length lower) {
        /** A square end. */
        public static final Slant SQUARE = new Slant(Length.ZERO, Length.ZERO);

        /** How the cut leans that makes a piece's left end. */
        SawSetting.Lean ofLeftEnd() {
            return SawSetting.Lean.of(upper.compareTo(lower));
        }

        /** How the cut leans that makes a piece's right end. */
        SawSetting.Lean ofRightEnd() {
            return SawSetting.Lean.of(lower.compareTo(upper));
        }
    }

    /**
     * One setting of one saw, used for a batch of cuts.
     *
     * @param number from 1, in the order of work
     * @param saw name of the saw
     * @param setting blade and fence
     * @param kind of the saw; null for a cut by hand
     * @param stop from the stop on the left to the long point of the cut; {@link Length#ZERO} for a fresh end and where the
     *     length is marked by hand
     * @param labels pieces cut at this set-up, in order
     * @param byHand how the cut is made when no saw at hand reaches it; null when one does
     */
    public record SetUp(
            int number,
            String saw,
            @Nullable SawKind kind,
            SawSetting setting,
            Length stop,
            List<String> labels,
            @Nullable Message byHand) {
        public SetUp {
            labels = List.copyOf(labels);
        }
    }

    /** A piece that no board can give. */
    public record Uncut(String label, Message why) {}
}
