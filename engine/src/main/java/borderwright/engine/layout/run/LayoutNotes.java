package borderwright.engine.layout.run;

import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.Span;
import borderwright.engine.message.Message;
import borderwright.engine.survey.Outline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/** Makes the notes of this stage: what a person should know of a layout, with its figures. */
public final class LayoutNotes {
    private final Outline outline;

    public LayoutNotes(Outline outline) {
        this.outline = outline;
    }

    private String edge(Leg leg) {
        return outline.edgeAlong(leg.edge());
    }

    Message gaveWay(Leg leg, Span free, RunTerms terms) {
        return LayoutNote.LAYOUT_GIVES_WAY.of(
                edge(leg),
                terms.spec().name(),
                free.fromMm(),
                free.toMm(),
                outline.cornerNames().get(leg.edge()));
    }

    Message longerThanBoards(Leg leg, double planterMm, RunTerms terms) {
        return LayoutNote.LAYOUT_LONG_PLANTERS.of(
                edge(leg), planterMm, terms.rules().longestBoardMm());
    }

    Message facets(int edge, CurveFacets curve, CurveFacets.Facets facets) {
        return LayoutNote.LAYOUT_FACETS.of(
                outline.edgeAlong(edge), curve.arc().radiusMm(), facets.bends(), facets.sagMm());
    }

    /** Planters along one edge: of a curve cut up by gaps, all its rows together. */
    Message bays(Leg leg, List<BayLengths> rows, RunTerms terms) {
        List<Message> parts = new ArrayList<>();
        int planters = rows.stream().mapToInt(BayLengths::planters).sum();
        if (planters > 0) {
            double most = lengths(rows).max().orElse(0);
            double least = lengths(rows).min().orElse(0);
            String measured = terms.isJoined() ? "dividers" : "outside";
            // lengths that are the same to the millimetre are one length to a person
            boolean equal = StrictMath.round(most) == StrictMath.round(least);
            parts.add(
                    equal
                            ? LayoutNote.LAYOUT_EQUAL_PLANTERS.of(planters, most, measured)
                            : LayoutNote.LAYOUT_UNEQUAL_PLANTERS.of(planters, least, most, measured));
        }
        for (BayLengths row : rows) {
            row.wingsMm().forEach(wing -> parts.add(LayoutNote.LAYOUT_WING.of(wing)));
        }
        return terms.isFree()
                ? LayoutNote.LAYOUT_ROW_PLANTED.of(leg.backMm(), edge(leg), parts)
                : LayoutNote.LAYOUT_EDGE_PLANTED.of(edge(leg), parts);
    }

    private static DoubleStream lengths(List<BayLengths> rows) {
        return rows.stream().filter(row -> row.planters() > 0).mapToDouble(BayLengths::planterMm);
    }

    public static Message onFeet(RunTerms terms, double fallMm) {
        return LayoutNote.LAYOUT_ON_FEET.of(
                fallMm, terms.spec().name(), terms.rules().feetMm().orElse(0));
    }

    public static Message levelRun(RunTerms terms, double shownMm, double fallMm) {
        return LayoutNote.LAYOUT_LEVEL_RUN.of(fallMm, terms.spec().name(), terms.heightMm(), shownMm);
    }

    public static Message steppedBox(LaidBox box, BedLevels.Level level) {
        double top = level.bedMm() + level.heightMm();
        return LayoutNote.LAYOUT_STEPPED_BOX.of(
                box.plan().name(),
                height(level.bedMm()),
                level.heightMm(),
                shown(top - level.lowMm()),
                shown(top - level.highMm()),
                level.highMm() - level.bedMm(),
                level.lowMm() - level.bedMm());
    }

    /** Neighbours whose beds lie at one level, with walls of one height. */
    public static Message steppedBoxes(LaidBox first, LaidBox last, List<BedLevels.Level> levels) {
        double low = levels.stream().mapToDouble(BedLevels.Level::lowMm).min().orElseThrow();
        double high = levels.stream().mapToDouble(BedLevels.Level::highMm).max().orElseThrow();
        double bed = levels.get(0).bedMm();
        double wall = levels.get(0).heightMm();
        return LayoutNote.LAYOUT_STEPPED_BOXES.of(
                first.plan().name(),
                last.plan().name(),
                height(bed),
                wall,
                shown(bed + wall - low),
                shown(bed + wall - high),
                high - bed);
    }

    public static Message step(LaidBox before, LaidBox after, double stepMm, RunTerms terms) {
        long courses = Math.round(Math.abs(stepMm) / terms.rules().courseMm());
        return LayoutNote.LAYOUT_STEP.of(
                before.plan().name(), after.plan().name(), stepMm < 0 ? "down" : "up", Math.abs(stepMm), courses);
    }

    private static Message height(double mm) {
        if (Math.abs(mm) < 0.5) {
            return LayoutNote.LAYOUT_AT_DATUM.of();
        }
        return mm < 0 ? LayoutNote.LAYOUT_BELOW_DATUM.of(-mm) : LayoutNote.LAYOUT_ABOVE_DATUM.of(mm);
    }

    static Message shown(double mm) {
        return mm > 0 ? LayoutNote.LAYOUT_SHOWS.of(mm) : LayoutNote.LAYOUT_SHOWS_NOTHING.of();
    }
}
