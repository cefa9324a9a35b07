package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SectionSpec;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Weights of pieces and boxes. */
public final class Weights {
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_M3 = 1e9;

    private Weights() {}

    /** Weight of a piece as it arrives, kg; 0 where its section is not described. */
    public static double pieceKg(Piece piece, Map<String, SectionSpec> sections) {
        SectionSpec section = sections.get(piece.section());
        return section == null ? 0 : piece.place().volumeMm3() / MM3_PER_M3 * section.densityKgPerM3();
    }

    /** How many carry a weight at the given lift each; at least 1. */
    public static int people(double kg, double liftKg) {
        return Math.max(1, (int) Math.ceil(kg / liftKg - 1e-9));
    }

    static List<BoxWeight> of(
            List<Box> boxes,
            List<SoilVolume> planters,
            Map<String, SectionSpec> sections,
            double wetKgPerM3,
            double liftKg) {
        List<BoxWeight> weights = new ArrayList<>();
        for (Box box : boxes) {
            double wood = 0;
            double heaviest = 0;
            String label = "";
            for (Piece piece : box.pieces()) {
                double kg = pieceKg(piece, sections);
                wood += kg;
                if (kg > heaviest) {
                    heaviest = kg;
                    label = piece.label();
                }
            }
            double fill = planters.stream()
                            .filter(p -> p.box().equals(box.plan().name()))
                            .mapToDouble(SoilVolume::filledM3)
                            .sum()
                    * wetKgPerM3;
            double areaM2 = box.plan().outline().areaMm2() / MM2_PER_M2;
            weights.add(new BoxWeight(
                    box.plan().name(), wood, label, heaviest, fill, (wood + fill) / areaM2, people(wood, liftKg)));
        }
        return weights;
    }
}
