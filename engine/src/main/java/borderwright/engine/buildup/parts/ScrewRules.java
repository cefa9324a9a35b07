package borderwright.engine.buildup.parts;

import borderwright.engine.garden.BuildSpec.ScrewSize;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import java.util.Optional;

/**
 * Which screw holds a board of a given thickness, and the holes it wants.
 *
 * <p>Length: 2.5 times the fixed board, up to the next size sold, but so that its point stays inside the piece behind.
 * Thread diameter by thickness. Pilot hole 80 % of the core, which is 0.64 of the thread; clearance hole 0.5 mm over
 * the thread; countersink twice the thread (all common practice, no source; the root of a 5 mm screw is 3.2 mm in
 * EN 1995-1-1 worked examples). Names are those of goods in price lists: {@code screw 5 x 70}, {@code screw #10 x 3-1/2
 * in}; a numbered screw's thread is 0.060 in + 0.013 in x number (ASME B18.6.1; 2-1/4 and 2-3/4 in are among its standard
 * lengths, from memory).
 */
public final class ScrewRules {
    private static final double TIMES_THICKNESS = 2.5;

    /** Wood left beyond the point, mm. */
    private static final double COVER_MM = 2;

    /** Under a strap screw's point, mm; the strap itself adds its own thickness. */
    private static final double STRAP_COVER_MM = 4;

    /** Wood is measured to this. */
    private static final double FIT_MM = 1e-6;

    private static final double LEAST_POINT_DIAMETERS = 6;
    private static final double CORE_OF_THREAD = 0.64;
    private static final double[] METRIC_LENGTHS_MM = {
        25, 30, 35, 40, 45, 50, 60, 70, 80, 90, 100, 120, 140, 160, 180, 200, 240, 280
    };
    private static final double[] INCH_LENGTHS = {1, 1.25, 1.5, 1.75, 2, 2.25, 2.5, 2.75, 3, 3.5, 4, 5, 6, 8, 10};

    private final UnitSystem units;

    public ScrewRules(UnitSystem units) {
        this.units = units;
    }

    /**
     * A screw and its holes.
     *
     * @param item name on the shopping list
     * @param diameterMm thread diameter
     * @param lengthMm length
     */
    public record Screw(String item, double diameterMm, double lengthMm) {
        /** To the half millimetre that drills are sold in. */
        double pilotMm() {
            return StrictMath.rint(2 * 0.8 * CORE_OF_THREAD * diameterMm) / 2;
        }

        double clearanceMm() {
            return diameterMm == 0 ? 0 : StrictMath.rint(2 * (diameterMm + 0.5)) / 2;
        }

        double countersinkMm() {
            return StrictMath.rint(2 * diameterMm);
        }
    }

    /** The screw through a wall: of the size that is requested, else by the wall's thickness. */
    public Screw screw(double fixedMm, double behindMm, Optional<ScrewSize> requested) {
        return requested
                .map(size -> named(size.diameter().mm(), size.length().mm()))
                .orElseGet(() -> screw(fixedMm, behindMm));
    }

    /**
     * The screw for a board by its thickness.
     *
     * @param fixedMm thickness of the piece under the head
     * @param behindMm wood behind it in the screw's direction
     */
    public Screw screw(double fixedMm, double behindMm) {
        double mostMm = fixedMm + behindMm - COVER_MM;
        if (units == UnitSystem.IMPERIAL) {
            int number = fixedMm <= 20 ? 8 : fixedMm <= 42 ? 10 : 14;
            return deepEnough(number, fixedMm, mostMm);
        }
        double diameter = fixedMm <= 20 ? 4 : fixedMm <= 30 ? 5 : 6;
        return named(diameter, ladder(METRIC_LENGTHS_MM, TIMES_THICKNESS * fixedMm, mostMm));
    }

    /**
     * A screw of that number or the next thinner one: a point that stands less than 6 diameters in the piece behind bears
     * nothing sideways by the NDS, 12.1.5.6.
     */
    private static Screw deepEnough(int number, double fixedMm, double mostMm) {
        Screw screw = numberedScrew(number, fixedMm, mostMm);
        boolean shallow = screw.lengthMm() - fixedMm < LEAST_POINT_DIAMETERS * screw.diameterMm();
        return shallow && number > 8 ? deepEnough(number == 14 ? 10 : 8, fixedMm, mostMm) : screw;
    }

    /** The screw itself where its point stays in the wood that it meets, else the longest that does. */
    public Screw fit(Screw screw, double fixedMm, double behindMm) {
        return screw.lengthMm() <= fixedMm + behindMm - COVER_MM + FIT_MM ? screw : screw(fixedMm, behindMm);
    }

    /** For a corner strap on an upright (common practice, no source). */
    public Screw strapScrew() {
        return units == UnitSystem.IMPERIAL
                ? new Screw(
                        numbered(8, 1.25),
                        (0.060 + 0.013 * 8) * UnitFactors.MM_PER_INCH,
                        1.25 * UnitFactors.MM_PER_INCH)
                : named(4, 30);
    }

    /** For a strap on the inner face of a board: no longer than leaves some wood before its outer face. */
    public Screw strapScrew(double boardMm) {
        Screw screw = strapScrew();
        if (screw.lengthMm() <= boardMm - STRAP_COVER_MM) {
            return screw;
        }
        return units == UnitSystem.IMPERIAL
                ? new Screw(numbered(8, 0.75), screw.diameterMm(), 0.75 * UnitFactors.MM_PER_INCH)
                : named(4, 20);
    }

    private static Screw numberedScrew(int number, double fixedMm, double mostMm) {
        double longestSold = number == 8 ? 3 : number == 10 ? 3.5 : 6;
        double inches = ladder(
                INCH_LENGTHS,
                TIMES_THICKNESS * fixedMm / UnitFactors.MM_PER_INCH,
                StrictMath.min(longestSold, mostMm / UnitFactors.MM_PER_INCH));
        return new Screw(
                numbered(number, inches),
                (0.060 + 0.013 * number) * UnitFactors.MM_PER_INCH,
                inches * UnitFactors.MM_PER_INCH);
    }

    private Screw named(double diameterMm, double lengthMm) {
        if (units == UnitSystem.IMPERIAL) {
            int number = (int) StrictMath.rint((diameterMm / UnitFactors.MM_PER_INCH - 0.060) / 0.013);
            return new Screw(numbered(number, lengthMm / UnitFactors.MM_PER_INCH), diameterMm, lengthMm);
        }
        return new Screw("screw " + bare(diameterMm) + " x " + bare(lengthMm), diameterMm, lengthMm);
    }

    /** The least size at or above {@code wanted}, or the greatest at or below {@code most} where that is less. */
    private static double ladder(double[] sizes, double wanted, double most) {
        double chosen = sizes[0];
        for (double size : sizes) {
            if (size > most) {
                return chosen;
            }
            chosen = size;
            if (size >= wanted) {
                return chosen;
            }
        }
        return chosen;
    }

    private static String numbered(int number, double inches) {
        String mixed = new LengthFormat(UnitSystem.IMPERIAL).piece(inches * UnitFactors.MM_PER_INCH);
        return "screw #" + number + " x " + mixed.replace("\"", " in");
    }

    private static String bare(double mm) {
        String text = new LengthFormat(UnitSystem.METRIC).piece(mm);
        return text.substring(0, text.length() - " mm".length());
    }
}
