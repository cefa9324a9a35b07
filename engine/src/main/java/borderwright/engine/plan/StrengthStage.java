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
import borderwright.engine.message.Message;
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

    /** All boxes together: how many hold, and the worst verdict with its first reason. */
    static Message summary(List<StrengthReport> reports) {
        long holding = reports.stream().filter(StrengthReport::holds).count();
        int boxes = reports.size();
        for (Verdict.Kind kind : List.of(Verdict.Kind.DOES_NOT_HOLD, Verdict.Kind.NOT_SHOWN_TO_HOLD)) {
            for (StrengthReport report : reports) {
                if (report.verdict().kind() == kind) {
                    return boxes == 1
                            ? StrengthStageMessage.ONE_BOX_FALLS_SHORT.of(
                                    report.box(), kind.of(), first(report), more(report))
                            : StrengthStageMessage.BOXES_FALL_SHORT.of(
                                    holding, boxes, report.box(), kind.of(), first(report), more(report));
                }
            }
        }
        StrengthReport worst = reports.get(0);
        for (StrengthReport report : reports) {
            worst = report.worstBowMm() > worst.worstBowMm() ? report : worst;
        }
        return boxes == 1
                ? StrengthStageMessage.ONE_BOX_HOLDS.of(worst.box(), first(worst))
                : StrengthStageMessage.ALL_BOXES_HOLD.of(boxes, worst.box(), first(worst));
    }

    /** The first reason of the verdict; the report has all. */
    private static Message first(StrengthReport report) {
        return report.verdict().reasons().get(0);
    }

    private static int more(StrengthReport report) {
        return report.verdict().reasons().size() - 1;
    }

    private static Message advice(StrengthReport report) {
        return report.cures().isEmpty()
                ? StrengthStageMessage.NO_BRACING_HOLDS.of()
                : StrengthStageMessage.LEAST_CURE.of(report.cures().get(0).words());
    }

    /**
     * Boxes that do not hold, or are not shown to.
     *
     * @param friction whether friction of the bed is given
     */
    static List<Problem> shortfalls(List<StrengthReport> reports, boolean friction) {
        List<Problem> found = new ArrayList<>();
        for (StrengthReport report : reports) {
            if (report.verdict().kind() == Verdict.Kind.DOES_NOT_HOLD) {
                found.add(new Problem(
                        "build",
                        StrengthStageMessage.BOX_DOES_NOT_HOLD.of(
                                report.box(),
                                first(report),
                                more(report),
                                advice(report),
                                friction ? "given" : "not given")));
            } else if (!report.holds()) {
                found.add(new Problem(
                        "build",
                        StrengthStageMessage.BOX_NOT_SHOWN_TO_HOLD.of(report.box(), first(report), more(report))));
            }
        }
        return found;
    }
}
