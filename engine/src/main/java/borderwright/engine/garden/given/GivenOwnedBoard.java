package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A board or offcut already in the shed; used first. */
@Described("a board or offcut already in the shed")
public record GivenOwnedBoard(
        @Described(value = "section, by its name", example = "larch 25 x 150")
        String section,

        @Described(value = "true length", example = "1.83 m", atLeast = 50, usuallyAtMost = 7500)
        Length length,

        @Described(value = "how many", otherwise = "1", atLeast = 1, atMost = 10000) @Nullable
        Integer count,

        @Described(value = "mark on it", example = "rack 3") @Nullable
        String label) {}
