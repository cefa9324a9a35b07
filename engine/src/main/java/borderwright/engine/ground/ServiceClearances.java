package borderwright.engine.ground;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What keeps clear of a service in the ground: no hole within 500 mm, ground within that dug by hand (after HSE guidance HSG47,
 * from memory), 150 mm of ground left over it, and nothing driven near one that can kill unless its depth is said and leaves as
 * much below the point (common practice, no source). The owner's own rule comes first.
 *
 * @param notes where what should be known is added
 * @param unmet where what does not hold is added
 */
record ServiceClearances(NearbyThing thing, String name, LengthFormat format, List<String> notes, List<Problem> unmet) {
    /** How deep a peg goes from the ground, and a pin from the dug bed (common practice, no source). */
    private static final double PEG_MM = 300;

    private static final double PIN_MM = 150;

    void measure(String where, Geometry place, BoxWork work, List<SiteClearance> rows) {
        if (!work.dug().isEmpty()) {
            dug(where, place, work, rows);
        }
        if (!work.holes().isEmpty()) {
            double got = work.holes().distance(place);
            Verdict verdict = SiteClearance.of(byHandMm(), got);
            rows.add(new SiteClearance(work.name(), name, "holes for posts", byHandMm(), got, verdict));
            if (verdict == Verdict.DOES_NOT_HOLD) {
                stop(
                        where,
                        work,
                        "A hole for a post of " + work.name() + " lies " + format.length(got) + " from " + name + "; "
                                + format.length(byHandMm()) + " is the usual least.");
            }
        }
        if (!work.spikes().isEmpty()) {
            spikes(where, place, work, rows);
        }
    }

    private void dug(String where, Geometry place, BoxWork work, List<SiteClearance> rows) {
        String planter = work.name();
        double got = work.dug().distance(place);
        if (got >= byHandMm()) {
            rows.add(new SiteClearance(planter, name, "ground dug", byHandMm(), got, Verdict.HOLDS));
        } else if (thing.depth().isEmpty()) {
            rows.add(new SiteClearance(planter, name, "ground dug", byHandMm(), got, Verdict.NOT_SHOWN));
            notes.add("Not shown to hold: how deep " + name + " lies is not known, and " + planter + " is dug "
                    + format.length(work.dugMm()) + " deep " + (got == 0 ? "over it" : format.length(got) + " from it")
                    + ". Have it traced, dig trial holes by hand, and put no pins there.");
        } else {
            double left = thing.depth().get().mm() - work.dugMm();
            Verdict verdict = left < coverMm() ? Verdict.DOES_NOT_HOLD : Verdict.NOT_SHOWN;
            rows.add(new SiteClearance(planter, name, "ground left over it", coverMm(), left, verdict));
            if (verdict == Verdict.DOES_NOT_HOLD) {
                stop(
                        where,
                        work,
                        planter + " is dug " + format.length(work.dugMm()) + " deep "
                                + (got == 0 ? "over" : format.length(got) + " from") + " " + name
                                + ", which is said to lie "
                                + format.length(thing.depth().get().mm()) + " deep.");
            } else {
                notes.add(planter + " is dug " + (got == 0 ? "over" : format.length(got) + " from") + " " + name
                        + ": by hand, with no pins, and never trusting the depth that was said.");
            }
        }
    }

    private void spikes(String where, Geometry place, BoxWork work, List<SiteClearance> rows) {
        double got = work.spikes().distance(place);
        double reach = Math.max(PEG_MM, work.dugMm() + PIN_MM);
        boolean clears = thing.depth().isPresent() && thing.depth().get().mm() - reach >= coverMm();
        boolean stops = got < byHandMm() && thing.what().canKill() && !clears;
        Verdict verdict = got >= byHandMm() ? Verdict.HOLDS : stops ? Verdict.DOES_NOT_HOLD : Verdict.NOT_SHOWN;
        rows.add(new SiteClearance(work.name(), name, "pegs and pins", byHandMm(), got, verdict));
        if (stops) {
            stop(
                    where,
                    work,
                    "A peg or pin of " + work.name() + " may be driven " + format.length(reach) + " deep, "
                            + format.length(got) + " from " + name + ", "
                            + (thing.depth().isEmpty()
                                    ? "whose depth is not known."
                                    : "which is said to lie "
                                            + format.length(thing.depth().get().mm()) + " deep."));
        }
    }

    private void stop(String where, BoxWork work, String sentence) {
        unmet.add(new Problem(
                "service-near",
                where,
                sentence,
                "Stop: do not dig or drive anything there. Have " + name + " traced, then move " + work.name()
                        + " or keep its ground undug (`bed: none`), and let posts stand on the bed."));
    }

    private double byHandMm() {
        return format.rule(500);
    }

    private double coverMm() {
        return format.rule(150);
    }
}
