package borderwright.engine.survey;

import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.geometry.Point;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

/**
 * An invented border with measures as a person takes them: every side, some diagonals, some gauge angles, each with an
 * error drawn from its own sureness; and, if requested, one reading with a slip in it.
 */
public final class SeededSurvey {
    private final SplittableRandom random;
    private final List<Point> truth = new ArrayList<>();
    private final List<GivenMeasure> measures = new ArrayList<>();
    private final double noise;
    private final List<Integer> slipped = new ArrayList<>();

    public SeededSurvey(long seed, double noise) {
        this.random = new SplittableRandom(seed);
        this.noise = noise;
        int corners = 5 + random.nextInt(4);
        for (int i = 0; i < corners; i++) {
            double bearing = 2 * StrictMath.PI * (i + 0.6 * (random.nextDouble() - 0.5)) / corners;
            double reach = 2000 + 4000 * random.nextDouble();
            truth.add(new Point(reach * StrictMath.cos(bearing), reach * StrictMath.sin(bearing)));
        }
        measure();
    }

    private void measure() {
        int n = truth.size();
        for (int i = 0; i < n; i++) {
            tape(i, (i + 1) % n);
        }
        List<int[]> diagonals = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            for (int j = i + 2; j < n; j++) {
                if (i > 0 || j < n - 1) {
                    diagonals.add(new int[] {i, j});
                }
            }
        }
        int taken = n - 3 + 3 + random.nextInt(2);
        for (int k = 0; k < taken && !diagonals.isEmpty(); k++) {
            int[] d = diagonals.remove(random.nextInt(diagonals.size()));
            tape(d[0], d[1]);
        }
        for (int i = 0; i < n; i++) {
            if (random.nextInt(2) == 0) {
                angle(i);
            }
        }
    }

    public static String name(int corner) {
        return String.valueOf((char) ('A' + corner));
    }

    private void tape(int a, int b) {
        double length = truth.get(a).distanceMm(truth.get(b));
        double sd = Instrument.tapeFor(length).lengthSdMm(length);
        double read = noise == 0 ? length : StrictMath.round(length + noise * sd * random.nextGaussian());
        measures.add(GivenMeasure.GivenTapeLength.of(SurveyExamples.names(name(a) + " " + name(b)), Length.ofMm(read)));
    }

    private void angle(int at) {
        int n = truth.size();
        Point before = truth.get((at + n - 1) % n).minus(truth.get(at));
        Point after = truth.get((at + 1) % n).minus(truth.get(at));
        double inside = StrictMath.toDegrees(StrictMath.atan2(after.cross(before), after.dot(before)));
        inside = inside < 0 ? inside + 360 : inside;
        // a gauge shows up to 180 degrees; some people write the reflex angle
        double shown = inside > 180 && random.nextBoolean() ? 360 - inside : inside;
        double read = noise == 0 ? shown : StrictMath.round(10 * (shown + noise * 0.5 * random.nextGaussian())) / 10.0;
        measures.add(new GivenMeasure.GivenGaugeAngle(
                SurveyExamples.names(name((at + n - 1) % n) + " " + name(at) + " " + name((at + 1) % n)),
                Angle.ofDegrees(read),
                null,
                null));
    }

    /** Puts a slip of a kind that people make into one reading. */
    public SeededSurvey withSlip() {
        int chosen = random.nextInt(measures.size());
        slipped.add(chosen);
        GivenMeasure measure = measures.get(chosen);
        if (measure instanceof GivenMeasure.GivenTapeLength tape) {
            double slip = slip(StrictMath.round(tape.reads().mm()));
            measures.set(chosen, GivenMeasure.GivenTapeLength.of(tape.tape(), Length.ofMm(slip)));
        } else if (measure instanceof GivenMeasure.GivenGaugeAngle gauge) {
            double read = gauge.reads().degrees();
            boolean supplement = read < 170 && Math.abs(90 - read) > 5 && random.nextBoolean();
            double slip = supplement ? 180 - read : read > 100 ? read - 10 : read + 10;
            measures.set(chosen, new GivenMeasure.GivenGaugeAngle(gauge.angle(), Angle.ofDegrees(slip), null, null));
        }
        return this;
    }

    /** Makes one tape read 30 to 100 mm too much or too little: many standard deviations, and no rule of how people slip. */
    public SeededSurvey withTapeOff() {
        List<Integer> tapes = new ArrayList<>();
        for (int i = 0; i < measures.size(); i++) {
            if (measures.get(i) instanceof GivenMeasure.GivenTapeLength && !slipped.contains(i)) {
                tapes.add(i);
            }
        }
        int chosen = tapes.get(random.nextInt(tapes.size()));
        GivenMeasure.GivenTapeLength tape = (GivenMeasure.GivenTapeLength) measures.get(chosen);
        double slip = (random.nextBoolean() ? 1 : -1) * random.nextDouble(30, 100);
        measures.set(
                chosen,
                GivenMeasure.GivenTapeLength.of(
                        tape.tape(), Length.ofMm(StrictMath.rint(tape.reads().mm() + slip))));
        slipped.add(chosen);
        return this;
    }

    private double slip(long read) {
        double sign = random.nextBoolean() ? 1 : -1;
        return switch (random.nextInt(4)) {
            case 0 -> read + sign * 1000;
            case 1 -> read + sign * 100;
            case 2 -> read + sign * 60;
            default -> swapped(read);
        };
    }

    private double swapped(long read) {
        char[] digits = Long.toString(read).toCharArray();
        for (int i = 1; i + 1 < digits.length; i++) {
            // the last digit is a millimetre: a swap there is no more than the tape's own error
            if (digits[i] != digits[i - 1]) {
                char first = digits[i - 1];
                digits[i - 1] = digits[i];
                digits[i] = first;
                return Math.max(Long.parseLong(new String(digits)), 50);
            }
        }
        return read + 100.0;
    }

    public SurveySpec notes() {
        StringBuilder corners = new StringBuilder("A");
        for (int i = 1; i < truth.size(); i++) {
            corners.append(' ').append(name(i));
        }
        return SurveyResolver.survey(GivenSurvey.builder(SurveyExamples.names(corners.toString()))
                .measures(measures)
                .build());
    }

    public List<Point> truth() {
        return truth;
    }

    /** Field path of the reading with the first slip. */
    public String slipWhere() {
        return slipsWhere().get(0);
    }

    /** Field paths of the readings with slips. */
    public List<String> slipsWhere() {
        return slipped.stream()
                .map(number -> "survey.measures[" + number + "].reads")
                .toList();
    }
}
