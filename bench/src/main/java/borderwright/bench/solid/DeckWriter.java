package borderwright.bench.solid;

import borderwright.engine.geometry.Point;
import borderwright.engine.strength.timber.Timber;
import java.util.List;
import java.util.Locale;

/**
 * The input of the finite-element package for a box whose springs are in known states.
 *
 * <p>Each spring is one extra node whose first displacement is, by a linear equation, the spring's lengthening times the
 * root of its stiffness; a spring of 1 N/mm holds it to the ground. So one line of the output gives what each spring does.
 *
 * <p>Wood is taken as alike in both directions across the grain. Poisson's ratios of 0.3 and rolling shear of a tenth of the
 * shear modulus are common practice, no source; neither is in the plan's model.
 */
final class DeckWriter {
    private static final double POISSON = 0.3;
    private static final double ROLLING_SHARE = 0.1;
    private static final int PER_LINE = 8;

    private final SolidBox solid;
    private final States states;
    private final StringBuilder deck = new StringBuilder();

    private DeckWriter(SolidBox solid, States states) {
        this.solid = solid;
        this.states = states;
    }

    static String write(SolidBox solid, States states) {
        DeckWriter writer = new DeckWriter(solid, states);
        writer.bricks();
        writer.wood();
        writer.springs();
        writer.step();
        return writer.deck.toString();
    }

    private void line(String format, Object... values) {
        deck.append(String.format(Locale.ROOT, format, values)).append('\n');
    }

    private void bricks() {
        line("*NODE");
        for (Block block : solid.blocks) {
            for (int k = 0; k <= block.up; k++) {
                for (int j = 0; j <= block.across; j++) {
                    for (int i = 0; i <= block.along; i++) {
                        Point at = block.plan(i, j);
                        line("%d,%.6f,%.6f,%.6f", block.node(i, j, k), at.xMm(), at.yMm(), block.heightMm(k));
                    }
                }
            }
        }
        for (int b = 0; b < solid.blocks.size(); b++) {
            Block block = solid.blocks.get(b);
            line("*ELEMENT,TYPE=C3D8I,ELSET=P%d", b);
            for (int k = 0; k < block.up; k++) {
                for (int j = 0; j < block.across; j++) {
                    for (int i = 0; i < block.along; i++) {
                        brick(block, i, j, k);
                    }
                }
            }
        }
    }

    private void brick(Block block, int i, int j, int k) {
        line(
                "%d,%d,%d,%d,%d,%d,%d,%d,%d",
                block.brick(i, j, k),
                block.node(i, j, k),
                block.node(i + 1, j, k),
                block.node(i + 1, j + 1, k),
                block.node(i, j + 1, k),
                block.node(i, j, k + 1),
                block.node(i + 1, j, k + 1),
                block.node(i + 1, j + 1, k + 1),
                block.node(i, j + 1, k + 1));
    }

    private void wood() {
        for (int b = 0; b < solid.blocks.size(); b++) {
            Block block = solid.blocks.get(b);
            Point level = block.piece.alongMm().level();
            boolean upright = level.lengthMm() < 0.5;
            Point across = upright ? new Point(1, 0) : level.left();
            line("*ORIENTATION,NAME=O%d,SYSTEM=RECTANGULAR", b);
            line(
                    "%.9f,%.9f,%.9f,%.9f,%.9f,0.",
                    upright ? 0 : level.xMm(),
                    upright ? 0 : level.yMm(),
                    upright ? 1.0 : 0,
                    across.xMm(),
                    across.yMm());
            Timber timber = solid.timber(block);
            double e0 = timber.e0Mean() / timber.creepFactor();
            double e90 = solid.drawing.acrossGrain() * timber.e90Mean() / timber.creepFactor();
            double g = solid.drawing.acrossGrain() * timber.gMean() / timber.creepFactor();
            line("*MATERIAL,NAME=M%d", b);
            line("*ELASTIC,TYPE=ENGINEERING CONSTANTS");
            line("%.6g,%.6g,%.6g,%s,%s,%s,%.6g,%.6g", e0, e90, e90, POISSON, POISSON, POISSON, g, g);
            line("%.6g,0.", g * ROLLING_SHARE);
            line("*SOLID SECTION,ELSET=P%d,MATERIAL=M%d,ORIENTATION=O%d", b, b, b);
        }
    }

    private void springs() {
        int first = solid.nodes() + 1;
        line("*NODE,NSET=LINKS");
        for (int i = 0; i < solid.links.size(); i++) {
            line("%d,0.,0.,0.", first + i);
        }
        int element = solid.bricks() + 1;
        line("*ELEMENT,TYPE=SPRING1,ELSET=WORKING");
        for (int i = 0; i < solid.links.size(); i++) {
            if (states.works(i)) {
                line("%d,%d", element++, first + i);
            }
        }
        line("*SPRING,ELSET=WORKING");
        line("1");
        line("1.");
        for (int axis = 1; axis <= 2; axis++) {
            line("*ELEMENT,TYPE=SPRING1,ELSET=LOOSE%d", axis);
            for (int node : solid.loose) {
                line("%d,%d", element++, node);
            }
            line("*SPRING,ELSET=LOOSE%d", axis);
            line("%d", axis);
            line("%.6g", solid.looseNPerMm());
        }
        for (int i = 0; i < solid.links.size(); i++) {
            equation(first + i, solid.links.get(i));
        }
    }

    private void equation(int node, Link link) {
        double root = Math.sqrt(link.stiffness());
        line("*EQUATION");
        line("%d", link.terms().size() + 1);
        StringBuilder row = new StringBuilder(node + ",1,-1.");
        int inRow = 1;
        for (Link.Term term : link.terms()) {
            row.append(inRow == 4 ? "\n" : ",");
            inRow = inRow == 4 ? 1 : inRow + 1;
            row.append(String.format(Locale.ROOT, "%d,%d,%.9g", term.node(), term.axis(), root * term.factor()));
        }
        deck.append(row).append('\n');
    }

    private void step() {
        line("*NSET,NSET=READ");
        numbers(solid.readings.stream().map(SolidBox.Reading::node).toList());
        line("*BOUNDARY");
        line("LINKS,2,3");
        for (int node : solid.level) {
            line("%d,3", node);
        }
        line("*STEP");
        line("*STATIC");
        line("*DLOAD");
        for (Push push : solid.pushes) {
            line("%d,P%d,%.9g", push.brick(), push.face(), push.nPerMm2());
        }
        if (states.slips()) {
            line("*CLOAD");
            for (int i = 0; i < solid.links.size(); i++) {
                Link link = solid.links.get(i);
                double holdsBack = -states.sliding(i) * link.limitN() / Math.sqrt(link.stiffness());
                if (holdsBack != 0) {
                    line("%d,1,%.9g", solid.nodes() + 1 + i, holdsBack);
                }
            }
        }
        line("*NODE PRINT,NSET=READ");
        line("U");
        line("*NODE PRINT,NSET=LINKS");
        line("U");
        line("*END STEP");
    }

    private void numbers(List<Integer> numbers) {
        for (int i = 0; i < numbers.size(); i += PER_LINE) {
            deck.append(String.join(
                            ",",
                            numbers.subList(i, Math.min(numbers.size(), i + PER_LINE)).stream()
                                    .map(String::valueOf)
                                    .toList()))
                    .append('\n');
        }
    }
}
