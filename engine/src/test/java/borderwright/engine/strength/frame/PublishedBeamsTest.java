package borderwright.engine.strength.frame;

import static borderwright.engine.strength.frame.FrameTest.FIXED;
import static borderwright.engine.strength.frame.Freedom.RX;
import static borderwright.engine.strength.frame.Freedom.RZ;
import static borderwright.engine.strength.frame.Freedom.UY;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** Beams of the handbooks. */
class PublishedBeamsTest {
    private static final Freedom[] PINNED = {RZ};

    private static final Vector DOWN = new Vector(0, -1, 0);

    /** A straight beam along x in the x-y plane with E I = EA = 1 unless told. */
    private static final class Beam {
        final FrameBuilder builder = new FrameBuilder();
        final List<Integer> nodes = new ArrayList<>();
        final Loads loads = new Loads();

        Beam node(double x, Freedom... free) {
            nodes.add(builder.node(new Vector(x, 0, 0), free));
            return this;
        }

        Frame frame(double ei) {
            for (int i = 1; i < nodes.size(); i++) {
                builder.member(nodes.get(i - 1), nodes.get(i), new JointRigidity(ei, ei, ei, ei), Vector.Z);
            }
            return builder.build(0);
        }

        Beam even(double w) {
            for (int i = 1; i < nodes.size(); i++) {
                double l = builder.places.get(nodes.get(i)).x()
                        - builder.places.get(nodes.get(i - 1)).x();
                loads.line(i - 1, DOWN, 0, l, w, w);
            }
            return this;
        }
    }

    /** Beams under even and triangular load: coefficients of the handbooks for w = L = E I = 1. */
    @Nested
    class PublishedBeams {
        @Test
        void aSimpleBeam() {
            // Hicks (ed.), Civil Engineering Formulas, table 2.1, p. 50, "2 supports"; sag 5/384.
            Beam beam = new Beam().node(0, PINNED).node(1, PINNED).even(1);
            MemberAnswer span = beam.frame(1).solve(beam.loads).member(0);
            assertThat(span.momentAboutZ(0.5)).isCloseTo(0.125, within(1e-12));
            assertThat(span.shearY(0)).isCloseTo(0.5, within(1e-12));
            assertThat(-span.deflectionY(0.5)).isCloseTo(5 / 384.0, within(1e-12));
        }

        @Test
        void aBeamFixedAtBothEnds() {
            // Civil Engineering Formulas, chapter 2, case 5: 1/24 at the centre, 1/12 at the ends; sag 1/384.
            Beam beam = new Beam().node(0, FIXED).node(1, FIXED).even(1);
            MemberAnswer span = beam.frame(1).solve(beam.loads).member(0);
            assertThat(span.momentAboutZ(0.5)).isCloseTo(1 / 24.0, within(1e-12));
            assertThat(-span.momentAboutZ(0)).isCloseTo(1 / 12.0, within(1e-12));
            assertThat(-span.deflectionY(0.5)).isCloseTo(1 / 384.0, within(1e-12));
        }

        @Test
        void aProppedBeam() {
            // Roark's Formulas, 8th ed., table 8.1, case 2c: 9/128 at 3/8, 1/8, sag 1/185 at 0.4215 L.
            Beam beam = new Beam().node(0, PINNED).node(1, FIXED).even(1);
            FrameAnswer answer = beam.frame(1).solve(beam.loads);
            MemberAnswer span = answer.member(0);
            assertThat(answer.reaction(0, UY)).isCloseTo(0.375, within(1e-12));
            assertThat(answer.reaction(1, UY)).isCloseTo(0.625, within(1e-12));
            assertThat(span.momentAboutZ(0.375)).isCloseTo(0.0703125, within(1e-12));
            assertThat(-span.momentAboutZ(1)).isCloseTo(0.125, within(1e-12));
            assertThat(-span.deflectionY(0.4215)).isCloseTo(1 / 185.0, withPercentage(0.25));
            assertThat(-span.deflectionY(0.4215)).isCloseTo(0.0054161, within(5e-8));
        }

