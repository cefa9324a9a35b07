package borderwright.engine.strength.frame;

/**
 * How the force of a spring follows from its lengthening.
 *
 * @param kind the shape of the law
 * @param limit greatest force of a slipping spring, N; ignored otherwise
 */
public record SpringLaw(Kind kind, double limit) {
    public static final SpringLaw ELASTIC = new SpringLaw(Kind.ELASTIC, 0);
    public static final SpringLaw CONTACT = new SpringLaw(Kind.CONTACT, 0);

    public SpringLaw {
        if (!(limit >= 0)) {
            throw new IllegalArgumentException("a slip limit is 0 or more, got " + limit);
        }
    }

    /** Elastic up to a force, then that force either way: dry friction. */
    public static SpringLaw slipping(double limit) {
        return new SpringLaw(Kind.SLIPPING, limit);
    }

    /** The shapes of law. */
    public enum Kind {
        /** The same both ways. */
        ELASTIC,
        /** Only when shortened; gaps carry nothing. */
        CONTACT,
        /** Elastic between two limits. */
        SLIPPING
    }

    /** What a spring is doing. */
    public enum State {
        /** On its elastic line. */
        WORKING,
        /** A contact with a gap. */
        OPEN,
        /** Slipping while lengthened: force +limit. */
        SLIPPING_OUT,
        /** Slipping while shortened: force -limit. */
        SLIPPING_IN
    }

    /** Lengthening that rounding may leave of nothing. */
    private static final double ROUNDING = 1e-11;

    /**
     * The state that a stretch calls for; the present one on the very border between two, so that rounding cannot flap.
     *
     * @param farthest greatest displacement of the structure, which rounding goes by
     */
    State stateAt(double stretch, double stiffness, State present, double farthest) {
        boolean onBorder = kind == Kind.CONTACT
                ? Math.abs(stretch) <= ROUNDING * Math.max(1, farthest)
                : Math.abs(stiffness * Math.abs(stretch) - limit) <= ROUNDING * limit;
        return onBorder && present != otherSide(stretch) ? present : stateAt(stretch, stiffness);
    }

    /** Slipping the wrong way, which no border excuses. */
    private static State otherSide(double stretch) {
        return stretch > 0 ? State.SLIPPING_IN : State.SLIPPING_OUT;
    }

    State stateAt(double stretch, double stiffness) {
        if (kind == Kind.CONTACT) {
            return stretch < 0 ? State.WORKING : State.OPEN;
        }
        if (kind == Kind.SLIPPING && stiffness * Math.abs(stretch) > limit) {
            return stretch > 0 ? State.SLIPPING_OUT : State.SLIPPING_IN;
        }
        return State.WORKING;
    }

    /** Force in a state, tension positive, whether or not the stretch belongs to that state. */
    double force(State state, double stretch, double stiffness) {
        return switch (state) {
            case WORKING -> stiffness * stretch;
            case OPEN -> 0;
            case SLIPPING_OUT -> limit;
            case SLIPPING_IN -> -limit;
        };
    }
}
