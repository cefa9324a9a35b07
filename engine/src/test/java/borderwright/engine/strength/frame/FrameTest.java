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

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FrameTest {
    static final Freedom[] FIXED = {};
    private static final Freedom[] PLANE = {UX, UY, RZ};

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
