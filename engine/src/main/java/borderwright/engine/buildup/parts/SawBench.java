package borderwright.engine.buildup.parts;

import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.jspecify.annotations.Nullable;

/**
 * Which of the saws at hand makes a cut, and what to do where none does.
 *
 * <p>A saw is asked in the order: blade tilt, fence angle, width along the cut, depth (a tilted blade of depth {@code d} cuts
 * through {@code d cos(tilt)}), shortest, longest and heaviest piece that it can hold.
 *
 * <p>Of the saws that serve the most suitable is taken, however they are listed: one whose stop reaches the length; then for
 * a long or heavy piece a saw that goes to the board, for any other one that the board is brought to. Handsaws come last.
 * Common practice, no source. See docs/decisions/0033.
 */
public final class SawBench {
    /** A scale cannot be set finer than this, so a range is not failed by less (common practice, no source). */
    private static final double SCALE_DEG = 0.1;

    /** From here on a piece is long, or heavy: it is easier to take the saw to it (common practice, no source). */
    private static final double LONG_MM = 1500;

    private static final double HEAVY_KG = 10;
    private static final double MM3_PER_M3 = 1e9;

    private final List<SawSpec> saws;
    private final Map<Cut, How> known = new HashMap<>();

    public SawBench(List<SawSpec> saws) {
        this.saws = saws.stream()
                .sorted(Comparator.comparing(SawSpec::kind).thenComparing(SawSpec::name))
                .toList();
    }

    /**
     * One cut.
     *
     * @param tiltDeg blade tilt from square
     * @param fenceDeg fence angle from square
     * @param section what is cut
     * @param shortMm length of the piece on its shorter face or edge
     * @param longMm from long point to long point
     */
    public record Cut(double tiltDeg, double fenceDeg, SectionSpec section, double shortMm, double longMm) {
        /** The cut that makes one end of a piece. */
        public static Cut of(EndCut end, Piece piece, SectionSpec section) {
            return new Cut(
                    end.tiltDeg(),
                    end.fenceDeg(),
                    section,
                    piece.shortLength().mm(),
                    piece.length().mm());
        }

        double weightKg() {
            return section.densityKgPerM3()
                    * section.width().mm()
                    * section.thickness().mm()
                    * longMm
                    / MM3_PER_M3;
        }

        boolean isLongOrHeavy() {
            return longMm > LONG_MM || weightKg() > HEAVY_KG;
        }
    }

    /**
     * How a cut is made.
     *
     * @param words how, with the saw or without
     * @param saw the saw that makes it as it stands; null where none does
     */
    public record How(Message words, @Nullable SawSpec saw) {
        public boolean inRange() {
            return saw != null;
        }
    }

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

    public How how(Cut cut) {
        return known.computeIfAbsent(cut, this::ask);
    }

    private How ask(Cut cut) {
        if (saws.isEmpty()) {
            return no(CutMessage.NO_SAW_LISTED.of());
        }
        double thickness = cut.section.thickness().mm();
        double through = thickness / StrictMath.cos(StrictMath.toRadians(cut.tiltDeg));
        double across = cut.section.width().mm() / StrictMath.cos(StrictMath.toRadians(cut.fenceDeg));
        List<SawSpec> left = keep(saws, saw -> saw.tiltDeg() + SCALE_DEG >= cut.tiltDeg);
        if (left.isEmpty()) {
            return no(beyondTilt(cut.tiltDeg));
        }
        left = keep(left, saw -> saw.mitreDeg() + SCALE_DEG >= cut.fenceDeg);
        if (left.isEmpty()) {
            return no(beyondTurn(cut.fenceDeg));
        }
        left = keep(left, saw -> saw.widestBoardMm() >= across);
        if (left.isEmpty()) {
            return no(CutMessage.CUT_BEYOND_WIDTH.of(across));
        }
        left = keep(left, saw -> saw.thickestBoardMm() >= through);
        if (left.isEmpty()) {
            return no(CutMessage.CUT_BEYOND_DEPTH.of(through));
        }
        return held(left, cut);
    }

