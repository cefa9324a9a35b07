package borderwright.engine.cutting;

import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.SawBench;
import borderwright.engine.cutting.SawSetting.CutFor;
import borderwright.engine.cutting.SawSetting.FaceUp;
import borderwright.engine.cutting.SawSetting.Lean;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.stock.row.CuttingJob;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.jspecify.annotations.Nullable;

/**
 * Groups cuts by how the saw must be set: as few settings as there are different ones, square ones first, then by angle;
 * the longest stop first, so that long pieces are cut while boards are long.
 */
final class SetUps {
    private final CuttingJob job;
    private final SawBench bench;
    private final Map<Key, List<String>> labels = new TreeMap<>(Comparator.comparing(Key::means)
            .thenComparing(key -> key.setting.tiltDeg())
            .thenComparing(key -> key.setting.fenceDeg())
            .thenComparing(key -> key.setting.lean())
            .thenComparing(Key::saw)
            .thenComparing(key -> key.setting.cutFor())
            .thenComparing(key -> key.setting.faceUp())
            .thenComparing(Key::stop, Comparator.reverseOrder())
            .thenComparing(key -> String.valueOf(key.byHand)));

    SetUps(CuttingJob job) {
        this.job = job;
        this.bench = new SawBench(job.saws());
    }

    /** Settings of saws come first, then cuts that no saw at hand reaches. */
    private enum Means {
        SAW,
        HAND
    }

    /** How a saw is set; where the cut is made by hand, {@code byHand} says how. */
    private record Key(
            Means means,
            String saw,
            @Nullable SawKind kind,
            SawSetting setting,
            Length stop,
            @Nullable Message byHand) {}

    /** An end of a piece as it lies on its board, how the cut that makes it leans, and which face is up. */
    record EndOnBoard(EndCut cut, Lean lean, FaceUp faceUp) {
        /** As it lies once the board is turned over along its length. */
        private EndOnBoard turnedOver() {
            return new EndOnBoard(cut, lean.turnedOver(), faceUp.turnedOver());
        }
    }

    /**
     * Notes the cuts of a piece.
     *
     * @param cutLeft its left end as it lies; null when the piece before it has made it
     * @param cutRight its right end as it lies
     */
    void add(Piece piece, @Nullable EndOnBoard cutLeft, EndOnBoard cutRight) {
        labels.computeIfAbsent(key(piece, cutRight, CutFor.PIECE), k -> new ArrayList<>())
                .add(piece.label());
        if (cutLeft != null) {
            labels.computeIfAbsent(key(piece, cutLeft, CutFor.FRESH_END), k -> new ArrayList<>())
                    .add(piece.label());
        }
    }

    private Key key(Piece piece, EndOnBoard end, CutFor cutFor) {
        SectionSpec section = job.section(piece.section());
        if (section == null) {
            throw new IllegalArgumentException(
                    "piece " + piece.label() + " is of no section of the job: " + piece.section());
        }
        SawBench.How how = bench.how(SawBench.Cut.of(end.cut, piece, section));
        SawSpec saw = how.saw();
        if (saw == null) {
            return new Key(Means.HAND, "by hand", null, setting(end, cutFor), Length.ZERO, how.words());
        }
        boolean stops = cutFor == CutFor.PIECE && saw.stopReaches(piece.length().mm());
        return new Key(
                Means.SAW,
                saw.name(),
                saw.kind(),
                setting(onSaw(saw, end), cutFor),
                stops ? piece.length() : Length.ZERO,
                null);
    }

    private static SawSetting setting(EndOnBoard end, CutFor cutFor) {
        FaceUp faceUp = end.lean == Lean.NONE ? FaceUp.EITHER : end.faceUp;
        return new SawSetting(end.cut.tiltDeg(), end.cut.fenceDeg(), end.lean, faceUp, cutFor);
    }

    /** A blade that leans to one side only cuts the other bevel with the board turned over. */
    private static EndOnBoard onSaw(SawSpec saw, EndOnBoard end) {
        boolean leansAway = (saw.tilts() == TiltSide.LEFT && end.lean == Lean.RIGHT)
                || (saw.tilts() == TiltSide.RIGHT && end.lean == Lean.LEFT);
        return end.cut.tiltDeg() > 0 && leansAway ? end.turnedOver() : end;
    }

    /** Index of the set-up that cuts a piece to length, which was noted. */
    int indexOf(Piece piece, EndOnBoard end) {
        Key wanted = key(piece, end, CutFor.PIECE);
        int index = 0;
        for (Key key : labels.keySet()) {
            if (key.equals(wanted)) {
                return index;
            }
            index++;
        }
        throw new IllegalArgumentException("piece " + piece.label() + " was not added");
    }

    List<CuttingPlan.SetUp> list() {
        List<CuttingPlan.SetUp> list = new ArrayList<>();
        labels.forEach((key, pieces) -> list.add(
                new CuttingPlan.SetUp(list.size() + 1, key.saw, key.kind, key.setting, key.stop, pieces, key.byHand)));
        return list;
    }
}
