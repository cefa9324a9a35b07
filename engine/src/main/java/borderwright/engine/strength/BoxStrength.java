package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.effort.Budget;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.frame.FrameAnswer;
import borderwright.engine.strength.frame.FrameSolver;
import borderwright.engine.strength.frame.UnknownScales;
import borderwright.engine.strength.loads.BoxLoads;
import borderwright.engine.strength.loads.LoadCase;
import borderwright.engine.strength.loads.OutsideLoads;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.timber.TimberAge;
import borderwright.engine.strength.worked.Check;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
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
    private boolean cutShort;

    private BoxStrength(BoxFrame frame, StrengthTerms terms) {
        this.terms = terms;
        this.frame = frame;
        worst = new WorstUses(terms.rules());
        uses = new FrameUses(frame, worst, terms.strapN());
    }

    private static BoxFrame frame(Box box, StrengthTerms terms) {
        return BoxFrame.of(box, terms.materials(), terms.fill(), terms.bedFriction(), terms.postGround());
    }

    /** The whole report on a box. */
    public static StrengthReport check(Box box, StrengthTerms terms) {
        BoxStrength one = new BoxStrength(frame(box, terms), terms);
        return one.frame.isEmpty() ? VerdictMaker.notBuilt(box, terms) : one.report(box);
    }

    /**
     * Whether a box holds, as the search for a cure asks it: the same figures as {@link #check} without its messages, up
     * to the first that shows that it does not.
     *
     * @param budget from which the work is taken, in multiplications of the solver; what is not looked into when it is spent
     *     counts as used without end
     */
    public static Uses uses(Box box, StrengthTerms terms, Budget budget) {
        BoxFrame coarse =
                BoxFrame.coarse(box, terms.materials(), terms.fill(), terms.bedFriction(), terms.postGround());
        if (coarse.isEmpty()) {
            return new Uses(Double.POSITIVE_INFINITY, Double.POSITIVE_INFINITY);
        }
        double least = bowMm(coarse, terms, budget);
        // A side beyond its limit is not worth the rest.
        if (least > terms.bowLimitMm()) {
            return new Uses(least, least / terms.bowLimitMm());
        }
        if (budget.isSpent()) {
            return new Uses(least, Double.POSITIVE_INFINITY);
        }
        BoxStrength one = new BoxStrength(frame(box, terms), terms);
        double bow = bowMm(one.frame, terms, budget);
        if (bow > terms.bowLimitMm()) {
            return new Uses(bow, bow / terms.bowLimitMm());
        }
        one.checkAll(box, BoxLoads.all(one.frame, terms.fill(), terms.kneelingN()), budget, false);
        return new Uses(
                bow,
                one.mechanism || one.cutShort
                        ? Double.POSITIVE_INFINITY
                        : Math.max(bow / terms.bowLimitMm(), one.worst.greatest()));
    }

    /** How much of a box's false floor is used: slats, bearers and legs; 0 without one. */
    public static double floorUse(Box box, StrengthTerms terms) {
        WorstUses worst = new WorstUses(terms.rules());
        new PlatformUses(box, terms, worst).take();
        return worst.greatest();
    }

    private static double bowMm(BoxFrame frame, StrengthTerms terms, Budget budget) {
        return SideBowMaker.lasting(frame, BoxLoads.lasting(frame, terms.fill()), budget).stream()
                .mapToDouble(line -> line.greatest().outMm())
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    private StrengthReport report(Box box) {
        List<LoadCase> cases = BoxLoads.all(frame, terms.fill(), terms.kneelingN());
        checkAll(box, cases, Budget.ofSteps(Long.MAX_VALUE), true);
        PlatformUses platform = new PlatformUses(box, terms, worst);
        platform.take();
        RetainingUses retaining = new RetainingUses(box, terms, worst);
        retaining.take();
        SideBowMaker bows = SideBowMaker.of(frame, cases);
        List<SideBow> sides = bows.sides(terms.bowLimitMm());
        List<BowLine> lines = bows.lines();
        List<Check> checks = worst.checks();
        List<Message> open = new ArrayList<>(VerdictMaker.open(box, terms));
        open.addAll(retaining.open());
        List<Message> taken = new ArrayList<>(VerdictMaker.assumed(terms, frame));
        platform.pads().ifPresent(taken::add);
        empty().ifPresent(taken::add);
        return StrengthReport.builder()
                .box(box.plan().name())
                .verdict(mechanism ? VerdictMaker.ofMechanism() : VerdictMaker.of(terms, sides, checks, open))
                .rules(terms.rules().name())
                .bowLimitMm(terms.bowLimitMm())
                .sides(sides)
                .lines(lines)
                .checks(checks)
                .takenForGranted(taken)
                .notSettled(open)
                .guidance(StrengthMessage.STRENGTH_GUIDANCE.of())
                .build();
    }

    /** How the empty box stands against higher ground: never the way to leave it, so not held against it. */
    private Optional<Message> empty() {
        Optional<LoadCase> ground = OutsideLoads.of(frame, terms.fill(), RetainingUses.LEAST_MM);
        if (ground.isEmpty()) {
            return Optional.empty();
        }
        UnknownScales scales =
                frame.emptied(frame.forStrength(TimberAge.NEW), ground.get().empty());
        FrameAnswer answer = new FrameSolver(frame.frame(), scales)
                .solve(ground.get().factored(terms.rules().permanentFactor(), 0));
        WorstUses alone = new WorstUses(terms.rules());
        if (!answer.isMechanism()) {
            new FrameUses(frame, alone, terms.strapN()).take(ground.get(), answer);
        }
        boolean stands = !answer.isMechanism() && alone.greatest() <= 1;
        return Optional.of(
                stands ? StrengthMessage.EMPTY_BOX_STANDS.of(alone.greatest()) : StrengthMessage.EMPTY_BOX_FALLS.of());
    }

    /**
     * Checks every case.
     *
     * @param budget from which the work is taken
     * @param whole whether to go on where something does not hold, or the budget is spent
     */
    private void checkAll(Box box, List<LoadCase> cases, Budget budget, boolean whole) {
        RuleSet rules = terms.rules();
        FrameSolver crept = new FrameSolver(frame.frame(), frame.forStrength(TimberAge.CREPT));
        FrameSolver fresh = new FrameSolver(frame.frame(), frame.forStrength(TimberAge.NEW));
        @Nullable FrameAnswer lasting = null;
        for (LoadCase one : cases) {
            FrameSolver solver = one.age() == TimberAge.CREPT ? crept : fresh;
            if (!one.isFull()) {
                solver = new FrameSolver(frame.frame(), frame.emptied(frame.forStrength(TimberAge.NEW), one.empty()));
            }
            if (lasting != null) {
                solver.startFrom(lasting);
            }
            long before = solver.multiplyAdds();
            FrameAnswer answer = solver.solve(one.factored(rules.permanentFactor(), rules.passingFactor()));
            budget.spend(solver.multiplyAdds() - before);
            if (answer.isMechanism()) {
                mechanism = true;
                return;
            }
            lasting = lasting == null ? answer : lasting;
            uses.take(one, answer);
            cutShort = !whole && budget.isSpent();
            if (cutShort || (!whole && worst.greatest() > 1)) {
                return;
            }
        }
        SectionSpec walls = terms.materials().section(frame.walls().get(0).sectionName());
        BedUses.take(box, terms, walls.thickness().mm(), walls.densityKgPerM3(), worst);
    }
}
