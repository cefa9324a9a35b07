package borderwright.engine.garden;

import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A board's cross-section, as measured, and what it is made of. */
@Says("a board's cross-section as measured on a few boards, and what it is made of")
public record SectionNote(
        @Says(value = "name used in build, price lists and stock", example = "larch 25 x 150")
        String name,

        @Says(value = "measured thickness", example = "25 mm", atLeast = 6, atMost = 150)
        Length thickness,

        @Says(value = "measured width", example = "150 mm", atLeast = 15, atMost = 400)
        Length width,

        @Says(
                value = "how far a board may differ from these sizes, either way",
                otherwise = "3 mm rough, 1 mm planed",
                atLeast = 0,
                atMost = 20)
        @Nullable
        Length tolerance,

        @Says(value = "its surface", otherwise = "rough") @Nullable
        Surface surface,

        @Says(value = "the wood", example = "larch") @Nullable
        String species,

        @Says(value = "whether it is preservative treated", otherwise = "no") @Nullable
        Boolean treated,

        @Says(value = "how wet it arrives", otherwise = "wet") @Nullable
        Moisture moisture,

        @Says(value = "whether either face may go out, so that a board may be turned over", otherwise = "yes") @Nullable
        Boolean bothFacesGood,

        @Says(value = "strength class or grade, if it is stamped", example = "C16") @Nullable
        String grade,

        @Says(value = "density as it arrives, kg/m3", otherwise = "700 wet, 550 dry", atLeast = 200, atMost = 1300)
        @Nullable
        Double density) {

    public double toleranceMm() {
        return tolerance != null ? tolerance.mm() : surface == Surface.PLANED ? 1 : 3;
    }

    public boolean isTreated() {
        return treated != null && treated;
    }

    public boolean mayBeTurned() {
        return bothFacesGood == null || bothFacesGood;
    }

    public boolean arrivesWet() {
        return moisture != Moisture.DRY;
    }

    /** Density as it arrives, kg/m3 (habit values where not said: common practice, no source). */
    public double densityKgPerM3() {
        return density != null ? density : arrivesWet() ? 700 : 550;
    }

    /** How a board's faces are finished. */
    public enum Surface {
        @Says("as it leaves the saw")
        ROUGH,
        @Says("planed or dressed")
        PLANED
    }

    /** How wet a board arrives. */
    public enum Moisture {
        @Says("freshly sawn or freshly treated: it will shrink in width and thickness")
        WET,
        @Says("dried, 20 % or less")
        DRY
    }
}
