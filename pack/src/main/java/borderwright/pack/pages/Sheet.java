package borderwright.pack.pages;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.filling.Filling;
import borderwright.engine.filling.Weights;
import borderwright.engine.garden.SectionNote;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.Plan;
import borderwright.engine.settingout.PegList;
import borderwright.engine.settingout.PegString;
import borderwright.engine.strength.SideBow;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.worked.Check;
import borderwright.pack.paper.Drawing;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** One sheet of the pack, of one page or more: what its page template needs. */
public sealed interface Sheet {
    /** Its name, at the head of each of its pages. */
    String title();

    /** Whether it lies on its long side. */
    default boolean wide() {
        return false;
    }

    /**
     * Totals, budget, and what to look at, on one page.
     *
     * @param plan the plan
     * @param variants the garden and its variants side by side; none when there are no variants
     * @param date the day that the pack is dated
     */
    record Brief(Plan plan, Comparison variants, Optional<LocalDate> date) implements Sheet {
        @Override
        public String title() {
            return "Brief";
        }
    }

    /**
     * What was measured and how well it agrees.
     *
     * @param plan the plan
     * @param drawing sketch with readings and uncertainties
     */
    record SurveySheet(Plan plan, Drawing drawing) implements Sheet {
        @Override
        public String title() {
            return "Survey sheet";
        }
    }

    /**
     * Where the pegs go.
     *
     * @param list every peg
     * @param strings along rows of boxes
     * @param drawing which is which
     */
    record Pegs(PegList list, List<PegString> strings, Drawing drawing) implements Sheet {
        /** So many distances can still be ticked one by one. */
        private static final int MOST_CHECKS = 24;

        public Pegs {
            strings = List.copyOf(strings);
        }

        @Override
        public String title() {
            return "Peg list";
        }

        /** Pegs that are set out from known points: all but those along a string. */
        public List<PegList.Peg> fromKnownPoints() {
            Set<Integer> along = new TreeSet<>();
            strings.forEach(string -> string.stops().forEach(stop -> along.add(stop.peg())));
            strings.forEach(string -> along.remove(string.last()));
            return list.pegs().stream()
                    .filter(peg -> !along.contains(peg.number()))
                    .toList();
        }

        /** Strings on which the tape is read at the same places. */
        public List<List<PegString>> alikeStrings(PrintedFigures f) {
            Map<String, List<PegString>> alike = new LinkedHashMap<>();
            strings.forEach(string -> alike.computeIfAbsent(readings(string, f), k -> new ArrayList<>())
                    .add(string));
            return List.copyOf(alike.values());
        }

        /** Where the tape is read along a string. */
        public String readings(PegString string, PrintedFigures f) {
            return String.join(
                    ", ",
                    string.stops().stream()
                            .map(stop -> f.length(stop.alongMm()))
                            .toList());
        }

        /** Boxes along a string, in short. */
        public String names(PegString string) {
            return Alike.said(string.boxes());
        }

        public boolean groupsChecks() {
            return list.checks().size() > MOST_CHECKS;
        }

        /** Distances to check that read the same, with their boxes. */
        public List<Alike<PegList.Check>> checks(PrintedFigures f) {
            return Alike.group(list.checks(), PegList.Check::box, check -> f.length(check.distanceMm()));
        }
    }

    /**
     * Angles at full size.
     *
     * @param drawings one for each angle
     */
    record AngleTemplates(List<Drawing> drawings) implements Sheet {
        public AngleTemplates {
            drawings = List.copyOf(drawings);
        }

        @Override
        public String title() {
            return "Angle templates, full size";
        }
    }

    /**
     * One card for each saw set-up.
     *
     * @param plan the plan
     */
    record SetUpCards(Plan plan) implements Sheet {
        @Override
        public String title() {
            return "Saw set-up cards";
        }

        /** Cards side by side, in the order of work. */
        public List<List<CuttingPlan.SetUp>> rows() {
            return CardRows.of(plan.cutting().setUps());
        }

        /** Whether a row holds one card across the whole page. */
        public boolean isWide(List<CuttingPlan.SetUp> row) {
            return CardRows.isWide(row);
        }

        /** Whether a card counts its pieces instead of naming each. */
        public boolean counts(CuttingPlan.SetUp setUp) {
            return PartLabels.areMany(setUp.labels());
        }

