package borderwright.engine.layout.run;

import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.room.Span;
import borderwright.engine.survey.GroundHeights;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * How high the planters of a run stand.
 *
 * <p>A bed never lies above the ground under its box: the bottom course stands on the ground at its lowest place and is
 * dug in elsewhere. On hard ground, that cannot be dug, all is the other way up: a bed lies above the highest ground under
 * its box by no less than the least foot. A level run has one bed, at the lowest ground under any of its planters. In a stepped run each
 * planter's bed lies at or, by less than a course, below its own lowest ground, such that all beds differ by whole
 * courses; among the heights that allow this, the one that buries least is taken. Neighbours with the same bed share a
 * box, and a box that falls within itself gets as many courses more as keep the requested height at its high end, to within
 * a quarter of a course.
 *
 * <p>See docs/decisions/0021.
 */
public final class BedLevels {
    private static final double SAMPLE_MM = 500;
    private static final double SAME_MM = 1e-6;

    private final GroundHeights ground;
    private final RunTerms terms;

    /**
     * One box's worth of planters in a row.
     *
     * @param first index of its first planter
     * @param last index of its last
     * @param bedMm level of its bed, mm above the datum
     * @param heightMm height of its wall, mm
     * @param lowMm lowest ground under it, mm above the datum
     * @param highMm highest ground under it, mm above the datum
     */
    public record Level(int first, int last, double bedMm, double heightMm, double lowMm, double highMm) {}

    public BedLevels(GroundHeights ground, RunTerms terms) {
        this.ground = ground;
        this.terms = terms;
    }

    /** Boxes of each row of planters, in order; rows never share a box. */
    public List<List<Level>> of(List<List<Ring>> rows) {
        List<List<Span>> heights = new ArrayList<>();
        for (List<Ring> row : rows) {
            List<Span> spans = row.stream().map(this::groundUnder).toList();
            heights.add(spans);
        }
        double anchor = terms.isStepped() ? bestAnchor(heights) : levelBed(heights);
        List<List<Level>> levels = new ArrayList<>();
        for (List<Span> row : heights) {
            levels.add(levels(row, anchor));
        }
        return levels;
    }

    private List<Level> levels(List<Span> row, double anchor) {
        List<Level> levels = new ArrayList<>();
        int first = 0;
        for (int i = 1; i <= row.size(); i++) {
            boolean closes = i == row.size()
                    || !terms.isJoined()
                    || Math.abs(bedMm(row.get(i), anchor) - bedMm(row.get(first), anchor)) > SAME_MM;
            if (closes) {
                levels.add(level(row, first, i - 1, anchor));
                first = i;
            }
        }
        return levels;
    }

    private Level level(List<Span> row, int first, int last, double anchor) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (Span span : row.subList(first, last + 1)) {
            low = Math.min(low, span.fromMm());
            high = Math.max(high, span.toMm());
        }
        double bed = bedMm(row.get(first), anchor);
        double height = terms.heightMm();
        if (terms.isStepped() && !terms.rules().onHardGround()) {
            double course = terms.rules().courseMm();
            double hidden = high - bed - course / 4;
            height += course * Math.max(0, Math.ceil(hidden / course - SAME_MM));
        }
        return new Level(first, last, bed, height, low, high);
    }

    private double bedMm(Span groundUnder, double anchor) {
        if (!terms.isStepped()) {
            return anchor;
        }
        double course = terms.rules().courseMm();
        double seat = seatMm(groundUnder);
        return terms.rules().onHardGround()
                ? anchor + course * Math.ceil((seat - anchor) / course - SAME_MM)
                : anchor - course * Math.ceil((anchor - seat) / course - SAME_MM);
    }

    /** Where a planter would lie if it stood alone. */
    private double seatMm(Span groundUnder) {
        return terms.rules().onHardGround()
                ? groundUnder.toMm() + terms.rules().feetMm().orElse(0)
                : groundUnder.fromMm();
    }

    private double levelBed(List<List<Span>> rows) {
        DoubleStream seats = rows.stream().flatMap(List::stream).mapToDouble(this::seatMm);
        return terms.rules().onHardGround()
                ? seats.max().orElse(0)
                : seats.min().orElse(0);
    }

    /** The planter's own low ground that, taken as a bed, makes all of them bury least. */
    private double bestAnchor(List<List<Span>> rows) {
        List<Span> all = rows.stream().flatMap(List::stream).toList();
        double best = 0;
        double bestBuried = Double.POSITIVE_INFINITY;
        for (double anchor :
                all.stream().mapToDouble(this::seatMm).distinct().limit(200).toArray()) {
            double buried = all.stream()
                    .mapToDouble(s -> Math.abs(seatMm(s) - bedMm(s, anchor)))
                    .sum();
            if (buried < bestBuried - SAME_MM) {
                best = anchor;
                bestBuried = buried;
            }
        }
        return best;
    }

    /** Lowest and highest ground along a ring's sides, mm above the datum. */
    Span groundUnder(Ring ring) {
        Span under = groundAlong(ring.corner(0), ring.corner(1));
        for (int i = 1; i < ring.size(); i++) {
            Span side = groundAlong(ring.corner(i), ring.corner(i + 1));
            under = new Span(Math.min(under.fromMm(), side.fromMm()), Math.max(under.toMm(), side.toMm()));
        }
        return under;
    }

    /** Lowest and highest ground along a side, mm above the datum, looked at every half metre. */
    public Span groundAlong(Point from, Point to) {
        int steps = ground.spots().isEmpty() ? 1 : (int) Math.ceil(from.distanceMm(to) / SAMPLE_MM);
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i <= steps; i++) {
            double height = ground.heightMm(from.towards(to, i / (double) Math.max(1, steps)));
            low = Math.min(low, height);
            high = Math.max(high, height);
        }
        return new Span(low, high);
    }
}
