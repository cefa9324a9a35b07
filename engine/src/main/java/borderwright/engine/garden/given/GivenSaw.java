package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A saw at hand and what it can do; read off its manual, not guessed. */
@Described("a saw at hand and what it can do")
public record GivenSaw(
        @Described(value = "name", example = "table saw with sled")
        String name,

        @Described("kind of saw") SawKind kind,

        @Described(value = "width of its cut, from a test cut", otherwise = "3 mm", atLeast = 0.5, atMost = 10)
        @Nullable
        Length kerf,

        @Described(
                value = "greatest blade tilt from square",
                otherwise = "45 deg, none for a handsaw guide",
                atLeast = 0,
                atMost = 60)
        @Nullable
        Angle tilt,

        @Described(
                value = "to which side the top of its blade leans when it is tilted, seen by who stands at the saw",
                otherwise = "left")
        @Nullable
        TiltSide tilts,

        @Described(value = "greatest fence or head angle from square", otherwise = "50 deg", atLeast = 0, atMost = 75)
        @Nullable
        Angle mitre,

        @Described(
                value = "the steps to which its angles can be set: 0.5 deg for a saw with detents",
                otherwise = "0.1 deg",
                atLeast = 0.01,
                atMost = 5)
        @Nullable
        Angle angleSteps,

        @Described(value = "widest board that it cuts across", otherwise = "300 mm", atLeast = 20, usuallyAtMost = 1500)
        @Nullable
        Length widestBoard,

        @Described(
                value = "thickest board that it cuts through, square",
                otherwise = "60 mm",
                atLeast = 5,
                usuallyAtMost = 300)
        @Nullable
        Length thickestBoard,

        @Described(
                value = "shortest piece that may be held safely",
                otherwise = "150 mm",
                atLeast = 10,
                usuallyAtMost = 600)
        @Nullable
        Length shortestPiece,

        @Described(
                value = "longest piece that it can hold",
                otherwise =
                        "1.5 m for a table saw, 4 m for a mitre saw, 20 m for others: the board stays, the saw moves",
                atLeast = 100)
        @Nullable
        Length longestPiece,

        @Described(
                value = "heaviest piece that it can hold, kg",
                otherwise = "10 for a table saw, 25 for a mitre saw, 1000 for others: the board stays, the saw moves",
                atLeast = 0.1,
                atMost = 1000)
        @Nullable
        Double heaviestPiece,

        @Described(value = "whether it has a length stop", otherwise = "no") @Nullable
        Boolean lengthStop,

        @Described(
                value = "the farthest from the blade that its length stop can be set",
                otherwise = "1.2 m for a table saw, 2.5 m for others",
                atLeast = 50)
        @Nullable
        Length stopReaches,

        @Described(value = "whether it may rip along a board", otherwise = "yes for a table saw, no for others")
        @Nullable
        Boolean rips) {
    /** Begins with what is needed; what is not given is absent. */
    public static Builder builder(String name, SawKind kind) {
        return new Builder(name, kind);
    }

    /** Gives it key by key. */
    public static final class Builder {
        private final String name;
        private final SawKind kind;
        private @Nullable Length kerf;
        private @Nullable Angle tilt;
        private @Nullable TiltSide tilts;
        private @Nullable Angle mitre;
        private @Nullable Angle angleSteps;
        private @Nullable Length widestBoard;
        private @Nullable Length thickestBoard;
        private @Nullable Length shortestPiece;
        private @Nullable Length longestPiece;
        private @Nullable Double heaviestPiece;
        private @Nullable Boolean lengthStop;
        private @Nullable Length stopReaches;
        private @Nullable Boolean rips;

        private Builder(String name, SawKind kind) {
            this.name = name;
            this.kind = kind;
        }

        public Builder kerf(@Nullable Length given) {
            kerf = given;
            return this;
        }

        public Builder tilt(@Nullable Angle given) {
            tilt = given;
            return this;
        }

        public Builder tilts(@Nullable TiltSide given) {
            tilts = given;
            return this;
        }

        public Builder mitre(@Nullable Angle given) {
            mitre = given;
            return this;
        }

        public Builder angleSteps(@Nullable Angle given) {
            angleSteps = given;
            return this;
        }

        public Builder widestBoard(@Nullable Length given) {
            widestBoard = given;
            return this;
        }

        public Builder thickestBoard(@Nullable Length given) {
            thickestBoard = given;
            return this;
        }

        public Builder shortestPiece(@Nullable Length given) {
            shortestPiece = given;
            return this;
        }

        public Builder longestPiece(@Nullable Length given) {
            longestPiece = given;
            return this;
        }

        public Builder heaviestPiece(@Nullable Double given) {
            heaviestPiece = given;
            return this;
        }

        public Builder lengthStop(@Nullable Boolean given) {
            lengthStop = given;
            return this;
        }

        public Builder stopReaches(@Nullable Length given) {
            stopReaches = given;
            return this;
        }

        public Builder rips(@Nullable Boolean given) {
            rips = given;
            return this;
        }

        public GivenSaw build() {
            return new GivenSaw(
                    name,
                    kind,
                    kerf,
                    tilt,
                    tilts,
                    mitre,
                    angleSteps,
                    widestBoard,
                    thickestBoard,
                    shortestPiece,
                    longestPiece,
                    heaviestPiece,
                    lengthStop,
                    stopReaches,
                    rips);
        }
    }
}
