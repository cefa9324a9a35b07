package borderwright.engine.assembly.order;

import borderwright.engine.assembly.BoxBench;
import borderwright.engine.garden.SectionSpec;
import java.util.List;

/**
 * The steps by which a box is put together: long walls lying down, then standing and closed by the short ones, squared, and
 * filled in from the dividers to the capping.
 *
 * @param bench the box on the bench
 * @param diagonals that fix its shape
 * @param steps in order
 */
public record AssemblyOrder(BoxBench bench, List<Diagonal> diagonals, List<AssemblyStep> steps) {
    public AssemblyOrder {
        diagonals = List.copyOf(diagonals);
        steps = List.copyOf(steps);
    }

    /** Whether the walls are lined before the box is filled. */
    public enum Lining {
        NONE,
        LINER
    }

    /**
     * Works the steps out.
     *
     * @param bench of a box with pieces
     * @param sections of all its pieces
     * @param lining of its walls
     */
    public static AssemblyOrder of(BoxBench bench, List<SectionSpec> sections, Lining lining) {
        List<Diagonal> diagonals = Diagonal.of(bench.box().plan().outline());
        return new AssemblyOrder(bench, diagonals, new AssemblySteps(bench, sections, diagonals, lining).steps());
    }
}
