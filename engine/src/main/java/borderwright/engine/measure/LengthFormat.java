package borderwright.engine.measure;

import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Writes lengths, areas, volumes, weights and angles for the reader, always with their unit, the same in any locale.
 *
 * <p>Rounding is to the nearest, halves away from zero: metric lengths to the millimetre (pieces to 0.1 mm), imperial
 * lengths to 1/16 in, with the fraction reduced and 16/16 carried into the inch and 12 in into the foot.
 *
 * @param units metric or imperial
 */
public record LengthFormat(UnitSystem units) {
    private static final long TICKS_PER_SIXTEENTH = Length.TICKS_PER_INCH / 16;
    private static final long TICKS_PER_TENTH_MM = Length.TICKS_PER_MM / 10;

    /** {@code 1850 mm}, from 10 m {@code 12.345 m}; {@code 6' 0-13/16"}. */
    public String length(double mm) {
        if (units == UnitSystem.IMPERIAL) {
            return feetAndInches(mm);
        }
        return Math.abs(mm) < 9_999.5 ? wholeMm(mm) : site(mm);
    }

    /** A rule of the trade given in millimetres: as it is, or the next whole inch; mm. */
    public double rule(double mm) {
        if (units == UnitSystem.METRIC) {
            return mm;
        }
        long inches = -Math.floorDiv(-Length.ofMm(mm).ticks(), Length.TICKS_PER_INCH);
        return new Length(inches * Length.TICKS_PER_INCH).mm();
    }

    /** The length of a piece: {@code 1217.6 mm}, or in inches only, as a stop is set, {@code 47-15/16"}. */
    public String piece(double mm) {
        return units == UnitSystem.IMPERIAL ? inches(mm) : tenthsMm(mm);
    }

    /** A length on site: {@code 9.605 m}; {@code 31' 6-1/8"}. */
    public String site(double mm) {
        if (units == UnitSystem.IMPERIAL) {
            return feetAndInches(mm);
        }
        long whole = nearest(Length.ofMm(mm).ticks(), Length.TICKS_PER_MM);
        return BigDecimal.valueOf(whole, 3).toPlainString() + " m";
    }

    /** A length bought by the run: {@code 61.2 m}; {@code 201 ft}. */
    public String run(double mm) {
        return units == UnitSystem.IMPERIAL
                ? decimal(mm / 1000 / UnitFactors.M_PER_FOOT, 0) + " ft"
                : decimal(mm / 1000, 1) + " m";
    }

    /** {@code 2.41 m2}; {@code 25.9 sq ft}. */
    public String area(double m2) {
        return units == UnitSystem.IMPERIAL
                ? decimal(m2 / UnitFactors.M2_PER_SQUARE_FOOT, 1) + " sq ft"
                : decimal(m2, 2) + " m2";
    }

    /** {@code 2.43 m3}, under 1 m3 {@code 864 litres}; {@code 3.18 cu yd}, under 1 cu yd {@code 12.4 cu ft}. */
    public String volume(double m3) {
        if (units == UnitSystem.IMPERIAL) {
            return Math.abs(m3) < UnitFactors.M3_PER_CUBIC_YARD
                    ? decimal(m3 / UnitFactors.M3_PER_CUBIC_FOOT, 1) + " cu ft"
                    : decimal(m3 / UnitFactors.M3_PER_CUBIC_YARD, 2) + " cu yd";
        }
        return Math.abs(m3) < 1 ? decimal(m3 * 1000, 0) + " litres" : decimal(m3, 2) + " m3";
    }

    /** {@code 24.3 kg}; {@code 53.6 lb}; from 100 in whole units. */
    public String weight(double kg) {
        double number = units == UnitSystem.IMPERIAL ? kg / UnitFactors.KG_PER_POUND : kg;
        String unit = units == UnitSystem.IMPERIAL ? " lb" : " kg";
        return decimal(number, Math.abs(number) < 100 ? 1 : 0) + unit;
    }

    /** {@code 26.5°}, the same in both systems. */
    public String angle(Angle angle) {
        return decimal(angle.degrees(), 1) + "°";
    }

    private static String wholeMm(double mm) {
        return nearest(Length.ofMm(mm).ticks(), Length.TICKS_PER_MM) + " mm";
    }

    private static String tenthsMm(double mm) {
        long tenths = nearest(Length.ofMm(mm).ticks(), TICKS_PER_TENTH_MM);
        return (tenths % 10 == 0
                        ? Long.toString(tenths / 10)
                        : BigDecimal.valueOf(tenths, 1).toPlainString()) + " mm";
    }

    private static String feetAndInches(double mm) {
        long sixteenths = nearest(Length.ofMm(mm).ticks(), TICKS_PER_SIXTEENTH);
        long feet = Math.abs(sixteenths) / (12 * 16);
        String sign = sixteenths < 0 ? "-" : "";
        String inches = mixed(Math.abs(sixteenths) % (12 * 16)) + "\"";
        return sign + (feet == 0 ? inches : feet + "' " + inches);
    }

    private static String inches(double mm) {
        long sixteenths = nearest(Length.ofMm(mm).ticks(), TICKS_PER_SIXTEENTH);
        return (sixteenths < 0 ? "-" : "") + mixed(Math.abs(sixteenths)) + "\"";
    }

    /** {@code 4-1/2}, {@code 4}, {@code 1/2} or {@code 0}. */
    private static String mixed(long sixteenths) {
        long whole = sixteenths / 16;
        long over = sixteenths % 16;
        if (over == 0) {
            return Long.toString(whole);
        }
        long shared = Long.lowestOneBit(over);
        String fraction = over / shared + "/" + 16 / shared;
        return whole == 0 ? fraction : whole + "-" + fraction;
    }

    /** {@code ticks / unit} to the nearest whole number, halves away from zero. */
    private static long nearest(long ticks, long unit) {
        long magnitude = (2 * Math.abs(ticks) + unit) / (2 * unit);
        return ticks < 0 ? -magnitude : magnitude;
    }

    private static String decimal(double number, int places) {
        BigDecimal rounded = BigDecimal.valueOf(number).setScale(places, RoundingMode.HALF_UP);
        return rounded.toPlainString();
    }
}
