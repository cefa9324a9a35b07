package borderwright.pack.sheets.saw;

import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.cutting.SawSetting;
import borderwright.engine.cutting.SawSetting.CutFor;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.message.Message;
import borderwright.pack.alike.PartLabels;
import borderwright.pack.figures.PrintedFigures;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * A set-up card as it is printed: all that a person at the saw is given.
 *
 * @param number of the set-up
 * @param title its number with the saw, or with how the cut is made by hand
 * @param stop where the stop is set; empty where there is none
 * @param how how saw and board lie, and what is kept
 * @param pieces what is cut, by planter; in short where they are counted
 * @param countWords how many
 * @param tally numbers to tick while cutting; none where each piece has a tick of its own
 */
public record CardText(
        int number, String title, String stop, How how, List<Pieces> pieces, String countWords, Tally tally) {
    /** An angle that prints as 0.0 is square. */
    private static final double LEAST_SHOWN_DEG = 0.05;

    /** So many numbers to tick are found at a glance. */
    private static final int MOST_TICKS = 30;

    /**
     * How saw and board lie.
     *
     * @param to which point of the cut the stop, or the mark by hand, is for; empty for a new square end
     * @param setting how blade and fence stand, or how the cut is made by hand
     * @param face which face is up; empty for a square cut
     * @param keep which side of the cut is kept
     */
    public record How(String to, String setting, String face, String keep) {}

    /**
     * Pieces of one planter.
     *
     * @param planter whose they are; empty where each names its own, or is marked by hand and has its length beside it
     * @param parts what they are called in it
     */
    public record Pieces(String planter, List<String> parts) {
        public Pieces {
            parts = List.copyOf(parts);
        }
    }

    /**
     * Numbers to tick while cutting.
     *
     * @param words what stands before them
     * @param numbers how many are cut by then
     */
    public record Tally(String words, List<Integer> numbers) {
        public Tally {
            numbers = List.copyOf(numbers);
        }
    }

    public CardText {
        pieces = List.copyOf(pieces);
    }

    /** A card of a plan. */
    public static CardText of(CuttingPlan.SetUp setUp, CuttingPlan cutting, PrintedFigures f) {
        SawSetting setting = setUp.setting();
        boolean square = setting.faceUp() == SawSetting.FaceUp.EITHER;
        boolean counted = PartLabels.areMany(setUp.labels());
        Message byHand = setUp.byHand();
        Message atSaw = setUp.kind() == null ? byHand(setting) : atSaw(setUp.kind(), setting);
        return new CardText(
                setUp.number(),
                f.text(CardMessage.CARD_TITLE.of(
                        setUp.number(), byHand == null ? setUp.saw() : f.text(byHand(setting)))),
                setUp.stop().ticks() > 0 ? f.piece(setUp.stop()) : "",
                new How(
                        setting.cutFor() == CutFor.FRESH_END && square ? "" : f.sentence(f.text(to(setUp))),
                        f.sentence(f.text(byHand == null ? atSaw : byHand)),
                        square ? "" : f.sentence(f.text(CardMessage.FACE_UP.of(setting.faceUp()))),
                        f.sentence(f.text(CardMessage.CUT_FOR.of(setting.cutFor())))),
                counted ? List.of(new Pieces("", inShort(setUp, cutting, f))) : named(setUp, cutting, f),
                f.text(CardMessage.CARD_PIECES.of(setUp.labels().size())),
                new Tally(
                        f.text(CardMessage.TICK_AS_YOU_CUT.of()),
                        counted ? tally(setUp.labels().size()) : List.of()));
    }

    private static Message to(CuttingPlan.SetUp setUp) {
        String point = longPoint(setUp.setting());
        if (setUp.setting().cutFor() == CutFor.FRESH_END) {
            return CardMessage.NEW_END_AT.of(point);
        }
        return setUp.stop().ticks() > 0 ? CardMessage.STOP_TO.of(point) : CardMessage.MARK_TO.of(point);
    }

    /** The long point of the cut: of what lies left of the blade for a piece, right of it for a fresh end. */
    private static String longPoint(SawSetting setting) {
        boolean right = (setting.lean() == SawSetting.Lean.RIGHT) == (setting.cutFor() == CutFor.PIECE);
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return right ? "top" : "bottom";
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG ? right ? "far" : "near" : "all";
    }

    private static Message atSaw(SawKind kind, SawSetting setting) {
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return CardMessage.SAW_TILTED.of(kind, setting.tiltDeg(), setting.lean());
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG
                ? CardMessage.SAW_TURNED.of(kind, setting.fenceDeg(), setting.lean())
                : CardMessage.SAW_SQUARE.of();
    }

    private static Message byHand(SawSetting setting) {
        if (setting.tiltDeg() >= LEAST_SHOWN_DEG) {
            return CardMessage.HAND_BEVEL.of(setting.tiltDeg(), setting.lean());
        }
        return setting.fenceDeg() >= LEAST_SHOWN_DEG
                ? CardMessage.HAND_MITRE.of(setting.fenceDeg(), setting.lean())
                : CardMessage.HAND_SQUARE.of();
    }

    /** Whether each piece is marked by hand, so that the card gives its length. */
    private static boolean isMarked(CuttingPlan.SetUp setUp) {
        return setUp.stop().ticks() == 0 && setUp.setting().cutFor() == CutFor.PIECE;
    }

    private static List<Pieces> named(CuttingPlan.SetUp setUp, CuttingPlan cutting, PrintedFigures f) {
        if (isMarked(setUp)) {
            return List.of(new Pieces(
                    "",
                    setUp.labels().stream()
                            .map(label -> label + " " + length(label, cutting, f))
                            .toList()));
        }
        return PartLabels.byPlanter(setUp.labels()).entrySet().stream()
                .map(planter -> new Pieces(planter.getKey(), planter.getValue()))
                .toList();
    }

    private static List<String> inShort(CuttingPlan.SetUp setUp, CuttingPlan cutting, PrintedFigures f) {
        if (!isMarked(setUp)) {
            return PartLabels.inShort(setUp.labels());
        }
        Map<String, List<String>> byLength = new LinkedHashMap<>();
        setUp.labels()
                .forEach(label -> byLength.computeIfAbsent(length(label, cutting, f), k -> new ArrayList<>())
                        .add(label));
        List<String> lines = new ArrayList<>();
        byLength.forEach((length, labels) -> lines.add(length + ": " + String.join("; ", PartLabels.inShort(labels))));
        return lines;
    }

    private static String length(String label, CuttingPlan cutting, PrintedFigures f) {
        return cutting.boards().stream()
                .flatMap(board -> board.cuts().stream())
                .filter(cut -> cut.label().equals(label))
                .map(cut -> f.piece(cut.length()))
                .findFirst()
                .orElse("");
    }

    /** Even steps up to all: by fives where they fit. */
    private static List<Integer> tally(int all) {
        int step = 5;
        while (all / step > MOST_TICKS) {
            step *= 2;
        }
        List<Integer> tally = new ArrayList<>();
        for (int count = step; count < all; count += step) {
            tally.add(count);
        }
        tally.add(all);
        return tally;
    }
}
