package borderwright.engine.buildup.floor;

import borderwright.engine.buildup.draft.Draft;
import borderwright.engine.buildup.draft.PieceMaker;
import borderwright.engine.buildup.parts.BuildMessage;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * The false floor: slats across bearers, bearers on legs, legs on the bed.
 *
 * <p>A planter that turns a corner is floored in parts ({@link ConvexParts}). In each part the slats run along its
 * longest side and the bearers across, unless in a rectangle whole slats leave much wider gaps that way. A bearer stands
 * on edge where the legs below it are then long enough to be cut, or none are needed; else it lies flat. The slats' gaps
 * are made equal, no less than requested.
 */
public final class FalseFloor {
    private static final double MOST_BEARER_SPACING_MM = 500;

    /** Legs shorter than this split when they are screwed (common practice, no source). */
    private static final double SHORTEST_LEG_MM = 60;

    /** Slats are turned across rather than leave gaps more than this many times the gap requested. */
    private static final double WIDE_GAPS = 2;

    /** Slats stand out no more than this beyond the last bearer, mm. */
    private static final double OVERHANG_MM = 100;

    /** The floor lies at least this far below the rim, mm. */
    private static final double BELOW_RIM_MM = 50;

    private final Draft draft;

    public FalseFloor(Draft draft) {
        this.draft = draft;
    }

    /**
     * How bearers lie.
     *
     * @param flat whether they lie on their wide face
     * @param acrossMm their width on the plan
     * @param heightMm their height
     * @param legMm height of the legs under them, 0 for none
     */
    record Lay(boolean flat, double acrossMm, double heightMm, double legMm) {
        static Lay onEdge(double acrossMm, double heightMm, double legMm) {
            return new Lay(false, acrossMm, heightMm, legMm);
        }

        static Lay flat(double acrossMm, double heightMm, double legMm) {
            return new Lay(true, acrossMm, heightMm, legMm);
        }
    }

    /**
     * Lays it where one is requested.
     *
     * @return height of its top above the bed, mm, 0 for none
     */
    public double build(PieceMaker maker) {
        double wanted = draft.plan.platformMm();
        if (wanted <= 0) {
            return 0;
        }
        double slatMm = draft.sections.slats().thickness().mm();
        Lay lay = lay(wanted - slatMm);
        if (lay == null || wanted > draft.stack.wallMm() - BELOW_RIM_MM) {
            draft.cannot(cannot(wanted, slatMm));
            return 0;
        }
        Slats slats = new Slats(draft, draft.rules.floor().slatGap().mm(), wanted);
        Bearers bearers = new Bearers(draft, lay);
        for (Ring planter : draft.inside) {
            for (Ring part : ConvexParts.of(planter)) {
                build(maker, part, bearers, slats);
            }
        }
        draft.note(stands(wanted, lay, slats.widestGapMm()));
        return wanted;
    }

    private Message stands(double heightMm, Lay lay, double widestGapMm) {
        String on = lay.legMm > 0 ? "legs" : "bearers";
        String box = draft.plan.name();
        return widestGapMm > 0
                ? BuildMessage.FLOOR_STANDS_WITH_GAPS.of(box, heightMm, on, widestGapMm)
                : BuildMessage.FLOOR_STANDS.of(box, heightMm, on);
    }

    private Problem cannot(double wanted, double slatMm) {
        double least = slatMm + thin(draft.sections.bearers());
        return new Problem(
                "runs",
                BuildMessage.PLATFORM_OUT_OF_REACH.of(
                        wanted, draft.plan.name(), least, draft.stack.wallMm() - BELOW_RIM_MM, BELOW_RIM_MM));
    }

    private @Nullable Lay lay(double availableMm) {
        SectionSpec section = draft.sections.bearers();
        double thin = thin(section);
        double wide = StrictMath.max(section.thickness().mm(), section.width().mm());
        if (availableMm < thin - 1e-6) {
            return null;
        }
        double onEdge = availableMm - wide;
        double flat = availableMm - thin;
        boolean edgeFits = onEdge >= SHORTEST_LEG_MM || StrictMath.abs(onEdge) < 1;
        return edgeFits ? Lay.onEdge(thin, wide, onEdge < 1 ? 0 : onEdge) : Lay.flat(wide, thin, flat < 1 ? 0 : flat);
    }

    private void build(PieceMaker maker, Ring part, Bearers bearers, Slats slats) {
        int longest = 0;
        for (int i = 1; i < part.size(); i++) {
            longest = part.sideMm(i) > part.sideMm(longest) + 1e-6 ? i : longest;
        }
        Grain lengthwise = Grain.of(part, part.corner(longest), part.direction(longest));
        Grain across =
                Grain.of(part, part.corner(longest), part.direction(longest).left());
        double gap = slats.gapMm(lengthwise.across);
        boolean turn = isRectangle(part) && gap > WIDE_GAPS * slats.leastGapMm() && slats.gapMm(across.across) < gap;
        lay(maker, part, bearers, slats, turn ? across : lengthwise);
    }

    /** In other shapes slats across would leave the slanting ends open. */
    private static boolean isRectangle(Ring part) {
        if (part.size() != 4) {
            return false;
        }
        for (int i = 0; i < 4; i++) {
            if (StrictMath.abs(part.direction(i).dot(part.direction(i + 1))) > 0.02) {
                return false;
            }
        }
        return true;
    }

    private void lay(PieceMaker maker, Ring part, Bearers bearers, Slats slats, Grain grain) {
        List<Bearers.Laid> laid = new ArrayList<>();
        for (double at : positions(grain.lengthwise.fromMm(), grain.lengthwise.toMm())) {
            laid.addAll(bearers.lay(maker, part, grain.origin, grain.along, at));
        }
        slats.lay(maker, part, grain.origin, grain.along, grain.across, laid);
    }

    /**
     * A direction for the slats of a part, and how far it reaches.
     *
     * @param origin where both extents are 0
     * @param along unit vector of the slats
     * @param lengthwise from and to along the slats
     * @param across from and to across them
     */
    private record Grain(Point origin, Point along, Slats.Extent lengthwise, Slats.Extent across) {
        static Grain of(Ring part, Point origin, Point along) {
            return new Grain(origin, along, extent(part, origin, along), extent(part, origin, along.left()));
        }

        private static Slats.Extent extent(Ring part, Point origin, Point axis) {
            double from = Double.POSITIVE_INFINITY;
            double to = Double.NEGATIVE_INFINITY;
            for (Point p : part.corners()) {
                from = StrictMath.min(from, p.minus(origin).dot(axis));
                to = StrictMath.max(to, p.minus(origin).dot(axis));
            }
            return new Slats.Extent(from, to);
        }
    }

    private List<Double> positions(double from, double to) {
        double spacing = draft.rules.floor().bearerSpacing().map(Length::mm).orElse(MOST_BEARER_SPACING_MM);
        double inset = StrictMath.min(OVERHANG_MM, (to - from) / 5);
        double span = to - from - 2 * inset;
        long spaces = StrictMath.max(1, (long) StrictMath.ceil(span / spacing - 1e-6));
        List<Double> positions = new ArrayList<>();
        for (long k = 0; k <= spaces; k++) {
            positions.add(from + inset + span * k / spaces);
        }
        return positions;
    }

    private static double thin(SectionSpec section) {
        return StrictMath.min(section.thickness().mm(), section.width().mm());
    }
}
