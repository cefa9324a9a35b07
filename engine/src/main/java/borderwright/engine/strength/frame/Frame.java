package borderwright.engine.strength.frame;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * A structure, numbered and ready to be solved for any load and any scaling of its stiffnesses.
 *
 * <p>Immutable.
 */
public final class Frame {
    final List<Vector> places;
    final List<Member> members;
    final List<Spring> springs;
    final double[] held;
    final Numbering numbering;
    final List<Part> memberParts = new ArrayList<>();
    final List<Part> springParts = new ArrayList<>();
    final double[] loose;
    final Fronts fronts;

    /** By front: the members and the springs whose stiffness it takes. */
    final int[][] membersOf;

    final int[][] springsOf;

    Frame(FrameBuilder builder, double looseStiffness) {
        places = List.copyOf(builder.places);
        members = List.copyOf(builder.members);
        springs = List.copyOf(builder.springs);
        numbering = new Numbering(builder);
        held = new double[Freedom.COUNT * places.size()];
        for (FrameBuilder.Settlement s : builder.settlements) {
            held[Freedom.COUNT * s.node() + s.freedom().index()] = s.value();
        }
        loose = looseStiffnesses(looseStiffness);
        fronts = Fronts.of(numbering);
        for (Member member : members) {
            memberParts.add(Part.of(member.globalStiffness(), equations(member.start(), member.end()), fronts));
        }
        for (Spring spring : springs) {
            springParts.add(springPart(spring));
        }
        membersOf = byFront(memberParts);
        springsOf = byFront(springParts);
    }

    private int[][] byFront(List<Part> parts) {
        List<IntStream.Builder> lists =
                Stream.generate(IntStream::builder).limit(fronts.count()).toList();
        for (int p = 0; p < parts.size(); p++) {
            if (parts.get(p).front() >= 0) {
                lists.get(parts.get(p).front()).add(p);
            }
        }
        return lists.stream().map(list -> list.build().toArray()).toArray(int[][]::new);
    }

    /** Solves with every stiffness as it was given. */
    public FrameAnswer solve(Loads loads) {
        return solve(loads, UnknownScales.ONE);
    }

    /** Solves with the stiffnesses scaled. */
    public FrameAnswer solve(Loads loads, UnknownScales scales) {
        return new FrameSolver(this, scales).solve(loads);
    }

    public int memberCount() {
        return members.size();
    }

    public int springCount() {
        return springs.size();
    }

    /** Whether no loose stiffness was given. */
    boolean isTight() {
        return loose.length == 0 || loose[0] == 0;
    }

    int[] equations(int start, int end) {
        int[] equations = new int[12];
        for (int f = 0; f < Freedom.COUNT; f++) {
            equations[f] = numbering.equation[Freedom.COUNT * start + f];
            equations[Freedom.COUNT + f] = numbering.equation[Freedom.COUNT * end + f];
        }
        return equations;
    }

    private double[] looseStiffnesses(double translation) {
        double[] values = new double[numbering.count];
        for (int i = 0; i < numbering.equation.length; i++) {
            if (numbering.equation[i] >= 0) {
                // A rotation is held as by two such springs 200 apart.
                values[numbering.equation[i]] = i % Freedom.COUNT < 3 ? translation : 2e4 * translation;
            }
        }
        return values;
    }

    private Part springPart(Spring spring) {
        double[] b = stretchRow(spring);
        double[] k = new double[144];
        for (int i = 0; i < 12; i++) {
            for (int j = 0; j < 12; j++) {
                k[12 * i + j] = spring.stiffness() * b[i] * b[j];
            }
        }
        return Part.of(k, springEquations(spring), fronts);
    }

    /** How the spring lengthens with each of the 12 displacements of its two nodes. */
    static double[] stretchRow(Spring spring) {
        double[] b = new double[12];
        for (int f = 0; f < Freedom.COUNT; f++) {
            b[f] = spring.first().node() < 0 ? 0 : spring.stretchOfFirst(f);
            b[Freedom.COUNT + f] = spring.second().node() < 0 ? 0 : spring.stretchOfSecond(f);
        }
        return b;
    }

    int[] springEquations(Spring spring) {
        int[] equations = new int[12];
        for (int f = 0; f < Freedom.COUNT; f++) {
            equations[f] = equation(spring.first().node(), f);
            equations[Freedom.COUNT + f] = equation(spring.second().node(), f);
        }
        return equations;
    }

    private int equation(int node, int f) {
        return node < 0 ? -1 : numbering.equation[Freedom.COUNT * node + f];
    }
}
