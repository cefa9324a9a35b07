package borderwright.engine.assembly;

import borderwright.engine.buildup.parts.PieceLabels;
import java.util.ArrayList;
import java.util.List;

/**
 * One wall or divider as it lies on the bench, the face that is worked on up.
 *
 * <p>Walls lie outside face up on their uprights: the screws are driven from there. Dividers lie with their marked face up.
 *
 * @param box name of its box
 * @param kind wall or divider
 * @param index of the side, or of the divider, 0 first
 * @param face the face that is worked on
 * @param hook what the bottom board's left end is, where the tape hooks
 * @param parts everything on it
 * @param fixings in the order of their places
 */
public record WallBench(
        String box, Kind kind, int index, WorkFace face, HookEnd hook, Parts parts, List<FixingLine> fixings) {
    public WallBench {
        fixings = List.copyOf(fixings);
    }

    /** Wall or divider. */
    public enum Kind {
        WALL,
        DIVIDER
    }

    /**
     * Pieces, each list from left to right and from the bottom up.
     *
     * @param thicknessMm of the boards
     * @param boards course by course
     * @param uprights behind or beside the boards
     * @param crosspieces that meet the inner face
     * @param caps on top
     */
    public record Parts(
            double thicknessMm,
            List<BenchBoard> boards,
            List<BenchUpright> uprights,
            List<BenchCrosspiece> crosspieces,
            List<BenchCap> caps) {
        public Parts {
            boards = List.copyOf(boards);
            uprights = List.copyOf(uprights);
            crosspieces = List.copyOf(crosspieces);
            caps = List.copyOf(caps);
        }

        /** Where boards of one course are joined, course by course. */
        public List<Double> joints() {
            List<Double> joints = new ArrayList<>();
            for (int i = 0; i + 1 < boards.size(); i++) {
                if (boards.get(i).course() == boards.get(i + 1).course()) {
                    joints.add(boards.get(i + 1).face().fromMm());
                }
            }
            return joints;
        }
    }

    /** {@code a} for the first side, {@code 1} for the first divider. */
    public String mark() {
        return kind == Kind.WALL ? PieceLabels.letter(index) : Integer.toString(index + 1);
    }

    /** Labels of all pieces: uprights, ties and dividers, boards, capping. */
    public List<String> labels() {
        List<String> labels = new ArrayList<>();
        parts.uprights.forEach(upright -> labels.add(upright.label()));
        parts.crosspieces.forEach(cross -> labels.add(cross.label()));
        parts.boards.forEach(board -> labels.add(board.label()));
        parts.caps.forEach(cap -> labels.add(cap.label()));
        return labels;
    }

    /** Uprights that are screwed on at the bench. */
    public List<BenchUpright> carried() {
        return parts.uprights.stream()
                .filter(upright -> upright.place() == BenchUpright.Place.CARRIED)
                .toList();
    }

    /** What is laid under an upright so that the boards lie level on all of them, mm; 0 for the deepest. */
    public double packMm(BenchUpright upright) {
        double deepest =
                carried().stream().mapToDouble(BenchUpright::depthMm).max().orElse(0);
        return deepest - upright.depthMm();
    }

    /** From its leftmost board end to its rightmost, on the face. */
    public Span faceSpan() {
        return parts.boards.stream().map(BenchBoard::face).reduce(Span::with).orElseThrow();
    }

    /** Height of the boards. */
    public double heightMm() {
        return parts.boards.stream().mapToDouble(b -> b.height().toMm()).max().orElseThrow();
    }
}
