package borderwright.engine.assembly;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.FixingMessage;
import borderwright.engine.buildup.parts.Joint;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.Predicate;

/** The pieces of a box by what they do, and its fixings by what they hold. */
final class BoxParts {
    /** Faces nearer than this bear once the screws are tight, as the builder has it. */
    static final double STAND_OFF_MM = 2.2;

    final Box box;
    final List<SideFrame> sides;
    final double wallMm;
    final double bottomMm;
    private final Map<String, SectionSpec> sections = new TreeMap<>();

    BoxParts(Box box, List<SectionSpec> all) {
        this.box = box;
        this.sides = SideFrame.of(box.plan().outline());
        all.forEach(section -> sections.put(section.name(), section));
        Piece wall = of(Role.WALL).get(0);
        this.wallMm = section(wall).thickness().mm();
        this.bottomMm = box.courses().get(0).bottomMm();
    }

    List<Piece> of(Role role) {
        return where(piece -> piece.role() == role);
    }

    List<Piece> where(Predicate<Piece> wanted) {
        return box.pieces().stream().filter(wanted).toList();
    }

    List<Piece> uprights() {
        return where(piece -> piece.role() == Role.POST || piece.role() == Role.BRACE);
    }

    /** Boards of a side in one course, from its left end. */
    List<Piece> boards(int side, int course) {
        SideFrame frame = sides.get(side);
        List<Piece> boards = new ArrayList<>(where(piece ->
                piece.role() == Role.WALL && piece.side() == side && (course == 0 || piece.course() == course)));
        boards.sort((a, b) -> {
            int byCourse = Integer.compare(a.course(), b.course());
            return byCourse != 0 ? byCourse : Double.compare(frame.s(middle(a)), frame.s(middle(b)));
        });
        return boards;
    }

    SectionSpec section(Piece piece) {
        SectionSpec found = sections.get(piece.section());
        if (found == null) {
            throw new IllegalArgumentException(
                    "no section is named " + piece.section() + ", of which " + piece.label() + " is cut");
        }
        return found;
    }

    /** The joints of one kind on a side; of a divider by its index. */
    List<Joint> joints(int side, Box.Hold hold) {
        return box.joints().stream()
                .filter(joint -> joint.side() == side && joint.hold() == hold)
                .toList();
    }

    /** Whether an upright is screwed to a side. */
    boolean holds(int side, Piece upright) {
        return joints(side, Box.Hold.WALL_TO_UPRIGHT).stream()
                .anyMatch(joint -> joint.into().equals(upright.label()));
    }

    /** Boards of a divider, from the bottom. */
    List<Piece> dividerBoards(int divider) {
        String planter = box.plan().planters().get(divider);
        return where(piece -> piece.role() == Role.DIVIDER && piece.planter().equals(planter));
    }

    Piece piece(String label) {
        return where(piece -> piece.label().equals(label)).get(0);
    }

    /** The counted fixing that a joint is one of. */
    Box.Fixing fixing(Joint joint) {
        return box.fixings().stream().filter(joint::isOf).findFirst().orElseThrow();
    }

    /** Fixings that hold no wall, by their use. */
    Optional<Box.Fixing> fixing(FixingMessage use) {
        return box.fixings().stream().filter(f -> f.use().code() == use).findFirst();
    }

    static Point middle(Piece piece) {
        return piece.place().plan().meanCorner();
    }
}
