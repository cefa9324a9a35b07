package borderwright.engine.survey.fieldbook;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.vocabulary.LeftOrRight;
import borderwright.engine.garden.vocabulary.TapeHeld;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.network.CornerOrder;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.NetworkBuilder;
import borderwright.engine.survey.network.Observation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/**
 * The notes turned into a network, and for each reading the way back to the place in the document where it stands.
 */
public final class FieldBook {

    private final SurveySpec notes;
    private final EdgeRing edges;
    private final HeightNetwork heights;
    private final NetworkBuilder builder = new NetworkBuilder();
    private final List<Entry> entries = new ArrayList<>();
    private final List<Problem> problems = new ArrayList<>();

    /**
     * One reading.
     *
     * @param where field path in the document
     * @param name a short name for it
     * @param kind what sort of reading
     * @param measured as read, mm or degrees
     * @param sd in the same unit
     * @param observation its number in the network, -1 when it takes no part in the adjustment
     * @param sign -1 when the network counts it the other way round
     */
    public record Entry(String where, Message name, Kind kind, double measured, double sd, int observation, int sign) {
        public String unit() {
            return kind == Kind.ANGLE ? "deg" : "mm";
        }

        /** A change of its observation, in this reading's unit and counted as it was read. */
        public double inItsUnit(Observation its, double change) {
            boolean turned = its instanceof Observation.Gauge gauge && !gauge.left();
            double counted = turned ? -sign * change : sign * change;
            return kind == Kind.ANGLE ? StrictMath.toDegrees(counted) : counted;
        }
    }

    /** Sorts of readings, as far as slips and suspicions go. */
    public enum Kind {
        LENGTH,
        ANGLE,
        HEIGHT,
        /** That a line is straight: assumed, not read. */
        STRAIGHT,
        /** Taken, but nothing can check it. */
        ALONE
    }

    private FieldBook(SurveySpec notes) {
        this.notes = notes;
        this.edges = EdgeRing.of(notes);
        this.heights = HeightNetwork.of(notes);
        problems.addAll(heights.problems());
    }

    /** The field book of notes that have no {@link FieldBookFaults}. */
    public static FieldBook of(SurveySpec notes) {
        FieldBook book = new FieldBook(notes);
        for (String corner : book.edges.ring().subList(0, book.edges.measured())) {
            book.builder.corner(corner);
        }
        book.heights.heldAtZero().ifPresent(p -> book.builder.givenHeight(p, 0));
        for (int i = 0; i < notes.measures().size(); i++) {
            book.enter(notes.measures().get(i), "survey.measures[" + i + "]");
        }
        return book;
    }

    public SurveySpec notes() {
        return notes;
    }

    /** Chance of calling sound readings wrong. */
    public double risk() {
        return notes.falseAlarm();
    }

    public EdgeRing edges() {
        return edges;
    }

    public List<Entry> entries() {
        return List.copyOf(entries);
    }

    /** What keeps the notes from becoming a network; the network is of no use unless this is empty. */
    public List<Problem> problems() {
        return List.copyOf(problems);
    }

    public Network network() {
        return builder.build();
    }

    /** The corners in anticlockwise order, as numbers of the network. */
    public CornerOrder order() {
        List<Integer> numbers = new ArrayList<>();
        for (String corner : edges.ring().subList(0, edges.measured())) {
            numbers.add(builder.number(corner));
        }
        return notes.isStrip() ? CornerOrder.strip(numbers) : CornerOrder.ring(numbers);
    }

    private void entry(String where, Message name, Kind kind, double measured, double sd) {
        entries.add(new Entry(where, name, kind, measured, sd, builder.observed(), 1));
    }

    private void enter(Measure measure, String where) {
        if (measure instanceof Measure.TapeLength tape) {
            tape(tape, where);
        } else if (measure instanceof Measure.GaugeAngle gauge) {
            angle(gauge, where);
        } else if (measure instanceof Measure.BaselineOffset offset) {
            offset(offset, where);
        } else if (measure instanceof Measure.TapeChain chain) {
            chain(chain, where);
        } else if (measure instanceof Measure.LevelReading level) {
            entry(
                    where + ".reads",
                    ReadingMessage.READING_LEVEL.of(level.level()),
                    Kind.HEIGHT,
                    level.height().mm(),
                    level.height().sdMm());
            builder.height(level.level(), level.height().mm(), level.height().sdMm());
        } else if (measure instanceof Measure.Rise rise) {
            entry(
                    where + ".reads",
                    ReadingMessage.READING_RISE.of(rise.rise().dashed()),
                    Kind.HEIGHT,
                    rise.height().mm(),
                    rise.height().sdMm());
            builder.rise(
                    rise.rise().first(),
                    rise.rise().last(),
                    rise.height().mm(),
                    rise.height().sdMm());
        } else {
            enterEdge(measure, where);
        }
    }

    private void enterEdge(Measure measure, String where) {
        if (measure instanceof Measure.WallLean lean) {
            String wall = lean.lean().dashed();
            alone(where + ".top", ReadingMessage.READING_WALL_TOP.of(wall), lean.top());
            alone(where + ".bottom", ReadingMessage.READING_WALL_BOTTOM.of(wall), lean.bottom());
        } else if (measure instanceof Measure.ArcReading arc) {
            alone(where + ".reads", ReadingMessage.READING_ARC.of(arc.arc().dashed(), arc.taken()), arc.reads());
        } else {
            throw new IllegalArgumentException("a measure of a kind that the survey does not know: " + measure);
        }
    }

