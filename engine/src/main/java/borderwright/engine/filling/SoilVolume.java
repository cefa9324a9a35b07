package borderwright.engine.filling;

import borderwright.engine.buildup.Box;
import borderwright.engine.buildup.Piece;
import borderwright.engine.garden.SoilWish;
import borderwright.engine.geometry.Ring;

/**
 * Soil for one box.
 *
 * @param growingM2 area inside the walls, m2
 * @param filledM3 volume to fill once settled, m3
 * @param orderedM3 loose volume to order, settlement included, m3
 */
public record SoilVolume(double growingM2, double filledM3, double orderedM3) {
    private static final double MM2_PER_M2 = 1e6;
    private static final double MM3_PER_M3 = 1e9;

    /** Soil for a box as built. */
    public static SoilVolume of(Box box, SoilWish wish) {
        double insideMm2 = box.inside().stream().mapToDouble(Ring::areaMm2).sum();
        double depthMm = Math.max(0, box.soilDepthMm() - wish.belowRimMm());
        double bottomMm = box.plan().bedMm() + box.plan().platformMm();
        double woodMm3 = box.pieces().stream()
                .filter(SoilVolume::standsInTheSoil)
                .mapToDouble(piece -> withinMm3(piece, bottomMm, bottomMm + depthMm))
                .sum();
        double filledM3 = Math.max(0, insideMm2 * depthMm - woodMm3) / MM3_PER_M3;
        return new SoilVolume(insideMm2 / MM2_PER_M2, filledM3, filledM3 * (1 + wish.settlement()));
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
