package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.FillingSpec.FinishSpec;
import borderwright.engine.garden.SectionSpec;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Areas and litres of what is brushed on. */
record Brushwork(Map<String, SectionSpec> sections, Optional<FinishSpec> spec) {
    /** m2 of end grain that a litre of preservative wets in one coat, and coats (common practice, no source). */
    private static final double END_GRAIN_M2_PER_LITRE = 4;

    private static final int END_COATS = 2;
    private static final double MM2_PER_M2 = 1e6;

    FinishPlan of(List<Box> boxes) {
        double area = 0;
        double litresOneCoat = 0;
        int ends = 0;
        double endsMm2 = 0;
        for (Box box : boxes) {
            for (Piece piece : box.pieces()) {
                SectionSpec section = sections.get(piece.section());
                if (section == null) {
                    continue;
                }
                double outer = outerM2(piece, section);
                area += outer;
                if (spec.isPresent()) {
                    litresOneCoat += outer / spec.get().m2PerLitre(section.surface());
                }
                if (section.isTreated()) {
                    ends += 2;
                    endsMm2 += 2 * section.thickness().mm() * section.width().mm();
                }
            }
        }
        int coats = spec.map(FinishSpec::coats).orElse(0);
        return new FinishPlan(
                area, coats, litresOneCoat * coats, ends, endsMm2 / MM2_PER_M2 * END_COATS / END_GRAIN_M2_PER_LITRE);
    }

    /** The outer face of a wall board; of a capping its top and its two edges. */
    private static double outerM2(Piece piece, SectionSpec section) {
        double length = piece.length().mm();
        return switch (piece.role()) {
            case WALL -> length * section.width().mm() / MM2_PER_M2;
            case CAPPING ->
                length * (section.width().mm() + 2 * section.thickness().mm()) / MM2_PER_M2;
            case DIVIDER, POST, BRACE, TIE, BEARER, LEG, SLAT -> 0;
        };
    }
}
