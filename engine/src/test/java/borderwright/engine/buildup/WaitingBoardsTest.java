package borderwright.engine.buildup;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.resolve.BuildResolver;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

/** A run that closes on a wall: only the boards that reach into its last planter wait for the gap. */
class WaitingBoardsTest {
    private static SectionSpec section(String name, double thicknessMm, double widthMm) {
        return WoodResolver.section(GivenSection.builder(name, Length.ofMm(thicknessMm), Length.ofMm(widthMm))
                .build());
    }

    private static Box run(double longestMm, boolean closes) {
        SidePlan front = closes
                ? SidePlan.waiting(SidePlan.Role.FRONT, EdgeKind.OPEN, 0)
                : SidePlan.free(SidePlan.Role.FRONT, EdgeKind.OPEN, 0);
        SidePlan end = SidePlan.free(SidePlan.Role.END, EdgeKind.WALL, 0);
        FootprintPlan plan = FootprintPlan.builder()
                .name("R1-R4")
                .run("run")
                .outline(Ring.rectangle(0, 0, 4800, 600))
                .sides(List.of(front, end, front, end))
                .dividers(List.of(divider(1200), divider(2400), divider(3600)))
                .planters(List.of("R1", "R2", "R3", "R4"))
                .bedMm(0)
                .heightMm(300)
                .build();
        BuildSpec rules = BuildResolver.of("wall", "batten");
        return BoxBuilder.build(
                plan,
                rules,
                new BuildMeans(
                        List.of(section("wall", 25, 150), section("batten", 47, 50)),
                        List.of(),
                        Map.of("wall", longestMm, "batten", 3000.0),
                        UnitSystem.METRIC));
    }

    private static DividerLine divider(double xMm) {
        return new DividerLine(0, new Point(xMm, 0), 2, new Point(xMm, 600));
    }

    @Test
    void boardsBeforeTheLastPlanterAreCutAsPlanned() {
        List<Piece> walls = run(2500, true).pieces().stream()
                .filter(piece -> piece.role() == Piece.Role.WALL && (piece.side() == 0 || piece.side() == 2))
                .toList();

        for (Piece piece : walls) {
            double farthestMm = piece.place().plan().corners().stream()
                    .mapToDouble(Point::xMm)
                    .max()
                    .orElseThrow();
            assertThat(piece.waits()).as(piece.label()).isEqualTo(farthestMm > 3700);
        }
        assertThat(walls).anyMatch(Piece::waits).anyMatch(piece -> !piece.waits());
    }

    @Test
    void aRunThatClosesNothingWaitsForNothing() {
        assertThat(run(2500, false).pieces()).noneMatch(Piece::waits);
    }
}
