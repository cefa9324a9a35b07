package borderwright.bench;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.resolve.StrengthResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.strength.BoxStrength;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.StrengthTerms;
import borderwright.engine.strength.box.BowLine;
import borderwright.engine.strength.box.BowLineFinder;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.bracing.LeastCure;
import borderwright.engine.strength.bracing.Looks;
import borderwright.engine.strength.loads.BoxLoads;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** Strength: the final bow of a three-course rectangle (aim: under 1 ms), and the least cure of 60 boxes (under 1 s). */
@SuppressWarnings("NullAway.Init") // set by setUp before any run
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class StrengthBench {
    private static final int BOXES = 60;

    private StrengthTerms terms;
    private BuildSpec rules;
    private BuildMeans means;
    private Box rectangle;
    private List<FootprintPlan> sixty;

    /** Makes the boxes. */
    @Setup
    public void setUp() {
        List<SectionSpec> sections = List.of(section("board", 25, 150), section("batten", 47, 50));
        rules = BuildResolver.of("board", "batten");
        means = new BuildMeans(sections, List.of(), Map.of("board", 3600.0), UnitSystem.METRIC);
        terms = StrengthTerms.of(
                StrengthResolver.usual(UnitSystem.METRIC),
                SoilResolver.usual(),
                GroundResolver.usual(),
                sections,
                Origins.NONE);
        rectangle = BoxBuilder.build(plan(1200, 600, 450), rules, means, new BracingScheme(1e5, 0, 75, List.of()));
        sixty = new ArrayList<>();
        for (int i = 0; i < BOXES; i++) {
            sixty.add(plan(900 + 20 * i, 550 + 2 * i, i % 3 == 0 ? 300 : 450));
        }
    }

    private static SectionSpec section(String name, double thicknessMm, double widthMm) {
        return WoodResolver.section(GivenSection.builder(name, Length.ofMm(thicknessMm), Length.ofMm(widthMm))
                .build());
    }

    private static FootprintPlan plan(double lengthMm, double depthMm, double heightMm) {
        SidePlan end = SidePlan.free(SidePlan.Role.END, EdgeKind.OPEN, 0);
        List<SidePlan> sides = List.of(
                SidePlan.free(SidePlan.Role.FRONT, EdgeKind.LAWN, 0),
                end,
                SidePlan.free(SidePlan.Role.BACK, EdgeKind.OPEN, 0),
                end);
        return FootprintPlan.builder()
                .name("P")
                .run("run")
                .outline(Ring.rectangle(0, 0, lengthMm, depthMm))
                .sides(sides)
                .planters(List.of("P"))
                .bedMm(0)
                .heightMm(heightMm)
                .build();
    }

    /** Frame, lasting load, contacts and deflected lines. */
    @Benchmark
    public List<BowLine> bowOfARectangle() {
        BoxFrame frame = BoxFrame.of(rectangle, terms.materials(), terms.fill());
        return BowLineFinder.of(
                frame, frame.frame().solve(BoxLoads.lasting(frame, terms.fill()).lasting(), frame.crept()));
    }

    /** Every load case, every check, worked sheets. */
    @Benchmark
    public StrengthReport wholeReportOnARectangle() {
        return BoxStrength.check(rectangle, terms);
    }

    /** On all cores, as the planner does it. */
    @Benchmark
    public int leastCureOfSixtyBoxes() {
        return sixty.parallelStream()
                .mapToInt(plan -> LeastCure.find(plan, rules, means, terms, StrengthBench::volume, Looks.UNHEARD)
                        .tried())
                .sum();
    }

    private static double volume(Box box) {
        return box.pieces().stream()
                .mapToDouble(piece -> piece.place().volumeMm3())
                .sum();
    }
}
