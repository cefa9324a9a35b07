package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What goes into the planters, from the bottom up, and what lines and protects them. */
@Described("what goes into the planters, from the bottom up, and what lines and protects them")
public record GivenFilling(
        @Described(value = "what the soil is mixed from, in parts by volume; one item `soil` when left out")
        List<GivenMixPart> mix,

        @Described(value = "cheap coarse stuff at the bottom, such as branches or wood chips", otherwise = "none")
        @Nullable
        GivenCoarseLayer coarseLayer,

        @Described(
                value = "depth of gravel at the bottom, to drain boxes without a floor",
                otherwise = "none",
                atLeast = 0,
                atMost = 300)
        @Nullable
        Length drainage,

        @Described(
                value = "share of the earth dug, turf not counted, that goes into the planters",
                otherwise = "0",
                atLeast = 0,
                atMost = 100)
        @Nullable
        Double reusePercent,

        @Described(
                value = "weight of the filling when soaked",
                otherwise = "what `soaked soil` in `strength` gives, and 1937, which is 19 kN/m3, where it gives none",
                atLeast = 200,
                atMost = 2500)
        @Nullable
        Double soakedKgPerM3,

        @Described(
                value = "the narrowest gate or passage on the way",
                example = "900 mm",
                atLeast = 300,
                usuallyAtMost = 6000)
        @Nullable
        Length narrowestWayIn,

        @Described(value = "a liner inside the walls, from rolls", otherwise = "none") @Nullable
        GivenLiner liner,

        @Described(value = "a finish on the outer faces", otherwise = "none") @Nullable
        GivenFinish finish) {
    public GivenFilling {
        mix = List.copyOf(mix);
    }

    /** One part of the mix. */
    @Described("one part of the mix")
    public record GivenMixPart(
            @Described(value = "what it is, by the name in the price lists", example = "compost")
            String item,

            @Described(value = "its parts by volume", example = "1", atLeast = 0.01, atMost = 1000)
            Double parts) {}

    /** A coarse layer at the bottom. */
    @Described("a coarse layer at the bottom; it settles most")
    public record GivenCoarseLayer(
            @Described(value = "what it is, by the name in the price lists", example = "wood chips")
            String item,

            @Described(value = "its depth", example = "150 mm", atLeast = 0, atMost = 1000)
            Length depth,

            @Described(value = "whether it is at hand and need not be bought", otherwise = "no") @Nullable
            Boolean atHand) {}

    /** A liner on the inner faces. */
    @Described("a liner on the inner faces of the walls; never across the bottom where water must get out")
    public record GivenLiner(
            @Described(value = "width of a roll", otherwise = "1 m", atLeast = 200, atMost = 10000) @Nullable
            Length width,

            @Described(value = "length of a roll", otherwise = "20 m", atLeast = 1000, atMost = 200000) @Nullable
            Length length,

            @Described(value = "distance between staples", otherwise = "125 mm", atLeast = 30, atMost = 600) @Nullable
            Length staples) {
        /** One of which nothing is given. */
        public static GivenLiner plain() {
            return new GivenLiner(null, null, null);
        }
    }

    /** A finish on the outer faces. */
    @Described("a finish on the outer faces")
    public record GivenFinish(
            @Described(value = "coats", otherwise = "2", atLeast = 1, atMost = 10) @Nullable
            Integer coats,

            @Described(
                    value = "square metres that a litre covers in one coat",
                    otherwise = "5 on rough boards, 9 on planed ones",
                    atLeast = 0.5,
                    atMost = 50)
            @Nullable
            Double coverage) {}

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private List<GivenMixPart> mix = List.of();
        private @Nullable GivenCoarseLayer coarseLayer;
        private @Nullable Length drainage;
        private @Nullable Double reusePercent;
        private @Nullable Double soakedKgPerM3;
        private @Nullable Length narrowestWayIn;
        private @Nullable GivenLiner liner;
        private @Nullable GivenFinish finish;

        private Builder() {}

        public Builder mix(List<GivenMixPart> given) {
            mix = given;
            return this;
        }

        public Builder coarseLayer(@Nullable GivenCoarseLayer given) {
            coarseLayer = given;
            return this;
        }

        public Builder drainage(@Nullable Length given) {
            drainage = given;
            return this;
        }

        public Builder reusePercent(@Nullable Double given) {
            reusePercent = given;
            return this;
        }

        public Builder soakedKgPerM3(@Nullable Double given) {
            soakedKgPerM3 = given;
            return this;
        }

        public Builder narrowestWayIn(@Nullable Length given) {
            narrowestWayIn = given;
            return this;
        }

        public Builder liner(@Nullable GivenLiner given) {
            liner = given;
            return this;
        }

        public Builder finish(@Nullable GivenFinish given) {
            finish = given;
            return this;
        }

        public GivenFilling build() {
            return new GivenFilling(
                    mix, coarseLayer, drainage, reusePercent, soakedKgPerM3, narrowestWayIn, liner, finish);
        }
    }
}
