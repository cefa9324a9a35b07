package borderwright.engine;

import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Boxes of made-up larch boards for tests of the stages after build-up. */
public final class TestBoxes {
    public static final GivenSection GIVEN_LARCH = section("larch 25 x 150", 25, 150);
    public static final GivenSection GIVEN_BATTEN = section("batten 47 x 50", 47, 50);
    public static final SectionSpec LARCH = WoodResolver.section(GIVEN_LARCH);
    public static final SectionSpec BATTEN = WoodResolver.section(GIVEN_BATTEN);

    private TestBoxes() {}

    public static Box box(String name, Ring outline, double bedMm, double heightMm, double platformMm) {
        return box(name, outline, List.of(), List.of(name), bedMm, heightMm, platformMm, Map.of());
    }

    /** A joined run at the datum, its wall boards no longer than that, mm. */
    public static Box joined(
            String name, Ring outline, List<DividerLine> dividers, List<String> planters, double longestMm) {
        return box(name, outline, dividers, planters, 0, 450, 0, Map.of(LARCH.name(), longestMm));
    }

    /** A box 450 mm high at the datum whose posts and braces are let into the ground in concrete. */
    public static Box footed(String name, Ring outline, double depthMm) {
        Box plain = box(name, outline, 0, 450, 0);
        return BoxBuilder.build(
                plain.plan(),
                BuildResolver.of(LARCH.name(), BATTEN.name()).withPostFooting(Length.ofMm(depthMm)),
                new BuildMeans(List.of(LARCH, BATTEN), List.of(), Map.of(), UnitSystem.METRIC));
    }

    private static Box box(
            String name,
            Ring outline,
            List<DividerLine> dividers,
            List<String> planters,
            double bedMm,
            double heightMm,
            double platformMm,
            Map<String, Double> longestMm) {
        List<SidePlan> sides = new ArrayList<>();
        for (int i = 0; i < outline.size(); i++) {
            sides.add(SidePlan.free(i == 0 ? SidePlan.Role.FRONT : SidePlan.Role.END, EdgeKind.OPEN, bedMm));
        }
        FootprintPlan plan = FootprintPlan.builder()
                .name(name)
                .run("run")
                .outline(outline)
                .sides(sides)
                .dividers(dividers)
                .planters(planters)
                .bedMm(bedMm)
                .heightMm(heightMm)
                .platformMm(platformMm)
                .build();
        BuildSpec rules = BuildResolver.of(LARCH.name(), BATTEN.name());
        return BoxBuilder.build(
                plan, rules, new BuildMeans(List.of(LARCH, BATTEN), List.of(), longestMm, UnitSystem.METRIC));
    }

    private static GivenSection section(String name, double thickness, double width) {
        return GivenSection.builder(name, Length.ofMm(thickness), Length.ofMm(width))
                .species("larch")
                .moisture(BoardMoisture.DRY)
                .build();
    }
}
