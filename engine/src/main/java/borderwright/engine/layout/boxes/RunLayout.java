package borderwright.engine.layout.boxes;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.geometry.Segment;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.layout.plan.SidePlan.Role;
import borderwright.engine.layout.room.Leg;
import borderwright.engine.layout.room.Surroundings;
import borderwright.engine.layout.run.BedLevels;
import borderwright.engine.layout.run.BoxSide;
import borderwright.engine.layout.run.JointKind;
import borderwright.engine.layout.run.LaidBox;
import borderwright.engine.layout.run.RunChain;
import borderwright.engine.layout.run.RunTerms;
import borderwright.engine.layout.run.Stretch;
import borderwright.engine.layout.run.WedgeInfill;
import borderwright.engine.survey.GroundHeights;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** From a fitted run to its boxes: rows of planters, their levels, names, sides and dividers. */
public final class RunLayout {
    private final RunChain chain;
    private final RunTerms terms;
    private final BoxOutline outline;
    private final Surroundings surroundings;
    private final BedLevels levels;
    private final SlopeReport slopes;

    /**
     * Planters that follow each other: a stretch of the run, or the infill of a corner.
     *
     * @param stretch the stretch; null for an infill
     * @param infill the infill; null for a stretch
     * @param cells the ground of each planter, in the border's order
     */
    private record Row(@Nullable Stretch stretch, @Nullable WedgeInfill infill, List<Ring> cells) {}

    public RunLayout(
            RunChain chain, RunTerms terms, Surroundings surroundings, GroundHeights ground, SlopeReport slopes) {
        this.chain = chain;
        this.terms = terms;
        this.outline = new BoxOutline(chain, terms);
        this.surroundings = surroundings;
        this.levels = new BedLevels(ground, terms);
        this.slopes = slopes;
    }

    /** All boxes of the run in the person's order, named with these letters and numbered from a number on. */
    public List<LaidBox> boxes(List<Stretch> stretches, String letters, int from) {
        List<Row> rows = rows(stretches);
        List<List<BedLevels.Level>> beds =
                levels.of(rows.stream().map(Row::cells).toList());
        List<Draft> drafts = new ArrayList<>();
        for (int i = 0; i < rows.size(); i++) {
            for (BedLevels.Level level : beds.get(i)) {
                drafts.add(draft(rows.get(i), level));
            }
        }
        if (chain.isReversed()) {
            Collections.reverse(drafts);
        }
        List<LaidBox> boxes = new ArrayList<>();
        int number = from;
        for (Draft draft : drafts) {
            boxes.add(draft.box(letters, number));
            number += draft.cells.size();
        }
        slopes.report(boxes, drafts.stream().map(draft -> draft.level).toList());
        return boxes;
    }

    private List<Row> rows(List<Stretch> stretches) {
        List<Row> rows = new ArrayList<>();
        int next = 0;
        for (int leg = 0; leg < chain.legs().size(); leg++) {
            if (next < stretches.size() && stretches.get(next).from().leg() == leg) {
                rows.add(row(stretches.get(next++)));
            }
            if (chain.kindAfter(leg) == JointKind.INFILL) {
                WedgeInfill infill = chain.infillAfter(leg);
                rows.add(new Row(null, infill, List.of(BoxSide.ring(infill.outline()))));
            }
        }
        return rows;
    }

    private Row row(Stretch stretch) {
        List<Ring> cells = new ArrayList<>();
        for (int i = 0; i < stretch.planters(); i++) {
            cells.add(BoxSide.ring(outline.between(stretch, i, i + 1)));
        }
        return new Row(stretch, null, cells);
    }

