package borderwright.engine.strength;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.message.Message;
import borderwright.engine.strength.soil.EarthCoefficient;
import borderwright.engine.strength.soil.PressureProfile;
import borderwright.engine.strength.soil.RetainingStrip;
import borderwright.engine.strength.soil.Thrust;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;

/**
 * Sides that stand against higher ground: whether the filled box, taken as a block one metre long, slides, tips or sinks
 * under its push; and where that is no longer for a builder to decide.
 */
final class RetainingUses {
    /** Less ground than this against a wall is no more than a lawn's edge (common practice, no source). */
    static final double LEAST_MM = 100;

    /** From here on an engineer decides (common practice, no source: local rules differ). */
    private static final double ENGINEER_MM = 600;

    private static final double ENGINEER_BY_BUILDINGS_MM = 200;
    private static final double M_PER_MM = 1e-3;

    /** Cohesion that the code gives clay instead of friction, kN/m2 (IBC 2012 table 1806.2: 130 psf). */
    private static final double CLAY_KN_PER_M2 = 6.22;

    /** Cohesion counts up to half the weight (IBC 2012 1806.3.2; from memory). */
    private static final double MOST_BY_COHESION = 0.5;

    private final Box box;
    private final StrengthTerms terms;
    private final WorstUses worst;
    private final List<Message> open = new ArrayList<>();

    RetainingUses(Box box, StrengthTerms terms, WorstUses worst) {
        this.box = box;
        this.terms = terms;
        this.worst = worst;
    }

    void take() {
        for (SideFrame side : SideFrame.of(box.plan().outline())) {
            SidePlan plan = box.plan().sides().get(side.side());
            double heldMm = plan.groundMm() - box.plan().bedMm();
            if (heldMm > LEAST_MM) {
                take(side, plan.facing(), heldMm);
            }
        }
    }

    /** Where an engineer must decide. */
    List<Message> open() {
        return open;
    }

    private void take(SideFrame side, EdgeKind facing, double heldMm) {
        String letter = PieceLabels.letter(side.side());
        boolean byBuilding = facing == EdgeKind.HOUSE || facing == EdgeKind.WALL;
        if (heldMm > ENGINEER_MM || (byBuilding && heldMm > ENGINEER_BY_BUILDINGS_MM)) {
            open.add(
                    (byBuilding ? StrengthMessage.SIDE_RETAINS_GROUND_BY_BUILDING : StrengthMessage.SIDE_RETAINS_GROUND)
                            .of(letter, heldMm));
        }
        RetainingStrip strip = strip(side, heldMm * M_PER_MM);
        Supplier<Message> part = () -> PartMessage.SIDE.of(letter);
        Supplier<Message> loading = () -> PartMessage.GROUND_BEHIND.of(heldMm);
        worst.take(PartKind.RETAINING_SIDE, CheckKind.SLIDING, part, loading, strip::slidingUse);
        worst.take(PartKind.RETAINING_SIDE, CheckKind.OVERTURNING, part, loading, strip::tippingUse);
        if (terms.bearingKnPerM2() > 0) {
            worst.take(PartKind.GROUND_UNDER_RETAINING_BOX, CheckKind.GROUND, part, loading, strip::bearingUse);
        }
    }

    private RetainingStrip strip(SideFrame side, double heldM) {
        double baseM = acrossMm(side) * M_PER_MM;
        double fillM = Math.max(0, box.soilDepthMm() - terms.fill().belowRimMm()) * M_PER_MM;
        double weight = terms.fill().moistKnPerM3() * fillM * baseM;
        double phi = terms.fill().phi();
        Thrust push = PressureProfile.drained(
                        EarthCoefficient.atRest(phi),
                        terms.fill().saturatedKnPerM3(),
                        terms.fill().treadingKnPerM2())
                .thrust(heldM);
        return new RetainingStrip(weight, baseM / 2, baseM, push, sliding(weight / baseM), terms.bearingKnPerM2());
    }

    private double sliding(double pressureKnPerM2) {
        return terms.ground()
                .map(soil -> soil == FoundationSoil.CLAY
                        ? Math.min(MOST_BY_COHESION, CLAY_KN_PER_M2 / pressureKnPerM2)
                        : soil.sliding())
                .orElse(0.0);
    }

    /** From the middle of a side to what lies opposite, mm. */
    private double acrossMm(SideFrame side) {
        double across = Double.POSITIVE_INFINITY;
        for (SideFrame other : SideFrame.of(box.plan().outline())) {
            double speed = side.inwards().dot(other.inwards());
            if (speed > -1e-6) {
                continue;
            }
            double reach = -other.w(side.at(side.lengthMm() / 2, 0)) / speed;
            double s = other.s(side.at(side.lengthMm() / 2, reach));
            if (reach > 1 && s >= -1 && s <= other.lengthMm() + 1) {
                across = Math.min(across, reach);
            }
        }
        return Double.isInfinite(across) ? Math.sqrt(box.plan().outline().areaMm2()) : across;
    }
}