    /** Among saws that reach the cut. */
    private static How held(List<SawSpec> reaching, Cut cut) {
        List<SawSpec> left = keep(reaching, saw -> saw.shortestPieceMm() <= cut.shortMm);
        if (left.isEmpty()) {
            return no(tooShort(most(reaching, saw -> -saw.shortestPieceMm()), cut.shortMm));
        }
        SawSpec longest = most(left, SawSpec::longestPieceMm);
        left = keep(left, saw -> saw.longestPieceMm() >= cut.longMm);
        if (left.isEmpty()) {
            return no(CutMessage.PIECE_BEYOND_LONGEST.of(cut.longMm, longest.name(), longest.longestPieceMm()));
        }
        SawSpec strongest = most(left, SawSpec::heaviestPieceKg);
        left = keep(left, saw -> saw.heaviestPieceKg() >= cut.weightKg());
        if (left.isEmpty()) {
            return no(
                    CutMessage.PIECE_BEYOND_HEAVIEST.of(cut.weightKg(), strongest.name(), strongest.heaviestPieceKg()));
        }
        SawSpec best = left.stream().min(bySuitability(cut)).orElseThrow();
        return new How(setting(best, cut), best);
    }

    private static Comparator<SawSpec> bySuitability(Cut cut) {
        return Comparator.comparing((SawSpec saw) -> saw.kind() == SawKind.HANDSAW)
                .thenComparing(saw -> !saw.stopReaches(cut.longMm))
                .thenComparing(saw -> cut.isLongOrHeavy() != goesToTheBoard(saw))
                .thenComparing(saw -> saw.kind() != SawKind.MITRE_SAW)
                .thenComparing(SawSpec::kind)
                .thenComparing(SawSpec::kerf)
                .thenComparing(SawSpec::name);
    }

    private static boolean goesToTheBoard(SawSpec saw) {
        return saw.kind() == SawKind.CIRCULAR_SAW;
    }

    private static Message setting(SawSpec saw, Cut cut) {
        if (cut.tiltDeg == 0 && cut.fenceDeg == 0) {
            return CutMessage.SAW_SET_SQUARE.of(saw.name());
        }
        double set = cut.tiltDeg > 0 ? cut.tiltDeg : cut.fenceDeg;
        CutMessage turned = cut.tiltDeg > 0 ? CutMessage.SAW_BLADE_TILTED : CutMessage.SAW_FENCE_TURNED;
        return turned.of(saw.name(), saw.kind(), set, 90 - set);
    }

    private Message beyondTilt(double tiltDeg) {
        SawSpec most = most(saws, SawSpec::tiltDeg);
        return CutMessage.CUT_BEYOND_TILT.of(tiltDeg, most.name(), most.tiltDeg(), tiltDeg - most.tiltDeg());
    }

    private Message beyondTurn(double fenceDeg) {
        SawSpec most = most(saws, SawSpec::mitreDeg);
        return CutMessage.CUT_BEYOND_TURN.of(fenceDeg, most.name(), most.mitreDeg());
    }

    private static Message tooShort(SawSpec saw, double shortMm) {
        // In whole ticks, so that pieces alike to the saw share one set-up.
        return CutMessage.PIECE_BELOW_SHORTEST.of(Length.ofMm(shortMm).mm(), saw.name(), saw.shortestPieceMm());
    }

    private static How no(Message words) {
        return new How(words, null);
    }

    /** The first that has the most of something. */
    private static SawSpec most(List<SawSpec> saws, ToDoubleFunction<SawSpec> something) {
        SawSpec most = saws.get(0);
        for (SawSpec saw : saws) {
            most = something.applyAsDouble(saw) > something.applyAsDouble(most) ? saw : most;
        }
        return most;
    }

    private static List<SawSpec> keep(List<SawSpec> saws, Predicate<SawSpec> asked) {
        return saws.stream().filter(asked).toList();
    }
}
