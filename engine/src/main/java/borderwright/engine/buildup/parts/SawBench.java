package borderwright.engine.buildup.parts;

import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.LengthFormat;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;

/**
 * Which of the saws at hand makes a cut, and what to do where none does.
 *
 * <p>A saw is asked in the order: blade tilt, fence angle, width across, depth (a tilted blade of depth {@code d} cuts
 * through {@code d cos(tilt)}), shortest piece that it may hold. Handsaws come last.
 */
public final class SawBench {
    /** A scale cannot be set finer than this, so a range is not failed by less (common practice, no source). */
    private static final double SCALE_DEG = 0.1;

    private final List<SawSpec> saws;
    private final LengthFormat format;
    private final Map<Cut, How> known = new HashMap<>();

    public SawBench(List<SawSpec> saws, LengthFormat format) {
        this.saws = new ArrayList<>(saws);
        this.saws.sort((a, b) -> Boolean.compare(isHandsaw(a), isHandsaw(b)));
        this.format = format;
    }

    /**
     * One cut.
     *
     * @param tiltDeg blade tilt from square
     * @param fenceDeg fence angle from square
     * @param section what is cut
     * @param shortMm length of the piece on its shorter face or edge
     */
    record Cut(double tiltDeg, double fenceDeg, SectionSpec section, double shortMm) {}

    /** How a cut is made, and whether a saw at hand does it as it stands. */
    public record How(String words, boolean inRange) {}

    /** Greatest tilt among saws that can cut across the section, degrees; 45 where no saw is listed. */
    public double greatestTiltDeg(SectionSpec section) {
        if (saws.isEmpty()) {
            return 45;
        }
        double greatest = 0;
        for (SawSpec saw : saws) {
            if (saw.crosscutMm() >= section.width().mm()) {
                greatest = StrictMath.max(greatest, saw.tiltDeg());
            }
        }
        return greatest;
    }

    /** Greatest fence angle among the saws, degrees; 45 where no saw is listed. */
    public double greatestFenceDeg() {
        return saws.stream().mapToDouble(SawSpec::mitreDeg).max().orElse(45);
    }

    public boolean canRip(double tiltDeg) {
        return saws.stream().anyMatch(saw -> saw.canRip() && saw.tiltDeg() + SCALE_DEG >= tiltDeg);
    }

    public How how(double tiltDeg, double fenceDeg, SectionSpec section, double shortMm) {
        return known.computeIfAbsent(new Cut(tiltDeg, fenceDeg, section, shortMm), this::ask);
    }

    private How ask(Cut cut) {
        if (saws.isEmpty()) {
            return new How("no saw is listed: say which saws are at hand", false);
        }
        double thickness = cut.section.thickness().mm();
        double through = thickness / StrictMath.cos(StrictMath.toRadians(cut.tiltDeg));
        double across = cut.section.width().mm();
        List<SawSpec> left = keep(saws, saw -> saw.tiltDeg() + SCALE_DEG >= cut.tiltDeg);
        if (left.isEmpty()) {
            return no(beyondTilt(cut.tiltDeg));
        }
        left = keep(left, saw -> saw.mitreDeg() + SCALE_DEG >= cut.fenceDeg);
        if (left.isEmpty()) {
            return no(beyondFence(cut.fenceDeg));
        }
        left = keep(left, saw -> saw.crosscutMm() >= across);
        if (left.isEmpty()) {
            return no("the board is " + format.piece(across) + " wide, more than these saws cut across: cut from both"
                    + " edges to one line, or with a handsaw");
        }
        left = keep(left, saw -> saw.depthMm() >= through);
        if (left.isEmpty()) {
            return no("the cut is " + format.piece(through) + " deep at this tilt, more than these saws reach: cut from"
                    + " both faces to one line, or with a handsaw");
        }
        List<SawSpec> held = keep(left, saw -> saw.shortestMm() <= cut.shortMm);
        if (held.isEmpty()) {
            return no(tooShort(left.get(0), cut.shortMm));
        }
        return new How(setting(held.get(0), cut), true);
    }

    private String setting(SawSpec saw, Cut cut) {
        if (cut.tiltDeg == 0 && cut.fenceDeg == 0) {
            return saw.name() + ": blade and fence square";
        }
        String turned = cut.tiltDeg > 0 ? "tilt the blade " : "turn the fence ";
        double set = cut.tiltDeg > 0 ? cut.tiltDeg : cut.fenceDeg;
        return saw.name() + ": " + turned + degrees(set) + " from square (" + degrees(90 - set)
                + " on a scale that reads 90° for a square cut)";
    }

    private String beyondTilt(double tiltDeg) {
        SawSpec most = saws.get(0);
        for (SawSpec saw : saws) {
            most = saw.tiltDeg() > most.tiltDeg() ? saw : most;
        }
        return "no saw at hand tilts " + degrees(tiltDeg) + ": " + most.name() + " stops at " + degrees(most.tiltDeg())
                + ". Clamp the piece on a wedge of " + degrees(tiltDeg - most.tiltDeg()) + " fixed to the saw's table,"
                + " or draw the line round all four sides and cut it with a handsaw";
    }

    private String beyondFence(double fenceDeg) {
        SawSpec most = saws.get(0);
        for (SawSpec saw : saws) {
            most = saw.mitreDeg() > most.mitreDeg() ? saw : most;
        }
        return "no saw at hand turns its fence " + degrees(fenceDeg) + ": " + most.name() + " stops at "
                + degrees(most.mitreDeg())
                + ". Draw the line across and cut it along a clamped guide or with a handsaw";
    }

    private String tooShort(SawSpec saw, double shortMm) {
        return "only " + format.piece(shortMm) + " long, less than " + saw.name() + " may hold ("
                + format.piece(saw.shortestMm())
                + "): make this end first on a long board and part the piece off last, the long part held and no stop"
                + " against the piece, or cut it with a handsaw in a vice";
    }

    private String degrees(double value) {
        return format.angle(Angle.ofDegrees(value));
    }

    private static How no(String words) {
        return new How(words, false);
    }

    private static boolean isHandsaw(SawSpec saw) {
        return saw.kind() == SawKind.HANDSAW;
    }

    private static List<SawSpec> keep(List<SawSpec> saws, Predicate<SawSpec> asked) {
        return saws.stream().filter(asked).toList();
    }
}
