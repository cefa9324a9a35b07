package borderwright.engine.strength.soil;

/**
 * A horizontal push per metre of wall.
 *
 * @param knPerM its size
 * @param aboveBaseM height of its line above the base; 0 where there is no push
 */
public record Thrust(double knPerM, double aboveBaseM) {

    /** A pressure that varies evenly from {@code top} to {@code bottom} over a height. */
    public static Thrust ofTrapezium(double top, double bottom, double heightM) {
        double force = (top + bottom) / 2 * heightM;
        double centre = force == 0 ? 0 : heightM * (2 * top + bottom) / (3 * (top + bottom));
        return new Thrust(force, centre);
    }

    public Thrust raisedBy(double m) {
        return new Thrust(knPerM, aboveBaseM + m);
    }

    public Thrust plus(Thrust other) {
        double force = knPerM + other.knPerM;
        double moment = momentKnm() + other.momentKnm();
        return new Thrust(force, force == 0 ? 0 : moment / force);
    }

    /** About the base, kNm per metre. */
    public double momentKnm() {
        return knPerM * aboveBaseM;
    }
}
