package borderwright.engine.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * Earliest and latest times of activities.
 *
 * <p>Forward pass: an activity starts when the last that it waits for has ended. Backward pass: it must end before the first of
 * those that wait for it must start. The difference is its slack; without slack it is critical.
 *
 * @param times one for each activity, in order
 * @param duration of the whole
 */
public record CriticalPath(List<Times> times, double duration) {
    private static final double SAME = 1e-9;

    public CriticalPath {
        times = List.copyOf(times);
    }

    /**
     * One activity.
     *
     * @param duration its duration, any unit
     * @param after indices of the activities that it waits for, each less than its own
     */
    public record Activity(double duration, List<Integer> after) {
        public Activity {
            after = List.copyOf(after);
        }
    }

    /** Earliest start and end, latest start and end, in the unit of the durations. */
    public record Times(double earlyStart, double earlyEnd, double lateStart, double lateEnd) {
        public double slack() {
            return lateStart - earlyStart;
        }

        public boolean isCritical() {
            return slack() < SAME;
        }
    }

    /** Times of activities that are in an order in which each comes after all that it waits for. */
    public static CriticalPath of(List<Activity> activities) {
        int n = activities.size();
        double[] earlyEnd = new double[n];
        double end = 0;
        for (int i = 0; i < n; i++) {
            double start = 0;
            for (int before : activities.get(i).after()) {
                if (before < 0 || before >= i) {
                    throw new IllegalArgumentException("activity " + i + " waits for " + before + ", not before it");
                }
                start = Math.max(start, earlyEnd[before]);
            }
            earlyEnd[i] = start + activities.get(i).duration();
            end = Math.max(end, earlyEnd[i]);
        }
        double[] lateEnd = new double[n];
        Arrays.fill(lateEnd, end);
        for (int i = n - 1; i >= 0; i--) {
            double lateStart = lateEnd[i] - activities.get(i).duration();
            for (int before : activities.get(i).after()) {
                lateEnd[before] = Math.min(lateEnd[before], lateStart);
            }
        }
        List<Times> times = new ArrayList<>();
        for (int i = 0; i < n; i++) {
            double duration = activities.get(i).duration();
            times.add(new Times(earlyEnd[i] - duration, earlyEnd[i], lateEnd[i] - duration, lateEnd[i]));
        }
        return new CriticalPath(times, end);
    }
}
