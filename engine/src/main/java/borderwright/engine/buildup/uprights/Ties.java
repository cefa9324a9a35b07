package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.JointPlan;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Nook;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.CutWords.SideNames;
import borderwright.engine.buildup.parts.FaceMessage;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.PlacedSolids;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Prism;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.SidePlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The ties across a planter, from the inner face of its front (in a box deeper than it is long: of an end) to the inner
 * face opposite.
 *
 * <p>Walls across the box (its ends and dividers) hold front and back together; between two of them further apart than
 * the spacing, ties at equal distances. A tie lies on edge below the rim, square to the front, and reaches both inner
 * faces: its ends are cut to them. It is screwed sideways to a brace at either end, since screws in its end grain would
 * hold nothing. Where the face opposite is not parallel, the brace there has its edge ripped to the tie, or where it may
 * not be ripped an angle bracket takes its place.
 */
public final class Ties {
    /** A tie meets the face opposite at no more than this from square. */
    private static final double STEEPEST_DEG = 40;

    /** Room left above the floor and below the rim, mm. */
    private static final double ROOM_MM = 20;

    private final Draft draft;
    private final UprightBuilder uprights;
    private final NookUprights nooks;
    private final Dividers dividers;
    private final List<Tie> ties = new ArrayList<>();

    public Ties(Draft draft, UprightBuilder uprights, NookUprights nooks, Dividers dividers) {
        this.draft = draft;
        this.uprights = uprights;
        this.nooks = nooks;
        this.dividers = dividers;
    }

    private record Tie(String label, Strip strip, SideFrame front, double topMm) {}

    /** The side that a line from the front meets first. */
    private record Opposite(SideFrame side, double acrossMm) {}

    /** A tie with its two braces. */
    private record Trial(Tie tie, UprightPlan atFront, UprightPlan atBack, SideFrame back, boolean bracket) {}

    /** Chooses the ties, keeps their room and stands their braces. */
    public void place() {
        double spacing = draft.scheme.tieSpacingMm();
        Optional<Double> top = topMm();
        for (SideFrame side : draft.sides) {
            if (spacing == 0 || !carries(side)) {
                continue;
            }
            for (double wanted : wanted(side, spacing)) {
                if (top.isEmpty()) {
                    draft.note(BuildMessage.WALL_TOO_LOW_FOR_TIES.of(
                            draft.plan.name(), draft.sections.ties().name()));
                    return;
                }
                place(side, wanted, spacing, top.get());
            }
        }
    }

    /** Ties go from the fronts; in a box deeper than it is long its ends are the sides that bow, so from an end there. */
    private boolean carries(SideFrame side) {
        SidePlan.Role wanted = isDeep() ? SidePlan.Role.END : SidePlan.Role.FRONT;
        return draft.plan.sides().get(side.side()).role() == wanted && (!isDeep() || side.side() == firstEnd());
    }

    private boolean isDeep() {
        Ring outline = draft.plan.outline();
        return draft.plan.dividers().isEmpty()
                && outline.size() == 4
                && firstEnd() >= 0
                && outline.sideMm(firstEnd()) > outline.sideMm(firstEnd() + 1);
    }

