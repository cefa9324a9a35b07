package borderwright.engine.strength;

import borderwright.engine.message.Message;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.worked.Check;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * What is known of the strength of one box: every figure that a page needs.
 *
 * @param box name of the box
 * @param verdict with its reason, from the figures below
 * @param rules name of the rule set that the checks follow
 * @param bowLimitMm greatest final bow wanted, mm, as the garden requests it
 * @param sides the final bow of every side, in order: the greatest reading of its courses' {@code lines}
 * @param lines where each course of each side ends up under the fill for good, after creep: read off the solved frame at
 *     every eighth of each bar ({@link borderwright.engine.strength.box.BowLineFinder}); for drawings and the 3D model
 * @param checks of each kind of check its worst part in its worst load case, most used first, each with the steps by
 *     which the rule set came to it
 * @param takenForGranted what the checks assume: soil, water, timber, screws
 * @param notSettled what was not shown: which figure or model is missing; empty when all was
 * @param cures ways to build it that hold, cheapest first, one of each kind (bracing alone, other walls, a higher floor),
 *     with the cost of pieces and screws and the bow: from the search of {@code strength.bracing}; empty where none was sought or found
 * @param guidance that this is guidance, and when to ask an engineer
 */
public record StrengthReport(
        String box,
        Verdict verdict,
        Message rules,
        double bowLimitMm,
        List<SideBow> sides,
        List<BowLine> lines,
        List<Check> checks,
        List<Message> takenForGranted,
        List<Message> notSettled,
        List<Cure> cures,
        Message guidance) {
    public StrengthReport {
        sides = List.copyOf(sides);
        lines = List.copyOf(lines);
        checks = List.copyOf(checks);
        takenForGranted = List.copyOf(takenForGranted);
        notSettled = List.copyOf(notSettled);
        cures = List.copyOf(cures);
    }

    /** The same with the ways that a search found. */
    public StrengthReport withCures(List<Cure> found) {
        return new StrengthReport(
                box, verdict, rules, bowLimitMm, sides, lines, checks, takenForGranted, notSettled, found, guidance);
    }

    /** The report on the weakest box: one that does not hold before any other, then that of which most is used. */
    public static Optional<StrengthReport> weakest(Collection<StrengthReport> reports) {
        return reports.stream()
                .min(Comparator.comparing(
                                (StrengthReport r) -> r.verdict().kind() == Verdict.Kind.DOES_NOT_HOLD ? 0 : 1)
                        .thenComparing(r -> -StrictMath.max(r.worstBowMm() / r.bowLimitMm(), r.worstUse())));
    }

    /** Greatest final bow of all sides, mm; 0 for a box without walls. */
    public double worstBowMm() {
        return sides.stream().mapToDouble(SideBow::finalMm).max().orElse(0);
    }

    /** Greatest use of all checks, 1 being all that may be used; 0 where nothing was checked. */
    public double worstUse() {
        return checks.stream().mapToDouble(Check::utilisation).max().orElse(0);
    }

    public boolean holds() {
        return verdict.kind() == Verdict.Kind.HOLDS;
    }
}
