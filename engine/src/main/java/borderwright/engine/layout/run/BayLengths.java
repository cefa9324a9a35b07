package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.room.LegJoint;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How a free length is shared by a number of equal planters, and the wings of corner planters at its ends.
 *
 * <p>A wing is wanted half as long as a planter, measured along its middle, so that a corner planter holds about as much
 * as the others; it is never shorter than the least edge along its shorter side. With n planters of length p, gaps g
 * between neighbours and wings of half a planter less their spare x: n p + sum(p/2 - x) + gaps = free length.
 *
 * <p>See docs/decisions/0023.
 *
 * @param planters number of planters between the wings
 * @param planterMm length of each, mm: between the middles of dividers where joined, outside where separate
 * @param wingsMm lengths of the wings along their shorter side, mm, in order along the run
 */
record BayLengths(int planters, double planterMm, List<Double> wingsMm) {
    /** Lengths that differ by less than this count as equal when a wanted range is kept, mm. */
    private static final double SAME_MM = 0.05;

    /**
     * An end of the free length where a corner planter reaches in.
     *
     * @param spareMm how much longer the wing's middle is than its shorter side, mm
     * @param leastMm least length of its shorter side, mm
     */
    record Wing(double spareMm, double leastMm) {
        static Wing of(LegJoint joint, LayoutRules rules) {
            return new Wing(joint.spareMm(), joint.leastWingMm(rules.leastEdgeMm()));
        }
    }

    /**
     * What is to be shared.
     *
     * @param freeMm free length along the middle of the planters, wings included, mm
     * @param wings ends with a wing, in order
     * @param gapMm between neighbours, mm
     */
    record Share(double freeMm, List<Wing> wings, double gapMm, LayoutRules rules) {
        /** Shared among so many planters; empty when they or the wings would be too short. */
        Optional<BayLengths> among(int planters) {
            List<Boolean> least = new ArrayList<>(wings.stream().map(x -> false).toList());
            double net = freeMm - gapMm * Math.max(0, planters + wings.size() - 1);
            while (true) {
                double halves = planters;
                double length = net;
                for (int i = 0; i < wings.size(); i++) {
                    halves += least.get(i) ? 0 : 0.5;
                    length += least.get(i)
                            ? -wings.get(i).leastMm()
                            : wings.get(i).spareMm();
                }
                if (halves == 0) {
                    return withoutPlanters(net);
                }
                double planter = length / halves;
                int tooShort = firstTooShort(planter, least);
                if (tooShort < 0) {
                    return planters > 0 && planter < rules.leastPlanterMm()
                            ? Optional.empty()
                            : Optional.of(new BayLengths(planters, planter, wingLengths(planter, least)));
                }
                least.set(tooShort, true);
            }
        }

        private Optional<BayLengths> withoutPlanters(double net) {
            double spare = net - wings.stream().mapToDouble(Wing::leastMm).sum();
            return spare < 0 || wings.isEmpty()
                    ? Optional.empty()
                    : Optional.of(new BayLengths(
                            0,
                            2 * net / wings.size(),
                            wings.stream()
                                    .map(w -> w.leastMm() + spare / wings.size())
                                    .toList()));
        }

        private int firstTooShort(double planterMm, List<Boolean> least) {
            for (int i = 0; i < wings.size(); i++) {
                if (!least.get(i)
                        && planterMm / 2 - wings.get(i).spareMm() < wings.get(i).leastMm()) {
                    return i;
                }
            }
            return -1;
        }

        private List<Double> wingLengths(double planterMm, List<Boolean> least) {
            List<Double> lengths = new ArrayList<>();
            for (int i = 0; i < wings.size(); i++) {
                lengths.add(
                        least.get(i)
                                ? wings.get(i).leastMm()
                                : planterMm / 2 - wings.get(i).spareMm());
            }
            return lengths;
        }

        /** The most planters that fit; empty when not even the wings do. */
        Optional<BayLengths> most() {
            int upper = (int) Math.max(0, Math.floor((freeMm + gapMm) / (rules.leastPlanterMm() + gapMm)));
            for (int planters = upper; planters >= (wings.isEmpty() ? 1 : 0); planters--) {
                Optional<BayLengths> fit = among(planters);
                if (fit.isPresent()) {
                    return fit;
                }
            }
            return Optional.empty();
        }

        /**
         * The number whose planters come nearest to a wanted length; of a range, to its middle among those inside it.
         * Empty when not even one fits.
         */
        Optional<BayLengths> nearest(LengthRange wanted) {
            double from = wanted.from().mm();
            double to = wanted.to().mm();
            Optional<BayLengths> best = Optional.empty();
            double bestOff = Double.POSITIVE_INFINITY;
            int most = most().map(BayLengths::planters).orElse(-1);
            for (int planters = 1; planters <= most; planters++) {
                Optional<BayLengths> fit = among(planters);
                if (fit.isPresent()) {
                    double planter = fit.get().planterMm();
                    double outside = Math.max(0, Math.max(from - SAME_MM - planter, planter - to - SAME_MM));
                    double off = outside * 1e6 + Math.abs(planter - (from + to) / 2);
                    if (off < bestOff - 1e-9) {
                        best = fit;
                        bestOff = off;
                    }
                }
            }
            return best.isPresent() ? best : most();
        }
    }

    /** How much of the free length a row without wings takes, mm, with that gap between neighbours. */
    double usedMm(double gapMm) {
        return planters * planterMm + (planters - 1) * gapMm;
    }

    /** Whether each planter's length lies in a wanted range. */
    boolean within(LengthRange wanted) {
        return planters == 0
                || (planterMm >= wanted.from().mm() - SAME_MM
                        && planterMm <= wanted.to().mm() + SAME_MM);
    }
}
