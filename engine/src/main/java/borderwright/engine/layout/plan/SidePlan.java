package borderwright.engine.layout.plan;

import borderwright.engine.garden.vocabulary.EdgeKind;

/**
 * What one side of a box is.
 *
 * @param role which side of the box it is
 * @param facing what lies outside it; {@link EdgeKind#OPEN} where another planter or open ground does
 * @param waits whether its length closes on a wall or on another box, so that it is re-measured before it is cut: of a
 *     side with several bays only the pieces of the bay that is built last (the box's last planter) wait
 * @param groundMm height of the ground along it, lowest point, mm above the datum
 */
public record SidePlan(Role role, EdgeKind facing, boolean waits, double groundMm) {
    /** One whose length closes on nothing. */
    public static SidePlan free(Role role, EdgeKind facing, double groundMm) {
        return new SidePlan(role, facing, false, groundMm);
    }

    /** One whose length closes on a wall or on another box. */
    public static SidePlan waiting(Role role, EdgeKind facing, double groundMm) {
        return new SidePlan(role, facing, true, groundMm);
    }

    /** Which side of a box. */
    public enum Role {
        FRONT,
        BACK,
        END
    }
}
