package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that a person said about one garden border. */
@Described("all that a person says about one garden border")
public record GivenGarden(
        @Described(value = "name of the garden", example = "Fence to shed")
        String name,

        @Described("a few words about it; say here when it is invented") @Nullable
        String about,

        @Described(value = "how lengths are written in the plan", otherwise = "metric") @Nullable
        UnitSystem units,

        @Described(value = "currency of all prices, by its ISO 4217 code", example = "GBP")
        String currency,

        @Described(value = "most that boards, fixings and delivery may cost", example = "420", atLeast = 0) @Nullable
        BigDecimal budget,

        @Described("what was measured on site") GivenSurvey survey,
        @Described("the planters wished for, run by run") List<GivenRun> runs,
        @Described("how boxes are put together") GivenBuild build,
        @Described("the board sections in question") List<GivenSection> sections,
        @Described("suppliers with their prices and terms") List<GivenSupplier> suppliers,
        @Described("boards and offcuts already in the shed") List<GivenOwnedBoard> owned,
        @Described("the saws at hand") List<GivenSaw> saws,
        @Described("habits at the saw") @Nullable GivenCutting cutting,

        @Described("what the planters are filled with") @Nullable
        GivenSoil soil,

        @Described("what the walls must stand, and what is known of soil, ground and screws") @Nullable
        GivenStrength strength,

        @Described("what the planters stand on, and how it is made ready") @Nullable
        GivenGround ground,

        @Described("what goes into the planters under the soil, its mix, liner and finish") @Nullable
        GivenFilling filling,

        @Described("what is to grow, who tends it, and where the sun comes from") @Nullable
        GivenPlanting planting,

        @Described("when the work can be done, by how many, and how fast they are") @Nullable
        GivenDays days,

        @Described("what the first planter taught, once it stood") @Nullable
        GivenFirstPlanter firstPlanter,

        @Described("what has arrived and what is cut already; the plan is made again for the rest") @Nullable
        GivenReceipt received,

        @Described("sections of the same size that may be bought in place of others")
        List<GivenSubstitute> substitutes) {
    public GivenGarden {
        runs = List.copyOf(runs);
        sections = List.copyOf(sections);
        suppliers = List.copyOf(suppliers);
        owned = List.copyOf(owned);
        saws = List.copyOf(saws);
        substitutes = List.copyOf(substitutes);
    }
}
