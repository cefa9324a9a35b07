package borderwright.pack.pages;

import borderwright.engine.buildup.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.plan.Comparison;
import borderwright.engine.plan.PegList;
import borderwright.engine.plan.Plan;
import borderwright.engine.strength.StrengthReport;
import borderwright.engine.strength.worked.Check;
import borderwright.pack.paper.Drawing;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

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
     * @param drawing which is which
     */
    record Pegs(PegList list, Drawing drawing) implements Sheet {
        @Override
        public String title() {
            return "Peg list";
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
    record BoxSheet(List<Box> alike, List<Drawing> layers, boolean wide) implements Sheet {
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
        /** Checks that are printed step by step; the others stand in plan.json. */
        private static final int WORKED = 3;

        public StrengthSheet {
            alike = List.copyOf(alike);
            bows = List.copyOf(bows);
        }

        @Override
        public String title() {
            return "Strength of " + report.box();
        }

        /** What the verdict speaks of. */
        public String names() {
            return alike.size() == 1
                    ? "Box " + report.box()
                    : "The weakest of " + alike.size() + " boxes that are built alike, " + report.box() + ",";
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
     * Boards that are cut alike, drawn once.
     *
     * @param alike the boards, in the order in which they are cut
     * @param drawing one for all: it names the pieces of a single board, and numbers those of several
     */
    record BoardCard(List<CuttingPlan.BoardCuts> alike, Drawing drawing) {
        public BoardCard {
            alike = List.copyOf(alike);
        }

        public CuttingPlan.BoardCuts first() {
            return alike.get(0);
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
