package borderwright.engine.buildup.uprights;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.Supports;
import borderwright.engine.buildup.draft.UprightPlan;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box.Course;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.buildup.parts.PieceLabels;
import borderwright.engine.buildup.parts.Strip;
import borderwright.engine.buildup.walls.BoardJoining;
import borderwright.engine.buildup.walls.WallBoards;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Ring;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.NavigableSet;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/**
 * The uprights along the sides between corners and dividers, and the joints of boards on them.
 *
 * <ol>
 *   <li>Between two supports further apart than the spacing, braces at equal distances.
 *   <li>Where a board is longer than the longest piece, joints on braces or dividers: fewest pieces, most even lengths.
 *       Neighbouring courses are joined at different supports; courses repeat every second.
 *   <li>A brace under a joint is one flat upright where its face is wide enough for the screws of both ends, else two
 *       side by side with the joint between them.
 * </ol>
 */
public final class Braces {
    /** Screw diameters that the two board ends need side by side: 5 to the end and 3 to the edge, for each. */
    private static final double JOINT_DIAMETERS = 16;

    private final Draft draft;
    private final Supports supports;
    private final UprightBuilder uprights;
    private final Dividers dividers;

    public Braces(Draft draft, Supports supports, UprightBuilder uprights, Dividers dividers) {
        this.draft = draft;
        this.supports = supports;
        this.uprights = uprights;
        this.dividers = dividers;
    }

    /**
     * Stands the braces of a side.
     *
     * @return the joints of each course, bottom first
     */
    public List<List<Double>> build(SideFrame side, WallBoards walls) {
        NavigableSet<Double> centres = spaced(side);
        List<List<Double>> byCourse = joints(side, walls, centres);
        Set<Double> joined = new HashSet<>();
        byCourse.forEach(joined::addAll);
        dividers.standAtJoints(side, joined);
        for (double centre : centres) {
            List<UprightPlan> upright = joined.contains(centre) ? underJoint(side, centre) : single(side, centre);
            if (uprights.fits(upright)) {
                upright.forEach(one -> uprights.stand(one, Role.BRACE, side.side()));
            }
        }
        return byCourse;
    }

    private NavigableSet<Double> spaced(SideFrame side) {
        NavigableSet<Double> centres = new TreeSet<>();
        List<Double> held = supports.middles(side);
        double spacing = draft.scheme.braceSpacingMm(side.side());
        for (int i = 0; i + 1 < held.size(); i++) {
            double from = held.get(i);
            double gap = held.get(i + 1) - from;
            long spaces = (long) StrictMath.ceil(gap / spacing - 1e-6);
            for (long k = 1; k < spaces; k++) {
                room(side, from + gap * k / spaces, spacing).ifPresent(centres::add);
            }
        }
        return centres;
    }

    /** The nearest place to a wanted one with room for a brace, no more than a quarter of the spacing away. */
    private Optional<Double> room(SideFrame side, double wanted, double spacing) {
        for (double off = 0; off <= spacing / 4; off += 5) {
            if (uprights.fits(single(side, wanted - off))) {
                return Optional.of(wanted - off);
            }
            if (uprights.fits(single(side, wanted + off))) {
                return Optional.of(wanted + off);
            }
        }
        draft.note(BuildMessage.NO_ROOM_FOR_BRACE.of(PieceLabels.letter(side.side()), draft.plan.name(), wanted));
        return Optional.empty();
    }

    private List<List<Double>> joints(SideFrame side, WallBoards walls, NavigableSet<Double> centres) {
        double longest = draft.means.longestMm(draft.sections.walls().name());
        List<List<Double>> byCourse = new ArrayList<>();
        for (Course course : draft.courses()) {
            int n = course.number();
            if (n > 2) {
                byCourse.add(byCourse.get(n - 3));
                continue;
            }
            Strip whole = walls.strip(n, side);
            Set<Double> taken = n == 2 ? Set.copyOf(byCourse.get(0)) : Set.of();
            byCourse.add(joints(side, whole, longest, centres, taken));
        }
        return byCourse;
    }

