package borderwright.engine.garden;

import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.garden.vocabulary.FaceOut;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** How boxes are put together: which section for what, and how far apart. */
public record BuildSpec(
        String walls,

        @Nullable String braces,

        @Nullable String posts,

        @Nullable String ties,

        @Nullable String dividers,

        @Nullable String capping,

        @Nullable String bearers,

        @Nullable String slats,

        @Nullable CornerStyle corners,

        @Nullable Length braceSpacing,

        @Nullable Length tieSpacing,

        @Nullable Length slatGap,

        @Nullable Length bearerSpacing,

        @Nullable Length cappingOverhang,

        @Nullable FaceOut faceOut,

        @Nullable ScrewSize screws,

        @Nullable Length postFooting) {

    /** Walls and braces of these sections, and habits for all else. */
    public static BuildSpec of(String walls, String braces) {
        return new BuildSpec(
                walls, braces, null, null, null, null, null, null, null, null, null, null, null, null, null, null,
                null);
    }

    /** The same with walls of another section; what went by the walls' section goes by the new one. */
    public BuildSpec withWalls(String other) {
        return with(other, braces, posts, corners, bearerSpacing, postFooting);
    }

    /** The same with posts and braces of another section. */
    public BuildSpec withUprights(String other) {
        return with(walls, other, other, corners, bearerSpacing, postFooting);
    }

    /** The same with corners that meet in another way. */
    public BuildSpec withCorners(CornerStyle other) {
        return with(walls, braces, posts, other, bearerSpacing, postFooting);
    }

    /** The same with posts and braces let into the ground. */
    public BuildSpec withPostFooting(Length depth) {
        return with(walls, braces, posts, corners, bearerSpacing, depth);
    }

    /** The same with a platform's bearers no further apart. */
    public BuildSpec withBearerSpacing(Length spacing) {
        return with(walls, braces, posts, corners, spacing, postFooting);
    }

    private BuildSpec with(
            String otherWalls,
            @Nullable String otherBraces,
            @Nullable String otherPosts,
            @Nullable CornerStyle otherCorners,
            @Nullable Length otherBearerSpacing,
            @Nullable Length otherFooting) {
        return new BuildSpec(
                otherWalls,
                otherBraces,
                otherPosts,
                ties,
                dividers,
                capping,
                bearers,
                slats,
                otherCorners,
                braceSpacing,
                tieSpacing,
                slatGap,
                otherBearerSpacing,
                cappingOverhang,
                faceOut,
                screws,
                otherFooting);
    }

    /** How deep posts and braces are let into the ground, mm; 0 for not at all. */
    public double postFootingMm() {
        return postFooting == null ? 0 : postFooting.mm();
    }

    /** A screw's size. */
    public record ScrewSize(Length diameter, Length length) {}
}
