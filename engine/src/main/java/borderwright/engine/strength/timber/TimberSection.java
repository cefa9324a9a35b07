package borderwright.engine.strength.timber;

/**
 * A rectangle of timber.
 *
 * @param thicknessMm lesser side of a board
 * @param widthMm greater side
 */
public record TimberSection(double thicknessMm, double widthMm) {
    public TimberSection {
        if (!(thicknessMm > 0 && widthMm > 0)) {
            throw new IllegalArgumentException("a section has two sides above 0, got " + thicknessMm + " x " + widthMm);
        }
    }

    public double areaMm2() {
        return thicknessMm * widthMm;
    }

    /** Second moment for bending through the thickness, as a board bows: w t^3 / 12, mm4. */
    public double flatMm4() {
        return widthMm * thicknessMm * thicknessMm * thicknessMm / 12;
    }

    /** Second moment for bending through the width: t w^3 / 12, mm4. */
    public double edgeMm4() {
        return thicknessMm * widthMm * widthMm * widthMm / 12;
    }

    public double flatModulusMm3() {
        return widthMm * thicknessMm * thicknessMm / 6;
    }

    public double edgeModulusMm3() {
        return thicknessMm * widthMm * widthMm / 6;
    }

    /** Torsion constant of a rectangle, mm4 (Roark's Formulas, 8th ed., table 10.7, case 4; from memory). */
    public double torsionMm4() {
        double a = Math.max(thicknessMm, widthMm) / 2;
        double b = Math.min(thicknessMm, widthMm) / 2;
        return a * b * b * b * (16 / 3.0 - 3.36 * b / a * (1 - StrictMath.pow(b / a, 4) / 12));
    }
}