        @Test
        void twoEqualSpans() {
            // Civil Engineering Formulas, table 2.1, "3 supports"; sag 0.0054 w L^4 / E I at 0.4215 L.
            Beam beam =
                    new Beam().node(0, PINNED).node(1, PINNED).node(2, PINNED).even(1);
            FrameAnswer answer = beam.frame(1).solve(beam.loads);
            assertThat(answer.reaction(0, UY)).isCloseTo(0.375, within(1e-12));
            assertThat(answer.reaction(1, UY)).isCloseTo(1.25, within(1e-12));
            assertThat(-answer.member(0).momentAboutZ(1)).isCloseTo(0.125, within(1e-12));
            assertThat(-answer.member(0).deflectionY(0.4215)).isCloseTo(0.00541, within(5e-5));
        }

        @Test
        void threeEqualSpans() {
            // Civil Engineering Formulas, table 2.1, "4 supports"; 0.0069 at 0.446 L.
            Beam beam = new Beam()
                    .node(0, PINNED)
                    .node(1, PINNED)
                    .node(2, PINNED)
                    .node(3, PINNED)
                    .even(1);
            FrameAnswer answer = beam.frame(1).solve(beam.loads);
            assertThat(answer.reaction(0, UY)).isCloseTo(0.4, within(1e-12));
            assertThat(answer.reaction(1, UY)).isCloseTo(1.1, within(1e-12));
            assertThat(answer.member(0).momentAboutZ(0.4)).isCloseTo(0.08, within(1e-12));
            assertThat(answer.member(1).momentAboutZ(0.5)).isCloseTo(0.025, within(1e-12));
            assertThat(-answer.member(0).momentAboutZ(1)).isCloseTo(0.1, within(1e-12));
            assertThat(-answer.member(0).deflectionY(0.446)).isCloseTo(0.0069, within(5e-5));
        }

        @Test
        void threeEqualSpansWithTwoLoaded() {
            // Two of three spans loaded: reactions 0.383, 1.200, 0.450, -0.033; sag 0.0059 at 0.430 L.
            Beam beam =
                    new Beam().node(0, PINNED).node(1, PINNED).node(2, PINNED).node(3, PINNED);
            Frame frame = beam.frame(1);
            Loads loads = new Loads().line(0, DOWN, 0, 1, 1, 1).line(1, DOWN, 0, 1, 1, 1);
            FrameAnswer answer = frame.solve(loads);
            assertThat(answer.reaction(0, UY)).isCloseTo(0.383, within(5e-4));
            assertThat(answer.reaction(1, UY)).isCloseTo(1.2, within(5e-4));
            assertThat(answer.reaction(2, UY)).isCloseTo(0.45, within(5e-4));
            assertThat(answer.reaction(3, UY)).isCloseTo(-0.033, within(5e-4));
            assertThat(answer.member(0).momentAboutZ(0.383)).isCloseTo(0.0735, within(5e-5));
            assertThat(-answer.member(0).deflectionY(0.43)).isCloseTo(0.0059, within(5e-5));
        }

        @Test
        void fourEqualSpans() {
            // Civil Engineering Formulas, table 2.1, "5 supports": 11/28, 32/28, 26/28.
            Beam beam = new Beam();
            for (int i = 0; i <= 4; i++) {
                beam.node(i, PINNED);
            }
            FrameAnswer answer = beam.even(1).frame(1).solve(beam.loads);
            assertThat(answer.reaction(0, UY)).isCloseTo(11 / 28.0, within(1e-12));
            assertThat(answer.reaction(1, UY)).isCloseTo(32 / 28.0, within(1e-12));
            assertThat(answer.reaction(2, UY)).isCloseTo(26 / 28.0, within(1e-12));
        }