    private Draft draft(Row row, BedLevels.Level level) {
        List<Ring> cells = new ArrayList<>(row.cells.subList(level.first(), level.last() + 1));
        if (row.infill != null) {
            boolean closes = true;
            return new Draft(row.infill.outline(), List.of(), cells, level, closes);
        }
        if (row.stretch == null) {
            throw new IllegalStateException("a row is a stretch or an infill");
        }
        Stretch stretch = row.stretch;
        List<BoxSide> sides = outline.between(stretch, level.first(), level.last() + 1);
        List<DividerLine> dividers = new ArrayList<>();
        for (int bound = level.first() + 1; bound <= level.last(); bound++) {
            dividers.add(outline.divider(sides, stretch.bound(bound)));
        }
        int closing = chain.isReversed() ? 0 : stretch.planters() - 1;
        boolean closes = level.first() <= closing && closing <= level.last() && isShutIn(stretch);
        return new Draft(sides, dividers, cells, level, closes);
    }

    /** Whether both ends of a stretch face something hard. */
    private boolean isShutIn(Stretch stretch) {
        List<BoxSide> sides = outline.between(stretch, 0, stretch.planters());
        for (int i = 0; i < sides.size(); i++) {
            if (sides.get(i).role() == Role.END && !isHard(facing(sides, i))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isHard(EdgeKind kind) {
        return kind == EdgeKind.HOUSE || kind == EdgeKind.WALL || kind == EdgeKind.FENCE;
    }

    private EdgeKind facing(List<BoxSide> sides, int i) {
        Leg leg = sides.get(i).leg();
        return leg != null && sides.get(i).role() == Role.BACK && !terms.isFree()
                ? leg.kind()
                : surroundings.facing(
                        sides.get(i).from(), sides.get((i + 1) % sides.size()).from());
    }

    /** A box before it has its names. */
    private final class Draft {
        private final List<BoxSide> sides;
        private final List<DividerLine> dividers;
        private final List<Ring> cells;
        private final BedLevels.Level level;
        private final boolean closes;

        Draft(
                List<BoxSide> sides,
                List<DividerLine> dividers,
                List<Ring> cells,
                BedLevels.Level level,
                boolean closes) {
            this.sides = sides;
            this.dividers = new ArrayList<>(dividers);
            this.cells = new ArrayList<>(cells);
            this.level = level;
            this.closes = closes;
        }

        LaidBox box(String letters, int firstNumber) {
            if (chain.isReversed()) {
                Collections.reverse(cells);
                Collections.reverse(dividers);
                dividers.replaceAll(d -> new DividerLine(d.toSide(), d.to(), d.fromSide(), d.from()));
            }
            List<String> names = new ArrayList<>();
            for (int i = 0; i < cells.size(); i++) {
                names.add(letters + (firstNumber + i));
            }
            String name = names.size() == 1 ? names.get(0) : names.get(0) + "-" + names.get(names.size() - 1);
            FootprintPlan plan = FootprintPlan.builder()
                    .name(name)
                    .run(terms.spec().name())
                    .outline(BoxSide.ring(sides))
                    .sides(sidePlans())
                    .dividers(dividers)
                    .planters(names)
                    .bedMm(level.bedMm())
                    .heightMm(level.heightMm())
                    .platformMm(terms.platformMm())
                    .capped(terms.isCapped())
                    .build();
            return new LaidBox(plan, cells, terms);
        }

        private List<SidePlan> sidePlans() {
            List<SidePlan> plans = new ArrayList<>();
            Ring closing = cells.get(cells.size() - 1);
            for (int i = 0; i < sides.size(); i++) {
                Point from = sides.get(i).from();
                Point to = sides.get((i + 1) % sides.size()).from();
                Role role = sides.get(i).role();
                boolean waits = closes && role != Role.END && sharesLine(closing, from, to);
                plans.add(new SidePlan(
                        role,
                        facing(sides, i),
                        waits,
                        levels.groundAlong(from, to).fromMm()));
            }
            return plans;
        }

        /** Whether a planter has one of its own sides on a side of the box. */
        private boolean sharesLine(Ring planter, Point from, Point to) {
            for (int i = 0; i < planter.size(); i++) {
                Point middle = planter.side(i).middle();
                if (new Segment(from, to).distanceMm(middle) < 1e-3) {
                    return true;
                }
            }
            return false;
        }
    }
}
