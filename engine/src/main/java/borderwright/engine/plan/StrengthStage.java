package borderwright.engine.plan;

import borderwright.engine.garden.Garden;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.Verdict;
import java.util.ArrayList;
import java.util.List;

/** The strength of a garden's boxes: its terms, the reports, and what they come to. */
final class StrengthStage {
    /** Boxes alike bulge alike but for rounding: the first of them is named. */
    private static final double SAME_BOW_MM = 1e-3;

    private StrengthStage() {}

    /** What the boxes are checked for. */
    static StrengthTerms terms(Garden garden) {
        return StrengthTerms.of(garden.strength(), garden.soil(), garden.ground(), garden.sections(), garden.origins());
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
            worst = report.worstBowMm() > worst.worstBowMm() + SAME_BOW_MM ? report : worst;
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

    /** A batten, where there is none: no other bracing makes up for uprights cut from thin boards. */
    private static Message advice(StrengthReport report, Garden garden) {
        if (report.isPushedByGround()) {
            return StrengthStageMessage.NO_BRACING_HOLDS_GROUND.of();
        }
        return WallBoardUprights.advice(garden).orElseGet(() -> cure(report));
    }

    /** What would make it hold, by the search for its cures. */
    static Message cure(StrengthReport report) {
        boolean cutShort = report.isSearchCutShort();
        if (report.cures().isEmpty()) {
            return (cutShort ? StrengthStageMessage.NO_BRACING_HOLDS_SO_FAR : StrengthStageMessage.NO_BRACING_HOLDS)
                    .of();
        }
        Message way = report.cures().get(0).words();
        return (cutShort ? StrengthStageMessage.LEAST_CURE_SO_FAR : StrengthStageMessage.LEAST_CURE).of(way);
    }

    /** Boxes that do not hold, or are not shown to. */
    static List<Problem> shortfalls(List<StrengthReport> reports, Garden garden) {
        List<Problem> found = new ArrayList<>();
        for (StrengthReport report : reports) {
            if (report.verdict().kind() == Verdict.Kind.DOES_NOT_HOLD) {
                found.add(new Problem(
                        "build",
                        StrengthStageMessage.BOX_DOES_NOT_HOLD.of(
                                report.box(),
                                first(report),
                                more(report),
                                advice(report, garden),
                                garden.strength().bedFriction().isPresent() ? "given" : "not given")));
            } else if (!report.holds()) {
                found.add(new Problem(
                        "build",
                        StrengthStageMessage.BOX_NOT_SHOWN_TO_HOLD.of(report.box(), first(report), more(report))));
            }
        }
        return found;
    }
}
