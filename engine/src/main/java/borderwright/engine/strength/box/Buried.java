package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.soil.Fill;

/**
 * What of a board lies against fill.
 *
 * @param heightMm how much of its width; 0 for none
 * @param depthMm of the middle of that below the fill's surface
 */
public record Buried(double heightMm, double depthMm) {
    public static Buried of(Box box, Fill fill, double bottomMm, double topMm) {
        double rimMm = box.courses().get(box.courses().size() - 1).topMm();
        double surfaceMm = rimMm - fill.belowRimMm();
        double bottom = Math.max(bottomMm, rimMm - box.soilDepthMm());
        double top = Math.min(topMm, surfaceMm);
        return top <= bottom ? new Buried(0, 0) : new Buried(top - bottom, surfaceMm - (top + bottom) / 2);
    }
}
