package borderwright.pack.sheets;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.SawSetting;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;

/**
 * One card for each saw set-up.
 *
 * @param plan the plan
 * @param drawings one for each set-up, in order
 */
public record SetUpSheet(Plan plan, List<Drawing> drawings) implements Sheet {
    public SetUpSheet {
        drawings = List.copyOf(drawings);
    }

    /** An angle that prints as 0.0 is square. */
    private static final double LEAST_SHOWN_DEG = 0.05;

    @Override
    public String title() {
        return "Saw set-up cards";
    }

    @Override
    public Part part() {
        return Part.SAW;
    }

    /** The board as it lies on the saw. */
    public Drawing drawing(CuttingPlan.SetUp setUp) {
        return drawings.get(setUp.number() - 1);
    }

    /** Cards side by side, in the order of work. */
    public List<List<CuttingPlan.SetUp>> rows() {
        return CardRows.of(plan.cutting().setUps());
    }

    /** Whether a row holds one card across the whole page. */
    public boolean isWide(List<CuttingPlan.SetUp> row) {
        return CardRows.isWide(row);
    }

    /** The saw of a card, or the cut that is made without one. */
    public String heading(CuttingPlan.SetUp setUp, PrintedFigures f) {
        return setUp.byHand() == null ? setUp.saw() : f.text(byHand(setUp.setting()));
    }

    /** How blade and fence stand. */
    public String setting(CuttingPlan.SetUp setUp, PrintedFigures f) {
        return f.text(setUp.kind() == null ? byHand(setUp.setting()) : atSaw(setUp.kind(), setUp.setting()));
    }

    /** Which face is up. */
    public String face(CuttingPlan.SetUp setUp, PrintedFigures f) {
        return f.text(CardMessage.FACE_UP.of(setUp.setting().faceUp()));
    }

    /** Which side of the cut is kept. */
    public String keep(CuttingPlan.SetUp setUp, PrintedFigures f) {
        return f.text(CardMessage.CUT_FOR.of(setUp.setting().cutFor()));
    }

    /** To which point of the cut the stop is measured. */
    public String stopTo(CuttingPlan.SetUp setUp, PrintedFigures f) {
        return f.text(CardMessage.STOP_TO.of(longPoint(setUp.setting())));
    }

    /** What is kept lies left of the blade: a cut that leans right has its long point at the top, or at the far edge. */
    private static String longPoint(SawSetting setting) {
        boolean right = setting.lean() == SawSetting.Lean.RIGHT;
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return right ? "top" : "bottom";
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG ? right ? "far" : "near" : "all";
    }

    /** Whether a piece is cut to length, not a fresh end. */
    public boolean isForPiece(CuttingPlan.SetUp setUp) {
        return setUp.setting().cutFor() == SawSetting.CutFor.PIECE;
    }

    private static Message atSaw(SawKind kind, SawSetting setting) {
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return CardMessage.SAW_TILTED.of(kind, setting.tiltDeg(), lean(setting));
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG
                ? CardMessage.SAW_TURNED.of(kind, setting.fenceDeg(), lean(setting))
                : CardMessage.SAW_SQUARE.of();
    }

    private static Message byHand(SawSetting setting) {
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return CardMessage.HAND_BEVEL.of(setting.tiltDeg(), lean(setting));
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG
                ? CardMessage.HAND_MITRE.of(setting.fenceDeg(), lean(setting))
                : CardMessage.HAND_SQUARE.of();
    }

    private static String lean(SawSetting setting) {
        return setting.lean().name().toLowerCase(Locale.ROOT);
    }

    /** Whether a card counts its pieces instead of naming each. */
    public boolean counts(CuttingPlan.SetUp setUp) {
        return PartLabels.areMany(setUp.labels());
    }

    /** What a card's pieces are, in short; where they are marked by hand with the length of each. */
    public List<String> parts(CuttingPlan.SetUp setUp, PrintedFigures f) {
        if (setUp.stop().ticks() > 0 || !isForPiece(setUp)) {
            return PartLabels.inShort(setUp.labels());
        }
        Map<String, List<String>> byLength = new LinkedHashMap<>();
        setUp.labels()
                .forEach(label -> byLength.computeIfAbsent(length(label, f), k -> new ArrayList<>())
                        .add(label));
        List<String> lines = new ArrayList<>();
        byLength.forEach((length, labels) -> lines.add(length + ": " + String.join("; ", PartLabels.inShort(labels))));
        return lines;
    }

    /** The length at which a piece is cut, long point to long point; empty for one that no board gives. */
    public String length(String label, PrintedFigures f) {
        return plan.cutting().boards().stream()
                .flatMap(board -> board.cuts().stream())
                .filter(cut -> cut.label().equals(label))
                .map(cut -> f.piece(cut.length()))
                .findFirst()
                .orElse("");
    }

    /** Numbers to tick while cutting, at even steps up to all: no more than fit on a line or two. */
    public List<Integer> tally(CuttingPlan.SetUp setUp) {
        List<Integer> tally = new ArrayList<>();
        int all = setUp.labels().size();
        int step = all > 300 ? 50 : all > 120 ? 20 : 10;
        for (int count = step; count < all; count += step) {
            tally.add(count);
        }
        tally.add(all);
        return tally;
    }
}
