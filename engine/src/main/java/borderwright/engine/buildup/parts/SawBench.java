package borderwright.engine.buildup.parts;

import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
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
    private final Map<Cut, How> known = new HashMap<>();

    public SawBench(List<SawSpec> saws) {
        this.saws = new ArrayList<>(saws);
        this.saws.sort((a, b) -> Boolean.compare(isHandsaw(a), isHandsaw(b)));
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
    public record How(Message words, boolean inRange) {}

    /** Greatest tilt among saws that can cut across the section, degrees; 45 where no saw is listed. */
    public double greatestTiltDeg(SectionSpec section) {
        if (saws.isEmpty()) {
            return 45;
        }
        double greatest = 0;
        for (SawSpec saw : saws) {
            if (saw.widestBoardMm() >= section.width().mm()) {
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
            return no(CutMessage.NO_SAW_LISTED.of());
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
        left = keep(left, saw -> saw.widestBoardMm() >= across);
        if (left.isEmpty()) {
            return no(CutMessage.CUT_BEYOND_WIDTH.of(across));
        }
        left = keep(left, saw -> saw.thickestBoardMm() >= through);
        if (left.isEmpty()) {
            return no(CutMessage.CUT_BEYOND_DEPTH.of(through));
        }
        List<SawSpec> held = keep(left, saw -> saw.shortestPieceMm() <= cut.shortMm);
        if (held.isEmpty()) {
            return no(tooShort(left.get(0), cut.shortMm));
        }
        return new How(setting(held.get(0), cut), true);
    }

    private Message setting(SawSpec saw, Cut cut) {
        if (cut.tiltDeg == 0 && cut.fenceDeg == 0) {
            return CutMessage.SAW_SET_SQUARE.of(saw.name());
        }
        double set = cut.tiltDeg > 0 ? cut.tiltDeg : cut.fenceDeg;
        CutMessage turned = cut.tiltDeg > 0 ? CutMessage.SAW_BLADE_TILTED : CutMessage.SAW_FENCE_TURNED;
        return turned.of(saw.name(), set, 90 - set);
    }

    private Message beyondTilt(double tiltDeg) {
        SawSpec most = saws.get(0);
        for (SawSpec saw : saws) {
            most = saw.tiltDeg() > most.tiltDeg() ? saw : most;
        }
        return CutMessage.CUT_BEYOND_TILT.of(tiltDeg, most.name(), most.tiltDeg(), tiltDeg - most.tiltDeg());
    }

    private Message beyondFence(double fenceDeg) {
        SawSpec most = saws.get(0);
        for (SawSpec saw : saws) {
            most = saw.mitreDeg() > most.mitreDeg() ? saw : most;
        }
        return CutMessage.CUT_BEYOND_FENCE.of(fenceDeg, most.name(), most.mitreDeg());
    }

    private Message tooShort(SawSpec saw, double shortMm) {
        // In whole ticks, so that pieces alike to the saw share one set-up.
        return CutMessage.PIECE_BELOW_SHORTEST.of(Length.ofMm(shortMm).mm(), saw.name(), saw.shortestPieceMm());
    }

    private static How no(Message words) {
        return new How(words, false);
    }

    private static boolean isHandsaw(SawSpec saw) {
        return saw.kind() == SawKind.HANDSAW;
    }

    private static List<SawSpec> keep(List<SawSpec> saws, Predicate<SawSpec> asked) {
        return saws.stream().filter(asked).toList();
    }
}
