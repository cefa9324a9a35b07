package borderwright.engine.filling;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenFilling.GivenCoarseLayer;
import borderwright.engine.garden.given.GivenFilling.GivenFinish;
import borderwright.engine.garden.given.GivenFilling.GivenLiner;
import borderwright.engine.garden.given.GivenFilling.GivenMixPart;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.resolve.SoilResolver;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.geometry.Ring;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundWork;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.problem.Problem;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class FillingTest {
    private static final Box BOX = TestBoxes.box("F1", Ring.rectangle(0, 0, 2400, 1200), 0, 300, 0);

    private static FillPlan plan(GivenFilling spec, @Nullable GivenGround ground, List<Box> boxes) {
        Garden garden = TestGarden.with(spec, ground);
        GroundPlan made = GroundWork.plan(
                boxes,
                TestGarden.outline(),
                garden.survey(),
                garden.ground(),
                garden.soil(),
                10,
                new LengthFormat(UnitSystem.METRIC));
        return Filling.plan(garden, boxes, made);
    }

    @Test
    void whatPressesOnAServiceIsToldWithItsLoad() {
        GivenNearby drain = GivenNearby.builder(NearbyKind.DRAIN, Names.of("A", "B"), Length.ofMm(9000))
                .endsAt(Length.ofMm(11_000))
                .inFromEdge(Length.ofMm(10_500))
                .depth(Length.ofMm(900))
                .build();
        GivenGround ground = GivenGround.builder().keepClearOf(List.of(drain)).build();
        FillPlan plan = plan(null, ground, List.of(BOX));
        double load = plan.weights().get(0).kgPerM2() * 9.80665e-3;
        // The border's corner A is at (-10 m, -10 m): the drain lies at y = 500 mm from x = -1 m to 1 m, the box begins
        // at 0.
        assertThat(plan.notes())
                .extracting(English.METRIC::text)
                .contains(String.format(
                        Locale.ROOT,
                        "Not shown to hold: F1 stands over 1.000 m of the drain at A B and loads the ground with %.1f"
                                + " kN/m2, filled and soaked. Its owner may have to dig it up: ask before you build.",
                        load));
        assertThat(load).isBetween(4.0, 8.0);
    }

    private static GivenFilling mix(List<GivenMixPart> mix, @Nullable GivenCoarseLayer base, @Nullable Double reuse) {
        return GivenFilling.builder()
                .mix(mix)
                .coarseLayer(base)
                .reusePercent(reuse)
                .build();
    }

    @Nested
    class Volumes {
        @Test
        @DisplayName(
                "1 m2 x 10 mm = 10 litres; 864 litres are 18 bags of 50; of 21 bags that sink by 15 % 892 are left, of 20 bags 850 (exact arithmetic)")
        void bags() {
            assertThat(1.2 * 2.4 * 0.3 * 1000).isCloseTo(864, within(1e-9));
            assertThat(Math.ceil(864 / 50.0)).isEqualTo(18);
            assertThat(Math.ceil(SoilResolver.settling(15).loose(864) / 50)).isEqualTo(21);
        }

        @Test
        void insideTheWallsLessWhatStandsInThem() {
            List<SoilVolume> planters = SoilVolume.of(BOX, SoilResolver.usual(), 0);
            double inside = 2.35 * 1.15 * 0.27;
            assertThat(planters).singleElement().satisfies(p -> {
                assertThat(p.growingM2()).isCloseTo(2.35 * 1.15, within(1e-9));
                assertThat(p.depthMm()).isCloseTo(270, within(1e-9));
                assertThat(p.filledM3()).isBetween(inside * 0.95, inside - 1e-6);
                assertThat(p.orderedM3()).isCloseTo(p.filledM3() / 0.85, within(1e-12));
            });
        }

        @Test
        void groundLeftStandingNeedsNoSoil() {
            double without = SoilVolume.of(BOX, SoilResolver.usual(), 0).get(0).filledM3();
            assertThat(SoilVolume.of(BOX, SoilResolver.usual(), 0.2).get(0).filledM3())
                    .isCloseTo(without - 0.2, within(1e-12));
        }

        @Test
        void layersAddUpToWhatIsFilled() {
            GivenFilling spec = GivenFilling.builder()
                    .mix(List.of(new GivenMixPart("topsoil", 2.0), new GivenMixPart("compost", 1.0)))
                    .coarseLayer(new GivenCoarseLayer("wood chips", Length.ofMm(100), null))
                    .drainage(Length.ofMm(40))
                    .build();
            FillPlan plan = plan(spec, null, List.of(BOX));
            assertThat(plan.materials().stream().mapToDouble(Material::filledM3).sum())
                    .isCloseTo(plan.filledM3(), within(1e-9));
            assertThat(plan.materials())
                    .extracting(Material::item)
                    .containsExactly("gravel", "wood chips", "topsoil", "compost");
            assertThat(plan.materials().get(2).orderedM3())
                    .isCloseTo(2 * plan.materials().get(3).orderedM3(), within(1e-9));
            assertThat(plan.materials().get(0).filledM3()).isCloseTo(plan.filledM3() * 40 / 270, within(1e-9));
        }

        @Test
        void earthDugIsUsedAgainAndNotBought() {
            GivenGround dug = GivenGround.builder()
                    .gravel(Length.ofMm(100))
                    .gravelBeyondWalls(Length.ofMm(0))
                    .build();
            FillPlan plan = plan(mix(List.of(), null, 50.0), dug, List.of(BOX));
            // Dug 2.4 x 1.2 x 0.1 in place, a quarter more loose, half of it used.
            assertThat(plan.materials().get(0).orderedM3()).isCloseTo(2.88 * 0.1 * 1.25 / 2, within(1e-9));
            assertThat(plan.materials().get(0).bought()).isFalse();
            assertThat(plan.orderedM3()).isCloseTo(plan.filledM3() / 0.85, within(1e-9));
        }

        @Test
        void settlementIsARange() {
            Settlement settlement = Settlement.of(0.15, 2, 4);
            assertThat(settlement.leastM3()).isCloseTo(0.2, within(1e-12));
            assertThat(settlement.mostM3()).isCloseTo(0.5, within(1e-12));
            assertThat(settlement.yearlyLeastM3()).isCloseTo(0.2, within(1e-12));
            assertThat(settlement.yearlyMostM3()).isCloseTo(0.3, within(1e-12));
        }
    }

    @Nested
    class Coverings {
        @Test
        void aLinerGoesRoundEachPlanterInLanes() {
            GivenFilling spec = GivenFilling.builder().liner(GivenLiner.plain()).build();
            LinerPlan liner = plan(spec, null, List.of(BOX, BOX)).liner().orElseThrow();
            assertThat(liner.strips()).hasSize(2);
            assertThat(liner.strips().get(0).lengthMm()).isEqualTo(2 * (2350 + 1150) + 150);
            assertThat(liner.strips().get(0).widthMm()).isCloseTo(400, within(1e-9));
            assertThat(liner.lanes()).isEqualTo(2);
            assertThat(liner.rolls()).isEqualTo(1);
            assertThat(liner.staples()).isEqualTo(2 * 2 * 56);
        }

        @Test
        @DisplayName(
                "litres = area x coats / spread (coating arithmetic; theoretical spread 10 x solids % / film, from memory)")
        void finish() {
            GivenFilling spec =
                    GivenFilling.builder().finish(new GivenFinish(2, 10.0)).build();
            FinishPlan finish = plan(spec, null, List.of(BOX)).finish();
            assertThat(finish.finishLitres()).isCloseTo(finish.outerM2() * 2 / 10, within(1e-12));
            // Two courses round, laps counted once at each corner either way: about 2 x 7.1 m x 0.15 m.
            assertThat(finish.outerM2()).isCloseTo(2 * 7.1 * 0.15, within(0.06));
            assertThat(finish.cutEnds()).isZero();
        }
    }

    @Nested
    class Loads {
        private FillPlan onRoof(@Nullable Double limit) {
            GivenGround roof = GivenGround.builder()
                    .surface(GroundSurface.ROOF)
                    .loadLimit(limit)
                    .build();
            return plan(null, roof, List.of(BOX));
        }

        @Test
        void aRoofWithoutALimitStopsThePlan() {
            assertThat(onRoof(null).unmet()).extracting(Problem::code).containsExactly("roof-limit-missing");
        }

        @Test
        void aTenthOfItsLimitIsKeptInHand() {
            // 9.80665 m/s2: an engineer's limit is in kN/m2.
            double load = onRoof(null).weights().get(0).kgPerM2() * 9.80665e-3;
            assertThat(onRoof(load / 0.89).unmet()).isEmpty();
            assertThat(onRoof(load / 0.91).unmet()).extracting(Problem::code).containsExactly("roof-overloaded");
            assertThat(onRoof(load).unmet()).extracting(Problem::code).containsExactly("roof-overloaded");
        }

        @Test
        void aBoxWeighsItsWoodAndItsSoakedFilling() {
            FillPlan plan = plan(null, null, List.of(BOX));
            BoxWeight weight = plan.weights().get(0);
            double wood = BOX.pieces().stream()
                    .mapToDouble(p -> Weights.pieceKg(
                            p,
                            Map.of(TestBoxes.LARCH.name(), TestBoxes.LARCH, TestBoxes.BATTEN.name(), TestBoxes.BATTEN)))
                    .sum();
            assertThat(weight.woodKg()).isCloseTo(wood, within(1e-9)).isPositive();
            assertThat(weight.filledKg()).isCloseTo(wood + plan.filledM3() * 19 / 9.80665e-3, within(1e-9));
            assertThat(plan.filledKg()).isCloseTo(weight.filledKg(), within(1e-9));
        }
    }
}
