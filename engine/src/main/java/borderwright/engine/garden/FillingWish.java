package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What goes into the planters, from the bottom up, and what lines and protects them. */
@Described("what goes into the planters, from the bottom up, and what lines and protects them")
public record FillingWish(
        @Described(value = "what the soil is mixed from, in parts by volume; one item `soil` when left out")
        List<MixPart> mix,

        @Described(value = "cheap coarse stuff at the bottom, such as branches or wood chips", otherwise = "none")
        @Nullable
        BaseLayer base,

        @Described(
                value = "depth of gravel at the bottom, to drain boxes without a floor",
                otherwise = "none",
                atLeast = 0,
                atMost = 300)
        @Nullable
        Length drainage,

        @Described(
                value = "share of the earth dug, turf not counted, that goes into the planters, in percent",
                otherwise = "0",
                atLeast = 0,
                atMost = 100)
        @Nullable
        Double reuse,

        @Described(value = "weight of the filling when soaked, kg/m3", otherwise = "1850", atLeast = 200, atMost = 2500)
        @Nullable
        Double wet,

        @Described(value = "the narrowest gate or passage on the way", example = "900 mm", atLeast = 300) @Nullable
        Length gate,

        @Described(value = "a liner inside the walls, from rolls", otherwise = "none") @Nullable
        LinerWish liner,

        @Described(value = "a finish on the outer faces", otherwise = "none") @Nullable
        FinishWish finish) {
    public FillingWish {
        mix = List.copyOf(mix);
    }

    /** Habits when nothing is said. */
    public static final FillingWish HABIT = new FillingWish(List.of(), null, null, null, null, null, null, null);

    /** The mix said, or soil alone. */
    public List<MixPart> mixOrHabit() {
        return mix.isEmpty() ? List.of(new MixPart("soil", 1.0)) : mix;
    }

    public double drainageMm() {
        return drainage == null ? 0 : drainage.mm();
    }

    public double baseMm() {
        return base == null ? 0 : base.depth().mm();
    }

    /** Share of the earth dug that goes into the planters, as a fraction. */
    public double reused() {
        return reuse == null ? 0 : reuse / 100;
    }

    /** Soaked weight, kg/m3: 18 to 20 kN/m3 is usual for saturated soil, 1850 kg/m3 is 18.1 (common practice). */
    public double wetKgPerM3() {
        return wet == null ? 1850 : wet;
    }

    /** One part of the mix. */
    @Described("one part of the mix")
    public record MixPart(
            @Described(value = "what it is, by the name in the price lists", example = "compost")
            String item,

            @Described(value = "its parts by volume", example = "1", atLeast = 0.01, atMost = 1000)
            Double parts) {}

    /** A coarse layer at the bottom. */
    @Described("a coarse layer at the bottom; it settles most")
    public record BaseLayer(
            @Described(value = "what it is, by the name in the price lists", example = "wood chips")
            String item,

            @Described(value = "its depth", example = "150 mm", atLeast = 0, atMost = 1000)
            Length depth,

            @Described(value = "whether it is at hand and need not be bought", otherwise = "no") @Nullable
            Boolean atHand) {
        public boolean isAtHand() {
            return Boolean.TRUE.equals(atHand);
        }
    }

    /** A liner on the inner faces. */
    @Described("a liner on the inner faces of the walls; never across the bottom where water must get out")
    public record LinerWish(
            @Described(value = "width of a roll", otherwise = "1 m", atLeast = 200, atMost = 10000) @Nullable
            Length width,

            @Described(value = "length of a roll", otherwise = "20 m", atLeast = 1000, atMost = 200000) @Nullable
            Length length,

            @Described(value = "distance between staples", otherwise = "125 mm", atLeast = 30, atMost = 600) @Nullable
            Length staples) {
        public double widthMm() {
            return width == null ? 1000 : width.mm();
        }

        public double lengthMm() {
            return length == null ? 20_000 : length.mm();
        }

        /** Between staples, mm (habit 100 to 150 mm: common practice, no source). */
        public double staplesMm() {
            return staples == null ? 125 : staples.mm();
        }
    }

    /** A finish on the outer faces. */
    @Described("a finish on the outer faces")
    public record FinishWish(
            @Described(value = "coats", otherwise = "2", atLeast = 1, atMost = 10) @Nullable
            Integer coats,

            @Described(
                    value = "square metres that a litre covers in one coat",
                    otherwise = "5 on rough boards, 9 on planed ones",
                    atLeast = 0.5,
                    atMost = 50)
            @Nullable
            Double spreads) {
        public int coatsOrHabit() {
            return coats == null ? 2 : coats;
        }

        /** m2 for each litre in one coat (habit 4 to 6 rough, 8 to 10 smooth: common practice, no source). */
        public double m2PerLitre(boolean planed) {
            return spreads != null ? spreads : planed ? 9 : 5;
        }
    }
}
