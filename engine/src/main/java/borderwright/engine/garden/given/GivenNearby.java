package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** Something near the planters that has to be kept clear of. */
@Described("a tree, a service in the ground, an air brick or cladding that has to be kept clear of")
public record GivenNearby(
        @Described("what it is") NearbyKind what,

        @Described(value = "the edge it is measured from, named from the corner where `along` starts", example = "A B")
        Names edge,

        @Described(value = "how far along that edge it is, or begins", example = "2.4 m")
        Length along,

        @Described(value = "how far along the edge it ends", example = "2.7 m", otherwise = "the same") @Nullable
        Length endsAt,

        @Described(
                value = "its distance from the edge into the border; outside the border it is negative",
                example = "-1.8 m",
                otherwise = "0, on the edge")
        @Nullable
        Length inFromEdge,

        @Described(value = "the same where it ends", otherwise = "the same") @Nullable
        Length inAtEnd,

        @Described(
                value = "a tree's trunk across, 1.5 m above the ground",
                example = "180 mm",
                atLeast = 10,
                atMost = 3000)
        @Nullable
        Length trunk,

        @Described(
                value = "a tree's girth there, the tape round its trunk, in the place of `trunk`",
                example = "560 mm",
                atLeast = 30,
                atMost = 9500)
        @Nullable
        Length girth,

        @Described(value = "how deep a service lies below the ground, if that is known", atLeast = 0, atMost = 5000)
        @Nullable
        Length depth,

        @Described(
                value = "height above the datum of the lower edge of an air brick or of cladding",
                example = "160 mm")
        @Nullable
        Length bottom) {
    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(NearbyKind what, Names edge, Length along) {
        return new Builder(what, edge, along);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final NearbyKind what;
        private final Names edge;
        private final Length along;
        private @Nullable Length endsAt;
        private @Nullable Length inFromEdge;
        private @Nullable Length inAtEnd;
        private @Nullable Length trunk;
        private @Nullable Length girth;
        private @Nullable Length depth;
        private @Nullable Length bottom;

        private Builder(NearbyKind what, Names edge, Length along) {
            this.what = what;
            this.edge = edge;
            this.along = along;
        }

        public Builder endsAt(@Nullable Length given) {
            endsAt = given;
            return this;
        }

        public Builder inFromEdge(@Nullable Length given) {
            inFromEdge = given;
            return this;
        }

        public Builder inAtEnd(@Nullable Length given) {
            inAtEnd = given;
            return this;
        }

        public Builder trunk(@Nullable Length given) {
            trunk = given;
            return this;
        }

        public Builder girth(@Nullable Length given) {
            girth = given;
            return this;
        }

        public Builder depth(@Nullable Length given) {
            depth = given;
            return this;
        }

        public Builder bottom(@Nullable Length given) {
            bottom = given;
            return this;
        }

        public GivenNearby build() {
            return new GivenNearby(what, edge, along, endsAt, inFromEdge, inAtEnd, trunk, girth, depth, bottom);
        }
    }
}
