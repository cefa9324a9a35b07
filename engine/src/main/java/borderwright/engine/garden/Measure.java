package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.ArcTaken;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Instrument;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** One thing that was measured on site; in the document the first key tells which kind it is. */
public sealed interface Measure {

    /**
     * A length or height as it was read.
     *
     * @param length as read
     * @param sdMm how far it may be out, as one standard deviation; 0 where the instrument takes no lengths
     */
    record Reading(Length length, double sdMm) {
        public double mm() {
            return length.mm();
        }
    }

    /** What it was taken with, if that is given. */
    Optional<Instrument> with();

    /** The points that it is about. */
    List<String> points();

    /** A tape length between two points. */
    record TapeLength(Names tape, Reading reads, TapeHeld held, Optional<Instrument> with) implements Measure {
        @Override
        public List<String> points() {
            return tape.list();
        }
    }

    /**
     * The angle between two directions seen from the middle point.
     *
     * @param angle the three points
     * @param reads the angle
     * @param sdRad how far it may be out, as one standard deviation; 0 where the instrument takes no angles
     * @param with what it was taken with, if that is given
     */
    record GaugeAngle(Names angle, Angle reads, double sdRad, Optional<Instrument> with) implements Measure {
        @Override
        public List<String> points() {
            return angle.list();
        }
    }

    /** A point fixed by its distance along a baseline and square off it, on one side of it. */
    record BaselineOffset(
            String offset, Names baseline, Reading along, Reading off, LeftOrRight side, Optional<Instrument> with)
            implements Measure {
        @Override
        public List<String> points() {
            List<String> points = new ArrayList<>(baseline.list());
            points.add(offset);
            return points;
        }
    }

    /**
     * Several short lengths, one after the other, along a straight line.
     *
     * @param chain the points in order
     * @param lengths between them
     * @param straightSdMm how far a point between may stand off the line, as one standard deviation
     * @param with what they were taken with, if that is given
     */
    record TapeChain(Names chain, List<Reading> lengths, double straightSdMm, Optional<Instrument> with)
            implements Measure {
        public TapeChain {
            lengths = List.copyOf(lengths);
        }

        @Override
        public List<String> points() {
            return chain.list();
        }
    }

    /** Height of the ground at a point above the datum; negative below. */
    record LevelReading(String level, Reading height, Optional<Instrument> with) implements Measure {
        @Override
        public List<String> points() {
            return List.of(level);
        }
    }

    /** Height of the second point above the first. */
    record Rise(Names rise, Reading height, Optional<Instrument> with) implements Measure {
        @Override
        public List<String> points() {
            return rise.list();
        }
    }

    /** How far a wall leans: its distance from a plumb line or string on the border's side, low and high. */
    record WallLean(Names lean, Reading top, Reading bottom, Optional<Instrument> with) implements Measure {
        @Override
        public List<String> points() {
            return lean.list();
        }
    }

    /**
     * A curved edge: how far a place on it stands off the chord between its corners, or how long it is.
     *
     * @param along from the first corner along the chord; empty at its middle, and for a tape along the wall
     */
    record ArcReading(
            Names arc,
            Reading reads,
            ArcTaken taken,
            Optional<Length> along,
            ArcBulge bulges,
            Optional<Instrument> with)
            implements Measure {
        @Override
        public List<String> points() {
            return arc.list();
        }
    }
}
