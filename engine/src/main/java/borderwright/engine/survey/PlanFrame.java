package borderwright.engine.survey;

import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Point;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.Positions;

/**
 * Lays an adjusted border on the plan: the left end of its first named edge at the origin, that edge along x, the border
 * above it. Only the drawing depends on this; no length, angle or uncertainty does.
 */
final class PlanFrame {
    private PlanFrame() {}

    static Adjustment laid(Adjustment adjustment, FieldBook book) {
        CornerOrder order = book.order();
        int first = firstEdge(book);
        Positions at = adjustment.positions();
        Point origin = at.at(order.from(first));
        Point along = at.at(order.to(first)).minus(origin).unit();
        Positions laid = at.copy();
        for (int p = 0; p < at.size(); p++) {
            Point arm = at.at(p).minus(origin);
            laid.place(p, new Point(along.dot(arm), along.cross(arm)));
        }
        return adjustment.movedTo(laid);
    }

    /** The first edge as the person named it; a strip named clockwise has it last. */
    private static int firstEdge(FieldBook book) {
        String one = book.notes().corners().get(0);
        String two = book.notes().corners().get(1);
        return book.edges().number(Names.of(one, two));
    }
}
