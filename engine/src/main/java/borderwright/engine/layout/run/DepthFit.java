package borderwright.engine.layout.run;

import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.Span;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

/**
 * Whether the border is deep enough for a run, and the depth that is.
 *
 * <p>Where the border is too narrow along most of an edge, the run is laid out as deep as does fit, to the whole
 * millimetre below, and reports it. Where it is narrow in a part of an edge only, the depth stays and that part is left out.
 */
public final class DepthFit {
    private final Outline outline;
    private final RunPath path;
    private final FreeRoom room;
    private final Findings findings;

    public DepthFit(Outline outline, RunPath path, FreeRoom room, Findings findings) {
        this.outline = outline;
        this.path = path;
        this.room = room;
        this.findings = findings;
    }

    public RunTerms fitted(RunTerms requested) {
        List<Integer> tooDeep = tooDeep(requested);
        if (tooDeep.isEmpty()) {
            return requested;
        }
        double least = requested.rules().leastEdgeMm();
        if (!tooDeep(requested.withDepth(least)).isEmpty()) {
            return requested;
        }
        double fits = least;
        double not = requested.depthMm();
        while (not - fits > 1e-3) {
            double middle = (fits + not) / 2;
            if (tooDeep(requested.withDepth(middle)).isEmpty()) {
                fits = middle;
            } else {
                not = middle;
            }
        }
        double whole = Math.max(least, Math.floor(fits + 2e-3));
        List<String> edges = tooDeep.stream().map(outline::edgeAlong).toList();
        findings.unmet(findings.problemMaker().depthDoesNotFit(requested, whole, edges));
        return requested.withDepth(whole);
    }

    /** Edges of the run of which less than half is free at this depth although nothing but their corners is in the way. */
    private List<Integer> tooDeep(RunTerms terms) {
        List<Integer> edges = new ArrayList<>();
        Findings aside = new Findings(outline);
        RunChain.Requested requested = new RunEdges(outline, path, terms, room, aside).requested();
        for (Leg leg : requested.legs()) {
            Span open = new Span(0, leg.lengthMm());
            Set<Integer> around = around(leg.edge());
            List<FreeRoom.Taken> taken = room.taken(leg, terms.depthMm(), around, Set.of(), requested.clearances());
            List<Span> byEdges = taken.stream()
                    .filter(t -> t.edge() >= 0)
                    .map(FreeRoom.Taken::span)
                    .toList();
            if (open.longestWithout(byEdges).lengthMm() < open.lengthMm() / 2 && !edges.contains(leg.edge())) {
                edges.add(leg.edge());
            }
        }
        return edges;
    }

    private Set<Integer> around(int edge) {
        int size = outline.ring().size();
        return Set.of(edge, (edge + 1) % size, Math.floorMod(edge - 1, size));
    }
}
