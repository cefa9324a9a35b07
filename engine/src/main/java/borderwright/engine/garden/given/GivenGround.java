package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.ground.DugSoil;
import borderwright.engine.garden.vocabulary.ground.GravelBed;
import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.measure.Length;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What the planters stand on, and how the ground is made ready for them. */
@Described("what the planters stand on, and how the ground is made ready for them")
public record GivenGround(
        @Described(value = "what lies there now", otherwise = "bare earth") @Nullable
        GroundSurface surface,

        @Described(value = "kind of ground that is dug", otherwise = "earth") @Nullable
        DugSoil kind,

        @Described(value = "thickness of turf to strip from a lawn", otherwise = "50 mm", atLeast = 0, atMost = 150)
        @Nullable
        Length turf,

        @Described(value = "where gravel goes", otherwise = "whole") @Nullable
        GravelBed bed,

        @Described(
                value = "depth of the gravel, compacted",
                otherwise = "50 mm, 100 mm under walls higher than 450 mm",
                atLeast = 0,
                atMost = 400)
        @Nullable
        Length gravel,

        @Described(
                value = "how far the gravel reaches beyond the walls, inside the border",
                otherwise = "100 mm",
                atLeast = 0,
                atMost = 500)
        @Nullable
        Length gravelBeyondWalls,

        @Described(
                value = "loose gravel to order over its compacted volume",
                otherwise = "30",
                atLeast = 0,
                atMost = 100)
        @Nullable
        Double looseGravelPercent,

        @Described(value = "the sheet laid in the dug bed, under the gravel", otherwise = "none") @Nullable
        GivenMembrane membrane,

        @Described(value = "litres in a barrow, heaped as you push it", otherwise = "65", atLeast = 20, atMost = 200)
        @Nullable
        Double barrow,

        @Described(
                value = "cubic metres in one skip, when spoil leaves the garden by skip",
                example = "4.5",
                otherwise = "spoil stays in the garden",
                atLeast = 0.5,
                atMost = 40)
        @Nullable
        Double skip,

        @Described(value = "feet under planters on paving or a roof", otherwise = "10 mm at the least, 600 mm apart")
        @Nullable
        GivenFeet feet,

        @Described(
                value =
                        "on a roof or balcony: greatest load, in writing from the building's engineer, in kN/m2, where units"
                                + " are imperial in lb/sq ft",
                example = "5",
                atLeast = 0.1,
                atMost = 1000)
        @Nullable
        Double loadLimit,

        @Described("trees, services in the ground, air bricks and cladding near the planters")
        List<GivenNearby> keepClearOf) {
    public GivenGround {
        keepClearOf = List.copyOf(keepClearOf);
    }

    /** A sheet in the dug bed. */
    @Described("a sheet laid in the dug bed, from rolls")
    public record GivenMembrane(
            @Described(value = "width of a roll", otherwise = "1 m", atLeast = 300, atMost = 10000) @Nullable
            Length width,

            @Described(value = "length of a roll", otherwise = "15 m", atLeast = 1000, atMost = 200000) @Nullable
            Length length,

            @Described(value = "overlap of strips", otherwise = "150 mm", atLeast = 0, atMost = 1000) @Nullable
            Length overlap,

            @Described(value = "distance between pins along edges and seams", otherwise = "400 mm", atLeast = 100)
            @Nullable
            Length pins) {
        /** One of which nothing is given. */
        public static GivenMembrane plain() {
            return new GivenMembrane(null, null, null, null);
        }
    }

    /** Feet under planters on hard ground. */
    @Described("feet under planters on hard ground: packers that level the box and let water run off beneath it")
    public record GivenFeet(
            @Described(value = "least height of a foot", otherwise = "10 mm", atLeast = 3, atMost = 150) @Nullable
            Length lowest,

            @Described(value = "greatest distance between feet", otherwise = "600 mm", atLeast = 150, atMost = 2000)
            @Nullable
            Length spacing) {}

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private @Nullable GroundSurface surface;
        private @Nullable DugSoil kind;
        private @Nullable Length turf;
        private @Nullable GravelBed bed;
        private @Nullable Length gravel;
        private @Nullable Length gravelBeyondWalls;
        private @Nullable Double looseGravelPercent;
        private @Nullable GivenMembrane membrane;
        private @Nullable Double barrow;
        private @Nullable Double skip;
        private @Nullable GivenFeet feet;
        private @Nullable Double loadLimit;
        private List<GivenNearby> keepClearOf = List.of();

        private Builder() {}

        public Builder surface(@Nullable GroundSurface given) {
            surface = given;
            return this;
        }

        public Builder kind(@Nullable DugSoil given) {
            kind = given;
            return this;
        }

        public Builder turf(@Nullable Length given) {
            turf = given;
            return this;
        }

        public Builder bed(@Nullable GravelBed given) {
            bed = given;
            return this;
        }

        public Builder gravel(@Nullable Length given) {
            gravel = given;
            return this;
        }

        public Builder gravelBeyondWalls(@Nullable Length given) {
            gravelBeyondWalls = given;
            return this;
        }

        public Builder looseGravelPercent(@Nullable Double given) {
            looseGravelPercent = given;
            return this;
        }

        public Builder membrane(@Nullable GivenMembrane given) {
            membrane = given;
            return this;
        }

        public Builder barrow(@Nullable Double given) {
            barrow = given;
            return this;
        }

        public Builder skip(@Nullable Double given) {
            skip = given;
            return this;
        }

        public Builder feet(@Nullable GivenFeet given) {
            feet = given;
            return this;
        }

        public Builder loadLimit(@Nullable Double given) {
            loadLimit = given;
            return this;
        }

        public Builder keepClearOf(List<GivenNearby> given) {
            keepClearOf = given;
            return this;
        }

        public GivenGround build() {
            return new GivenGround(
                    surface,
                    kind,
                    turf,
                    bed,
                    gravel,
                    gravelBeyondWalls,
                    looseGravelPercent,
                    membrane,
                    barrow,
                    skip,
                    feet,
                    loadLimit,
                    keepClearOf);
        }
    }
}
