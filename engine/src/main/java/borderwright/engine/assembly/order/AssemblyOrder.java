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

    /**
     * Works the steps out.
     *
     * @param bench of a box with pieces
     * @param sections of all its pieces
     * @param around what about its place changes the order
     */
    public static AssemblyOrder of(BoxBench bench, List<SectionSpec> sections, Surroundings around) {
        List<Diagonal> diagonals = Diagonal.of(bench.box().plan().outline());
        return new AssemblyOrder(bench, diagonals, new AssemblySteps(bench, sections, diagonals, around).steps());
    }
}
