package borderwright.pack.sheets;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.layout.run.LayoutNote;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.alike.Alike;
import borderwright.pack.drawings.PlanDrawing;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.paper.Orientation;
import java.util.ArrayList;
import java.util.List;

/**
 * The whole garden from above.
 *
 * @param plan the plan
 * @param drawing plan drawing
 * @param fronts one elevation for each front
 * @param orientation which way its pages lie
 */
public record PlanSheet(Plan plan, Drawing drawing, List<Drawing> fronts, Orientation orientation) implements Sheet {
    public PlanSheet {
        fronts = List.copyOf(fronts);
    }

    @Override
    public String title() {
        return "Plan and elevations";
    }

    @Override
    public Part part() {
        return Part.BRIEF;
    }

    /** Whether the drawing names the sides and dividers of the boxes. */
    public boolean namesSides() {
        return PlanDrawing.namesSides(plan);
    }

    /** Boxes of which the table says the same. */
    public List<Alike<Box>> boxes(PrintedFigures f) {
        return Alike.group(
                plan.boxes(),
                box -> box.plan().name(),
                box -> fronts(box, f)
                        + f.length(box.builtMm())
                        + f.length(box.plan().bedMm())
                        + f.length(heights(box).soilMm())
                        + f.text(heights(box).rim().inWords())
                        + f.length(box.plan().platformMm())
                        + box.plan().capped()
                        + (box.plan().planters().size() > 1 ? box.plan().name() : ""));
    }

    /** What the layout says that the table does not: heights of stepped boxes stand there, and on the ground sheet. */
    public List<Message> notes() {
        return plan.layout().notes().stream()
                .filter(note -> note.code() != LayoutNote.LAYOUT_STEPPED_BOX)
                .toList();
    }

    /** Heights of a box as built. */
    public RimHeight heights(Box box) {
        return plan.site().planting().rims().get(plan.boxes().indexOf(box));
    }

    /** Lengths of a box's fronts. */
    public String fronts(Box box, PrintedFigures f) {
        List<String> fronts = new ArrayList<>();
        for (int i = 0; i < box.plan().sides().size(); i++) {
            if (box.plan().sides().get(i).role() == SidePlan.Role.FRONT) {
                fronts.add(f.length(box.plan().outline().sideMm(i)));
            }
        }
        return String.join(" + ", fronts);
    }
}
