package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What has arrived and what is cut already; the plan is made again for the rest. */
@Described("what has arrived and what is cut already; the plan is made again for the rest")
public record GivenReceipt(
        @Described("boards that lie here, as measured") List<GivenReceivedBoard> boards,

        @Described("everything else that has arrived") List<GivenReceivedGoods> goods,

        @Described(value = "whether everything but boards is here", otherwise = "no") @Nullable
        Boolean allGoods) {
    public GivenReceipt {
        boards = List.copyOf(boards);
        goods = List.copyOf(goods);
    }

    /** Boards of one length that have arrived, or one that is cut into already. */
    @Described("boards of one length that have arrived, or one that is cut into already")
    public record GivenReceivedBoard(
            @Described(value = "section, by its name", example = "larch 25 x 150")
            String section,

            @Described(value = "true length, measured", example = "3.58 m", atLeast = 50, usuallyAtMost = 7500)
            Length length,

            @Described(value = "how many", otherwise = "1", atLeast = 1, atMost = 10000) @Nullable
            Integer count,

            @Described(
                    value = "how many of them cannot be used: split, bent, wrong",
                    otherwise = "0",
                    atLeast = 0,
                    atMost = 10000)
            @Nullable
            Integer unusable,

            @Described(value = "who sent it, or the mark on it", example = "Supplier one") @Nullable
            String sentBy,

            @Described("pieces cut from it already, by their labels")
            List<String> cut,

            @Described(
                    value = "length left of a board that is cut into, measured",
                    otherwise = "its length less trim, pieces and saw cuts",
                    atLeast = 0)
            @Nullable
            Length left) {
        public GivenReceivedBoard {
            cut = List.copyOf(cut);
        }
    }

    /** Goods that have arrived. */
    @Described("goods that have arrived")
    public record GivenReceivedGoods(
            @Described(value = "what it is, by the name on the shopping list", example = "screw 5 x 70")
            String item,

            @Described(value = "how much, in the shopping list's unit", example = "400", atLeast = 0)
            BigDecimal quantity) {}
}
