package borderwright.engine.assembly.order;

import borderwright.engine.assembly.AssemblyMessage;
import borderwright.engine.assembly.BoxBench;
import borderwright.engine.assembly.FixingLine;
import borderwright.engine.assembly.order.AssemblyStep.Kind;
import borderwright.engine.assembly.order.AssemblyStep.StepFixing;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.filling.Filling;
import borderwright.engine.filling.Weights;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;

/** The steps so far, with what has been placed by them; a piece too heavy for one person is named in its step. */
final class StepList {
    private final List<Piece> all;
    private final Map<String, Piece> pieces = new HashMap<>();
    private final Map<String, SectionSpec> sections = new TreeMap<>();
    private final List<AssemblyStep> steps = new ArrayList<>();
    private final Set<String> placed = new HashSet<>();

    StepList(BoxBench bench, List<SectionSpec> all) {
        this.all = bench.box().pieces();
        this.all.forEach(piece -> pieces.put(piece.label(), piece));
        all.forEach(section -> sections.put(section.name(), section));
    }

    List<AssemblyStep> steps() {
        return steps;
    }

    Map<String, Piece> pieces() {
        return pieces;
    }

    /** Every piece of a role, in the order of the box. */
    List<String> labels(Role role) {
        return all.stream()
                .filter(piece -> piece.role() == role)
                .map(Piece::label)
                .toList();
    }

    /** Those of a role that no step has placed. */
    List<String> waiting(Role role) {
        return labels(role).stream().filter(label -> !placed.contains(label)).toList();
    }

    double kg(Collection<String> labels) {
        return labels.stream().mapToDouble(this::kg).sum();
    }

    /** What all that has been placed weighs, kg. */
    double placedKg() {
        return kg(all.stream().map(Piece::label).filter(placed::contains).toList());
    }

    private double kg(String label) {
        return Weights.pieceKg(piece(label), sections);
    }

    private Piece piece(String label) {
        return Objects.requireNonNull(pieces.get(label), label);
    }

    void add(Kind kind, Message what, List<Message> details, List<String> involved, List<FixingLine> lines) {
        add(kind, what, details, involved, lines, 1);
    }

    void add(
            Kind kind,
            Message what,
            List<Message> details,
            List<String> involved,
            List<FixingLine> lines,
            int atLeast) {
        List<String> added = involved.stream().filter(placed::add).toList();
        List<Message> all = new ArrayList<>();
        if (added.stream().anyMatch(this::isTreated)) {
            all.add(AssemblyMessage.BRUSH_CUT_ENDS.of());
        }
        all.addAll(details);
        int people = atLeast;
        String heaviest =
                involved.stream().max(Comparator.comparingDouble(this::kg)).orElse("");
        if (atLeast == 1 && !heaviest.isEmpty() && kg(heaviest) > Filling.LIFT_KG) {
            people = Weights.people(kg(heaviest), Filling.LIFT_KG);
            all.add(AssemblyMessage.PEOPLE_FOR_PIECE.of(people, heaviest, kg(heaviest)));
        }
        List<String> shown = kind == Kind.STAND_WALL || kind == Kind.JOIN_WALL ? involved : added;
        steps.add(new AssemblyStep(steps.size() + 1, kind, what, all, shown, counted(lines), people));
    }

    private boolean isTreated(String label) {
        return Objects.requireNonNull(sections.get(piece(label).section()), label)
                .isTreated();
    }

    private static List<StepFixing> counted(List<FixingLine> lines) {
        Map<Box.Fixing, Integer> counts = new LinkedHashMap<>();
        lines.forEach(line -> counts.merge(line.fixing(), line.count(), Integer::sum));
        return counts.entrySet().stream()
                .map(entry -> new StepFixing(entry.getKey(), entry.getValue()))
                .toList();
    }
}
