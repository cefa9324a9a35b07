package borderwright.engine.cutting;

import borderwright.engine.buildup.EndCut;
import borderwright.engine.buildup.Piece;
import borderwright.engine.garden.SawNote;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.measure.Length;
import java.math.BigDecimal;
import java.math.RoundingMode;
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
    private final SawChoice choice;
    private final Map<Key, List<String>> labels = new TreeMap<>(Comparator.comparing(Key::hand)
            .thenComparing(Key::tiltDeg)
            .thenComparing(Key::fenceDeg)
            .thenComparing(Key::saw)
            .thenComparing(Key::stop, Comparator.reverseOrder())
            .thenComparing(Key::words));

    SetUps(CuttingJob job) {
        this.job = job;
        this.choice = new SawChoice(job.saws());
    }

    /** How a saw is set; {@code hand} when no saw at hand reaches the cut, and then the words say how else. */
    private record Key(boolean hand, String saw, double tiltDeg, double fenceDeg, Length stop, String words) {}

    /** Notes both ends of a piece that is cut now. */
    void add(Piece piece) {
        Key left = key(piece, piece.left());
        Key right = key(piece, piece.right());
        labels.computeIfAbsent(right, k -> new ArrayList<>()).add(piece.label());
        if (!left.equals(right)) {
            labels.computeIfAbsent(left, k -> new ArrayList<>()).add(piece.label());
        }
    }

    private Key key(Piece piece, EndCut end) {
        SawNote saw = choice.sawFor(end, piece, section(piece));
        if (saw == null) {
            String how = end.how().isEmpty() ? "Mark all round and cut by hand." : end.how();
            return new Key(true, "by hand", end.tiltDeg(), end.fenceDeg(), Length.ZERO, how);
        }
        Length stop = saw.hasStop() ? piece.length() : Length.ZERO;
        return new Key(false, saw.name(), end.tiltDeg(), end.fenceDeg(), stop, "");
    }

    private @Nullable SectionNote section(Piece piece) {
        return job.sections().stream()
                .filter(s -> s.name().equals(piece.section()))
                .findFirst()
                .orElse(null);
    }

    /** Index of the set-up that cuts the right end of a piece. */
    int indexOf(Piece piece) {
        Key wanted = key(piece, piece.right());
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
        labels.forEach((key, pieces) -> list.add(new CuttingPlan.SetUp(
                list.size() + 1, key.saw, key.tiltDeg, key.fenceDeg, key.stop, pieces, words(key))));
        return list;
    }

    private static String words(Key key) {
        if (key.hand) {
            return key.words;
        }
        String angle = key.tiltDeg == 0 && key.fenceDeg == 0
                ? "square: blade upright, fence at 0 deg from square"
                : "blade " + degrees(key.tiltDeg) + " deg from upright, fence " + degrees(key.fenceDeg)
                        + " deg from square";
        String stop = key.stop.ticks() > 0
                ? "; stop at " + BigDecimal.valueOf(key.stop.mm()).setScale(1, RoundingMode.HALF_UP) + " mm"
                : "; mark each length";
        return "Set the " + key.saw + " " + angle + stop + ". Make one test cut and measure it.";
    }

    private static String degrees(double angle) {
        return BigDecimal.valueOf(angle).setScale(1, RoundingMode.HALF_UP).toPlainString();
    }
}
