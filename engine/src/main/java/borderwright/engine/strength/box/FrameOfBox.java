package borderwright.engine.strength.box;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.message.Message;
import borderwright.engine.strength.frame.FrameBuilder;
import borderwright.engine.strength.frame.Freedom;
import borderwright.engine.strength.frame.JointRigidity;
import borderwright.engine.strength.frame.Vector;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.List;

/** Draws up the frame of a box: uprights first, then the boards and what crosses the box, each hung on the uprights. */
final class FrameOfBox {
    /**
     * N/mm to the ground at every node, so that parts held by nothing show as far away: a hundred-thousandth of the
     * softest screw.
     */
    private static final double LOOSE = 1e-4;

    final Box box;
    final MemberMaterials materials;
    final Fill fill;
    final double bedFriction;
    final FoundationSoil ground;
    final FrameBuilder builder = new FrameBuilder();
    final CentreLines lines;
    final Screws screws;
    final DrivenScrews driven;
    final List<Message> unheld = new ArrayList<>();

    /** Bars of boards are split until none is longer. */
    final double longestPartMm;

    FrameOfBox(
            Box box,
            MemberMaterials materials,
            Fill fill,
            double bedFriction,
            FoundationSoil ground,
            double longestPartMm) {
        this.box = box;
        this.materials = materials;
        this.fill = fill;
        this.bedFriction = bedFriction;
        this.ground = ground;
        this.longestPartMm = longestPartMm;
        double wallMm = box.pieces().stream()
                .filter(piece -> piece.role() == Role.WALL)
                .findFirst()
                .map(piece -> materials.section(piece.section()).thickness().mm())
                .orElse(1.0);
        lines = new CentreLines(box.plan(), wallMm);
        screws = new Screws(this);
        driven = new DrivenScrews(box);
    }

    BoxFrame build() {
        UprightStems uprights = new UprightStems(this);
        Crosspieces crosspieces = new Crosspieces(this, uprights);
        uprights.stand();
        List<Stem> stems = uprights.drawn();
        CappingLines cappingLines = new CappingLines(this);
        Walls walls = new Walls(this, uprights, crosspieces, cappingLines);
        List<Board> courses = walls.draw();
        List<Board> capping = cappingLines.draw(courses);
        List<Board> dividers = crosspieces.drawDividers();
        List<Board> ties = crosspieces.drawTies();
        uprights.joinPairs();
        return BoxFrame.builder()
                .box(box)
                .materials(materials)
                .frame(builder.build(LOOSE))
                .walls(courses)
                .dividers(dividers)
                .ties(ties)
                .capping(capping)
                .stems(stems)
                .holds(screws.holds)
                .straps(screws.straps)
                .helps(screws.helps)
                .feet(uprights.feet)
                .bed(walls.supports().bed())
                .backings(walls.supports().backings())
                .unheld(unheld)
                .build();
    }

    List<Piece> pieces(Role role) {
        return box.pieces().stream().filter(piece -> piece.role() == role).toList();
    }

    /** A node of a board: it moves on the plan and turns about the upright axis. */
    int boardNode(Vector at) {
        return builder.node(at, Freedom.UX, Freedom.UY, Freedom.RZ);
    }

    /** A node of what only pulls and pushes. */
    int pinNode(Vector at) {
        return builder.node(at, Freedom.UX, Freedom.UY);
    }

    TimberSection section(Piece piece) {
        return new TimberSection(
                materials.section(piece.section()).thickness().mm(),
                piece.place().heightMm());
    }

    /** A board that bends through its thickness; how it hangs under its own weight is not modelled. */
    JointRigidity onEdge(TimberSection section, Timber timber) {
        return new JointRigidity(timber.e0Mean() * section.areaMm2(), 0, timber.e0Mean() * section.flatMm4(), 0);
    }
}
