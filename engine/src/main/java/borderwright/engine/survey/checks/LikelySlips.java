package borderwright.engine.survey.checks;

import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.fieldbook.ReadingMessage;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The likely slip behind a reading: what a person would have to have done to get from the value that the other readings
 * imply to the one that was written down.
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

    private final UnitSystem units;

    /** Slips with a tape in these units, where a length fits both systems. */
    public LikelySlips(UnitSystem units) {
        this.units = units;
    }

    /**
     * One possible slip.
     *
     * @param value what would have been meant
     * @param reach how near the implied value has to come to it
     * @param rank lower is likelier
     */
    private record Slip(double value, double reach, int rank, Message message) {}

    /** The likeliest slip that leads from the value implied to the value read; empty when none fits. */
    public Optional<Message> likely(FieldBook.Entry entry, double implied, double sdImplied) {
        double sd = StrictMath.hypot(sdImplied, entry.sd());
        return switch (entry.kind()) {
            case LENGTH ->
                best(lengths(entry.measured(), entry.measured() - implied), entry.measured(), implied, sd)
                        .or(() -> alongACurve(entry, implied, sd));
            case HEIGHT -> best(heights(entry.measured(), entry.measured() - implied), entry.measured(), implied, sd);
            case ANGLE -> best(angles(entry.measured()), entry.measured(), implied, sd);
            case STRAIGHT -> Optional.of(SlipMessage.SLIP_NOT_STRAIGHT.of());
            case ALONE -> Optional.empty();
        };
    }

    /** Short lengths along a curve add up to more than the line between their ends. */
    private static Optional<Message> alongACurve(FieldBook.Entry entry, double implied, double sd) {
        boolean isInChain = entry.name().code() == ReadingMessage.READING_IN_CHAIN;
        return isInChain && entry.measured() - implied > WITHIN_SD * sd
                ? Optional.of(SlipMessage.SLIP_CHAIN_ALONG_A_CURVE.of())
                : Optional.empty();
    }

    private static Optional<Message> best(List<Slip> slips, double measured, double implied, double sd) {
        return slips.stream()
                .filter(s -> Math.abs(s.value - measured) >= WITHIN_SD * sd)
                .filter(s -> Math.abs(s.value - implied) <= Math.min(WITHIN_SD * sd, s.reach))
                .min(Comparator.comparingInt(Slip::rank).thenComparingDouble(s -> Math.abs(s.value - implied)))
                .map(Slip::message);
    }

    private List<Slip> lengths(double measured, double tooLong) {
        List<Slip> slips = steps(measured, tooLong < 0, "short", "long");
        Step start = isInches(measured) ? Step.INCH : Step.HUNDRED;
        slips.add(
                new Slip(measured - start.mm, start.mm / 4, 0, SlipMessage.SLIP_TAPE_HELD_AT.of(start.inTemplates())));
        if (Math.abs(tooLong) >= HOOK_LEAST_MM && Math.abs(tooLong) <= HOOK_MOST_MM) {
            slips.add(new Slip(measured - tooLong, 1, 4, SlipMessage.SLIP_HOOK.of()));
        }
        digits(measured, slips);
        return slips;
    }

    private List<Slip> heights(double measured, double tooHigh) {
        List<Slip> slips = steps(measured, tooHigh < 0, "low", "high");
        slips.add(new Slip(-measured, Math.abs(measured) / 4, 0, SlipMessage.SLIP_ABOVE_FOR_BELOW.of()));
        digits(measured, slips);
        return slips;
    }

    /** A whole unit of a tape that is easily read too little or too much. */
    private enum Step {
        METRE(1000),
        HUNDRED(100),
        TEN(10),
        FOOT(304.8),
        INCH(25.4);

        private final double mm;

        Step(double mm) {
            this.mm = mm;
        }

        String inTemplates() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** One whole metre, foot or the like too little or too much. */
    private List<Slip> steps(double measured, boolean tooLittle, String little, String much) {
        List<Slip> slips = new ArrayList<>();
        List<Step> steps =
                isInches(measured) ? List.of(Step.FOOT, Step.INCH) : List.of(Step.METRE, Step.HUNDRED, Step.TEN);
        for (Step step : steps) {
            Message message = SlipMessage.SLIP_STEP.of(step.inTemplates(), tooLittle ? little : much);
            slips.add(new Slip(measured + (tooLittle ? step.mm : -step.mm), step.mm / 4, 1, message));
        }
        return slips;
    }

    private static List<Slip> angles(double measured) {
        List<Slip> slips = new ArrayList<>();
        slips.add(new Slip(180 - measured, 5, 0, SlipMessage.SLIP_SUPPLEMENT.of(measured)));
        slips.add(new Slip(90 - measured, 5, 0, SlipMessage.SLIP_COMPLEMENT.of(measured)));
        slips.add(new Slip(360 - measured, 5, 0, SlipMessage.SLIP_OTHER_SIDE.of(measured)));
        slips.add(new Slip(measured + 10, 2.5, 1, SlipMessage.SLIP_TEN_DEGREES.of("small")));
        slips.add(new Slip(measured - 10, 2.5, 1, SlipMessage.SLIP_TEN_DEGREES.of("large")));
        long tenths = StrictMath.round(measured * 10);
        for (long swapped : swapped(tenths)) {
            double meant = swapped / 10.0;
            Message message = SlipMessage.SLIP_DEGREES_SWAPPED.of(measured, meant);
            slips.add(new Slip(meant, Math.abs(swapped - tenths) / 40.0, 2, message));
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
        long sign = measured < 0 ? -1 : 1;
        for (long swapped : swapped(whole)) {
            Message message = isWrittenInMetres(whole, swapped)
                    ? SlipMessage.SLIP_DIGITS_SWAPPED_IN_METRES.of(sign * whole / 1000.0, sign * swapped / 1000.0)
                    : SlipMessage.SLIP_DIGITS_SWAPPED.of(sign * whole, sign * swapped);
            slips.add(new Slip(sign * swapped, Math.abs(swapped - whole) / 4.0, 2, message));
        }
        misread(whole, sign, slips);
    }

    /** One digit taken for another of like shape. */
    private static void misread(long whole, long sign, List<Slip> slips) {
        String read = Long.toString(whole);
        long place = 1;
        for (int i = read.length() - 1; i >= 0; i--, place *= 10) {
            for (String pair : ALIKE) {
                int other = pair.charAt(0) == read.charAt(i) ? 1 : pair.charAt(1) == read.charAt(i) ? 0 : -1;
                if (other >= 0) {
                    long meant = whole + (pair.charAt(other) - read.charAt(i)) * place;
                    Message message = isWrittenInMetres(whole, meant)
                            ? SlipMessage.SLIP_DIGIT_MISREAD_IN_METRES.of(sign * whole / 1000.0, sign * meant / 1000.0)
                            : SlipMessage.SLIP_DIGIT_MISREAD.of(sign * whole, sign * meant);
                    slips.add(new Slip(sign * meant, 0.65 * place, 3, message));
                }
            }
        }
    }

    /** A fraction of an inch miscounted on the tape. */
    private static void sixteenths(double measured, List<Slip> slips) {
        for (int parts : new int[] {2, 4, 8}) {
            for (int sign : new int[] {-1, 1}) {
                double step = 25.4 / parts;
                Message message = SlipMessage.SLIP_INCH_FRACTION.of(parts, sign < 0 ? "long" : "short");
                slips.add(new Slip(measured + sign * step, step / 4, 3, message));
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

    /** A person writes metres to the centimetre where both numbers end so. */
    private static boolean isWrittenInMetres(long mm, long other) {
        return mm % 10 == 0 && other % 10 == 0 && mm >= 1000 && other >= 1000;
    }

    /** Whether a length was written in inches: a whole number of sixteenths, and not of millimetres unless so asked. */
    private boolean isInches(double mm) {
        long ticks = Length.ofMm(mm).ticks();
        boolean sixteenths = ticks % (Length.TICKS_PER_INCH / 16) == 0;
        boolean millimetres = ticks % Length.TICKS_PER_MM == 0;
        return sixteenths && (!millimetres || units == UnitSystem.IMPERIAL);
    }
}
