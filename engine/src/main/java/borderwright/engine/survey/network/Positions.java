package borderwright.engine.survey.network;

import borderwright.engine.geometry.Point;

/** Places and heights of all points of a network while they are being found; changed in place by its owner only. */
public final class Positions {
    private final double[] x;
    private final double[] y;
    private final double[] height;

    Positions(int points) {
        this(new double[points], new double[points], new double[points]);
    }

    private Positions(double[] x, double[] y, double[] height) {
        this.x = x;
        this.y = y;
        this.height = height;
    }

    public Positions copy() {
        return new Positions(x.clone(), y.clone(), height.clone());
    }

    public int size() {
        return x.length;
    }

    public double x(int point) {
        return x[point];
    }

    public double y(int point) {
        return y[point];
    }

    public double height(int point) {
        return height[point];
    }

    public Point at(int point) {
        return new Point(x[point], y[point]);
    }

    public void place(int point, Point at) {
        x[point] = at.xMm();
        y[point] = at.yMm();
    }

    void move(int point, double dx, double dy) {
        x[point] += dx;
        y[point] += dy;
    }

    void setHeight(int point, double value) {
        height[point] = value;
    }

    void raise(int point, double by) {
        height[point] += by;
    }
}