    private void tape(Measure.TapeLength tape, String where) {
        String a = tape.tape().first();
        String b = tape.tape().last();
        double length = tape.reads().mm();
        double sd = tape.reads().sdMm();
        entry(where + ".reads", ReadingMessage.READING_TAPE.of(a + "-" + b), Kind.LENGTH, length, sd);
        if (tape.held() != TapeHeld.ALONG_THE_GROUND) {
            builder.distance(a, b, length, sd);
            return;
        }
        Map<String, Double> known = heights.first();
        if (!known.containsKey(a) || !known.containsKey(b)) {
            notLevelled(tape, where);
            return;
        }
        double rise = known.get(b) - known.get(a);
        builder.slopeDistance(a, b, length, Math.sqrt(Math.max(length * length - rise * rise, 1)), sd);
    }

    private void notLevelled(Measure.TapeLength tape, String where) {
        if (!heights.problems().isEmpty()) {
            return;
        }
        String a = tape.tape().first();
        String b = tape.tape().last();
        problems.add(new Problem(where + ".held", FieldBookMessage.SLOPE_NOT_LEVELLED.of(a, b)));
    }

    private void angle(Measure.GaugeAngle gauge, String where) {
        List<String> names = gauge.angle().list();
        double sd = gauge.sdRad();
        double degrees = gauge.reads().degrees();
        entry(
                where + ".reads",
                ReadingMessage.READING_ANGLE.of(gauge.angle().dashed()),
                Kind.ANGLE,
                degrees,
                StrictMath.toDegrees(sd));
        boolean inside = degrees > 180 || isBend(names);
        if (!inside) {
            builder.gauge(
                    names.get(0), names.get(1), names.get(2), gauge.reads().radians(), sd);
            return;
        }
        // inside the border: anticlockwise from the corner that comes next to the one that came before
        List<String> ring = edges.ring().subList(0, edges.measured());
        int at = ring.indexOf(names.get(1));
        int stepsToFirst = Math.floorMod(ring.indexOf(names.get(0)) - at, ring.size());
        int stepsToLast = Math.floorMod(ring.indexOf(names.get(2)) - at, ring.size());
        boolean firstComesNext = stepsToFirst < stepsToLast;
        builder.turn(
                firstComesNext ? names.get(0) : names.get(2),
                names.get(1),
                firstComesNext ? names.get(2) : names.get(0),
                gauge.reads().radians(),
                sd);
    }

    /** Whether an angle is that of a strip at a bend, which no ring could tell from its mirror image. */
    private boolean isBend(List<String> names) {
        if (!notes.isStrip()) {
            return false;
        }
        List<String> line = edges.ring().subList(0, edges.measured());
        int first = line.indexOf(names.get(0));
        int at = line.indexOf(names.get(1));
        int last = line.indexOf(names.get(2));
        return Math.min(first, last) >= 0 && Math.min(first, last) < at && at < Math.max(first, last);
    }

    private void offset(Measure.BaselineOffset offset, String where) {
        String a = offset.baseline().first();
        String b = offset.baseline().last();
        double along = offset.along().mm();
        double off = offset.off().mm();
        double sdAlong = offset.along().sdMm();
        double sdOff = offset.off().sdMm();
        int sign = offset.side() == LeftOrRight.RIGHT ? -1 : 1;
        String point = offset.offset();
        int number = builder.observed();
        Message alongName = ReadingMessage.READING_ALONG_BASELINE.of(point, a + "-" + b);
        Message offName = ReadingMessage.READING_OFF_BASELINE.of(point, a + "-" + b);
        entries.add(new Entry(where + ".along", alongName, Kind.LENGTH, along, sdAlong, number, 1));
        entries.add(new Entry(where + ".reads", offName, Kind.LENGTH, off, sdOff, number + 1, sign));
        builder.offset(point, a, b, along, sign * off, sdAlong, sdOff);
    }

    private void chain(Measure.TapeChain chain, String where) {
        List<String> points = chain.chain().list();
        String ends = points.get(0) + "-" + points.get(points.size() - 1);
        List<Double> marks = new ArrayList<>(List.of(0.0));
        for (int j = 0; j < chain.lengths().size(); j++) {
            double length = chain.lengths().get(j).mm();
            double sd = chain.lengths().get(j).sdMm();
            String piece = points.get(j) + "-" + points.get(j + 1);
            Message name = ReadingMessage.READING_IN_CHAIN.of(piece, ends);
            entry(where + ".lengths[" + j + "]", name, Kind.LENGTH, length, sd);
            builder.distance(points.get(j), points.get(j + 1), length, sd);
            marks.add(marks.get(j) + length);
        }
        builder.inLine(points, marks);
        double sd = chain.straightSdMm();
        for (String between : points.subList(1, points.size() - 1)) {
            Message name = ReadingMessage.READING_STRAIGHT.of(between, ends);
            entry(where + ".straight", name, Kind.STRAIGHT, 0, sd);
            builder.straight(between, points.get(0), points.get(points.size() - 1), sd);
        }
    }

    private void alone(String where, Message name, Measure.Reading read) {
        entries.add(new Entry(where, name, Kind.ALONE, read.mm(), read.sdMm(), -1, 1));
    }
}
