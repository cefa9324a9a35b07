package borderwright.engine.layout;

import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.boxes.OpenGround;
import borderwright.engine.layout.boxes.OverlapCheck;
import borderwright.engine.layout.boxes.ReachCheck;
import borderwright.engine.layout.boxes.RunLayout;
import borderwright.engine.layout.boxes.SlopeReport;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.layout.plan.Opening;
import borderwright.engine.layout.room.FreeRoom;
import borderwright.engine.layout.room.Surroundings;
import borderwright.engine.layout.run.BayCuts;
import borderwright.engine.layout.run.DepthFit;
import borderwright.engine.layout.run.Findings;
import borderwright.engine.layout.run.LaidBox;
import borderwright.engine.layout.run.RunChain;
import borderwright.engine.layout.run.RunEdges;
import borderwright.engine.layout.run.RunPath;
import borderwright.engine.layout.run.RunTerms;
import borderwright.engine.layout.run.Stretch;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

/**
 * Lays planters out along the border's edges, run after run.
 *
 * <p>Deterministic; time about in proportion to the number of planters. A request that cannot be met is a problem with
 * numbers in {@link Layout#unmet()}, never an exception.
 */
public final class BorderLayout {
    private final Outline outline;
    private final LayoutRules rules;
    private final FreeRoom room;
    private final Surroundings surroundings;
    private final Findings findings;
    private final List<LaidBox> boxes = new ArrayList<>();

    private BorderLayout(Outline outline, LayoutRules rules) {
        this.outline = outline;
        this.findings = new Findings(outline);
        this.rules = rules;
        this.room = new FreeRoom(outline);
        this.surroundings = new Surroundings(outline, room);
    }

    /**
     * Boxes for all runs; where two runs want the same ground, the earlier has it.
     *
     * @param outline the border
     * @param runs the runs requested, in order of precedence
     * @param rules how boxes are built
     * @param points names of the survey's points, which no planter gets
     */
    public static Layout lay(Outline outline, List<RunSpec> runs, LayoutRules rules, Collection<String> points) {
        BorderLayout layout = new BorderLayout(outline, rules);
        List<String> letters =
                RunNames.lettersOf(runs.stream().map(RunSpec::name).toList(), points);
        for (int i = 0; i < runs.size(); i++) {
            layout.add(runs.get(i), i, letters.get(i));
        }
        return layout.result();
    }

    private void add(RunSpec spec, int index, String letters) {
        String where = "runs[" + index + "]";
        checkRanges(new RunTerms(spec, where, spec.size().frontToBack().from().mm(), rules));
        int number = 1;
        for (int row = 0; row < spec.rowCount(); row++) {
            RunTerms terms = new RunTerms(
                    spec.inRow(row), where, spec.size().frontToBack().from().mm(), rules);
            number += addRow(terms, letters, number);
        }
    }

    /** How many planters were laid. */
    private int addRow(RunTerms requested, String letters, int number) {
        RunSpec spec = requested.spec();
        Optional<RunPath> path = RunPath.along(spec.along(), outline);
        if (path.isEmpty()) {
            findings.unmet(findings.problemMaker().notAlong(requested));
            return 0;
        }
        if (requested.depthMm() < rules.leastEdgeMm()) {
            findings.unmet(findings.problemMaker().tooShallow(requested));
            return 0;
        }
        // A row that finds no room is left out: beds of one field are not made narrower to fill it.
        RunTerms terms =
                spec.isFree() ? requested : new DepthFit(outline, path.get(), room, findings).fitted(requested);
        RunEdges edges = new RunEdges(outline, path.get(), terms, room, findings);
        RunChain chain = new RunChain(terms, edges.requested(), room, findings).fit();
        List<Stretch> stretches = BayCuts.of(chain, terms, findings);
        List<LaidBox> laid = new RunLayout(
                        chain, terms, surroundings, outline.ground(), new SlopeReport(terms, findings))
                .boxes(stretches, letters, number);
        if (!spec.isFree()) {
            new OpenGround(chain, terms, room, outline).openings().forEach(findings::opening);
        }
        laid.forEach(this::keep);
        for (Ring part : chain.parts()) {
            room.place(spec.name(), part, terms.aroundMm());
        }
        return laid.stream().mapToInt(box -> box.cells().size()).sum();
    }

    private void checkRanges(RunTerms terms) {
        check(terms, "front to back", terms.spec().size().frontToBack());
        check(terms, "height", terms.spec().size().height());
        if (terms.spec().bays().planters().isEmpty()
                && terms.spec().bays().length().isEmpty()) {
            findings.unmet(findings.problemMaker().planterNumberNotGiven(terms));
        }
    }

    private void check(RunTerms terms, String field, LengthRange range) {
        if (!range.isFixed()) {
            findings.unmet(findings.problemMaker().rangeNotPlanned(terms, field, range));
        }
    }

    private void keep(LaidBox box) {
        boxes.add(box);
    }

    private Layout result() {
        List<LaidBox> apart = new OverlapCheck(findings).withoutOverlaps(boxes);
        new ReachCheck(apart).notes().forEach(findings::note);
        STRtree taken = new STRtree();
        for (LaidBox box : apart) {
            Polygon polygon = box.plan().outline().toJts();
            taken.insert(polygon.getEnvelopeInternal(), polygon);
        }
        List<Opening> openings = findings.openings().stream()
                .flatMap(place -> place.without(taken).stream())
                .toList();
        return new Layout(apart.stream().map(LaidBox::plan).toList(), openings, findings.notes(), findings.unmet());
    }
}
