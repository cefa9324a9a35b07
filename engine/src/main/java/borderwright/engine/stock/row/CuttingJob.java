package borderwright.engine.stock.row;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.CuttingRules;
import borderwright.engine.garden.SawNote;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * All that a cutting plan is made from.
 *
 * @param boards boards in hand
 * @param pieces pieces to cut
 * @param sections measures of the sections
 * @param saws saws at hand; none means that every cut is made by hand
 * @param rules habits at the saw
 */
public record CuttingJob(
        List<BoardInHand> boards,
        List<Piece> pieces,
        List<SectionNote> sections,
        List<SawNote> saws,
        CuttingRules rules) {
    private static final Length KERF_HABIT = Length.ofMm(3);

    public CuttingJob {
        boards = List.copyOf(boards);
        pieces = List.copyOf(pieces);
        sections = List.copyOf(sections);
        saws = List.copyOf(saws);
    }

    /** The widest kerf of all saws, so that any of them may make any cut; 3 mm when there is no saw. */
    public Length kerf() {
        return widestKerf(saws);
    }

    /** The widest kerf of these saws, 3 mm (habit) when there is none. */
    public static Length widestKerf(List<SawNote> saws) {
        return saws.stream()
                .map(s -> s.kerf() != null ? s.kerf() : KERF_HABIT)
                .max(Length::compareTo)
                .orElse(KERF_HABIT);
    }

    /** Length from which an offcut is kept. */
    public Length keepFrom() {
        return rules.keepOrHabit();
    }

    /** The section of a piece or board; null when it is not described. */
    @Nullable
    public SectionNote section(String name) {
        return sections.stream().filter(s -> s.name().equals(name)).findFirst().orElse(null);
    }

    /** A piece as its board sees it, the allowance of a waiting piece left out. */
    public BoardNest.Shape shape(Piece piece) {
        SectionNote section = section(piece.section());
        return new BoardNest.Shape(
                piece.length().ticks(),
                EndShape.of(piece.left(), section, kerf()),
                EndShape.of(piece.right(), section, kerf()),
                section != null && section.mayBeTurned());
    }
}
