package borderwright.engine.garden;

import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** What the walls must stand, and what is known of soil, ground and screws. */
@Says("what the walls must stand, and what is known of soil, ground and screws")
public record StrengthWish(
        @Says(
                value = "how far a side may end up bowing out",
                example = "10 mm",
                otherwise = "10 mm",
                atLeast = 1,
                atMost = 60)
        @Nullable
        Length bow,

        @Says(value = "rules for timber and screws", otherwise = "eurocode, and nds where units are imperial") @Nullable
        Rules rules,

        @Says(value = "weight of the soil as it lies, kN/m3", otherwise = "16", atLeast = 6, atMost = 24) @Nullable
        Double moistSoil,

        @Says(
                value = "weight of the soil when soaked, kN/m3",
                otherwise = "what `wet` in `filling` says, and 19 where it says nothing",
                atLeast = 8,
                atMost = 26)
        @Nullable
        Double soakedSoil,

        @Says(
                value = "angle of friction of the soil",
                example = "30 deg",
                otherwise = "30 deg",
                atLeast = 15,
                atMost = 45)
        @Nullable
        Angle friction,

        @Says(value = "how the soil pushes", otherwise = "at rest") @Nullable
        Push push,

        @Says(value = "how wet the soil comes to be", otherwise = "soaked") @Nullable
        Water water,

        @Says(value = "soil heaped above its level surface", otherwise = "none", atLeast = 0, atMost = 500) @Nullable
        Length heaped,

        @Says(value = "load of treading the soil in, kN/m2", otherwise = "2", atLeast = 0, atMost = 20) @Nullable
        Double treading,

        @Says(
                value = "weight of a person kneeling on the edge, kN; 0 for none",
                otherwise = "1",
                atLeast = 0,
                atMost = 5)
        @Nullable
        Double person,

        @Says(
                value = "count on narrow soil to hang on its walls in part; not so while it is fresh, wet or shaken",
                otherwise = "no")
        @Nullable
        Boolean arching,

        @Says(
                value = "friction of the bottom course on its bed that may be counted on",
                otherwise = "0",
                atLeast = 0,
                atMost = 0.8)
        @Nullable
        Double bedFriction,

        @Says(
                value = "what lies under the gravel",
                otherwise =
                        "what `soil` in `ground` says; common earth counts as clay, the weakest that has a presumed value")
        @Nullable
        Ground ground,

        @Says(
                value = "withdrawal parameter of the screws, as declared, N/mm2",
                otherwise = "8",
                atLeast = 1,
                atMost = 30)
        @Nullable
        Double withdrawal,

        @Says(
                value = "head pull-through parameter of the screws, as declared, N/mm2",
                otherwise = "8",
                atLeast = 1,
                atMost = 40)
        @Nullable
        Double pullThrough,

        @Says(
                value = "stiffness of one screw pulled, as declared, N/mm",
                otherwise = "the same as in shear",
                atLeast = 100,
                atMost = 50_000)
        @Nullable
        Double screwStiffness,

        @Says(
                value = "what one corner strap bears for good, as its maker declares it, kN",
                otherwise = "what two screws in each leg bear",
                atLeast = 0.1,
                atMost = 50)
        @Nullable
        Double strap) {
    /** Habits when nothing is said. */
    public static final StrengthWish HABIT = new StrengthWish(
            null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null, null);

    /** How far a side may end up bowing out, mm (habit: common practice, no source). */
    public double bowMm() {
        return bow == null ? 10 : bow.mm();
    }

    /** Rules for timber and screws. */
    public enum Rules {
        @Says("EN 1995-1-1, out of doors")
        EUROCODE,
        @Says("the NDS, wet service")
        NDS
    }

    /** How the soil pushes. */
    public enum Push {
        @Says("as soil that has not moved: walls that hardly give way")
        AT_REST,
        @Says("less, as soil that follows walls which give way")
        ACTIVE
    }

    /** How wet the soil comes to be for a while. */
    public enum Water {
        @Says("never wetter than moist, as under a roof")
        MOIST,
        @Says("soaked by rain that runs off through the joints")
        SOAKED,
        @Says("water stands inside up to the surface, as behind a closed liner")
        WATERLOGGED,
        @Says("water stands inside and outside")
        FLOODED
    }

    /** What lies under the gravel. */
    public enum Ground {
        @Says("bedrock")
        ROCK,
        @Says("gravel or sandy gravel")
        GRAVEL,
        @Says("sand, silty sand, clayey gravel")
        SAND,
        @Says("clay, sandy clay, silt")
        CLAY,
        @Says("made ground, topsoil, or nobody knows")
        UNKNOWN
    }
}
