package borderwright.engine.garden.given;

import borderwright.engine.garden.vocabulary.Crop;
import borderwright.engine.garden.vocabulary.Described;
import borderwright.engine.garden.vocabulary.GardenerPosture;
import borderwright.engine.measure.Angle;
import java.time.LocalDate;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is to grow, who tends it, and where the sun comes from. */
@Described("what is to grow, who tends it, and where the sun comes from")
public record GivenPlanting(
        @Described("crops requested, to compare with the depth of soil")
        List<Crop> crops,

        @Described(value = "how the gardener works", otherwise = "standing") @Nullable
        GardenerPosture gardener,

        @Described(
                value = "latitude in degrees, negative in the south; with `bearing` it gives the hours of sun",
                example = "52.1",
                atLeast = -66,
                atMost = 66)
        @Nullable
        Double latitude,

        @Described(
                value = "compass bearing from the border's first corner to its second, clockwise from true north",
                example = "95 deg",
                atLeast = 0,
                atMost = 360)
        @Nullable
        Angle bearing,

        @Described(
                value = "first day of the season",
                example = "2026-04-01",
                otherwise = "1 April, in the south 1 October")
        @Nullable
        LocalDate seasonFrom,

        @Described(value = "last day of the season", example = "2026-09-30", otherwise = "six months later") @Nullable
        LocalDate seasonTo) {
    public GivenPlanting {
        crops = List.copyOf(crops);
    }
}
