package borderwright.engine.survey.checks;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.SurveyWords;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * The likely slip behind a reading, in words: what a person would have to have done to get from the value that the other
 * readings imply to the one that was written down.
 *
 * <p>The list of slips is common practice, no source: 1 m, 100 mm or 10 mm out (1 ft or 1 in), a tape held at its 100 mm
 * mark, two digits swapped, one digit taken for another of like shape, the play of a tape's hook, an angle's supplement
 * or complement, a height with the wrong sign.
 */
public final class LikelySlips {
    /** A slip explains a reading when the rest comes within this many standard deviations. */
    private static final double WITHIN_SD = 1.5;
    /** Digits that look alike when written by hand or read from a dirty tape. */
    private static final List<String> ALIKE = List.of("06", "08", "09", "17", "38", "49", "56", "68", "69");

    private static final double HOOK_LEAST_MM = 0.8;
    private static final double HOOK_MOST_MM = 3.5;

    private final SurveyWords words;

    public LikelySlips(SurveyWords words) {
        this.words = words;
    }

    private record Slip(double value, double reach, int rank, String text) {}

    /** The likeliest slip that leads from the value implied to the value read; empty when none fits. */
    public String likely(FieldBook.Entry entry, double implied, double sdImplied) {
        double sd = StrictMath.hypot(sdImplied, entry.sd());
        return switch (entry.kind()) {
            case LENGTH -> best(lengths(entry.measured(), entry.measured() - implied), entry.measured(), implied, sd);
            case HEIGHT -> best(heights(entry.measured(), entry.measured() - implied), entry.measured(), implied, sd);
            case ANGLE -> best(angles(entry.measured()), entry.measured(), implied, sd);
            case STRAIGHT -> "perhaps the line is not straight there";
            case ALONE -> "";
        };
    }

    private static String best(List<Slip> slips, double measured, double implied, double sd) {
        return slips.stream()
                .filter(s -> Math.abs(s.value - measured) >= WITHIN_SD * sd)
                .filter(s -> Math.abs(s.value - implied) <= Math.min(WITHIN_SD * sd, s.reach))
                .min(Comparator.comparingInt(Slip::rank).thenComparingDouble(s -> Math.abs(s.value - implied)))
                .map(s -> "perhaps " + s.text)
                .orElse("");
    }

    private List<Slip> lengths(double measured, double tooLong) {
        List<Slip> slips = steps(measured, tooLong < 0, "short", "long");
        double mark = isInches(measured) ? 25.4 : 100;
        slips.add(new Slip(
                measured - mark,
                mark / 4,
                0,
                "the tape was held at its " + plain(mark) + " mark and that was not taken off"));
        if (Math.abs(tooLong) >= HOOK_LEAST_MM && Math.abs(tooLong) <= HOOK_MOST_MM) {
            slips.add(new Slip(measured - tooLong, 1, 4, "the tape's hook sat badly"));
        }
        digits(measured, slips);
        return slips;
    }

    private List<Slip> heights(double measured, double tooHigh) {
        List<Slip> slips = steps(measured, tooHigh < 0, "low", "high");
        slips.add(new Slip(-measured, Math.abs(measured) / 4, 0, "above was taken for below"));
        digits(measured, slips);
        return slips;
    }

    /** One whole metre, foot or the like too little or too much. */
    private List<Slip> steps(double measured, boolean tooLittle, String little, String much) {
        List<Slip> slips = new ArrayList<>();
        double[] steps = isInches(measured) ? new double[] {304.8, 25.4} : new double[] {1000, 100, 10};
        for (double step : steps) {
            String text = "it was read " + plain(step) + " too " + (tooLittle ? little : much);
            slips.add(new Slip(measured + (tooLittle ? step : -step), step / 4, 1, text));
        }
        return slips;
    }

