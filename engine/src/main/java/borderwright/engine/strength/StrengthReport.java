package borderwright.engine.strength;

import borderwright.engine.message.Message;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.worked.Check;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

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
 * @param notSettled what was not shown: which figure or model is missing, or that the search for cures was cut short; empty when all was
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

    /** Whether the ground behind it pushes it over, away or into its bed: no bracing changes that. */
    public boolean isPushedByGround() {
        return checks.stream()
                .filter(check -> !check.holds())
                .flatMap(check -> check.part().values().stream())
                .anyMatch(value -> value instanceof Message kind
                        && (kind.code() == PartKind.RETAINING_SIDE
                                || kind.code() == PartKind.GROUND_UNDER_RETAINING_BOX));
    }

    /** The same with the ways that a search found. */
    public StrengthReport withCures(List<Cure> found) {
        return with(found, notSettled);
    }

    /**
     * The same where the search for its cures was cut short by the work allowed: they may not be the cheapest.
     *
     * @param tried how many ways were looked into
     */
    public StrengthReport withSearchCutShort(int tried) {
        List<Message> open = new ArrayList<>(notSettled);
        open.add(StrengthMessage.BRACING_SEARCH_CUT_SHORT.of(box, tried));
        return with(cures, open);
    }

    /** Whether there may be cheaper ways to build it than its cures, or some where it has none. */
    public boolean isSearchCutShort() {
        return notSettled.stream().anyMatch(open -> open.code() == StrengthMessage.BRACING_SEARCH_CUT_SHORT);
    }

    private StrengthReport with(List<Cure> ways, List<Message> open) {
        return StrengthReport.builder()
                .box(box)
                .verdict(verdict)
                .rules(rules)
                .bowLimitMm(bowLimitMm)
                .sides(sides)
                .lines(lines)
                .checks(checks)
                .takenForGranted(takenForGranted)
                .notSettled(open)
                .cures(ways)
                .guidance(guidance)
                .build();
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

    public static Builder builder() {
        return new Builder();
    }

    /** Sets the parts one by one; what may be left out has a value here. */
    public static final class Builder {
        private @Nullable String box;
        private @Nullable Verdict verdict;
        private @Nullable Message rules;
        private @Nullable Double bowLimitMm;
        private @Nullable List<SideBow> sides;
        private @Nullable List<BowLine> lines;
        private @Nullable List<Check> checks;
        private @Nullable List<Message> takenForGranted;
        private List<Message> notSettled = List.of();
        private List<Cure> cures = List.of();
        private @Nullable Message guidance;

        private Builder() {}

        public Builder box(String set) {
            box = set;
            return this;
        }

        public Builder verdict(Verdict set) {
            verdict = set;
            return this;
        }

        public Builder rules(Message set) {
            rules = set;
            return this;
        }

        public Builder bowLimitMm(double set) {
            bowLimitMm = set;
            return this;
        }

        public Builder sides(List<SideBow> set) {
            sides = set;
            return this;
        }

        public Builder lines(List<BowLine> set) {
            lines = set;
            return this;
        }

        public Builder checks(List<Check> set) {
            checks = set;
            return this;
        }

        public Builder takenForGranted(List<Message> set) {
            takenForGranted = set;
            return this;
        }

        public Builder notSettled(List<Message> set) {
            notSettled = set;
            return this;
        }

        public Builder cures(List<Cure> set) {
            cures = set;
            return this;
        }

        public Builder guidance(Message set) {
            guidance = set;
            return this;
        }

        /**
         * With all that was set.
         *
         * @throws NullPointerException where a part without a value is missing; its name is the message
         */
        public StrengthReport build() {
            return new StrengthReport(
                    Objects.requireNonNull(box, "box"),
                    Objects.requireNonNull(verdict, "verdict"),
                    Objects.requireNonNull(rules, "rules"),
                    Objects.requireNonNull(bowLimitMm, "bowLimitMm"),
                    Objects.requireNonNull(sides, "sides"),
                    Objects.requireNonNull(lines, "lines"),
                    Objects.requireNonNull(checks, "checks"),
                    Objects.requireNonNull(takenForGranted, "takenForGranted"),
                    notSettled,
                    cures,
                    Objects.requireNonNull(guidance, "guidance"));
        }
    }
}
