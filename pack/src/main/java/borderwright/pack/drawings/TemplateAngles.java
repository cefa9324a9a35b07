package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.plan.Plan;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.List;

/**
 * One angle of a plan that needs a template.
 *
 * @param kind what it is an angle of
 * @param angle inside the planter for a corner, from square for a saw
 * @param where boxes or pieces that have it, the first few by name
 */
public record TemplateAngles(Kind kind, Angle angle, List<String> where) {
    /** Angles nearer than this are one template: no saw is set finer. */
    private static final double SAME_DEG = 0.05;

    /** Between the marks of a base plate that can be trusted (common practice, no source). */
    private static final double MARKS_DEG = 5;

    private static final int MOST_NAMES = 2;

    public TemplateAngles {
        where = List.copyOf(where);
    }

    /** What an angle is an angle of. */
    public enum Kind {
        CORNER,
        CUT
    }

    /** All corners of a plan that are not square, and all slanted cuts that no scale of a saw sets; each angle once. */
    public static List<TemplateAngles> of(Plan plan) {
        List<TemplateAngles> all = new ArrayList<>();
        for (Box box : plan.boxes()) {
            Ring ring = box.plan().outline();
            for (int i = 0; i < ring.size(); i++) {
                double degrees = new Angle(ring.insideAngle(i)).degrees();
                if (StrictMath.abs(degrees - 90) > SAME_DEG) {
                    add(all, Kind.CORNER, degrees, box.plan().name());
                }
            }
        }
        for (CuttingPlan.SetUp setUp : plan.cutting().setUps()) {
            SawKind kind = setUp.kind();
            boolean byHand = kind == null || kind == SawKind.HANDSAW;
            for (String label : setUp.labels()) {
                // The guide of a circular saw has no scale; that of its base plate is marked every 5 degrees at best.
                if (byHand
                        || (kind == SawKind.CIRCULAR_SAW
                                && !isMarked(setUp.setting().tiltDeg()))) {
                    add(all, Kind.CUT, setUp.setting().tiltDeg(), label);
                }
                if (byHand || kind == SawKind.CIRCULAR_SAW) {
                    add(all, Kind.CUT, setUp.setting().fenceDeg(), label);
                }
            }
        }
        return all;
    }

    private static boolean isMarked(double tiltDeg) {
        return StrictMath.abs(tiltDeg - StrictMath.rint(tiltDeg / MARKS_DEG) * MARKS_DEG) < SAME_DEG;
    }

    private static void add(List<TemplateAngles> all, Kind kind, double degrees, String name) {
        if (degrees < SAME_DEG) {
            return;
        }
        for (int i = 0; i < all.size(); i++) {
            TemplateAngles there = all.get(i);
            if (there.kind == kind && StrictMath.abs(there.angle.degrees() - degrees) < SAME_DEG) {
                List<String> names = new ArrayList<>(there.where);
                if (!names.contains(name)) {
                    names.add(name);
                }
                all.set(i, new TemplateAngles(kind, there.angle, names));
                return;
            }
        }
        all.add(new TemplateAngles(kind, Angle.ofDegrees(degrees), List.of(name)));
    }

    /** The template itself. */
    public Drawing draw(AngleTemplate.Bars bars, UnitSystem units, double widthMm) {
        return kind == Kind.CORNER
                ? AngleTemplate.corner(this, bars, units, widthMm)
                : AngleTemplate.setting(this, bars, units, widthMm);
    }

    /** What it is an angle of, and how large. */
    Message title() {
        return switch (kind) {
            case CORNER -> DrawingMessage.TEMPLATE_OF_CORNER.of(angle.degrees());
            case CUT -> DrawingMessage.TEMPLATE_OF_CUT.of(angle.degrees());
        };
    }

    /** The boxes or pieces that have it, the first few by name. */
    String names(PrintedFigures f) {
        String first = String.join(", ", where.subList(0, StrictMath.min(MOST_NAMES, where.size())));
        return where.size() > MOST_NAMES
                ? f.text(DrawingMessage.TEMPLATE_NAMES_AND_MORE.of(first, Integer.toString(where.size() - MOST_NAMES)))
                : first;
    }
}
