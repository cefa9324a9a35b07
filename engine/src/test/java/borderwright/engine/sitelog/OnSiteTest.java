package borderwright.engine.sitelog;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.TestGarden;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.list.GoodsNeed;
import borderwright.engine.buying.list.OwnedStock;
import borderwright.engine.cutting.TestPieces;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.given.GivenReceipt;
import borderwright.engine.garden.given.GivenReceipt.GivenReceivedBoard;
import borderwright.engine.garden.given.GivenReceipt.GivenReceivedGoods;
import borderwright.engine.garden.resolve.SupplyResolver;
import borderwright.engine.measure.Length;
import borderwright.engine.problem.Problem;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;
import org.junit.jupiter.api.Test;

class OnSiteTest {
    private static Piece piece(String label, double mm) {
        return TestPieces.piece("larch", label, mm, TestPieces.SQUARE, TestPieces.SQUARE);
    }

    private static GivenReceivedBoard board(
            double mm, @Nullable Integer count, @Nullable Integer unusable, List<String> cut, @Nullable Length left) {
        return new GivenReceivedBoard("larch", Length.ofMm(mm), count, unusable, "Alder", cut, left);
    }

    private static Garden garden(GivenReceivedBoard... boards) {
        return TestGarden.received(SupplyResolver.receipt(new GivenReceipt(
                List.of(boards), List.of(new GivenReceivedGoods("screw", BigDecimal.valueOf(150))), null)));
    }

    @Test
    void boardsThatCanBeUsedAreThereWithTheirTrueLengthAndTrim() {
        OnSite here = OnSite.of(garden(board(3580, 6, 2, List.of(), null)), List.of(piece("a", 900)));
        assertThat(here.stock())
                .containsExactly(new OwnedStock(
                        "larch",
                        Length.ofMm(3580).ticks(),
                        4,
                        "here, from Alder",
                        Length.ofMm(10).ticks()));
        assertThat(here.open()).hasSize(1);
    }

    @Test
    void aCutThatIsMadeStaysMadeAndTheRestOfItsBoardIsThere() {
        OnSite here = OnSite.of(
                garden(board(3600, null, null, List.of("a"), null)), List.of(piece("a", 900), piece("b", 800)));
        assertThat(here.done()).containsExactly("a");
        assertThat(here.open()).extracting(Piece::label).containsExactly("b");
        // Trim at both ends, the piece and its cut of 3 mm.
        assertThat(here.stock())
                .containsExactly(new OwnedStock(
                        "larch", Length.ofMm(3600 - 10 - 900 - 3 - 10).ticks(), 1, "offcut here, from Alder"));
    }

    @Test
    void aMeasuredRestIsTakenAtItsWord() {
        OnSite here =
                OnSite.of(garden(board(3600, null, null, List.of("a"), Length.ofMm(2000))), List.of(piece("a", 900)));
        assertThat(here.stock())
                .extracting(OwnedStock::lengthTicks)
                .containsExactly(Length.ofMm(1990).ticks());
    }

    @Test
    void aLabelThatIsNotInThePlanOrCutTwiceIsSaid() {
        OnSite here = OnSite.of(
                garden(board(3600, null, null, List.of("a", "c"), null), board(3600, null, null, List.of("a"), null)),
                List.of(piece("a", 900)));
        assertThat(here.problems()).extracting(Problem::code).containsExactly("cut-unknown", "cut-twice");
        assertThat(here.problems().get(0).where()).isEqualTo("received.boards[0].cut");
    }

    @Test
    void goodsThatAreHereAreNotBoughtAgain() {
        List<GoodsNeed> needs = List.of(
                new GoodsNeed("screw", BigDecimal.valueOf(200), "pieces"),
                new GoodsNeed("soil", BigDecimal.valueOf(2), "m3"));
        assertThat(OnSite.stillNeeded(garden(), needs))
                .containsExactly(
                        new GoodsNeed("screw", BigDecimal.valueOf(50), "pieces"),
                        new GoodsNeed("soil", BigDecimal.valueOf(2), "m3"));
        assertThat(OnSite.stillNeeded(
                        TestGarden.received(SupplyResolver.receipt(new GivenReceipt(List.of(), List.of(), true))),
                        needs))
                .isEmpty();
    }
}