        @Test
        void twoUnequalSpans() {
            // M over the middle support w (a^3 + b^3) / (8 (a + b)); the sign of M in R1 is minus.
            double a = 1.2;
            double b = 0.7;
            Beam beam = new Beam()
                    .node(0, PINNED)
                    .node(a, PINNED)
                    .node(a + b, PINNED)
                    .even(1);
            FrameAnswer answer = beam.frame(1).solve(beam.loads);
            double middle = (a * a * a + b * b * b) / (8 * (a + b));
            assertThat(-answer.member(0).momentAboutZ(a)).isCloseTo(middle, within(1e-12));
            assertThat(answer.reaction(0, UY)).isCloseTo(a / 2 - middle / a, within(1e-12));
        }

        @Test
        void aTriangularLoadOnASimpleBeam() {
            // AWC Design Aid 6 (2007), simple beam, load rising to one end: W/3, 2W/3, 0.1283 W L, 0.01304 W L^3 / E I.
            Beam beam = new Beam().node(0, PINNED).node(1, PINNED);
            Frame frame = beam.frame(1);
            FrameAnswer answer = frame.solve(new Loads().line(0, DOWN, 0, 1, 0, 1));
            MemberAnswer span = answer.member(0);
            assertThat(answer.reaction(0, UY)).isCloseTo(1 / 6.0, within(1e-12));
            assertThat(span.momentAboutZ(1 / Math.sqrt(3))).isCloseTo(0.1283 * 0.5, within(5e-5 * 0.5));
            assertThat(-span.deflectionY(0.5193)).isCloseTo(0.01304 * 0.5, within(5e-6 * 0.5));
            assertThat(span.peaksAboutZ()).anySatisfy(x -> assertThat(x).isCloseTo(1 / Math.sqrt(3), within(1e-9)));
        }

        @Test
        void aTriangularLoadOnAPost() {
            // Roark table 8.1: cantilever, load greatest at the fixed end: w L^2 / 6, w L^4 / 30 E I.
            Beam beam = new Beam().node(0, FIXED).node(1, UY, RZ);
            FrameAnswer answer = beam.frame(1).solve(new Loads().line(0, DOWN, 0, 1, 1, 0));
            assertThat(-answer.member(0).momentAboutZ(0)).isCloseTo(1 / 6.0, within(1e-12));
            assertThat(-answer.displacement(1, UY)).isCloseTo(1 / 30.0, within(1e-12));
        }

        @Test
        void aTriangularLoadOnAFixedAndOnAProppedBeam() {
            // Roark table 8.1: fixed 1/30 and 1/20, 3/20 and 7/20; propped, greatest at the fixed end: 1/10 and 2/5,
            // 1/15.
            Beam fixed = new Beam().node(0, FIXED).node(1, FIXED);
            FrameAnswer answer = fixed.frame(1).solve(new Loads().line(0, DOWN, 0, 1, 0, 1));
            assertThat(-answer.member(0).momentAboutZ(0)).isCloseTo(1 / 30.0, within(1e-12));
            assertThat(-answer.member(0).momentAboutZ(1)).isCloseTo(1 / 20.0, within(1e-12));
            assertThat(answer.reaction(0, UY)).isCloseTo(3 / 20.0, within(1e-12));
            Beam propped = new Beam().node(0, PINNED).node(1, FIXED);
            answer = propped.frame(1).solve(new Loads().line(0, DOWN, 0, 1, 0, 1));
            assertThat(answer.reaction(0, UY)).isCloseTo(0.1, within(1e-12));
            assertThat(-answer.member(0).momentAboutZ(1)).isCloseTo(1 / 15.0, within(1e-12));
        }

