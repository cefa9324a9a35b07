package borderwright.engine.strength;

import borderwright.engine.buildup.Box;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.box.BoxLoads;
import borderwright.engine.strength.box.LoadCase;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.FrameSolver;
import borderwright.engine.strength.timber.RuleSet;
import borderwright.engine.strength.worked.Check;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Checks whether a box holds: the final bow of every side, and how much of its timber, screws and ground is used.
 *
 * <p>One instance works one box out.
 */
public final class BoxStrength {
    private final StrengthTerms terms;
    private final BoxFrame frame;
    private final WorstUses worst;
    private final FrameUses uses;
    private boolean mechanism;

    private BoxStrength(Box box, StrengthTerms terms) {
        this.terms = terms;
        frame = BoxFrame.of(box, terms.materials(), terms.fill(), terms.bedFriction());
        worst = new WorstUses(terms.rules());
        uses = new FrameUses(frame, worst, terms.strapN());
    }

    /** The whole report on a box. */
    public static StrengthReport check(Box box, StrengthTerms terms) {
        BoxStrength one = new BoxStrength(box, terms);
        return one.frame.isEmpty() ? Verdicts.notBuilt(box, terms) : one.report(box);
    }

    /**
     * Whether a box holds, as the search for a cure asks it: the same figures as {@link #check} without its words, up
     * to the first that shows that it does not.
     */
    static Uses uses(Box box, StrengthTerms terms) {
        BoxStrength one = new BoxStrength(box, terms);
        if (one.frame.isEmpty()) {
            return new Uses(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        LoadCase lasting = BoxLoads.lasting(one.frame, terms.fill());
        double bow = SideBows.lasting(one.frame, lasting).stream()
                .mapToDouble(line -> line.greatest().outMm())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
        // A side beyond its limit is not worth the rest.
        if (bow > terms.bowLimitMm()) {
            return new Uses(bow, bow / terms.bowLimitMm());
        }
        one.checkAll(box, BoxLoads.all(one.frame, terms.fill(), terms.kneelingN()), false);
        return new Uses(
                bow,
                one.mechanism ? Double.POSITIVE_INFINITY : Math.max(bow / terms.bowLimitMm(), one.worst.greatest()));
    }

    private StrengthReport report(Box box) {
        List<LoadCase> cases = BoxLoads.all(frame, terms.fill(), terms.kneelingN());
        checkAll(box, cases, true);
        PlatformUses platform = new PlatformUses(box, terms, worst);
        platform.take();
        RetainingUses retaining = new RetainingUses(box, terms, worst);
        retaining.take();
        SideBows bows = SideBows.of(frame, cases);
        List<SideBow> sides = bows.sides(terms.bowLimitMm());
        List<BowLine> lines = bows.lines();
        List<Check> checks = worst.checks();
        List<String> open = new ArrayList<>(Verdicts.open(box, frame, terms, uses.worstStrapN()));
        open.addAll(retaining.open());
        List<String> taken = new ArrayList<>(Verdicts.taken(terms, frame));
        platform.pads().ifPresent(taken::add);
        return new StrengthReport(
                box.plan().name(),
                Verdicts.of(terms, sides, checks, open, mechanism),
                terms.rules().name(),
                terms.bowLimitMm(),
                sides,
                lines,
                checks,
                taken,
                open,
                List.of(),
                StrengthReport.GUIDANCE);
    }

    /**
     * Checks every case.
     *
     * @param whole whether to go on where something does not hold
     */
    private void checkAll(Box box, List<LoadCase> cases, boolean whole) {
        RuleSet rules = terms.rules();
        FrameSolver crept = new FrameSolver(frame.frame(), frame.forStrength(true));
        FrameSolver fresh = new FrameSolver(frame.frame(), frame.forStrength(false));
        @Nullable FrameAnswer lasting = null;
        for (LoadCase one : cases) {
            FrameSolver solver = one.afterCreep() ? crept : fresh;
            if (!one.isFull()) {
                solver = new FrameSolver(frame.frame(), frame.emptied(frame.forStrength(false), one.empty()));
            }
            if (lasting != null) {
                solver.startFrom(lasting);
            }
            FrameAnswer answer = solver.solve(one.factored(rules.permanentFactor(), rules.passingFactor()));
            if (answer.isMechanism()) {
                mechanism = true;
                return;
            }
            lasting = lasting == null ? answer : lasting;
            uses.take(one, answer);
            if (!whole && worst.greatest() > 1) {
                return;
            }
        }
        SectionNote walls = terms.materials().sections().stream()
                .filter(s -> s.name().equals(frame.walls().get(0).sectionName()))
                .findFirst()
                .orElseThrow();
        BedUses.take(box, terms, walls.thickness().mm(), walls.densityKgPerM3(), worst);
    }
}
