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
        return GivenBuild.builder(walls).braces(braces).build();
    }

    /** A screw's size. */
    @Described("a screw's size")
    public record GivenScrew(
            @Described(value = "thread diameter", example = "5 mm", atLeast = 2.5, atMost = 12)
            Length diameter,

            @Described(value = "length", example = "70 mm", atLeast = 15, atMost = 300)
            Length length) {}

    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String walls) {
        return new Builder(walls);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String walls;
        private @Nullable String braces;
        private @Nullable String posts;
        private @Nullable String ties;
        private @Nullable String dividers;
        private @Nullable String capping;
        private @Nullable String bearers;
        private @Nullable String slats;
        private @Nullable CornerStyle cornerJoint;
        private @Nullable Length braceSpacing;
        private @Nullable Length tieSpacing;
        private @Nullable Length slatGap;
        private @Nullable Length bearerSpacing;
        private @Nullable Length cappingOverhang;
        private @Nullable FaceOut faceOut;
        private @Nullable GivenScrew screws;
        private @Nullable Length postFooting;

        private Builder(String walls) {
            this.walls = walls;
        }

        public Builder braces(@Nullable String given) {
            braces = given;
            return this;
        }

        public Builder posts(@Nullable String given) {
            posts = given;
            return this;
        }

        public Builder ties(@Nullable String given) {
            ties = given;
            return this;
        }

        public Builder dividers(@Nullable String given) {
            dividers = given;
            return this;
        }

        public Builder capping(@Nullable String given) {
            capping = given;
            return this;
        }

        public Builder bearers(@Nullable String given) {
            bearers = given;
            return this;
        }

        public Builder slats(@Nullable String given) {
            slats = given;
            return this;
        }

        public Builder cornerJoint(@Nullable CornerStyle given) {
            cornerJoint = given;
            return this;
        }

        public Builder braceSpacing(@Nullable Length given) {
            braceSpacing = given;
            return this;
        }

        public Builder tieSpacing(@Nullable Length given) {
            tieSpacing = given;
            return this;
        }

        public Builder slatGap(@Nullable Length given) {
            slatGap = given;
            return this;
        }

        public Builder bearerSpacing(@Nullable Length given) {
            bearerSpacing = given;
            return this;
        }

        public Builder cappingOverhang(@Nullable Length given) {
            cappingOverhang = given;
            return this;
        }

        public Builder faceOut(@Nullable FaceOut given) {
            faceOut = given;
            return this;
        }

        public Builder screws(@Nullable GivenScrew given) {
            screws = given;
            return this;
        }

        public Builder postFooting(@Nullable Length given) {
            postFooting = given;
            return this;
        }

        public GivenBuild build() {
            return new GivenBuild(
                    walls,
                    braces,
                    posts,
                    ties,
                    dividers,
                    capping,
                    bearers,
                    slats,
                    cornerJoint,
                    braceSpacing,
                    tieSpacing,
                    slatGap,
                    bearerSpacing,
                    cappingOverhang,
                    faceOut,
                    screws,
                    postFooting);
        }
    }
}
