package borderwright.engine.garden.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestBoxes;
import borderwright.engine.TestGarden;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Origins;
import borderwright.engine.garden.Origins.Kind;
import borderwright.engine.garden.SoilSpec;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenStrength;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.measure.Gravity;
import borderwright.engine.measure.Length;
import borderwright.engine.message.English;
import borderwright.engine.strength.soil.Fill;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GardenResolverTest {
    private static final GivenFilling NO_FILLING = GivenFilling.builder().build();

    private static GivenStrength strength(@Nullable Double moist, @Nullable Double soaked) {
        return GivenStrength.builder().moistSoil(moist).soakedSoil(soaked).build();
    }

    private static GivenFilling wet(@Nullable Double kgPerM3) {
        return GivenFilling.builder().soakedKgPerM3(kgPerM3).build();
    }

    private static SoilSpec soil(@Nullable GivenStrength strength, @Nullable GivenFilling filling, Ledger ledger) {
        return SoilResolver.resolve(null, strength, filling, ledger);
    }

    @Nested
    class Defaults {
        /** Every default of a garden of which only name, border, sections and walls are given. */
        @Test
        void areTheseAndNoOthers() {
            Map<String, String> values = new TreeMap<>();
            TestGarden.with(null, null).origins().byPath().forEach((path, origin) -> {
                if (origin.kind() == Kind.DEFAULT && !path.startsWith("sections")) {
                    values.put(path, origin.value());
                    assertThat(origin.note()).as(path).isNotBlank();
                }
            });
            assertThat(values)
                    .containsExactlyInAnyOrderEntriesOf(Map.ofEntries(
                            Map.entry("build.bearers", TestBoxes.BATTEN.name()),
                            Map.entry("build.capping overhang", "20 mm"),
                            Map.entry("build.capping", TestBoxes.LARCH.name()),
                            Map.entry("build.corner joint", "lapped"),
                            Map.entry("build.dividers", TestBoxes.LARCH.name()),
                            Map.entry("build.face out", "heart out"),
                            Map.entry("build.post footing", "0 mm"),
                            Map.entry("build.posts", TestBoxes.BATTEN.name()),
                            Map.entry("build.slat gap", "12 mm"),
                            Map.entry("build.slats", TestBoxes.LARCH.name()),
                            Map.entry("build.ties", TestBoxes.LARCH.name()),
                            Map.entry("cutting.extra for fitting", "10 mm"),
                            Map.entry("cutting.keep whole", "0"),
                            Map.entry("cutting.lengths to", "1 mm"),
                            Map.entry("cutting.offcut per metre", "0"),
                            Map.entry("cutting.rejects percent", "0"),
                            Map.entry("cutting.shortest offcut", "400 mm"),
                            Map.entry("cutting.trim", "10 mm"),
                            Map.entry("days.delivery", "5"),
                            Map.entry("days.helpers", "0"),
                            Map.entry("days.hours", "6"),
                            Map.entry("days.pace.brush", "8"),
                            Map.entry("days.pace.cut", "2"),
                            Map.entry("days.pace.dig", "2.5"),
                            Map.entry("days.pace.fill", "1.5"),
                            Map.entry("days.pace.gravel", "1.4"),
                            Map.entry("days.pace.place", "3"),
                            Map.entry("days.pace.screw", "0.5"),
                            Map.entry("days.pace.set up", "6"),
                            Map.entry("days.pace.sheet", "12"),
                            Map.entry("days.pace.turf", "3"),
                            Map.entry("days.work days", "saturday, sunday"),
                            Map.entry("filling.drainage", "0 mm"),
                            Map.entry("filling.mix", "1 soil"),
                            Map.entry("filling.reuse percent", "0"),
                            Map.entry("filling.soaked kg per m3", "1937.5"),
                            Map.entry("ground.barrow", "65"),
                            Map.entry("ground.bed", "whole"),
                            Map.entry("ground.feet.lowest", "10 mm"),
                            Map.entry("ground.feet.spacing", "600 mm"),
                            Map.entry("ground.gravel beyond walls", "100 mm"),
                            Map.entry("ground.gravel", "50 mm, 100 mm under walls higher than 450 mm"),
                            Map.entry("ground.kind", "earth"),
                            Map.entry("ground.loose gravel percent", "30"),
                            Map.entry("ground.surface", "bare earth"),
                            Map.entry("ground.turf", "50 mm"),
                            Map.entry("invented", "no"),
                            Map.entry("planting.gardener", "standing"),
                            Map.entry("soil.below rim", "30 mm"),
                            Map.entry("soil.settles percent", "15"),
                            Map.entry("strength.arching", "no"),
                            Map.entry("strength.bulge limit", "10 mm"),
                            Map.entry("strength.friction", "30 deg"),
                            Map.entry("strength.ground", "clay"),
                            Map.entry("strength.heaped", "0 mm"),
                            Map.entry("strength.moist soil", "16"),
                            Map.entry("strength.person", "1"),
                            Map.entry("strength.pull through", "8"),
                            Map.entry("strength.push", "at rest"),
                            Map.entry("strength.rules", "eurocode"),
                            Map.entry("strength.soaked soil", "19"),
                            Map.entry("strength.treading", "2"),
                            Map.entry("strength.water", "soaked"),
                            Map.entry("strength.withdrawal", "8"),
                            Map.entry("survey.false alarm", "0.05"),
                            Map.entry("survey.going round", "anticlockwise"),
                            Map.entry("units", "metric"),
                            Map.entry("usual prices", "yes")));
        }

        @Test
        void giveWayToWhatIsGiven() {
            Garden garden = TestGarden.with(
                    null,
                    GivenGround.builder()
                            .surface(GroundSurface.LAWN)
                            .turf(Length.ofMm(35))
                            .barrow(80.0)
                            .build(),
                    GivenDays.builder().hours(4.0).helpers(2).build());
            assertThat(garden.ground().turfMm()).isEqualTo(35);
            assertThat(garden.ground().dig().barrowLitres()).isEqualTo(80);
            assertThat(garden.work().hours()).isEqualTo(4);
            assertThat(garden.work().people()).isEqualTo(3);
            assertThat(garden.work().deliveryDays()).isEqualTo(5);
            Origins origins = garden.origins();
            assertThat(origins.isGiven("ground")).isTrue();
            assertThat(origins.isGiven("ground.turf")).isTrue();
            assertThat(origins.isGiven("ground.bed")).isFalse();
            assertThat(origins.isGiven("days.helpers")).isTrue();
            assertThat(origins.isGiven("days.delivery")).isFalse();
            assertThat(origins.isGiven("strength")).isFalse();
            assertThat(origins.of("no such key")).isEmpty();
        }
    }

    @Nested
    class WeightOfTheSoil {
        @Test
        void isOneForStrengthAndFilling() {
            Garden garden = TestGarden.with(NO_FILLING, null);
            Fill fill = Fill.of(garden.strength().load(), garden.soil());
            assertThat(fill.saturatedKnPerM3()).isEqualTo(19);
            assertThat(garden.soil().soakedKgPerM3() * Gravity.KN_PER_KG).isCloseTo(19, within(1e-12));
            assertThat(English.METRIC.text(garden.soakedWeightOrigin()))
                    .isEqualTo(
                            "The garden document gives no soaked weight of the soil; 19.0 kN/m3 is taken: 18 to 20 kN/m3 is"
                                    + " usual for saturated soil (common practice, no source).");
        }

        @Test
        void isSetByEitherKeyAndKnowsWhich() {
            Ledger byFilling = Ledger.empty();
            assertThat(soil(null, wet(1500.0), byFilling).soakedKnPerM3())
                    .isCloseTo(1500 * Gravity.KN_PER_KG, within(1e-12));
            assertThat(byFilling.origins().of("strength.soaked soil"))
                    .hasValueSatisfying(o -> assertThat(o.note()).isEqualTo("by `filling.soaked kg per m3`"));
            Ledger byStrength = Ledger.empty();
            assertThat(soil(strength(null, 17.5), null, byStrength).soakedKgPerM3())
                    .isCloseTo(17.5 / Gravity.KN_PER_KG, within(1e-9));
            assertThat(byStrength.origins().of("filling.soaked kg per m3"))
                    .hasValueSatisfying(o -> assertThat(o.note()).isEqualTo("by `strength.soaked soil`"));
        }

        @Test
        void isNeverLighterWhenSoaked() {
            Random random = new Random(20261130);
            for (int i = 0; i < 2000; i++) {
                Double moist = random.nextBoolean() ? null : 6 + 18 * random.nextDouble();
                Double soaked = random.nextInt(3) > 0 ? null : 8 + 18 * random.nextDouble();
                Double wet = soaked != null || random.nextBoolean() ? null : 200 + 2300 * random.nextDouble();
                SoilSpec soil = soil(strength(moist, soaked), wet(wet), Ledger.empty());
                assertThat(soil.moistKnPerM3())
                        .as("seed 20261130, case %d: moist %s, soaked %s, wet %s", i, moist, soaked, wet)
                        .isPositive()
                        .isLessThanOrEqualTo(soil.soakedKnPerM3());
            }
        }
    }
}
