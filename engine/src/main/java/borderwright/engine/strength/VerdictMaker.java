package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.soil.GroundKind;
import borderwright.engine.strength.worked.Check;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;

/** What is said of the figures. */
final class VerdictMaker {
    private VerdictMaker() {}

    static StrengthReport notBuilt(Box box, StrengthTerms terms) {
        String reason = "the box could not be built, so there is nothing to check";
        return new StrengthReport(
                box.plan().name(),
                new Verdict(Verdict.Kind.NOT_SHOWN_TO_HOLD, reason),
                terms.rules().name(),
                terms.bowLimitMm(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(reason),
                List.of(),
                StrengthReport.GUIDANCE);
    }

    static Verdict of(
            StrengthTerms terms, List<SideBow> sides, List<Check> checks, List<String> open, boolean mechanism) {
        if (mechanism || sides.isEmpty()) {
            return new Verdict(Verdict.Kind.NOT_SHOWN_TO_HOLD, "some of its boards are held by nothing that counts");
        }
        List<String> faults = new ArrayList<>();
        for (SideBow side : sides) {
            if (!side.holds()) {
                faults.add("side " + side.letter() + " ends up bowing " + StrengthFigures.bow(terms, side.finalMm())
                        + " in course " + side.course() + " (limit " + StrengthFigures.length(terms, terms.bowLimitMm())
                        + ")");
            }
        }
        for (Check check : checks) {
            if (!check.holds()) {
                faults.add(check.part() + ", " + check.what() + ": " + StrengthFigures.percent(check.utilisation())
                        + " of what it bears, under " + check.loading() + " (" + check.clause() + ")");
            }
        }
        if (!faults.isEmpty()) {
            return new Verdict(Verdict.Kind.DOES_NOT_HOLD, String.join("; ", faults));
        }
        double bow = sides.stream().mapToDouble(SideBow::finalMm).max().orElse(0);
        String numbers = "its sides end up bowing " + StrengthFigures.length(terms, bow) + " at most (limit "
                + StrengthFigures.length(terms, terms.bowLimitMm()) + "), and "
                + StrengthFigures.percent(checks.isEmpty() ? 0 : checks.get(0).utilisation())
                + " of its weakest part is used"
                + (checks.isEmpty()
                        ? ""
                        : " (" + checks.get(0).part() + ", " + checks.get(0).what() + ")");
        return open.isEmpty()
                ? new Verdict(Verdict.Kind.HOLDS, numbers)
                : new Verdict(
                        Verdict.Kind.NOT_SHOWN_TO_HOLD, String.join("; ", open) + "; apart from that, " + numbers);
    }

    /** What no figure covers. */
    static List<String> open(Box box, StrengthTerms terms) {
        Set<String> open = new LinkedHashSet<>();
        if (terms.ground() == GroundKind.UNKNOWN) {
            open.add("what the ground under the gravel bears is not known");
        }
        box.unmet().stream()
                .filter(problem -> problem.code().equals("no-board-long-enough"))
                .forEach(problem -> open.add(
                        "a board is missing: " + problem.message().values().get(0)));
        return List.copyOf(open);
    }

    /** What was taken for granted. */
    static List<String> taken(StrengthTerms terms, BoxFrame frame) {
        List<String> taken = new ArrayList<>();
        Fill fill = terms.fill();
        taken.add(String.format(
                Locale.ROOT,
                "Fill of %s moist and %s soaked, friction %.0f degrees, pushing %s (coefficient %.2f), up to %s below the"
                        + " rim.",
                StrengthFigures.weight(terms, fill.moistKnPerM3()),
                StrengthFigures.weight(terms, fill.saturatedKnPerM3()),
                StrictMath.toDegrees(fill.phi()),
                fill.push() == Fill.Push.AT_REST ? "at rest" : "as if the walls gave way",
                fill.coefficient(),
                StrengthFigures.length(terms, fill.belowRimMm())));
        if (fill.arching()) {
            taken.add("Narrow fill is taken to hang on its walls in part: not so while it is fresh, wet or shaken.");
        }
        if (terms.kneelingN() > 0) {
            taken.add("A person of " + StrengthFigures.force(terms, terms.kneelingN())
                    + " kneels on the edge and pushes a third of that outwards.");
        }
        Set<String> timbers = new LinkedHashSet<>();
        frame.walls().forEach(board -> timbers.add(board.sectionName()));
        frame.stems().forEach(stem -> timbers.add(stem.sectionName()));
        frame.ties().forEach(tie -> timbers.add(tie.sectionName()));
        timbers.forEach(
                name -> taken.add(name + ": " + frame.materials().timber(name).says() + "."));
        taken.add("Screws pulled out give way as softly as in shear, unless their maker's stiffness is given.");
        String bed = terms.gravelMm() > 0
                ? StrengthFigures.length(terms, terms.gravelMm()) + " of compacted gravel"
                : "its bed without gravel, which is taken to bear it";
        taken.add("The bottom course stands on " + bed
                + (terms.bedFriction() > 0
                        ? String.format(Locale.ROOT, ", with friction %.2f.", terms.bedFriction())
                        : " and is not held by friction."));
        frame.unheld().forEach(sentence -> taken.add(capital(sentence) + "."));
        return taken;
    }

    private static String capital(String sentence) {
        return sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
    }
}
