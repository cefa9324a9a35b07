package borderwright.engine.strength.frame;

import static borderwright.engine.strength.frame.Freedom.RX;
import static borderwright.engine.strength.frame.Freedom.RY;
import static borderwright.engine.strength.frame.Freedom.RZ;
import static borderwright.engine.strength.frame.Freedom.UX;
import static borderwright.engine.strength.frame.Freedom.UY;
import static borderwright.engine.strength.frame.Freedom.UZ;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;
import static org.assertj.core.api.Assertions.within;
import static org.assertj.core.data.Percentage.withPercentage;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FrameTest {
    private static final Freedom[] FIXED = {};
    private static final Freedom[] PINNED = {RZ};
    private static final Freedom[] PLANE = {UX, UY, RZ};
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

    @Nested
    class PublishedFrames {
        @Test
        void aSpaceFrame() {
            // Logan, A First Course in the Finite Element Method, 4th ed., example 5.8 (kip, in).
            FrameBuilder b = new FrameBuilder();
            int free = b.node(Vector.ZERO, Freedom.values());
            JointRigidity r = new JointRigidity(30000 * 10, 30000 * 100, 30000 * 100, 10000 * 50);
            b.member(b.node(new Vector(-100, 0, 0)), free, r, Vector.Z);
            b.member(b.node(new Vector(0, 0, -100)), free, r, Vector.X);
            b.member(b.node(new Vector(0, -100, 0)), free, r, Vector.Z);
            FrameAnswer answer =
                    b.build(0).solve(new Loads().onNode(free, UY, -50).onNode(free, RX, -1000));
            assertThat(answer.displacement(free, UX)).isCloseTo(7.098e-5, within(5e-9));
            assertThat(answer.displacement(free, UY)).isCloseTo(-0.014, within(5e-4));
            assertThat(answer.displacement(free, UZ)).isCloseTo(-2.352e-3, within(5e-7));
            assertThat(answer.displacement(free, RX)).isCloseTo(-3.996e-3, within(5e-7));
            assertThat(answer.displacement(free, RY)).isCloseTo(1.78e-5, within(5e-8));
            assertThat(answer.displacement(free, RZ)).isCloseTo(-1.033e-4, within(5e-8));
            assertBalanced(answer);
        }

        @Test
        void aPlaneFrame() {
            // Logan, 4th ed., problem 5.30 (kip, in).
            FrameBuilder b = new FrameBuilder();
            double[][] at = {{0, 0}, {0, 360}, {180, 480}, {420, 480}, {600, 360}, {600, 0}};
            for (int i = 0; i < at.length; i++) {
                b.node(new Vector(at[i][0], at[i][1], 0), i == 0 || i == 5 ? FIXED : PLANE);
            }
            JointRigidity r = new JointRigidity(30000 * 12, 30000 * 200, 30000 * 200, 0);
            for (int i = 1; i < at.length; i++) {
                b.member(i - 1, i, r, Vector.Z);
            }
            FrameAnswer answer = b.build(0).solve(new Loads().onNode(2, UY, -30).onNode(3, UY, -30));
            assertThat(answer.reaction(0, UX)).isCloseTo(11.6877, within(5e-5));
            assertThat(answer.reaction(5, UX)).isCloseTo(-11.6877, within(5e-5));
            assertThat(answer.reaction(0, UY)).isCloseTo(30, within(1e-9));
            assertThat(answer.reaction(0, RZ)).isCloseTo(-1810.0745, within(5e-5));
            assertThat(answer.displacement(2, UY)).isCloseTo(-6.6668, within(5e-5));
            assertBalanced(answer);
        }

        @Test
        void aGrid() {
            // Grid of three members with bending and torsion (data of Kassimali, Matrix Analysis of Structures, chapter
            // on
            // grids; kN, m). Printed: the joint's stiffness matrix, here read back as forces for unit displacements.
            double[][] printed = {{6315, 14065, -9837.5}, {14065, 57912, -12905}, {-9837.5, -12905, 54238}};
            Freedom[] freedoms = {UY, RX, RZ};
            for (int i = 0; i < 3; i++) {
                FrameBuilder b = grid();
                b.settle(2, freedoms[i], 1);
                FrameAnswer answer = b.build(0).solve(new Loads());
                for (int j = 0; j < 3; j++) {
                    assertThat(answer.reaction(2, freedoms[j])).isCloseTo(printed[i][j], withPercentage(0.01));
                }
            }
        }

        private FrameBuilder grid() {
            FrameBuilder b = new FrameBuilder();
            int a = b.node(Vector.ZERO);
            int support = b.node(new Vector(8, 0, 0));
            int c = b.node(new Vector(8, 0, 6));
            int d = b.node(new Vector(0, 0, 6));
            JointRigidity r = new JointRigidity(0, 200e6 * 347e-6, 200e6 * 347e-6, 76e6 * 115e-6);
            b.member(a, c, r, Vector.Y);
            b.member(support, c, r, Vector.Y);
            b.member(d, c, r, Vector.Y);
            return b;
        }
    }

    @Nested
    class Properties {
        @Test
        void finerMeshesGiveTheSameAnswerSinceMembersAreExact() {
            double coarse = loadedRing(1);
            assertThat(loadedRing(2)).isCloseTo(coarse, withPercentage(1e-7));
            assertThat(loadedRing(8)).isCloseTo(coarse, withPercentage(1e-6));
        }

        private double loadedRing(int parts) {
            FrameBuilder b = new FrameBuilder();
            Loads loads = new Loads();
            int first = b.node(Vector.ZERO, RZ);
            int last = first;
            for (int i = 1; i <= 2 * parts; i++) {
                double s = i / (double) parts;
                Vector at = s <= 1 ? new Vector(3 * s, 0, 0) : new Vector(3, 2 * (s - 1), 0);
                int next = b.node(at, i == 2 * parts ? FIXED : PLANE);
                int m = b.member(last, next, new JointRigidity(50, 2, 3, 1), Vector.Z);
                double l = at.minus(b.places.get(last)).length();
                loads.line(m, new Vector(1, -1, 0), 0, l, 1, 1);
                last = next;
            }
            FrameAnswer answer = b.build(0).solve(loads);
            assertBalanced(answer);
            return answer.displacement(first, RZ);
        }

        @Test
        void onePushOnALooseFooting() {
            // Dry friction: pushed with 3 against a limit of 2, the rest goes into the elastic spring behind.
            FrameBuilder b = new FrameBuilder();
            int node = b.node(Vector.ZERO, UX);
            int rubs = b.toGround(node, Vector.ZERO, Vector.X, 1000, SpringLaw.slipping(2));
            int holds = b.toGround(node, Vector.ZERO, Vector.X, 10, SpringLaw.ELASTIC);
            FrameAnswer answer = b.build(0).solve(new Loads().onNode(node, UX, 3));
            assertThat(answer.state(rubs)).isEqualTo(SpringLaw.State.SLIPPING_OUT);
            assertThat(answer.springForce(holds)).isCloseTo(1, within(1e-12));
            assertThat(answer.displacement(node, UX)).isCloseTo(0.1, within(1e-12));
            assertBalanced(answer);
        }

        @Test
        void aContactPulledOpenCarriesNothing() {
            FrameBuilder b = new FrameBuilder();
            int node = b.node(Vector.ZERO, UX);
            int contact = b.toGround(node, Vector.ZERO, Vector.X, 1000, SpringLaw.CONTACT);
            b.toGround(node, Vector.ZERO, Vector.X, 1, SpringLaw.ELASTIC);
            Frame frame = b.build(0);
            assertThat(frame.solve(new Loads().onNode(node, UX, 3)).displacement(node, UX))
                    .isCloseTo(3, within(1e-12));
            FrameAnswer pressed = frame.solve(new Loads().onNode(node, UX, -3));
            assertThat(pressed.springForce(contact)).isCloseTo(-3 * 1000 / 1001.0, within(1e-12));
        }

        @Test
        void scaledStiffnessIsTheSameAsAStructureBuiltSo() {
            FrameBuilder b = new FrameBuilder();
            int held = b.node(Vector.ZERO);
            int tip = b.node(new Vector(2, 0, 0), PLANE);
            b.member(held, tip, new JointRigidity(1, 6, 6, 1), Vector.Z);
            b.toGround(tip, new Vector(2, 0, 0), Vector.Y, 4, SpringLaw.ELASTIC);
            Frame frame = b.build(0);
            FrameAnswer answer = frame.solve(
                    new Loads().onNode(tip, UY, 1),
                    UnknownScales.of(frame).member(0, 0.5).spring(0, 0.25));
            // 3 E I / L^3 = 9/8 and a spring of 1 side by side.
            assertThat(answer.displacement(tip, UY)).isCloseTo(1 / (9 / 8.0 + 1), within(1e-12));
        }
    }

    @Nested
    class Limits {
        @Test
        void aPartHeldByNothingIsCalledAMechanism() {
            FrameBuilder b = new FrameBuilder();
            int node = b.node(Vector.ZERO, UX);
            b.toGround(node, Vector.ZERO, Vector.X, 10, SpringLaw.CONTACT);
            assertThat(b.build(0).solve(new Loads().onNode(node, UX, 1)).isMechanism())
                    .isTrue();
        }

        @Test
        void aPartHeldByNothingShowsOnTheLooseStiffness() {
            FrameBuilder b = new FrameBuilder();
            int node = b.node(Vector.ZERO, UX);
            b.toGround(node, Vector.ZERO, Vector.X, 10, SpringLaw.CONTACT);
            Balance balance =
                    b.build(1e-6).solve(new Loads().onNode(node, UX, 1)).balance();
            assertThat(balance.loose()).isCloseTo(1, within(1e-9));
        }
    }

    @Nested
    class Refusals {
        @Test
        void aMemberWithoutLength() {
            FrameBuilder b = new FrameBuilder();
            int a = b.node(Vector.ZERO);
            int same = b.node(Vector.ZERO);
            assertThatThrownBy(() -> b.member(a, same, new JointRigidity(1, 1, 1, 1), Vector.Z))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("a member needs a length; nodes 0 and 1 coincide");
        }

        @Test
        void aFreeNodeThatIsToldToSettle() {
            FrameBuilder b = new FrameBuilder();
            int a = b.node(Vector.ZERO, UX);
            assertThatThrownBy(() -> b.settle(a, UX, 1))
                    .isInstanceOf(IllegalArgumentException.class)
                    .hasMessage("node 0 is free in UX: only what is held can settle");
        }
    }

    private static void assertBalanced(FrameAnswer answer) {
        Balance balance = answer.balance();
        assertThat(balance.force().length()).isLessThan(1e-9 * balance.size());
        assertThat(balance.unbalanced()).isLessThan(1e-9 * balance.size());
    }
}
