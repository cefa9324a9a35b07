package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.FaceOut;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** How boxes are put together: which section for what, and how far apart. */
@Described("how boxes are put together")
public record GivenBuild(
        @Described("section of the wall boards") String walls,

        @Described(value = "section of the braces inside long sides", otherwise = "the posts' section") @Nullable
        String braces,

        @Described(value = "section of the corner posts", otherwise = "the braces' section") @Nullable
        String posts,

        @Described(value = "section of ties across a planter", otherwise = "the walls' section") @Nullable
        String ties,

        @Described(value = "section of the dividers' boards", otherwise = "the walls' section") @Nullable
        String dividers,

        @Described(value = "section of the capping", otherwise = "the walls' section") @Nullable
        String capping,

        @Described(value = "section of a false floor's bearers and legs", otherwise = "the braces' section") @Nullable
        String bearers,

        @Described(value = "section of a false floor's slats", otherwise = "the walls' section") @Nullable
        String slats,

        @Described(value = "how the walls meet at a corner", otherwise = "lapped where the corner allows it") @Nullable
        CornerStyle cornerJoint,

        @Described(
                value = "greatest distance between braces, posts and dividers along a side",
                otherwise = "as far apart as the walls hold",
                atLeast = 100)
        @Nullable
        Length braceSpacing,

        @Described(
                value = "greatest distance between ties across a planter; 0 for none",
                otherwise = "as far apart as the walls hold",
                atLeast = 0)
        @Nullable
        Length tieSpacing,

        @Described(value = "gap between a false floor's slats", otherwise = "12 mm", atLeast = 0, atMost = 60) @Nullable
        Length slatGap,

        @Described(
                value = "greatest distance between a false floor's bearers",
                otherwise = "as far apart as the floor holds, 500 mm at most",
                atLeast = 100)
        @Nullable
        Length bearerSpacing,

        @Described(
                value = "how far the capping stands out over the wall outside",
                otherwise = "20 mm",
                atLeast = 0,
                atMost = 100)
        @Nullable
        Length cappingOverhang,

        @Described(value = "which face of a board goes out", otherwise = "heart side out") @Nullable
        FaceOut faceOut,

        @Described(value = "screws through the walls", otherwise = "chosen by thickness: 2.5 times the board") @Nullable
        GivenScrew screws,

        @Described(
                value = "how deep posts and braces are let into the ground, in holes filled with concrete",
                otherwise = "not at all: they stand on the bed",
                example = "450 mm",
                atLeast = 300,
                atMost = 1200)
        @Nullable
        Length postFooting) {

    /** Walls and braces of these sections, and nothing else given. */
    public static GivenBuild of(String walls, String braces) {
        return new GivenBuild(
                walls, braces, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                null);
    }

    /** A screw's size. */
    @Described("a screw's size")
    public record GivenScrew(
            @Described(value = "thread diameter", example = "5 mm", atLeast = 2.5, atMost = 12)
            Length diameter,

            @Described(value = "length", example = "70 mm", atLeast = 15, atMost = 300)
            Length length) {}
}
