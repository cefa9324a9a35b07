package borderwright.engine.strength;

import static borderwright.engine.strength.box.Planters.scheme;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import borderwright.engine.TestTerms;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.English;
import borderwright.engine.strength.box.Planters;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.SheetLine;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Sides against higher ground, and false floors. */
class GroundAndFloorTest {
    private static final StrengthTerms TERMS = TestTerms.usual(Footprints.SECTIONS, UnitSystem.METRIC);

    private static StrengthReport against(double groundMm, EdgeKind facing) {
        FootprintPlan flat = Footprints.run(1200, 600, 450);
        List<SidePlan> sides = new ArrayList<>(flat.sides());
        sides.set(2, SidePlan.free(SidePlan.Role.BACK, facing, groundMm));
        FootprintPlan plan = FootprintPlan.builder()
                .name(flat.name())
                .run(flat.run())
                .outline(flat.outline())
                .sides(sides)
                .dividers(flat.dividers())
                .planters(flat.planters())
                .bedMm(0)
                .heightMm(450)
                .build();
        return BoxStrength.check(Planters.box(plan, scheme(400, 400, 200)), TERMS);
    }

    private static Check check(StrengthReport report, String part, String what) {
        return report.checks().stream()
                .filter(c -> English.METRIC.text(c.part()).startsWith(part)
                        && English.METRIC.text(c.what()).equals(what))
                .findFirst()
                .orElseThrow();
    }

    private static double line(Check check, String symbol) {
        return check.working().stream()
                .filter(l -> l.symbol().equals(symbol))
                .findFirst()
                .flatMap(SheetLine::value)
                .orElseThrow();
    }

    @Test
    void aSideAgainstTheGroundIsCheckedAsABlockByHand() {
        StrengthReport report = against(300, EdgeKind.LAWN);

        // P = 0.5 (2 x 0.3 + 19 x 0.3^2 / 2) = 0.7275 kN/m; W = 16 x 0.42 x 0.6 = 4.032 kN/m on clay with 6.22 kN/m2 of
        // cohesion against 6.72 of weight, at most half of it.
        assertThat(line(check(report, "side against ground", "sliding"), "FS slide"))
                .isCloseTo(0.5 * 4.032 / 0.7275, within(1e-3));
        double moment = 0.5 * (2 * 0.3 * 0.15 + 19 * 0.3 * 0.3 / 2 * 0.1);
        assertThat(line(check(report, "side against ground", "overturning"), "FS tip"))
                .isCloseTo(4.032 * 0.3 / moment, within(1e-3));
        assertThat(report.notSettled()).isEmpty();
    }

    @Test
    void theGroundAgainstAnEmptyBoxIsToldAndNotHeldAgainstIt() {
        assertThat(against(300, EdgeKind.LAWN).takenForGranted())
                .anyMatch(s -> English.METRIC.text(s).contains("empty, with the ground against it")
                        && English.METRIC.text(s).startsWith("Fill the box before you backfill"));
        assertThat(against(50, EdgeKind.LAWN).takenForGranted())
                .noneMatch(s -> English.METRIC.text(s).contains("empty"));
        StrengthReport held = against(300, EdgeKind.LAWN);
        StrengthReport free = against(0, EdgeKind.LAWN);
        assertThat(held.worstBowMm()).isEqualTo(free.worstBowMm());
    }

    @Test
    void muchGroundOrGroundBesideAHouseIsForAnEngineer() {
        assertThat(against(700, EdgeKind.LAWN).notSettled())
                .anyMatch(s -> English.METRIC.text(s).contains("a licensed engineer must decide"));
        assertThat(against(250, EdgeKind.HOUSE).notSettled())
                .anyMatch(s -> English.METRIC.text(s).contains("beside a building"));
        assertThat(against(250, EdgeKind.HOUSE).verdict().kind()).isNotEqualTo(Verdict.Kind.HOLDS);
        assertThat(against(50, EdgeKind.HOUSE).notSettled()).isEmpty();
    }

    @Test
    void aFloorCarriesTheSoakedFillToItsLegs() {
        Box box = Planters.box(
                Footprints.plan(Ring.rectangle(0, 0, 1200, 600), List.of(), 450, 200, false), scheme(600, 600, 75));
        StrengthReport report = BoxStrength.check(box, TERMS);

        Check slat = check(report, "slats", "bending");
        // 250 mm from floor to rim, 30 mm free: 1.35 x 19 x 0.22 + 1.5 x 2 = 8.643 kN/m2.
        double perMm = line(slat, "w");
        double span = line(slat, "L");
        assertThat(perMm).isBetween(8.643e-3 * 150, 8.643e-3 * 250);
        assertThat(line(slat, "M")).isCloseTo(perMm * span * span / 8, within(1e-9));
        assertThat(report.checks()).anyMatch(c -> English.METRIC.text(c.part()).startsWith("legs"));
        assertThat(report.takenForGranted())
                .anyMatch(s -> English.METRIC.text(s).startsWith("Set each leg of the floor on a slab")
                        && English.METRIC.text(s).contains("slab"));
    }
}
