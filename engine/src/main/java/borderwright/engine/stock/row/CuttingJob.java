package borderwright.engine.stock.row;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.CuttingSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
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
 * @param rules how the person cuts: trims, allowances, what is kept
 */
public record CuttingJob(
        List<BoardInHand> boards,
        List<Piece> pieces,
        List<SectionSpec> sections,
        List<SawSpec> saws,
        CuttingSpec rules) {
    private static final Length KERF_WITHOUT_SAW = Length.ofMm(3);

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

    /** The widest kerf of these saws, 3 mm when there is none. */
    public static Length widestKerf(List<SawSpec> saws) {
        return saws.stream().map(SawSpec::kerf).max(Length::compareTo).orElse(KERF_WITHOUT_SAW);
    }

    /** Length from which an offcut is kept. */
    public Length keepFrom() {
        return rules.shortestOffcut();
    }

    /** The section of a piece or board; null when it is not described. */
    @Nullable
    public SectionSpec section(String name) {
        return sections.stream().filter(s -> s.name().equals(name)).findFirst().orElse(null);
    }

    /** A piece as its board sees it, the allowance of a waiting piece left out. */
    public BoardNest.Shape shape(Piece piece) {
        SectionSpec section = section(piece.section());
        boolean mayTurn = section != null && section.mayBeTurned();
        return new BoardNest.Shape(
                piece.length().ticks(),
                EndShape.of(piece.left(), section, kerf()),
                EndShape.of(piece.right(), section, kerf()),
                mayTurn);
    }
}
