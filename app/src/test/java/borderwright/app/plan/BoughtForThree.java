package borderwright.app.plan;

import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.resolve.WoodResolver;
import borderwright.engine.measure.Length;
import borderwright.engine.stock.row.BoardInHand;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** One board for every three pieces of a section, so that pieces nest and share cuts whatever is sold. */
final class BoughtForThree {
    private BoughtForThree() {}

    static CuttingJob job(List<Piece> pieces, List<SectionSpec> sections, SawSpec saw) {
        Map<String, List<Piece>> bySection = new LinkedHashMap<>();
        pieces.forEach(piece -> bySection
                .computeIfAbsent(piece.section(), k -> new ArrayList<>())
                .add(piece));
        List<BoardInHand> boards = new ArrayList<>();
        bySection.forEach((section, all) -> {
            for (int from = 0; from < all.size(); from += 3) {
                List<Piece> here = all.subList(from, Math.min(from + 3, all.size()));
                double mm = here.stream().mapToDouble(p -> p.length().mm() + 20).sum() + 40;
                boards.add(BoardInHand.bought(boards.size() + 1, section, Length.ofMm(mm), "A", Length.ofMm(10))
                        .meantFor(here.stream().map(Piece::label).toList()));
            }
        });
        return new CuttingJob(boards, pieces, sections, List.of(saw), WoodResolver.usualCutting());
    }
}