        @Test
        void aPointLoadAndAnOverhang() {
            // P L / 4, P L^3 / 48 E I; CISC Handbook of Steel Construction, 11th ed., p. 5-138, diagram 24: 45 and
            // 103.51.
            Beam simple = new Beam().node(0, PINNED).node(1, PINNED);
            MemberAnswer span =
                    simple.frame(1).solve(new Loads().point(0, DOWN, 0.5, 1)).member(0);
            assertThat(span.momentAboutZ(0.5)).isCloseTo(0.25, within(1e-12));
            assertThat(-span.deflectionY(0.5)).isCloseTo(1 / 48.0, within(1e-12));
            Beam over =
                    new Beam().node(0, PINNED).node(10, PINNED).node(13, UY, RZ).even(10);
            MemberAnswer main = over.frame(1).solve(over.loads).member(0);
            double greatest = main.peaksAboutZ().stream()
                    .mapToDouble(main::momentAboutZ)
                    .max()
                    .orElseThrow();
            assertThat(-main.momentAboutZ(10)).isCloseTo(45, within(1e-9));
            assertThat(greatest).isCloseTo(103.51, within(5e-3));
        }

        @Test
        void aBeamOnSprings() {
            // McGuire, Gallagher, Ziemian, Matrix Structural Analysis, 2nd ed., example 4.15 (kip, in): moment 547.
            // Its printed deflection of 0.238 is the endless beam's; the discrete one has 0.24627.
            FrameAnswer answer = onSprings(SpringLaw.ELASTIC);
            assertThat(answer.member(7).momentAboutZ(15)).isCloseTo(547, within(0.5));
            assertThat(answer.member(7).momentAboutZ(15)).isCloseTo(546.64, within(5e-3));
            assertThat(-answer.displacement(8, UY)).isCloseTo(0.24627, within(5e-6));
            assertThat(answer.reaction(0, UY)).isCloseTo(-2.5507, within(5e-5));
        }

        @Test
        void theSameBeamOnContactsSinceAllOfThemStayPressed() {
            assertThat(onSprings(SpringLaw.CONTACT).member(7).momentAboutZ(15)).isCloseTo(546.64, within(5e-3));
        }

        private FrameAnswer onSprings(SpringLaw law) {
            Beam beam = new Beam();
            for (int i = 0; i <= 16; i++) {
                beam.node(15 * i, i == 0 || i == 16 ? PINNED : new Freedom[] {UY, RZ});
            }
            for (int i = 1; i < 16; i++) {
                beam.builder.toGround(i, new Vector(15 * i, 0, 0), Vector.Y, 22.5, law);
            }
            return beam.frame(29000 * 128.5).solve(new Loads().onNode(8, UY, -40));
        }

        @Test
        void supportsThatSettle() {
            // Kassimali, Structural Analysis, 3rd ed., example 13.14 (kip, in). The printed -1.098, 122.373, -61.451,
            // 60.176 carry hand rounding; solved exactly the same data give the values below.
            Beam beam = new Beam();
            for (int i = 0; i <= 3; i++) {
                beam.node(240 * i, PINNED);
            }
            beam.builder.settle(1, UY, -0.625);
            beam.builder.settle(2, UY, -1.5);
            beam.builder.settle(3, UY, -0.75);
            FrameAnswer answer = beam.even(2.0 / 12).frame(29000.0 * 7800).solve(beam.loads);
            assertThat(answer.reaction(0, UY)).isCloseTo(-1.18099, within(5e-6));
            assertThat(answer.reaction(1, UY)).isCloseTo(122.54167, within(5e-6));
            assertThat(answer.reaction(2, UY)).isCloseTo(-61.54036, within(5e-6));
            assertThat(answer.reaction(3, UY)).isCloseTo(60.17969, within(5e-6));
        }

        @Test
        void aBarUnderTorques() {
            // A bar of 168 held at both ends under torques of 5 at 36 and 10 at 132: 6.07 and 8.93.
            Beam beam = new Beam().node(0, FIXED).node(36, RX).node(132, RX).node(168, FIXED);
            FrameAnswer answer =
                    beam.frame(1).solve(new Loads().onNode(1, RX, 5).onNode(2, RX, 10));
            assertThat(answer.reaction(0, RX)).isCloseTo(-6.07, within(5e-3));
            assertThat(answer.reaction(3, RX)).isCloseTo(-8.93, within(5e-3));
        }
    }
}
