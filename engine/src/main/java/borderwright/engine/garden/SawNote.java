package borderwright.engine.garden;

import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import org.jspecify.annotations.Nullable;

/** A saw at hand and what it can do; read off its manual, not guessed. */
@Says("a saw at hand and what it can do")
public record SawNote(
        @Says(value = "name", example = "table saw with sled")
        String name,

        @Says("kind of saw") Kind kind,

        @Says(value = "width of its cut, from a test cut", otherwise = "3 mm", atLeast = 0.5, atMost = 10) @Nullable
        Length kerf,

        @Says(
                value = "greatest blade tilt from square",
                otherwise = "45 deg, none for a handsaw guide",
                atLeast = 0,
                atMost = 60)
        @Nullable
        Angle tilt,

        @Says(value = "greatest fence or head angle from square", otherwise = "50 deg", atLeast = 0, atMost = 75)
        @Nullable
        Angle mitre,

        @Says(value = "widest board that it cuts across", otherwise = "300 mm", atLeast = 20) @Nullable
        Length crosscut,

        @Says(value = "thickest board that it cuts through, square", otherwise = "60 mm", atLeast = 5) @Nullable
        Length depth,

        @Says(value = "shortest piece that may be held safely", otherwise = "150 mm", atLeast = 10) @Nullable
        Length shortest,

        @Says(value = "whether it has a length stop", otherwise = "no") @Nullable
        Boolean stop,

        @Says(value = "whether it may rip along a board", otherwise = "yes for a table saw, no for others") @Nullable
        Boolean rips) {

    /** The same saw with its cut as measured. */
    SawNote withKerf(@Nullable Length measured) {
        return new SawNote(name, kind, measured, tilt, mitre, crosscut, depth, shortest, stop, rips);
    }

    public double kerfMm() {
        return kerf != null ? kerf.mm() : 3;
    }

    public double tiltDeg() {
        return tilt != null ? tilt.degrees() : kind == Kind.HANDSAW ? 0 : 45;
    }

    public double mitreDeg() {
        return mitre != null ? mitre.degrees() : 50;
    }

    public double crosscutMm() {
        return crosscut != null ? crosscut.mm() : 300;
    }

    public double depthMm() {
        return depth != null ? depth.mm() : 60;
    }

    public double shortestMm() {
        return shortest != null ? shortest.mm() : 150;
    }

    public boolean hasStop() {
        return stop != null && stop;
    }

    public boolean canRip() {
        return rips != null ? rips : kind == Kind.TABLE_SAW;
    }

    /** Kind of saw. */
    public enum Kind {
        @Says("a table saw with a crosscut sled or mitre gauge")
        TABLE_SAW,
        @Says("a mitre saw")
        MITRE_SAW,
        @Says("a circular saw with a guide")
        CIRCULAR_SAW,
        @Says("a handsaw with a guide or bench hook")
        HANDSAW
    }
}
