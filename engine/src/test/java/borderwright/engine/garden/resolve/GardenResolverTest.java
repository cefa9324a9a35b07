package borderwright.engine.garden.resolve;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

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
import borderwright.engine.strength.soil.Fill;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

class GardenResolverTest {
    private static final GivenFilling NO_FILLING =
            new GivenFilling(List.of(), null, null, null, null, null, null, null);

    private static GivenStrength strength(@Nullable Double moist, @Nullable Double soaked) {
        return new GivenStrength(
                null, null, moist, soaked, null, null, null, null, null, null, null, null, null, null, null, null,
                null);
    }

    private static GivenFilling wet(@Nullable Double kgPerM3) {
        return new GivenFilling(List.of(), null, null, null, kgPerM3, null, null, null);
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
                            Map.entry("cutting.keep whole", "0"),
                            Map.entry("cutting.shortest offcut", "400.0 mm"),
                            Map.entry("cutting.offcut per metre", "0"),
                            Map.entry("cutting.rejects percent", "0.0"),
                            Map.entry("cutting.trim", "10.0 mm"),
                            Map.entry("cutting.extra for fitting", "10.0 mm"),
                            Map.entry("days.delivery", "5"),
                            Map.entry("days.work days", "[SATURDAY, SUNDAY]"),
                            Map.entry("days.helpers", "0"),
                            Map.entry("days.hours", "6.0"),
                            Map.entry("days.pace.brush", "8.0"),
                            Map.entry("days.pace.cut", "2.0"),
                            Map.entry("days.pace.dig", "2.5"),
                            Map.entry("days.pace.fill", "1.5"),
                            Map.entry("days.pace.gravel", "1.4"),
                            Map.entry("days.pace.place", "3.0"),
                            Map.entry("days.pace.screw", "0.5"),
                            Map.entry("days.pace.set up", "6.0"),
                            Map.entry("days.pace.sheet", "12.0"),
                            Map.entry("days.pace.turf", "3.0"),
                            Map.entry("filling.drainage", "0.0 mm"),
                            Map.entry("filling.mix", "[MixPart[item=soil, parts=1.0]]"),
                            Map.entry("filling.reuse percent", "0.0"),
                            Map.entry("filling.soaked kg per m3", "1937.4608046580636"),
                            Map.entry("ground.barrow", "65.0"),
                            Map.entry("ground.bed", "WHOLE"),
                            Map.entry("ground.gravel beyond walls", "100.0 mm"),
                            Map.entry("ground.feet.spacing", "600.0 mm"),
                            Map.entry("ground.feet.lowest", "10.0 mm"),
                            Map.entry("ground.gravel", "50 mm, 100 mm under walls higher than 450 mm"),
                            Map.entry("ground.loose gravel percent", "30.0"),
                            Map.entry("ground.kind", "EARTH"),
                            Map.entry("ground.surface", "BARE_EARTH"),
                            Map.entry("ground.turf", "50.0 mm"),
                            Map.entry("planting.gardener", "STANDING"),
                            Map.entry("soil.below rim", "30.0 mm"),
                            Map.entry("soil.settles percent", "15.0"),
                            Map.entry("strength.arching", "false"),
                            Map.entry("strength.bulge limit", "10.0 mm"),
                            Map.entry("strength.friction", "29.999999999999996 deg"),
                            Map.entry("strength.ground", "CLAY"),
                            Map.entry("strength.heaped", "0.0 mm"),
                            Map.entry("strength.moist soil", "16.0"),
                            Map.entry("strength.person", "1.0"),
                            Map.entry("strength.push", "AT_REST"),
                            Map.entry("strength.rules", "EUROCODE"),
                            Map.entry("strength.soaked soil", "19.0"),
                            Map.entry("strength.treading", "2.0"),
                            Map.entry("strength.water", "SOAKED"),
                            Map.entry("units", "METRIC")));
        }

        @Test
        void giveWayToWhatIsGiven() {
            Garden garden = TestGarden.with(
                    null,
                    new GivenGround(
                            GroundSurface.LAWN,
                            null,
                            Length.ofMm(35),
                            null,
                            null,
                            null,
                            null,
                            null,
                            80.0,
                            null,
                            null,
                            null,
                            List.of()),
                    new GivenDays(null, List.of(), List.of(), 4.0, 2, null, null));
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
