package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.message.Message;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.worked.Check;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Comes from the figures to the verdict, and lists what the checks assume and what they leave open. */
final class VerdictMaker {
    /** A greater bow is reported as more than this: next to nothing holds the side. */
    private static final double FAR_MM = 200;

    private VerdictMaker() {}

    static StrengthReport notBuilt(Box box, StrengthTerms terms) {
        Message reason = StrengthMessage.BOX_NOT_BUILT.of();
        return StrengthReport.builder()
                .box(box.plan().name())
                .verdict(new Verdict(Verdict.Kind.NOT_SHOWN_TO_HOLD, List.of(reason)))
                .rules(terms.rules().name())
                .bowLimitMm(terms.bowLimitMm())
                .sides(List.of())
                .lines(List.of())
                .checks(List.of())
                .takenForGranted(List.of())
                .notSettled(List.of(reason))
                .guidance(StrengthMessage.STRENGTH_GUIDANCE.of())
                .build();
    }

    /** Of a frame that is a mechanism: no figures come of it. */
    static Verdict ofMechanism() {
        return new Verdict(Verdict.Kind.NOT_SHOWN_TO_HOLD, List.of(StrengthMessage.BOARDS_HELD_BY_NOTHING.of()));
    }

    static Verdict of(StrengthTerms terms, List<SideBow> sides, List<Check> checks, List<Message> open) {
        if (sides.isEmpty()) {
            return ofMechanism();
        }
        List<Message> faults = faults(terms, sides, checks);
        if (!faults.isEmpty()) {
            return new Verdict(Verdict.Kind.DOES_NOT_HOLD, faults);
        }
        Message figures = figures(terms, sides, checks);
        if (open.isEmpty()) {
            return new Verdict(Verdict.Kind.HOLDS, List.of(figures));
        }
        List<Message> reasons = new ArrayList<>(open);
        reasons.add(StrengthMessage.APART_FROM_THAT.of(figures));
        return new Verdict(Verdict.Kind.NOT_SHOWN_TO_HOLD, reasons);
    }

    private static List<Message> faults(StrengthTerms terms, List<SideBow> sides, List<Check> checks) {
        List<Message> faults = new ArrayList<>();
        double limitMm = terms.bowLimitMm();
        for (SideBow side : sides) {
            if (!side.holds()) {
                faults.add(
                        side.finalMm() > FAR_MM
                                ? StrengthMessage.SIDE_BOWS_FAR_TOO_MUCH.of(
                                        side.letter(), FAR_MM, side.course(), limitMm)
                                : StrengthMessage.SIDE_BOWS_TOO_MUCH.of(
                                        side.letter(), side.finalMm(), side.course(), limitMm));
            }
        }
        for (Check check : checks) {
            if (!check.holds()) {
                faults.add(StrengthMessage.PART_OVERLOADED.of(
                        check.part(), check.what(), check.utilisation(), check.loading(), check.clause()));
            }
        }
        return faults;
    }

    private static Message figures(StrengthTerms terms, List<SideBow> sides, List<Check> checks) {
        double bowMm = sides.stream().mapToDouble(SideBow::finalMm).max().orElse(0);
        if (checks.isEmpty()) {
            return StrengthMessage.STRENGTH_FIGURES_OF_BOW.of(bowMm, terms.bowLimitMm(), 0);
        }
        Check weakest = checks.get(0);
        return StrengthMessage.STRENGTH_FIGURES.of(
                bowMm, terms.bowLimitMm(), weakest.utilisation(), weakest.part(), weakest.what());
    }

    /** What no figure covers. */
    static List<Message> open(Box box, StrengthTerms terms) {
        Set<Message> open = new LinkedHashSet<>();
        if (terms.ground().equals(Optional.of(FoundationSoil.UNKNOWN))) {
            open.add(StrengthMessage.GROUND_NOT_KNOWN.of());
        }
        box.missingBoards().forEach(missing -> open.add(StrengthMessage.BOARD_MISSING.of(missing)));
        return List.copyOf(open);
    }

    /** What the checks assume. */
    static List<Message> assumed(StrengthTerms terms, BoxFrame frame) {
        List<Message> assumed = new ArrayList<>();
        Fill fill = terms.fill();
        assumed.add(StrengthMessage.FILL_ASSUMED.of(
                fill.moistKnPerM3(),
                fill.saturatedKnPerM3(),
                StrictMath.toDegrees(fill.phi()),
                fill.push().name(),
                fill.coefficient(),
                fill.belowRimMm()));
        if (fill.arching()) {
            assumed.add(StrengthMessage.ARCHING_ASSUMED.of());
        }
        if (terms.kneelingN() > 0) {
            assumed.add(StrengthMessage.PERSON_ASSUMED.of(terms.kneelingN()));
        }
        Set<String> timbers = new LinkedHashSet<>();
        frame.walls().forEach(board -> timbers.add(board.sectionName()));
        frame.stems().forEach(stem -> timbers.add(stem.sectionName()));
        frame.ties().forEach(tie -> timbers.add(tie.sectionName()));
        timbers.forEach(name -> assumed.add(StrengthMessage.TIMBER_ASSUMED.of(
                name, frame.materials().timber(name).basis())));
        assumed.add(StrengthMessage.SCREW_STIFFNESS_ASSUMED.of());
        assumed.add(bed(terms));
        assumed.addAll(frame.unheld());
        return assumed;
    }

    private static Message bed(StrengthTerms terms) {
        if (terms.gravelMm() > 0) {
            return terms.bedFriction() > 0
                    ? StrengthMessage.GRAVEL_BED_WITH_FRICTION_ASSUMED.of(terms.gravelMm(), terms.bedFriction())
                    : StrengthMessage.GRAVEL_BED_ASSUMED.of(terms.gravelMm());
        }
        return terms.bedFriction() > 0
                ? StrengthMessage.BARE_BED_WITH_FRICTION_ASSUMED.of(terms.bedFriction())
                : StrengthMessage.BARE_BED_ASSUMED.of();
    }
}
