package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Box.Fixing;
import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.ScrewLine;
import borderwright.engine.geometry.Prism;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** The screws of a box as the builder placed them, by what they hold. */
final class DrivenScrews {
    /** Past the face that a screw enters, and before its point. */
    private static final double INSIDE_MM = 1;

    private final Box box;
    private final Map<Hold, List<Joint>> joints = new EnumMap<>(Hold.class);
    /** By the piece that they end in: a long box has tens of thousands. */
    private final Map<String, List<Joint>> ending = new HashMap<>();

    DrivenScrews(Box box) {
        this.box = box;
        for (Joint joint : box.joints()) {
            joints.computeIfAbsent(joint.hold(), k -> new ArrayList<>()).add(joint);
            ending.computeIfAbsent(joint.into(), k -> new ArrayList<>()).add(joint);
        }
    }

    /**
     * The screws of one board at one upright, or of two uprights to each other in one course.
     *
     * @param fixing which
     * @param lines where each goes
     */
    record Driven(Fixing fixing, List<ScrewLine> lines) {
        int count() {
            return lines.size();
        }

        /** From the lowest to the highest, mm. */
        double leverMm() {
            double low = lines.stream().mapToDouble(ScrewLine::zMm).min().orElse(0);
            double high = lines.stream().mapToDouble(ScrewLine::zMm).max().orElse(0);
            return high - low;
        }
    }

    /** Through a board of a wall into an upright; nothing where the board only touches it. */
    Optional<Driven> ofWall(Piece board, Piece upright) {
        return find(
                ending(upright),
                joint -> joint.hold() == Hold.WALL_TO_UPRIGHT,
                line -> isIn(board.place(), line, INSIDE_MM));
    }

    /** Between a divider's board or a tie and the upright beside it. */
    Optional<Driven> ofCrosspiece(Hold hold, Piece piece, Piece upright) {
        String through = hold == Hold.DIVIDER_TO_UPRIGHT ? piece.planter() : piece.label();
        return find(
                ending(upright),
                joint -> joint.hold() == hold && joint.through().equals(through),
                line -> isBetween(line, piece.place().bottomMm(), piece.place().topMm()));
    }

    /** Between two uprights of a corner, their own or those of a strap, in the course that a height lies in. */
    Optional<Driven> ofPair(Hold hold, Piece first, Piece second, double heightMm) {
        return box.courses().stream()
                .filter(course -> heightMm >= course.bottomMm() && heightMm <= course.topMm())
                .findFirst()
                .flatMap(course -> find(
                        all(hold),
                        joint -> isBetween(joint, first, second),
                        line -> isBetween(line, course.bottomMm(), course.topMm())));
    }

    /** Whether two uprights of a corner are screwed to each other; else a strap holds them. */
    boolean holdTogether(Piece first, Piece second) {
        return all(Hold.UPRIGHTS_TOGETHER).stream().anyMatch(joint -> isBetween(joint, first, second));
    }

    private static boolean isBetween(Joint joint, Piece first, Piece second) {
        List<String> pair = List.of(first.label(), second.label());
        return pair.contains(joint.through()) && pair.contains(joint.into());
    }

    /** Through one board at a corner into the end of the other. */
    Optional<Driven> ofLap(Piece through, Piece butting) {
        return find(
                all(Hold.LAP),
                joint -> true,
                line -> isIn(through.place(), line, INSIDE_MM)
                        && isIn(butting.place(), line, line.lengthMm() - INSIDE_MM));
    }

    /** A fixing of this kind: the capping's are all of one size. */
    Optional<Fixing> any(Hold hold) {
        return box.fixings().stream()
                .filter(fixing -> fixing.hold() == hold && fixing.diameterMm() > 0)
                .findFirst();
    }

    private List<Joint> all(Hold hold) {
        return joints.getOrDefault(hold, List.of());
    }

    private List<Joint> ending(Piece upright) {
        return ending.getOrDefault(upright.label(), List.of());
    }

    private Optional<Driven> find(List<Joint> among, Predicate<Joint> wanted, Predicate<ScrewLine> here) {
        for (Joint joint : among) {
            if (wanted.test(joint)) {
                List<ScrewLine> lines = joint.screws().stream().filter(here).toList();
                if (!lines.isEmpty()) {
                    return fixing(joint).map(fixing -> new Driven(fixing, lines));
                }
            }
        }
        return Optional.empty();
    }

    private Optional<Fixing> fixing(Joint joint) {
        return box.fixings().stream().filter(joint::isOf).findFirst();
    }

    private static boolean isBetween(ScrewLine line, double bottomMm, double topMm) {
        return line.zMm() >= bottomMm && line.zMm() <= topMm;
    }

    private static boolean isIn(Prism solid, ScrewLine line, double depthMm) {
        return isBetween(line, solid.bottomMm(), solid.topMm()) && solid.plan().contains(line.planAt(depthMm), 0);
    }
}