        /** What a card's pieces are, in short; where they are marked by hand with the length of each. */
        public List<String> parts(CuttingPlan.SetUp setUp, PrintedFigures f) {
            if (setUp.stop().ticks() > 0) {
                return PartLabels.said(setUp.labels());
            }
            Map<String, List<String>> byLength = new LinkedHashMap<>();
            setUp.labels()
                    .forEach(label -> byLength.computeIfAbsent(length(label, f), k -> new ArrayList<>())
                            .add(label));
            List<String> lines = new ArrayList<>();
            byLength.forEach((length, labels) -> lines.add(length + ": " + String.join("; ", PartLabels.said(labels))));
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

        /** Marks to tick while cutting, at even steps up to all: no more than fit on a line or two. */
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

    /**
     * The whole garden from above.
     *
     * @param plan the plan
     * @param drawing plan drawing
     * @param fronts one elevation for each front
     */
    record PlanView(Plan plan, Drawing drawing, List<Drawing> fronts) implements Sheet {
        public PlanView {
            fronts = List.copyOf(fronts);
        }

        @Override
        public String title() {
            return "Plan and fronts";
        }

        /** Boxes of which the table says the same. */
        public List<Alike<Box>> boxes(PrintedFigures f) {
            return Alike.group(
                    plan.boxes(),
                    box -> box.plan().name(),
                    box -> f.fronts(box)
                            + f.length(box.plan().heightMm())
                            + f.length(box.plan().bedMm())
                            + f.length(box.soilDepthMm())
                            + f.length(box.plan().platformMm())
                            + box.plan().capped()
                            + (box.plan().planters().size() > 1 ? box.plan().name() : ""));
        }

        @Override
        public boolean wide() {
            return true;
        }
    }

    /**
     * Boxes that are all alike: their layers and their pieces.
     *
     * @param alike the boxes, the first stands for all
     * @param layers one drawing for each layer
     * @param wide whether the box is so long that it needs the long side of the paper
     */
    record BoxSheet(List<Box> alike, List<Drawing> layers, boolean wide, Map<String, SectionNote> sections)
            implements Sheet {
        public BoxSheet {
            alike = List.copyOf(alike);
            layers = List.copyOf(layers);
        }

        @Override
        public String title() {
            return alike.size() == 1
                    ? "Box " + first().plan().name()
                    : alike.size() + " boxes like " + first().plan().name();
        }

        public Box first() {
            return alike.get(0);
        }

        /** Names of all of them, in short. */
        public String names() {
            return Alike.said(alike.stream().map(box -> box.plan().name()).toList());
        }

        /** What a piece weighs as it arrives, and who should lift it where that is more than one person's. */
        public String weight(Piece piece, PrintedFigures f) {
            double kg = Weights.pieceKg(piece, sections);
            return kg == 0 ? "" : f.pieceWeight(kg) + (kg > Filling.LIFT_KG ? ", two people" : "");
        }

        /** Pieces of the first box by what they do. */
        public List<PieceGroup> pieces() {
            return PieceGroup.of(first().pieces());
        }

        /** Which face of each piece goes out. */
        public List<String> faces() {
            return AlikePieces.faces(first().pieces());
        }
    }

    /**
     * What is known of the strength of boxes that are all alike.
     *
     * @param alike the boxes
     * @param report of the weakest of them
     * @param bows a drawing of each side that bows
     * @param currency code of the money that the cost of each way to build it is in
     */
    record StrengthSheet(List<Box> alike, StrengthReport report, List<Drawing> bows, String currency) implements Sheet {
        private static final int LEAST_SHOWN = 3;

        private static final double WORTH_SHOWING = 0.1;

        public StrengthSheet {
            alike = List.copyOf(alike);
            bows = List.copyOf(bows);
        }

        @Override
        public String title() {
            return "Strength of " + report.box();
        }

        /** Checks that use a tenth or more of what there is, and always the first few. */
        public List<Check> shown() {
            List<Check> shown = new ArrayList<>();
            for (Check check : report.checks()) {
                if (shown.size() < LEAST_SHOWN || check.utilisation() >= WORTH_SHOWING) {
                    shown.add(check);
                }
            }
            return shown;
        }

        /** Sides that read the same, with their letters. */
        public List<Alike<SideBow>> sides(PrintedFigures f) {
            return Alike.group(
                    report.sides(),
                    SideBow::letter,
                    s -> f.error(s.finalMm())
                            + s.course()
                            + f.length(s.alongMm())
                            + f.error(s.passingMm())
                            + s.holds());
        }

        /** What the verdict speaks of. */
        public String names() {
            return alike.size() == 1
                    ? "Box " + report.box()
                    : report.box() + ", the weakest of " + alike.size() + " boxes built alike";
        }
    }

    /**
     * The most used checks of the weakest box step by step, and what all checks take for granted.
     *
     * @param report of the weakest box
     * @param taken sentences of all boxes, each once
     */
    record StrengthSteps(StrengthReport report, List<String> taken) implements Sheet {
        /** Checks that are printed step by step; the others stand in plan.json. */
        private static final int WORKED = 3;

        public StrengthSteps {
            taken = List.copyOf(taken);
        }

        @Override
        public String title() {
            return "Strength, step by step";
        }

        public List<Check> worked() {
            return report.checks().stream().limit(WORKED).toList();
        }
    }

    /**
     * Every board with its pieces.
     *
     * @param boards in the order in which they are cut
     * @param plan the plan
     */
    record CuttingSheet(List<BoardCard> boards, Plan plan) implements Sheet {
        public CuttingSheet {
            boards = List.copyOf(boards);
        }

        @Override
        public String title() {
            return "Cutting sheets";
        }
    }

    /**
     * What to buy, from whom.
     *
     * @param plan the plan
     */
    record Shopping(Plan plan) implements Sheet {
        @Override
        public String title() {
            return "Shopping list";
        }
    }

    /** A sheet of what is done to the site besides wood; see {@link SiteSheet}. */
    non-sealed interface Site extends Sheet {}
}
