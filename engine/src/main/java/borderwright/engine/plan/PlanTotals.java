package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.SoilVolume;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.Layout;
import java.util.List;

/** The sums on the brief. */
record PlanTotals(Garden garden, Layout layout, List<Piece> pieces, SiteWork site, CuttingPlan cutting) {
    private static final double MM_PER_M = 1000;
    private static final double MM3_PER_M3 = 1e9;

    Plan.Totals of(Costs costs) {
        return Plan.Totals.builder()
                .planters(layout.boxes().stream()
                        .mapToInt((FootprintPlan box) -> box.planters().size())
                        .sum())
                .pieces(pieces.size())
                .pieceMetres(pieces.stream().mapToDouble(p -> p.length().mm()).sum() / MM_PER_M)
                .boardMetres(cutting.boards().stream()
                                .mapToDouble(b -> b.length().mm())
                                .sum()
                        / MM_PER_M)
                .timberM3(
                        pieces.stream().mapToDouble(p -> p.place().volumeMm3()).sum() / MM3_PER_M3)
                .timberKg(pieces.stream().mapToDouble(this::kg).sum())
                .growingM2(site.filling().planters().stream()
                        .mapToDouble(SoilVolume::growingM2)
                        .sum())
                .soilM3(site.filling().orderedM3())
                .costs(costs)
                .build();
    }

    private double kg(Piece piece) {
        double density =
                garden.section(piece.section()).map(SectionSpec::densityKgPerM3).orElse(0.0);
        return piece.place().volumeMm3() / MM3_PER_M3 * density;
    }
}
