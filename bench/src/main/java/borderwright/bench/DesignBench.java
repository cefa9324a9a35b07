package borderwright.bench;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.RunSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.SurveySpec;
import borderwright.engine.garden.given.GivenMeasure;
import borderwright.engine.garden.given.GivenRun;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.RunResolver;
import borderwright.engine.garden.resolve.SurveyResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.PlanterJoin;
import borderwright.engine.layout.BorderLayout;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import borderwright.engine.layout.plan.LayoutRules;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.survey.BorderSurvey;
import borderwright.engine.survey.SurveyAnswer;
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
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

/** From survey to pieces, without buying: how long for a run of so many planters. Aim: 60 in under 1 s, 1,000 linear. */
@SuppressWarnings("NullAway.Init") // set by JMH and setUp before any run
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(1)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 3, time = 2)
public class DesignBench {
    /** Number of planters. */
    @Param({"60", "1000"})
    public int planters;

    /** Whether they share dividers. */
    @Param({"JOINED", "SEPARATE"})
    public PlanterJoin join;

    private SurveySpec survey;
    private RunSpec run;
    private BuildSpec rules;
    private BuildMeans means;

    /** Makes a straight border with one run along it. */
    @Setup
    public void setUp() {
        Length sideMm = Length.ofMm(1220.0 * planters + 100);
        survey = SurveyResolver.survey(GivenSurvey.builder(Names.of("A", "B"))
                .stripWidth(Length.ofMm(700))
                .measures(List.of(GivenMeasure.GivenTapeLength.of(Names.of("A", "B"), sideMm)))
                .build());
        run = RunResolver.run(GivenRun.builder(
                        "run", Names.of("A", "B"), LengthRange.of(Length.ofMm(600)), LengthRange.of(Length.ofMm(450)))
                .planters(planters)
                .join(join)
                .build());
        rules = BuildResolver.of("wall", "batten");
        List<SectionSpec> sections = List.of(section("wall", 25, 150), section("batten", 47, 50));
        means = new BuildMeans(sections, List.of(), Map.of("wall", 4780.0, "batten", 2980.0), UnitSystem.METRIC);
    }

    private static SectionSpec section(String name, double thicknessMm, double widthMm) {
        return WoodResolver.section(GivenSection.builder(name, Length.ofMm(thicknessMm), Length.ofMm(widthMm))
                .build());
    }

    /** All boxes. */
    @Benchmark
    public List<Box> design() {
        SurveyAnswer.Adjusted border = (SurveyAnswer.Adjusted) BorderSurvey.adjust(survey);
        Layout layout =
                BorderLayout.lay(border.outline(), List.of(run), new LayoutRules(25, 150, 4780), survey.pointNames());
        List<Box> boxes = new ArrayList<>();
        for (FootprintPlan footprint : layout.boxes()) {
            boxes.add(BoxBuilder.build(footprint, rules, means));
        }
        return boxes;
    }
}
