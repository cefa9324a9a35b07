package borderwright.pack.sheets.site;

import borderwright.engine.ground.BoxGround;
import borderwright.engine.ground.SheetPlan;
import borderwright.engine.ground.SiteClearance;
import borderwright.engine.plan.Plan;
import borderwright.engine.planting.RimHeight;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.ArrayList;
import java.util.List;

/**
 * What is dug and laid.
 *
 * @param plan the plan
 * @param drawing the bed cut through; on hard ground the feet from above, each with its height
 */
public record GroundSheet(Plan plan, Drawing drawing) implements Sheet {
    @Override
    public String title() {
        return "Digging and bed";
    }

    @Override
    public Part part() {
        return Part.GARDEN;
    }

    /** Boxes whose ground reads the same. */
    public List<Alike<BoxGround>> boxes(PrintedFigures f) {
        return Alike.group(
                plan.site().ground().boxes(),
                BoxGround::box,
                b -> f.lengths().area(b.areaM2())
                        + f.roughVolume(b.dugM3())
                        + f.roughVolume(b.gravelM3())
                        + f.length(b.dugToMm())
                        + f.length(b.bedMm()));
    }

    /** Boxes whose corners read the same. */
    public List<Alike<BoxGround>> corners(PrintedFigures f) {
        return Alike.group(plan.site().ground().boxes(), BoxGround::box, b -> corners(f, b));
    }

    private static String corners(PrintedFigures f, BoxGround box) {
        StringBuilder out = new StringBuilder();
        box.corners().forEach(c -> out.append('|').append(f.dig(c.cutMm())).append(f.dig(c.fillMm())));
        return out.toString();
    }

    /** What planters keep clear of, those that read the same in one row. */
    public List<Alike<SiteClearance>> clearances(PrintedFigures f) {
        return Alike.group(
                plan.site().ground().clearances(),
                SiteClearance::box,
                c -> f.text(c.what())
                        + '|'
                        + f.text(c.from())
                        + '|'
                        + f.length(c.wantedMm())
                        + '|'
                        + f.length(c.gotMm())
                        + '|'
                        + c.verdict());
    }

    /** A verdict in words. */
    public static String words(SiteClearance.Verdict verdict) {
        return switch (verdict) {
            case HOLDS -> "holds";
            case DOES_NOT_HOLD -> "does not hold";
            case NOT_SHOWN -> "not shown to hold";
        };
    }

    /** Boxes whose sides stand alike in the ground. */
    public List<Alike<BoxGround>> sides(PrintedFigures f) {
        return Alike.group(plan.site().ground().boxes(), BoxGround::box, b -> {
            StringBuilder out = new StringBuilder();
            b.sides()
                    .forEach(s -> out.append(f.text(RimHeight.AboveGround.of(s).inWords()))
                            .append(s.buried())
                            .append(s.partBuried())
                            .append('|'));
            return out.toString();
        });
    }

    /** How far the rim stands above the ground before each side, capping included; given once where all are alike. */
    public String shown(BoxGround box, PrintedFigures f) {
        List<String> sides = box.sides().stream()
                .map(s -> f.text(RimHeight.AboveGround.of(s).inWords()))
                .toList();
        return perSide(sides);
    }

    /** Courses in the ground; empty where none is. */
    public String courses(BoxGround box) {
        List<String> sides = box.sides().stream()
                .map(s -> s.buried() + s.partBuried() == 0
                        ? "none"
                        : (s.buried() > 0 ? s.buried() + " buried" : "")
                                + (s.buried() > 0 && s.partBuried() > 0 ? ", " : "")
                                + (s.partBuried() > 0 ? s.partBuried() + " partly" : ""))
                .toList();
        return perSide(sides);
    }

    private static String perSide(List<String> sides) {
        if (sides.stream().distinct().count() == 1) {
            return "every side: " + sides.get(0);
        }
        List<String> named = new ArrayList<>();
        for (int i = 0; i < sides.size(); i++) {
            named.add("side " + (char) ('a' + i) + ": " + sides.get(i));
        }
        return String.join("; ", named);
    }

    /** Strips of the membrane that are alike, box by box. */
    public List<Alike<SheetPlan.Strip>> strips(PrintedFigures f) {
        return Alike.group(
                plan.site().ground().sheet().orElseThrow().strips(),
                s -> s.box() + ", roll " + s.roll(),
                s -> f.length(s.lengthMm()) + f.length(s.widthMm()));
    }
}