    /** Index of the first end; -1 for a box that has none. */
    private int firstEnd() {
        List<SidePlan> sides = draft.plan.sides();
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).role() == SidePlan.Role.END) {
                return i;
            }
        }
        return -1;
    }

    private List<Double> wanted(SideFrame side, double spacing) {
        List<Double> across = new ArrayList<>(dividers.middles(side));
        across.add(side.innerStart(draft.wallMm()));
        across.add(side.innerEnd(draft.wallMm()));
        across.sort(null);
        List<Double> wanted = new ArrayList<>();
        for (int i = 0; i + 1 < across.size(); i++) {
            double gap = across.get(i + 1) - across.get(i);
            long spaces = (long) StrictMath.ceil(gap / spacing - 1e-6);
            for (long k = 1; k < spaces; k++) {
                wanted.add(across.get(i) + gap * k / spaces);
            }
        }
        return wanted;
    }

    /** Height of the ties' top above the datum; nothing where the wall is too low for one. */
    private Optional<Double> topMm() {
        double height = draft.sections.ties().width().mm();
        double floor = draft.stack.bottomMm() + draft.plan.platformMm() + ROOM_MM;
        double highest = draft.stack.topMm() - ROOM_MM;
        double top = draft.stack.topMm() - draft.scheme.tieBelowRimMm();
        if (top - height < floor) {
            top = floor + height;
        }
        return top <= highest ? Optional.of(top) : Optional.empty();
    }

    private void place(SideFrame side, double wanted, double spacing, double topMm) {
        for (double off = 0; off <= spacing / 4; off += 10) {
            for (double s : off == 0 ? List.of(wanted) : List.of(wanted - off, wanted + off)) {
                for (int hand : new int[] {1, -1}) {
                    Optional<Trial> trial = trial(side, s, hand, topMm).filter(this::fits);
                    if (trial.isPresent()) {
                        take(trial.get());
                        return;
                    }
                }
            }
        }
        draft.note(BuildMessage.NO_ROOM_FOR_TIE.of(PieceLabels.letter(side.side()), draft.plan.name(), wanted));
    }

    /** @param hand 1 for the braces on the tie's side towards the front's right end, -1 for the other */
    private Optional<Trial> trial(SideFrame side, double s, int hand, double topMm) {
        double half = draft.sections.ties().thickness().mm() / 2;
        Point origin = side.at(s, draft.wallMm());
        Point along = side.inwards();
        Optional<Opposite> found = opposite(origin, along, side);
        if (found.isEmpty() || !meetsWell(found.get(), along)) {
            return Optional.empty();
        }
        SideFrame back = found.get().side;
        Strip.End right = Strip.endOn(origin, along, -half, half, back.at(0, draft.wallMm()), back.inwards());
        Strip strip = new Strip(origin, along, -half, half, Strip.End.square(0), right);
        Stance stance = Stance.of(draft.sections.braces());
        Point frontFlank = side.at(s + hand * half, draft.wallMm());
        Nook atFront = new Nook(frontFlank, side.along().times(hand), along, StrictMath.PI / 2);
        // near lies to the right of the tie, which is where the front's right end is
        Point backFlank = hand > 0 ? strip.at(right.nearMm(), -half) : strip.at(right.farMm(), half);
        Point alongBack = back.along().times(back.along().dot(side.along()) * hand > 0 ? 1 : -1);
        double angle = StrictMath.acos(StrictMath.max(-1, StrictMath.min(1, -alongBack.dot(along))));
        Nook fromWall = new Nook(backFlank, alongBack, back.inwards(), angle);
        Nook fromTie = new Nook(backFlank, along.times(-1), side.along().times(hand), angle);
        List<List<UprightPlan>> choices = nooks.choices(fromWall, fromTie, draft.sections.braces());
        UprightPlan best = choices.stream()
                .filter(choice -> choice.size() == 1)
                .findFirst()
                .orElseThrow()
                .get(0);
        UprightPlan front = UprightPlan.onBothFaces(atFront.rectangle(0, stance), draft.sections.braces());
        boolean flush = best.bearsOnBoth() || StrictMath.abs(angle - StrictMath.PI / 2) < 0.02;
        boolean bracket = !flush;
        return Optional.of(new Trial(new Tie("", strip, side, topMm), front, best, back, bracket));
    }

    private Optional<Opposite> opposite(Point origin, Point along, SideFrame front) {
        Optional<Opposite> nearest = Optional.empty();
        for (SideFrame side : draft.sides) {
            double speed = along.dot(side.inwards());
            if (side.side() == front.side() || speed > -1e-9) {
                continue;
            }
            double across = -(side.w(origin) - draft.wallMm()) / speed;
            double s = side.s(origin.plus(along.times(across)));
            boolean hits = across > 0 && s > side.innerStart(draft.wallMm()) && s < side.innerEnd(draft.wallMm());
            if (hits && (nearest.isEmpty() || across < nearest.get().acrossMm)) {
                nearest = Optional.of(new Opposite(side, across));
            }
        }
        return nearest;
    }

    private static boolean meetsWell(Opposite opposite, Point along) {
        double cosine = -along.dot(opposite.side.inwards());
        return cosine > StrictMath.cos(StrictMath.toRadians(STEEPEST_DEG)) && opposite.acrossMm > 200;
    }

    private boolean fits(Trial trial) {
        return draft.clearance.isFree(solid(trial.tie))
                && uprights.fits(List.of(trial.atFront, trial.atBack))
                && new PlacedSolids().takes(List.of(uprights.solid(trial.atFront), uprights.solid(trial.atBack)))
                && new PlacedSolids().takes(List.of(solid(trial.tie), uprights.solid(trial.atBack)));
    }

    private Prism solid(Tie tie) {
        double height = draft.sections.ties().width().mm();
        return new Prism(tie.strip.outline(), tie.topMm - height, tie.topMm);
    }

    private void take(Trial trial) {
        String planter = planter(trial.tie);
        Tie tie = new Tie(draft.labels.next(planter, Role.TIE), trial.tie.strip, trial.tie.front, trial.tie.topMm);
        ties.add(tie);
        draft.clearance.take(solid(tie));
        String atFront = uprights.stand(trial.atFront, Role.BRACE, tie.front.side());
        String atBack = uprights.stand(trial.atBack, Role.BRACE, -1);
        screw(tie, tie.front, atFront);
        if (trial.bracket) {
            draft.join(new JointPlan(
                    Hold.TIE_BRACKET,
                    FixingMessage.BRACKETS_OF_TIES.of(),
                    new Screw("angle bracket", 0, 0),
                    trial.back.side(),
                    tie.label,
                    atBack));
        } else {
            screw(tie, trial.back, atBack);
        }
    }

    private void screw(Tie tie, SideFrame side, String brace) {
        draft.join(new JointPlan(
                Hold.TIE_TO_BRACE,
                FixingMessage.TIES_TO_BRACES.of(Hold.TIE_TO_BRACE.perJoint()),
                draft.screws.screw(
                        draft.sections.ties().thickness().mm(),
                        Stance.of(draft.sections.braces()).faceMm()),
                side.side(),
                tie.label,
                brace));
    }

    private String planter(Tie tie) {
        return draft.planterAt(tie.strip.at(1, 0));
    }

    public void build(PieceMaker maker) {
        SectionSpec section = draft.sections.ties();
        for (Tie tie : ties) {
            String planter = planter(tie);
            PieceMaker.Part part = PieceMaker.Part.builder()
                    .label(tie.label)
                    .planter(planter)
                    .role(Role.TIE)
                    .side(tie.front.side())
                    .section(section)
                    .names(SideNames.MARKED)
                    .faceOut(FaceMessage.ANY_FACE_OF_TIE.of(PieceLabels.letter(tie.front.side())))
                    .build();
            draft.add(maker.onEdge(part, tie.strip, tie.topMm - section.width().mm(), tie.topMm));
        }
        if (!ties.isEmpty()) {
            draft.note(BuildMessage.TIES_BEFORE_SOIL.of(draft.stack.topMm() - ties.get(0).topMm));
        }
    }
}
