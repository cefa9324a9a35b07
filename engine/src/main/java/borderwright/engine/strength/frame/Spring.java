package borderwright.engine.strength.frame;

/**
 * A spring between two places, or between a place and the ground, along one direction.
 *
 * <p>It lengthens when its second place moves along {@code direction} away from its first. Each place hangs on its node by
 * a rigid arm.
 *
 * @param first where it starts
 * @param second where it ends
 * @param direction unit vector
 * @param turning whether it resists a rotation about the direction instead of a displacement along it
 * @param stiffness N/mm, or N mm per radian
 * @param law elastic, contact or slipping
 */
record Spring(Place first, Place second, Vector direction, boolean turning, double stiffness, SpringLaw law) {
    /**
     * Where a spring takes hold.
     *
     * @param node index of the node; -1 for the ground
     * @param arm from the node to the place, rigid
     */
    record Place(int node, Vector arm) {
        static final int GROUND = -1;
    }

    /** How much the spring lengthens with freedom {@code f} of its second place's node. */
    double stretchOfSecond(int f) {
        return stretchOf(second, f);
    }

    double stretchOfFirst(int f) {
        return -stretchOf(first, f);
    }

    private double stretchOf(Place place, int f) {
        if (turning) {
            return f < 3 ? 0 : direction.component(f - 3);
        }
        return f < 3 ? direction.component(f) : place.arm().cross(direction).component(f - 3);
    }
}
