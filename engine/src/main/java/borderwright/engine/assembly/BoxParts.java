package borderwright.engine.assembly;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.draft.UprightPlan.Stance;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.FixingMessage;
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
    static final double STAND_OFF_MM = 1.2;

    private static final double LEAST_MM = 5;

    /** Wood left beyond a screw's point, as the builder leaves it. */
    private static final double COVER_MM = 2;

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

    /** How an upright's section stands against a board, as the builder has it. */
    Stance stance(Piece upright) {
        return Stance.of(section(upright));
    }

    /** Where an upright, tie or divider bears on a side's inner face, in the side's own coordinates. */
    Optional<Span> bearing(Piece piece, SideFrame side) {
        return side.bearing(piece.place().plan(), wallMm).map(b -> new Span(b.fromMm(), b.toMm()));
    }

    /**
     * Where an upright stands against a side: where it bears, or for one that by the builder's measure bears on no side at
     * all, as beside a corner of 270 degrees, where its face lies on the side's inner face.
     */
    Optional<Span> stands(Piece upright, SideFrame side) {
        Optional<Span> bears = bearing(upright, side);
        if (bears.isPresent()
                || sides.stream().anyMatch(other -> bearing(upright, other).isPresent())) {
            return bears;
        }
        WorkFace face = new WorkFace(side.at(0, 0), side.along(), bottomMm);
        Span whole = new Span(side.innerStart(wallMm), side.innerEnd(wallMm));
        return face.alongAt(upright.place().plan(), wallMm, STAND_OFF_MM)
                .filter(span -> span.within(whole).lengthMm() > LEAST_MM);
    }

    /** The longest screw of a joint that stays in the wood; the shortest where none does; nothing where the box has none. */
    Optional<Box.Fixing> fixing(Box.Hold hold, double throughMm, double intoMm) {
        double most = throughMm + intoMm - COVER_MM + 1e-6;
        Box.Fixing best = null;
        for (Box.Fixing fixing : box.fixings()) {
            if (fixing.hold() != hold || hold == Box.Hold.OTHER) {
                continue;
            }
            boolean fits = fixing.lengthMm() <= most;
            boolean better = best == null
                    || (fits
                            ? fixing.lengthMm() > best.lengthMm() || best.lengthMm() > most
                            : fixing.lengthMm() < best.lengthMm());
            best = better ? fixing : best;
        }
        return Optional.ofNullable(best);
    }

    /** Fixings that hold no wall, by their use. */
    Optional<Box.Fixing> fixing(FixingMessage use) {
        return box.fixings().stream().filter(f -> f.use().code() == use).findFirst();
    }

    static Point middle(Piece piece) {
        return piece.place().plan().meanCorner();
    }

    /** A quarter of a board's width in from either edge. */
    static List<Double> quarters(Span height) {
        double quarter = height.lengthMm() / 4;
        return List.of(height.fromMm() + quarter, height.toMm() - quarter);
    }
}