    private static List<Slip> angles(double measured) {
        List<Slip> slips = new ArrayList<>();
        String read = SurveyWords.degrees(measured);
        slips.add(new Slip(180 - measured, 5, 0, "the gauge showed the supplement: 180 deg less " + read));
        slips.add(new Slip(90 - measured, 5, 0, "the gauge showed the complement: 90 deg less " + read));
        slips.add(new Slip(360 - measured, 5, 0, "the angle was taken on the other side: 360 deg less " + read));
        slips.add(new Slip(measured + 10, 2.5, 1, "it was read 10 deg too small"));
        slips.add(new Slip(measured - 10, 2.5, 1, "it was read 10 deg too large"));
        long tenths = StrictMath.round(measured * 10);
        for (long swapped : swapped(tenths)) {
            String value = SurveyWords.degrees(swapped / 10.0);
            slips.add(new Slip(
                    swapped / 10.0,
                    Math.abs(swapped - tenths) / 40.0,
                    2,
                    "two digits were swapped: " + read + " for " + value));
        }
        return slips;
    }

    private void digits(double measured, List<Slip> slips) {
        if (isInches(measured)) {
            sixteenths(measured, slips);
            return;
        }
        long whole = StrictMath.round(Math.abs(measured));
        if (Math.abs(Math.abs(measured) - whole) > 0.06) {
            return;
        }
        double sign = measured < 0 ? -1 : 1;
        for (long swapped : swapped(whole)) {
            String text = "two digits were swapped: " + written(whole, swapped, sign) + " for "
                    + written(swapped, whole, sign);
            slips.add(new Slip(sign * swapped, Math.abs(swapped - whole) / 4.0, 2, text));
        }
        String read = Long.toString(whole);
        long place = 1;
        for (int i = read.length() - 1; i >= 0; i--, place *= 10) {
            for (String pair : ALIKE) {
                int other = pair.charAt(0) == read.charAt(i) ? 1 : pair.charAt(1) == read.charAt(i) ? 0 : -1;
                if (other >= 0) {
                    long value = whole + (pair.charAt(other) - read.charAt(i)) * place;
                    String text = written(whole, value, sign) + " was read for " + written(value, whole, sign);
                    slips.add(new Slip(sign * value, 0.65 * place, 3, text));
                }
            }
        }
    }

    /** A fraction of an inch miscounted on the tape. */
    private void sixteenths(double measured, List<Slip> slips) {
        for (int part : new int[] {2, 4, 8}) {
            for (int sign : new int[] {-1, 1}) {
                double step = 25.4 / part;
                String text = "it was read 1/" + part + "\" too " + (sign < 0 ? "long" : "short");
                slips.add(new Slip(measured + sign * step, step / 4, 3, text));
            }
        }
    }

    /** The number with each two neighbouring digits swapped, where that changes it. */
    private static List<Long> swapped(long number) {
        List<Long> swapped = new ArrayList<>();
        char[] digits = Long.toString(Math.abs(number)).toCharArray();
        for (int i = 0; i + 1 < digits.length; i++) {
            if (digits[i] != digits[i + 1]) {
                char[] turned = digits.clone();
                turned[i] = digits[i + 1];
                turned[i + 1] = digits[i];
                swapped.add(Long.parseLong(new String(turned)));
            }
        }
        return swapped;
    }

    /** As a person would have written it: in metres to the centimetre where both numbers end so. */
    private static String written(long mm, long other, double sign) {
        String minus = sign < 0 ? "-" : "";
        if (mm % 10 == 0 && other % 10 == 0 && mm >= 1000) {
            return minus + BigDecimal.valueOf(mm / 10, 2).toPlainString() + " m";
        }
        return minus + mm + " mm";
    }

    private String plain(double mm) {
        return mm == 1000 ? "1 m" : mm == 304.8 ? "1 ft" : mm == 25.4 ? "1 in" : StrictMath.round(mm) + " mm";
    }

    /** Whether a length was written in inches: a whole number of sixteenths, and not of millimetres unless so asked. */
    private boolean isInches(double mm) {
        long ticks = Length.ofMm(mm).ticks();
        boolean sixteenths = ticks % (Length.TICKS_PER_INCH / 16) == 0;
        boolean millimetres = ticks % Length.TICKS_PER_MM == 0;
        return sixteenths && (!millimetres || words.lengths().units() == UnitSystem.IMPERIAL);
    }
}
