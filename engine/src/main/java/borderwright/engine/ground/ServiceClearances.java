package borderwright.engine.ground;

import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_DUG_GROUND;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_GROUND_OVER;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_PEGS_AND_PINS;
import static borderwright.engine.ground.ClearanceMessage.CLEARANCE_OF_POST_HOLES;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.ground.NearbyFinding.Position;
import borderwright.engine.ground.SiteClearance.Verdict;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/**
 * What keeps clear of a service in the ground: no hole within 500 mm, ground within that dug by hand (after HSE guidance HSG47,
 * from memory), 150 mm of ground left over it, and nothing driven near one that can kill unless its depth is given and leaves as
 * much below the point (common practice, no source). The owner's own rule comes first.
 *
 * @param notes where what should be known is added
 * @param unmet where what does not hold is added
 */
record ServiceClearances(
        NearbyThing thing, Message name, LengthFormat format, List<Message> notes, List<Problem> unmet) {
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
            rows.add(new SiteClearance(work.name(), name, CLEARANCE_OF_POST_HOLES.of(), byHandMm(), got, verdict));
            if (verdict == Verdict.DOES_NOT_HOLD) {
                stop(where, work, NearbyFinding.POST_HOLE_NEAR_SERVICE.of(work.name(), got, name, byHandMm()));
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
            rows.add(new SiteClearance(planter, name, CLEARANCE_OF_DUG_GROUND.of(), byHandMm(), got, Verdict.HOLDS));
        } else if (thing.depth().isEmpty()) {
            rows.add(
                    new SiteClearance(planter, name, CLEARANCE_OF_DUG_GROUND.of(), byHandMm(), got, Verdict.NOT_SHOWN));
            notes.add(NearbyFinding.SERVICE_DEPTH_UNKNOWN.of(
                    name, planter, work.levels().dugMm(), Position.of(got), got));
        } else {
            double left = thing.depth().get().mm() - work.levels().dugMm();
            Verdict verdict = left < coverMm() ? Verdict.DOES_NOT_HOLD : Verdict.NOT_SHOWN;
            rows.add(new SiteClearance(planter, name, CLEARANCE_OF_GROUND_OVER.of(), coverMm(), left, verdict));
            if (verdict == Verdict.DOES_NOT_HOLD) {
                stop(
                        where,
                        work,
                        NearbyFinding.DUG_NEAR_SERVICE.of(
                                planter,
                                work.levels().dugMm(),
                                Position.of(got),
                                got,
                                name,
                                thing.depth().get().mm()));
            } else {
                notes.add(NearbyFinding.DUG_BY_HAND.of(planter, Position.of(got), got, name));
            }
        }
    }

    private void spikes(String where, Geometry place, BoxWork work, List<SiteClearance> rows) {
        double got = work.spikes().distance(place);
        double reach = Math.max(PEG_MM, work.levels().dugMm() + PIN_MM);
        boolean clears = thing.depth().isPresent() && thing.depth().get().mm() - reach >= coverMm();
        boolean stops = got < byHandMm() && thing.what().canKill() && !clears;
        Verdict verdict = got >= byHandMm() ? Verdict.HOLDS : stops ? Verdict.DOES_NOT_HOLD : Verdict.NOT_SHOWN;
        rows.add(new SiteClearance(work.name(), name, CLEARANCE_OF_PEGS_AND_PINS.of(), byHandMm(), got, verdict));
        if (stops) {
            stop(
                    where,
                    work,
                    thing.depth().isEmpty()
                            ? NearbyFinding.PEG_NEAR_SERVICE_OF_UNKNOWN_DEPTH.of(work.name(), reach, got, name)
                            : NearbyFinding.PEG_NEAR_SERVICE.of(
                                    work.name(),
                                    reach,
                                    got,
                                    name,
                                    thing.depth().get().mm()));
        }
    }

    private void stop(String where, BoxWork work, Message finding) {
        unmet.add(new Problem(where, NearbyFinding.SERVICE_NEAR.of(finding, name, work.name())));
    }

    private double byHandMm() {
        return format.rule(500);
    }

    private double coverMm() {
        return format.rule(150);
    }
}
