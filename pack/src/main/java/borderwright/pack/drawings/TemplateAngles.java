package borderwright.pack.drawings;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.UnitSystem;
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

    private static final int MOST_NAMES = 6;

    public TemplateAngles {
        where = List.copyOf(where);
    }

    /** What an angle is an angle of. */
    public enum Kind {
        CORNER,
        BLADE,
        FENCE,
        RIP
    }

    /** All corners and saw settings of a plan that are not square, each once. */
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
        for (Box box : plan.boxes()) {
            for (Piece piece : box.pieces()) {
                cut(all, piece.left(), piece.label());
                cut(all, piece.right(), piece.label());
                if (piece.rip() != null) {
                    add(all, Kind.RIP, piece.rip().tiltDeg(), piece.label());
                }
            }
        }
        return all;
    }

    private static void cut(List<TemplateAngles> all, EndCut cut, String label) {
        add(all, Kind.BLADE, cut.tiltDeg(), label);
        add(all, Kind.FENCE, cut.fenceDeg(), label);
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
    public Drawing draw(UnitSystem units, double widthMm) {
        double degrees = angle.degrees();
        String names = names(PrintedFigures.in(units));
        return switch (kind) {
            case CORNER ->
                AngleTemplate.corner(angle, DrawingMessage.TEMPLATE_OF_CORNER.of(degrees, names), units, widthMm);
            case BLADE ->
                AngleTemplate.setting(angle, DrawingMessage.TEMPLATE_OF_BLADE.of(degrees, names), units, widthMm);
            case FENCE ->
                AngleTemplate.setting(angle, DrawingMessage.TEMPLATE_OF_FENCE.of(degrees, names), units, widthMm);
            case RIP -> AngleTemplate.setting(angle, DrawingMessage.TEMPLATE_OF_RIP.of(degrees, names), units, widthMm);
        };
    }

    private String names(PrintedFigures f) {
        String first = String.join(", ", where.subList(0, StrictMath.min(MOST_NAMES, where.size())));
        return where.size() > MOST_NAMES
                ? f.text(DrawingMessage.TEMPLATE_NAMES_AND_MORE.of(first, Integer.toString(where.size() - MOST_NAMES)))
                : first;
    }
}
