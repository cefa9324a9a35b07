package borderwright.engine.survey;

import borderwright.engine.garden.Measure;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.vocabulary.ArcBulge;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.survey.GroundHeights.Spot;
import borderwright.engine.survey.fieldbook.FieldBook;
import borderwright.engine.survey.network.Adjustment;
import borderwright.engine.survey.network.Network;
import borderwright.engine.survey.network.Positions;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Makes the outline from an adjusted border: ring, edges with gap, lean and rise, and the ground. */
final class OutlineMaker {
    private static final double LEAST_EDGE_MM = 1;

    private final FieldBook book;
    private final Adjustment adjustment;
    private final List<Problem> problems = new ArrayList<>();

    OutlineMaker(FieldBook book, Adjustment adjustment) {
        this.book = book;
        this.adjustment = adjustment;
    }

    /** What keeps the border from having an outline, after {@link #make} gave none. */
    List<Problem> problems() {
        return List.copyOf(problems);
    }

    Optional<Outline> make() {
        Optional<Ring> ring = ring();
        if (ring.isEmpty()) {
            return Optional.empty();
        }
        corners(ring.get());
        List<OutlineEdge> edges = new ArrayList<>();
        for (int edge = 0; edge < book.edges().size(); edge++) {
            edges.add(edge(edge, ring.get().sideMm(edge)));
        }
        GroundHeights ground = new GroundHeights(spots(ring.get()));
        return problems.isEmpty()
                ? Optional.of(new Outline(ring.get(), book.edges().ring(), edges, ground))
                : Optional.empty();
    }

    private Optional<Ring> ring() {
        List<Point> measured = book.order().places(adjustment.positions());
        SurveySpec notes = book.notes();
        if (!notes.isStrip()) {
            return Optional.of(new Ring(measured));
        }
        Optional<List<Point>> front =
                StripFront.of(measured, notes.stripWidth().orElseThrow().mm());
        if (front.isPresent()) {
            List<Point> corners = new ArrayList<>(measured);
            for (int i = measured.size() - 1; i >= 0; i--) {
                corners.add(front.get().get(i));
            }
            if (Ring.signedAreaMm2(corners) > 0 && new Ring(corners).toJts().isValid()) {
                return Optional.of(new Ring(corners));
            }
        }
        problems.add(new Problem(
                "survey.strip width",
                OutlineMessage.STRIP_TOO_DEEP.of(
                        notes.stripWidth().orElseThrow().mm())));
        return Optional.empty();
    }

    private void corners(Ring ring) {
        for (int edge = 0; edge < ring.size(); edge++) {
            if (ring.sideMm(edge) < LEAST_EDGE_MM) {
                Message message = OutlineMessage.CORNERS_COINCIDE.of(
                        book.edges().from(edge), book.edges().to(edge));
                problems.add(new Problem("survey.corners", message));
            }
        }
    }

    private OutlineEdge edge(int edge, double chordMm) {
        EdgeKind kind = EdgeKind.OPEN;
        double gapMm = SurveyResolver.gap(kind).mm();
        for (SurveySpec.EdgeSpec note : book.notes().edges()) {
            if (book.edges().number(note.edge()) == edge) {
                kind = note.kind();
                gapMm = note.gap().mm();
            }
        }
        return new OutlineEdge(kind, gapMm, leanMm(edge), riseMm(edge, chordMm));
    }

    /** The wall stands nearer at the top than at the ground by this much, where it was worst. */
    private double leanMm(int edge) {
        double worst = 0;
        for (Measure measure : book.notes().measures()) {
            if (measure instanceof Measure.WallLean lean && book.edges().number(lean.lean()) == edge) {
                worst = Math.max(worst, lean.bottom().mm() - lean.top().mm());
            }
        }
        return worst;
    }

    /** The rise that fits all that was measured of the edge's curve; outward positive, 0 for a straight edge. */
    private double riseMm(int edge, double chordMm) {
        CurveFit fit = new CurveFit(chordMm);
        List<CurveReading> readings = curveReadings(edge);
        readings.forEach(reading -> reading.into(fit, chordMm));
        if (readings.isEmpty()) {
            return 0;
        }
        int before = problems.size();
        for (int i = 0; i < readings.size(); i++) {
            curveProblem(readings.get(i), readings.get(0).measure().bulges(), fit, i, chordMm)
                    .ifPresent(problems::add);
        }
        if (problems.size() > before) {
            return 0;
        }
        CurveFit.Rise rise = fit.fit();
        rise.wrong().ifPresent(i -> {
            CurveReading wrong = readings.get(i);
            Message message = OutlineMessage.CURVE_DISAGREES.of(wrong.name(), wrong.readMm(), rise.impliedMm());
            problems.add(new Problem(wrong.where(), message));
        });
        return readings.get(0).measure().bulges() == ArcBulge.OUTWARD ? rise.riseMm() : -rise.riseMm();
    }

    private List<CurveReading> curveReadings(int edge) {
        List<CurveReading> readings = new ArrayList<>();
        for (int i = 0; i < book.notes().measures().size(); i++) {
            if (book.notes().measures().get(i) instanceof Measure.ArcReading arc
                    && book.edges().number(arc.arc()) == edge) {
                readings.add(new CurveReading("survey.measures[" + i + "].reads", arc));
            }
        }
        return readings;
    }

    private static Optional<Problem> curveProblem(
            CurveReading reading, ArcBulge bulges, CurveFit fit, int number, double chordMm) {
        Optional<Message> message = Optional.empty();
        double read = reading.readMm();
        if (reading.measure().bulges() != bulges) {
            message = Optional.of(OutlineMessage.CURVE_BOTH_WAYS.of(reading.name()));
        } else if (reading.alongMm(chordMm) >= chordMm) {
            message = Optional.of(
                    OutlineMessage.CURVE_BEYOND_CHORD.of(reading.name(), reading.alongMm(chordMm), chordMm));
        } else if (fit.isBeyondHalfCircle(number)) {
            message = Optional.of(OutlineMessage.ARC_TOO_HIGH.of(reading.name(), read, chordMm, fit.mostMm(number)));
        } else if (reading.isTape() && read <= chordMm) {
            message = Optional.of(OutlineMessage.CURVE_SHORTER_THAN_CHORD.of(reading.name(), read, chordMm));
        }
        return message.map(found -> new Problem(reading.where(), found));
    }

    private List<Spot> spots(Ring ring) {
        List<Spot> spots = new ArrayList<>();
        Network network = adjustment.network();
        Positions at = adjustment.positions();
        List<String> corners = book.edges().ring();
        for (int p = 0; p < network.points(); p++) {
            if (!network.hasHeight(p)) {
                continue;
            }
            String name = network.name(p);
            int front = corners.lastIndexOf(name);
            if (network.inPlan(p)) {
                spots.add(new Spot(name, at.at(p), at.height(p), adjustment.sdHeight(p)));
            } else if (front >= 0) {
                spots.add(new Spot(name, ring.corner(front), at.height(p), adjustment.sdHeight(p)));
            } else {
                problems.add(new Problem("survey.measures", OutlineMessage.LEVEL_WITHOUT_PLACE.of(name)));
            }
        }
        return spots;
    }
}
