package borderwright.bench.solid;

import borderwright.engine.buildup.draft.SideFrame;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.geometry.Point;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.timber.Timber;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/** A planned box as bricks, springs and pressures: what a deck is written from. N and mm. */
final class SolidBox {
    /** Tiny stiffness to the ground at each node listed, so that what floats stays where it is: N/mm. */
    private static final double LOOSE = 1e-4;

    private static final double PASSIVE_AT_MM = 10;
    private static final Set<Role> SOLID = Set.of(Role.WALL, Role.DIVIDER, Role.TIE, Role.POST, Role.BRACE);

    final Box box;
    final StrengthTerms terms;
    final Drawing drawing;
    final List<Block> blocks = new ArrayList<>();
    final List<Link> links = new ArrayList<>();
    final List<Push> pushes = new ArrayList<>();
    final List<Reading> readings = new ArrayList<>();

    /** Nodes that stay at their height: boards stand on each other. */
    final List<Integer> level = new ArrayList<>();

    /** Nodes that {@link #LOOSE} holds. */
    final List<Integer> loose = new ArrayList<>();

    private final List<SideFrame> sides;
    private final FillLaw fill;
    private final double wallMm;
    private int nodes;
    private int bricks;

    /**
     * A place on the middle line of a wall's board.
     *
     * @param side index of the side
     * @param course from the bottom, 1 first
     * @param alongMm along the side
     * @param place on the plan
     * @param node there
     * @param lengthMm of board that it stands for
     */
    record Reading(int side, int course, double alongMm, Point place, int node, double lengthMm) {}

    SolidBox(Box box, StrengthTerms terms, Mesh mesh, Drawing drawing) {
        this.drawing = drawing;
        this.box = box;
        this.terms = terms;
        sides = SideFrame.of(box.plan().outline());
        fill = FillLaw.of(terms.fill());
        wallMm = box.pieces().stream()
                .filter(piece -> piece.role() == Role.WALL)
                .mapToDouble(piece ->
                        terms.materials().section(piece.section()).thickness().mm())
                .findFirst()
                .orElseThrow();
        for (Piece piece : box.pieces()) {
            if (SOLID.contains(piece.role())) {
                divide(piece, mesh);
            }
        }
        new ScrewLinks(this).draw();
    }

    int nodes() {
        return nodes;
    }

    Stands stands() {
        return new Stands(sides, wallMm);
    }

    int bricks() {
        return bricks;
    }

    double looseNPerMm() {
        return LOOSE;
    }

    Timber timber(Block block) {
        return terms.materials().timber(block.piece.section());
    }

    private void divide(Piece piece, Mesh mesh) {
        Point axis = piece.role() == Role.WALL
                ? sides.get(piece.side()).along()
                : piece.alongMm().level();
        Block block = new Block(piece, axis, mesh, nodes + 1, bricks + 1);
        nodes += block.nodes();
        bricks += block.bricks();
        blocks.add(block);
        loose.add(block.node(0, 0, 0));
        loose.add(block.node(block.along, block.across, block.up));
        hold(block);
        if (piece.role() == Role.WALL) {
            read(block);
            bury(block);
        }
    }

    private void hold(Block block) {
        Role role = block.piece.role();
        boolean hinges = drawing.isHinged() && role == Role.TIE;
        if (role == Role.WALL || role == Role.DIVIDER || hinges) {
            for (int i = 0; i <= block.along; i++) {
                for (int j = 0; j <= block.across; j++) {
                    if (drawing.isHinged() || j == block.across / 2) {
                        level.add(block.node(i, j, block.up / 2));
                    }
                }
            }
        }
    }

    private void read(Block block) {
        SideFrame side = sides.get(block.piece.side());
        for (int i = 0; i <= block.along; i++) {
            Point place = block.plan(i, block.across / 2);
            double s = side.s(place);
            double before = i > 0 ? s - side.s(block.plan(i - 1, block.across / 2)) : 0;
            double after = i < block.along ? side.s(block.plan(i + 1, block.across / 2)) - s : 0;
            if (s >= side.innerStart(wallMm / 2) - 1 && s <= side.innerEnd(wallMm / 2) + 1) {
                readings.add(new Reading(
                        block.piece.side(),
                        block.piece.course(),
                        s,
                        place,
                        block.node(i, block.across / 2, block.up / 2),
                        (before + after) / 2));
            }
        }
    }

    /** The fill on the inner face: its push, and what it presses back where the wall comes in. */
    private void bury(Block block) {
        SideFrame side = sides.get(block.piece.side());
        double rim = box.courses().get(box.courses().size() - 1).topMm();
        double surface = rim - terms.fill().belowRimMm();
        double floor = rim - box.soilDepthMm();
        double inFrom = side.innerStart(wallMm);
        double inTo = side.innerEnd(wallMm);
        for (int k = 0; k < block.up; k++) {
            double low = Math.max(floor, block.heightMm(k));
            double high = Math.min(surface, block.heightMm(k + 1));
            for (int i = 0; high > low && i < block.along; i++) {
                double from = side.s(block.plan(i, block.across));
                double to = side.s(block.plan(i + 1, block.across));
                double wet = Math.min(to, inTo) - Math.max(from, inFrom);
                if (wet > 0) {
                    double depth = surface - (low + high) / 2;
                    double share = wet / (to - from) * (high - low) / (block.heightMm(k + 1) - block.heightMm(k));
                    pushes.add(new Push(block.brick(i, block.across - 1, k), 5, share * fill.push(depth)));
                    links.add(back(block, i, k, fill.pressesBack(depth) / PASSIVE_AT_MM * wet * (high - low)));
                }
            }
        }
    }

    private Link back(Block block, int i, int k, double stiffness) {
        Point outward = sides.get(block.piece.side()).inwards().times(-1);
        List<Link.Term> terms = new ArrayList<>();
        for (int corner = 0; corner < 4; corner++) {
            int node = block.node(i + (corner & 1), block.across, k + (corner >> 1));
            Mate.addLevel(terms, node, outward, 0.25);
        }
        return new Link("", Link.Kind.FILL, Link.Law.CONTACT, stiffness, 0, terms);
    }
}
