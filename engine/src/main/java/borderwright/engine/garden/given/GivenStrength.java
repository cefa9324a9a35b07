package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.TimberRules;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.garden.vocabulary.ground.SoilPush;
import borderwright.engine.garden.vocabulary.ground.SoilWater;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** What the walls must stand, and what is known of soil, ground and screws. */
@Described("what the walls must stand, and what is known of soil, ground and screws")
public record GivenStrength(
        @Described(
                value = "how far a wall may end up bulging",
                example = "10 mm",
                otherwise = "10 mm",
                atLeast = 1,
                atMost = 60)
        @Nullable
        Length bulgeLimit,

        @Described(value = "rules for timber and screws", otherwise = "eurocode, and nds where units are imperial")
        @Nullable
        TimberRules rules,

        @Described(value = "weight of the soil as it lies, kN/m3", otherwise = "16", atLeast = 6, atMost = 24) @Nullable
        Double moistSoil,

        @Described(
                value = "weight of the soil when soaked, kN/m3",
                otherwise = "what `soaked kg per m3` in `filling` gives, and 19 where it gives none",
                atLeast = 8,
                atMost = 26)
        @Nullable
        Double soakedSoil,

        @Described(
                value = "angle of friction of the soil",
                example = "30 deg",
                otherwise = "30 deg",
                atLeast = 15,
                atMost = 45)
        @Nullable
        Angle friction,

        @Described(value = "how the soil pushes", otherwise = "at rest") @Nullable
        SoilPush push,

        @Described(value = "how wet the soil comes to be", otherwise = "soaked") @Nullable
        SoilWater water,

        @Described(value = "soil heaped above its level surface", otherwise = "none", atLeast = 0, atMost = 500)
        @Nullable
        Length heaped,

        @Described(value = "load of treading the soil in, kN/m2", otherwise = "2", atLeast = 0, atMost = 20) @Nullable
        Double treading,

        @Described(
                value = "weight of a person kneeling on the edge, kN; 0 for none",
                otherwise = "1",
                atLeast = 0,
                atMost = 5)
        @Nullable
        Double person,

        @Described(
                value = "count on narrow soil to hang on its walls in part; not so while it is fresh, wet or shaken",
                otherwise = "no")
        @Nullable
        Boolean arching,

        @Described(
                value = "friction of the bottom course on its bed that may be counted on",
                otherwise = "0",
                atLeast = 0,
                atMost = 0.8)
        @Nullable
        Double bedFriction,

        @Described(
                value = "what lies under the gravel",
                otherwise =
                        "what `kind` in `ground` says; common earth counts as clay, the weakest that has a presumed value")
        @Nullable
        FoundationSoil ground,

        @Described(
                value = "withdrawal parameter of the screws, as declared, N/mm2",
                otherwise = "8",
                atLeast = 1,
                atMost = 30)
        @Nullable
        Double withdrawal,

        @Described(
                value = "head pull-through parameter of the screws, as declared, N/mm2",
                otherwise = "8",
                atLeast = 1,
                atMost = 40)
        @Nullable
        Double pullThrough,

        @Described(
                value = "stiffness of one screw pulled, as declared, N/mm",
                otherwise = "the same as in shear",
                atLeast = 100,
                atMost = 50_000)
        @Nullable
        Double screwStiffness,

        @Described(
                value = "what one corner strap bears for good, as its maker declares it, kN",
                otherwise = "what two screws in each leg bear",
                atLeast = 0.1,
                atMost = 50)
        @Nullable
        Double strap) {
    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder() {
        return new Builder();
    }

    /** Gives it key by key. */
    public static final class Builder {
        private @Nullable Length bulgeLimit;
        private @Nullable TimberRules rules;
        private @Nullable Double moistSoil;
        private @Nullable Double soakedSoil;
        private @Nullable Angle friction;
        private @Nullable SoilPush push;
        private @Nullable SoilWater water;
        private @Nullable Length heaped;
        private @Nullable Double treading;
        private @Nullable Double person;
        private @Nullable Boolean arching;
        private @Nullable Double bedFriction;
        private @Nullable FoundationSoil ground;
        private @Nullable Double withdrawal;
        private @Nullable Double pullThrough;
        private @Nullable Double screwStiffness;
        private @Nullable Double strap;

        private Builder() {}

        public Builder bulgeLimit(@Nullable Length given) {
            bulgeLimit = given;
            return this;
        }

        public Builder rules(@Nullable TimberRules given) {
            rules = given;
            return this;
        }

        public Builder moistSoil(@Nullable Double given) {
            moistSoil = given;
            return this;
        }

        public Builder soakedSoil(@Nullable Double given) {
            soakedSoil = given;
            return this;
        }

        public Builder friction(@Nullable Angle given) {
            friction = given;
            return this;
        }

        public Builder push(@Nullable SoilPush given) {
            push = given;
            return this;
        }

        public Builder water(@Nullable SoilWater given) {
            water = given;
            return this;
        }

        public Builder heaped(@Nullable Length given) {
            heaped = given;
            return this;
        }

        public Builder treading(@Nullable Double given) {
            treading = given;
            return this;
        }

        public Builder person(@Nullable Double given) {
            person = given;
            return this;
        }

        public Builder arching(@Nullable Boolean given) {
            arching = given;
            return this;
        }

        public Builder bedFriction(@Nullable Double given) {
            bedFriction = given;
            return this;
        }

        public Builder ground(@Nullable FoundationSoil given) {
            ground = given;
            return this;
        }

        public Builder withdrawal(@Nullable Double given) {
            withdrawal = given;
            return this;
        }

        public Builder pullThrough(@Nullable Double given) {
            pullThrough = given;
            return this;
        }

        public Builder screwStiffness(@Nullable Double given) {
            screwStiffness = given;
            return this;
        }

        public Builder strap(@Nullable Double given) {
            strap = given;
            return this;
        }

        public GivenStrength build() {
            return new GivenStrength(
                    bulgeLimit,
                    rules,
                    moistSoil,
                    soakedSoil,
                    friction,
                    push,
                    water,
                    heaped,
                    treading,
                    person,
                    arching,
                    bedFriction,
                    ground,
                    withdrawal,
                    pullThrough,
                    screwStiffness,
                    strap);
        }
    }
}
