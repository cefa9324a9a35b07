package borderwright.engine.plan;

import borderwright.engine.garden.Garden;
import borderwright.engine.garden.GroundWish;
import borderwright.engine.garden.StrengthWish;
import borderwright.engine.garden.vocabulary.DugSoil;
import borderwright.engine.garden.vocabulary.FoundationSoil;
import borderwright.engine.garden.vocabulary.SoilPush;
import borderwright.engine.garden.vocabulary.SoilWater;
import borderwright.engine.garden.vocabulary.TimberRules;
import borderwright.engine.measure.Gravity;
import borderwright.engine.problem.Problem;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.Verdict;
import borderwright.engine.strength.box.MemberMaterials;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.GroundKind;
import borderwright.engine.strength.timber.RuleSet;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** The strength of a garden's boxes: what the person said of it, the reports, and what they come to. */
final class StrengthStage {
    private static final double N_PER_KN = 1000;

    private StrengthStage() {}

    /** What the boxes are checked for, with habits where nothing is said. */
    static StrengthTerms terms(Garden garden) {
        StrengthWish wish = garden.strengthOrHabit();
        RuleSet rules = rules(garden, wish.rules());
        StrengthTerms habit = StrengthTerms.habit(rules, garden.sections(), garden.unitsOrMetric());
        return new StrengthTerms(
                new MemberMaterials(
                        rules,
                        garden.sections(),
                        or(wish.withdrawal(), 0),
                        or(wish.pullThrough(), 0),
                        or(wish.screwStiffness(), 0)),
                fill(
                        wish,
                        habit.fill(),
                        wetKnPerM3(garden),
                        garden.soilOrHabit().belowRimMm()),
                wish.person() == null ? habit.kneelingN() : N_PER_KN * wish.person(),
                wish.bowMm(),
                or(wish.bedFriction(), habit.bedFriction()),
                ground(wish.ground(), dug(garden.groundOrHabit())),
                garden.groundOrHabit().surfaceOrHabit().isHard()
                        ? 0
                        : garden.groundOrHabit().gravelMm(0),
                N_PER_KN * or(wish.strap(), 0),
                habit.units());
    }

    private static RuleSet rules(Garden garden, @Nullable TimberRules said) {
        if (said == null) {
            return StrengthTerms.habitRules(garden.unitsOrMetric());
        }
        return said == TimberRules.NDS ? RuleSet.NDS : RuleSet.EUROCODE;
    }

    /** Weight of the soaked filling where it is said; nothing otherwise. */
    private static @Nullable Double wetKnPerM3(Garden garden) {
        Double wet = garden.fillingOrHabit().wet();
        return wet == null ? null : wet * Gravity.KN_PER_KG;
    }

    /** What is dug lies under the gravel too; earth may be anything down to clay. Paving is dug nowhere. */
    private static GroundKind dug(GroundWish ground) {
        if (ground.surfaceOrHabit().isHard()) {
            return GroundKind.PAVED;
        }
        return ground.soilOrHabit() == DugSoil.SAND ? GroundKind.SAND : GroundKind.CLAY;
    }

    private static Fill fill(StrengthWish wish, Fill habit, @Nullable Double wet, double belowRimMm) {
        double soaked = or(wish.soakedSoil(), or(wet, habit.saturatedKnPerM3()));
        double moist = or(wish.moistSoil(), Math.min(soaked, habit.moistKnPerM3()));
        return new Fill(
                moist,
                Math.max(moist, soaked),
                wish.friction() == null ? habit.phi() : wish.friction().radians(),
                wish.push() == SoilPush.ACTIVE ? Fill.Push.ACTIVE : Fill.Push.AT_REST,
                water(wish.water()),
                wish.heaped() == null ? 0 : wish.heaped().mm(),
                or(wish.treading(), habit.treadingKnPerM2()),
                belowRimMm,
                Boolean.TRUE.equals(wish.arching()));
    }

    private static Fill.Water water(@Nullable SoilWater said) {
        if (said == null) {
            return Fill.Water.SATURATED;
        }
        return switch (said) {
            case MOIST -> Fill.Water.MOIST;
            case SOAKED -> Fill.Water.SATURATED;
            case WATERLOGGED -> Fill.Water.WATERLOGGED;
            case FLOODED -> Fill.Water.FLOODED;
        };
    }

    private static GroundKind ground(@Nullable FoundationSoil said, GroundKind habit) {
        if (said == null) {
            return habit;
        }
        return switch (said) {
            case ROCK -> GroundKind.BEDROCK;
            case GRAVEL -> GroundKind.GRAVEL;
            case SAND -> GroundKind.SAND;
            case CLAY -> GroundKind.CLAY;
            case UNKNOWN -> GroundKind.UNKNOWN;
        };
    }

    private static double or(@Nullable Double said, double habit) {
        return said == null ? habit : said;
    }

    /** All boxes in a sentence: the worst verdict with its reason, and how many hold. */
    static String sentence(List<StrengthReport> reports) {
        long holding = reports.stream().filter(StrengthReport::holds).count();
        String count = reports.size() == 1 ? "" : holding + " of " + reports.size() + " boxes hold; ";
        for (Verdict.Kind kind : List.of(Verdict.Kind.DOES_NOT_HOLD, Verdict.Kind.NOT_SHOWN_TO_HOLD)) {
            for (StrengthReport report : reports) {
                if (report.verdict().kind() == kind) {
                    return count + report.box() + " " + brief(report);
                }
            }
        }
        StrengthReport worst = reports.get(0);
        for (StrengthReport report : reports) {
            worst = report.worstBowMm() > worst.worstBowMm() ? report : worst;
        }
        return (reports.size() == 1 ? "" : "all " + reports.size() + " boxes hold; the one that bows most, ")
                + worst.box() + ", " + worst.verdict().sentence();
    }

    private static String cure(StrengthReport report, boolean friction) {
        return (report.cures().isEmpty()
                        ? "No bracing that was tried holds: take thicker boards, or make it lower."
                        : "The least cure: " + report.cures().get(0).words() + ".")
                + (friction
                        ? ""
                        : " Where the walls stand on rough gravel, `strength.bed friction` says how much it may hold.");
    }

    /** The verdict with the first of its reasons; the report has all. */
    private static String brief(StrengthReport report) {
        List<String> reasons = List.of(report.verdict().sentence().split("; "));
        int more = reasons.size() - 1;
        return reasons.get(0) + (more == 0 ? "" : "; and " + more + (more == 1 ? " more reason" : " more reasons"));
    }

    /**
     * Boxes that do not hold, or are not shown to.
     *
     * @param friction whether friction of the bed is said
     */
    static List<Problem> shortfalls(List<StrengthReport> reports, boolean friction) {
        List<Problem> found = new ArrayList<>();
        for (StrengthReport report : reports) {
            if (!report.holds()) {
                boolean fails = report.verdict().kind() == Verdict.Kind.DOES_NOT_HOLD;
                found.add(new Problem(
                        fails ? "box-does-not-hold" : "box-not-shown-to-hold",
                        "build",
                        "Box " + report.box() + " " + brief(report) + ".",
                        fails
                                ? cure(report, friction)
                                : "Give the figure that is missing, or ask a licensed engineer."));
            }
        }
        return found;
    }
}