    private List<Double> joints(
            SideFrame side, Strip whole, double longest, NavigableSet<Double> centres, Set<Double> taken) {
        double from = StrictMath.min(whole.left().nearMm(), whole.left().farMm());
        double to = StrictMath.max(whole.right().nearMm(), whole.right().farMm());
        if (to - from <= longest) {
            return List.of();
        }
        NavigableSet<Double> stops = jointable(side, centres);
        Optional<List<Double>> found = BoardJoining.choose(from, to, longest, List.copyOf(stops), taken);
        if (found.isEmpty()) {
            NavigableSet<Double> more = between(side, stops);
            more.addAll(stops);
            found = BoardJoining.choose(from, to, longest, List.copyOf(more), taken);
            found.ifPresent(
                    joints -> joints.stream().filter(j -> !stops.contains(j)).forEach(centres::add));
        }
        if (found.isEmpty()) {
            found = BoardJoining.choose(from, to, longest, List.copyOf(stops), Set.of());
            found.ifPresent(joints ->
                    draft.note(BuildMessage.JOINTS_IN_LINE.of(PieceLabels.letter(side.side()), draft.plan.name())));
        }
        if (found.isEmpty()) {
            draft.cannot(new Problem(
                    "sections",
                    BuildMessage.SIDE_LONGER_THAN_BOARDS.of(
                            PieceLabels.letter(side.side()),
                            draft.plan.name(),
                            to - from,
                            draft.sections.walls().name(),
                            longest)));
        }
        return found.orElse(List.of());
    }

    private NavigableSet<Double> jointable(SideFrame side, NavigableSet<Double> centres) {
        NavigableSet<Double> stops = new TreeSet<>(dividers.middles(side));
        centres.stream().filter(c -> uprights.fits(underJoint(side, c))).forEach(stops::add);
        return stops;
    }

    /** More braces half-way between the supports, where there is room. */
    private NavigableSet<Double> between(SideFrame side, NavigableSet<Double> stops) {
        List<Double> held = new ArrayList<>(stops);
        held.add(0, side.innerStart(draft.wallMm()));
        held.add(side.innerEnd(draft.wallMm()));
        NavigableSet<Double> more = new TreeSet<>();
        for (int i = 0; i + 1 < held.size(); i++) {
            double middle = (held.get(i) + held.get(i + 1)) / 2;
            if (uprights.fits(underJoint(side, middle))) {
                more.add(middle);
            }
        }
        return more;
    }

    private List<UprightPlan> single(SideFrame side, double centre) {
        Stance stance = Stance.of(draft.sections.braces());
        return List.of(at(side, centre - stance.faceMm() / 2, stance));
    }

    private List<UprightPlan> underJoint(SideFrame side, double centre) {
        SectionSpec section = draft.sections.braces();
        double wide = StrictMath.max(section.width().mm(), section.thickness().mm());
        double thin = StrictMath.min(section.width().mm(), section.thickness().mm());
        Stance flat = new Stance(wide, thin);
        double needed = JOINT_DIAMETERS
                * draft.screws.screw(draft.wallMm(), thin, draft.rules.screws()).diameterMm();
        if (wide >= needed) {
            return List.of(at(side, centre - wide / 2, flat));
        }
        Stance stance = Stance.of(section);
        return List.of(at(side, centre - stance.faceMm(), stance), at(side, centre, stance));
    }

    private UprightPlan at(SideFrame side, double fromMm, Stance stance) {
        double wall = draft.wallMm();
        Ring plan = new Ring(List.of(
                side.at(fromMm, wall),
                side.at(fromMm + stance.faceMm(), wall),
                side.at(fromMm + stance.faceMm(), wall + stance.depthMm()),
                side.at(fromMm, wall + stance.depthMm())));
        return UprightPlan.onOneFace(plan, draft.sections.braces());
    }
}
