package borderwright.engine.filling;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.geometry.Ring;
import java.util.ArrayList;
import java.util.List;

/**
 * What fills one planter, all layers together.
 *
 * @param planter its name
 * @param box name of its box
 * @param growingM2 area inside the walls, m2
 * @param depthMm from the bed or floor to the top of the soil, mm
 * @param filledM3 volume to fill once settled, m3
 * @param orderedM3 loose volume to order, settlement included, m3
 */
public record SoilVolume(
        String planter, String box, double growingM2, double depthMm, double filledM3, double orderedM3) {
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_M3 = 1e9;

    /**
     * Soil for the planters of a box as built.
     *
     * @param leftM3 ground left standing inside its walls, m3; shared out by area
     */
    public static List<SoilVolume> of(Box box, SoilSpec spec, double leftM3) {
        double allMm2 = box.inside().stream().mapToDouble(Ring::areaMm2).sum();
        double depthMm = Math.max(0, box.soilDepthMm() - spec.belowRimMm());
        double bottomMm = box.plan().bedMm() + box.plan().platformMm();
        List<SoilVolume> planters = new ArrayList<>();
        for (int i = 0; i < box.inside().size(); i++) {
            String planter = box.plan().planters().get(i);
            double areaMm2 = box.inside().get(i).areaMm2();
            double woodMm3 = box.pieces().stream()
                    .filter(piece -> standsInTheSoil(piece) && piece.planter().equals(planter))
                    .mapToDouble(piece -> withinMm3(piece, bottomMm, bottomMm + depthMm))
                    .sum();
            double leftMm3 = allMm2 > 0 ? leftM3 * MM3_PER_M3 * areaMm2 / allMm2 : 0;
            double filledM3 = Math.max(0, areaMm2 * depthMm - woodMm3 - leftMm3) / MM3_PER_M3;
            planters.add(new SoilVolume(
                    planter, box.plan().name(), areaMm2 / MM2_PER_M2, depthMm, filledM3, spec.loose(filledM3)));
        }
        return planters;
    }

    private static boolean standsInTheSoil(Piece piece) {
        return switch (piece.role()) {
            case POST, BRACE, TIE -> true;
            case WALL, DIVIDER, BEARER, LEG, SLAT, CAPPING -> false;
        };
    }

    private static double withinMm3(Piece piece, double bottomMm, double topMm) {
        double heightMm =
                Math.min(piece.place().topMm(), topMm) - Math.max(piece.place().bottomMm(), bottomMm);
        return heightMm <= 0 ? 0 : heightMm * piece.place().plan().areaMm2();
    }
}
