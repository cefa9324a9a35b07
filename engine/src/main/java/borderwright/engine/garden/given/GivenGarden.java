package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** All that a person gives about one garden border. */
@Described("all that a person says about one garden border")
public record GivenGarden(
        @Described(value = "name of the garden", example = "Fence to shed")
        String name,

        @Described("a few words about it") @Nullable String about,

        @Described(
                value =
                        "whether garden, suppliers and prices are invented, as in an example; every page then says so. Delete the line for a garden of your own",
                otherwise = "no")
        @Nullable
        Boolean invented,

        @Described(value = "how lengths are written in the plan", otherwise = "metric") @Nullable
        UnitSystem units,

        @Described(value = "currency of all prices, by its ISO 4217 code", example = "GBP")
        String currency,

        @Described(
                value =
                        "most that it may cost in all: goods and delivery as listed, and usual prices of what nobody lists",
                example = "420",
                atLeast = 0)
        @Nullable
        BigDecimal budget,

        @Described(
                value =
                        "whether goods that no supplier prices count at a usual price, from memory and rough; there are such prices in GBP, EUR and USD",
                otherwise = "yes")
        @Nullable
        Boolean usualPrices,

        @Described("what was measured on site") GivenSurvey survey,
        @Described("the planters requested, run by run") List<GivenRun> runs,
        @Described("how boxes are put together") GivenBuild build,
        @Described("the board sections in question") List<GivenSection> sections,
        @Described("suppliers with their prices and terms") List<GivenSupplier> suppliers,
        @Described("boards and offcuts already in the shed") List<GivenOwnedBoard> owned,
        @Described("the saws at hand") List<GivenSaw> saws,
        @Described("how boards are cut") @Nullable GivenCutting cutting,

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

    /** A garden of which no more is given than this, to give more of. */
    public static Builder builder(String name, String currency, GivenSurvey survey, GivenBuild build) {
        return new Builder(name, currency, survey, build);
    }

    /** Gives a garden part by part; what is not given is absent. */
    public static final class Builder {
        private final String name;
        private final String currency;
        private final GivenSurvey survey;
        private final GivenBuild build;
        private @Nullable String about;
        private @Nullable Boolean invented;
        private @Nullable UnitSystem units;
        private @Nullable BigDecimal budget;
        private @Nullable Boolean usualPrices;
        private List<GivenRun> runs = List.of();
        private List<GivenSection> sections = List.of();
        private List<GivenSupplier> suppliers = List.of();
        private @Nullable GivenGround ground;
        private @Nullable GivenFilling filling;
        private @Nullable GivenDays days;

        private Builder(String name, String currency, GivenSurvey survey, GivenBuild build) {
            this.name = name;
            this.currency = currency;
            this.survey = survey;
            this.build = build;
        }

        public Builder about(String words) {
            about = words;
            return this;
        }

        /** Marks garden, suppliers and prices as invented. */
        public Builder invented() {
            invented = true;
            return this;
        }

        public Builder units(UnitSystem system) {
            units = system;
            return this;
        }

        public Builder budget(BigDecimal most) {
            budget = most;
            return this;
        }

        /** Whether goods that no supplier prices count at a usual price. */
        public Builder usualPrices(Boolean counted) {
            usualPrices = counted;
            return this;
        }

        public Builder runs(List<GivenRun> given) {
            runs = given;
            return this;
        }

        public Builder sections(GivenSection... given) {
            sections = List.of(given);
            return this;
        }

        public Builder suppliers(GivenSupplier... given) {
            suppliers = List.of(given);
            return this;
        }

        public Builder ground(@Nullable GivenGround given) {
            ground = given;
            return this;
        }

        public Builder filling(@Nullable GivenFilling given) {
            filling = given;
            return this;
        }

        public Builder days(@Nullable GivenDays given) {
            days = given;
            return this;
        }

        public GivenGarden build() {
            return new GivenGarden(
                    name,
                    about,
                    invented,
                    units,
                    currency,
                    budget,
                    usualPrices,
                    survey,
                    runs,
                    build,
                    sections,
                    suppliers,
                    List.of(),
                    List.of(),
                    null,
                    null,
                    null,
                    ground,
                    filling,
                    null,
                    days,
                    null,
                    null,
                    List.of());
        }
    }
}
