package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.SawKind;
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

        @Described(value = "greatest fence or head angle from square", otherwise = "50 deg", atLeast = 0, atMost = 75)
        @Nullable
        Angle mitre,

        @Described(value = "widest board that it cuts across", otherwise = "300 mm", atLeast = 20) @Nullable
        Length widestBoard,

        @Described(value = "thickest board that it cuts through, square", otherwise = "60 mm", atLeast = 5) @Nullable
        Length thickestBoard,

        @Described(value = "shortest piece that may be held safely", otherwise = "150 mm", atLeast = 10) @Nullable
        Length shortestPiece,

        @Described(value = "whether it has a length stop", otherwise = "no") @Nullable
        Boolean lengthStop,

        @Described(value = "whether it may rip along a board", otherwise = "yes for a table saw, no for others")
        @Nullable
        Boolean rips) {}
