package borderwright.engine.strength.loads;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.ground.SoilWater;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.strength.box.BoxFrame;
import borderwright.engine.strength.frame.Loads;
import borderwright.engine.strength.soil.Fill;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.TimberAge;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/** The load cases of a box. */
public final class BoxLoads {
    /** Sideways push of a person over their weight, who kneels on the edge and leans out (common practice, no source). */
    private static final double SIDEWAYS_SHARE = 1 / 3.0;

    private BoxLoads() {}

    /** The fill for good: moist, settled, in all planters. */
    public static LoadCase lasting(BoxFrame frame, Fill fill) {
        Loads soil = new SoilLoads(frame, fill).push(fill.lasting(), planter -> true);
        return LoadCase.full(LoadEvent.LASTING_FILL, LoadDuration.PERMANENT, TimberAge.CREPT, soil, new Loads());
    }

    /**
     * All cases that the box must stand, the lasting one first.
     *
     * @param kneelingN weight of a person on the edge, N; 0 for none
     */
    public static List<LoadCase> all(BoxFrame frame, Fill fill, double kneelingN) {
        SoilLoads soil = new SoilLoads(frame, fill);
        List<LoadCase> cases = new ArrayList<>();
        LoadCase lasting = lasting(frame, fill);
        cases.add(lasting);
        if (fill.water() != SoilWater.MOIST) {
            Loads wetter = Loads.sum(soil.push(fill.wettest(), p -> true), 1, lasting.lasting(), -1);
            cases.add(
                    LoadCase.full(wet(fill.water()), LoadDuration.MEDIUM, TimberAge.CREPT, lasting.lasting(), wetter));
        }
        if (fill.treadingKnPerM2() > 0) {
            Loads treading = soil.push(fill.treading(), p -> true);
            cases.add(
                    LoadCase.full(LoadEvent.TREADING, LoadDuration.SHORT, TimberAge.NEW, lasting.lasting(), treading));
        }
        if (!frame.dividers().isEmpty()) {
            cases.add(everyOther(frame, soil, fill, 0, LoadEvent.ODD_PLANTERS_FIRST));
            cases.add(everyOther(frame, soil, fill, 1, LoadEvent.EVEN_PLANTERS_FIRST));
        }
        if (kneelingN > 0) {
            kneeling(frame, lasting, kneelingN, cases);
        }
        return cases;
    }

    private static LoadCase everyOther(BoxFrame frame, SoilLoads soil, Fill fill, int odd, LoadEvent event) {
        Set<Integer> empty = new TreeSet<>();
        for (int planter = 1 - odd; planter < frame.box().inside().size(); planter += 2) {
            empty.add(planter);
        }
        Loads push = soil.push(fill.lasting(), planter -> !empty.contains(planter));
        return new LoadCase(event, -1, LoadDuration.SHORT, TimberAge.NEW, push, new Loads(), empty);
    }

    private static LoadEvent wet(SoilWater water) {
        return switch (water) {
            case MOIST -> LoadEvent.LASTING_FILL;
            case SOAKED -> LoadEvent.SOAKED_FILL;
            case WATERLOGGED -> LoadEvent.WATERLOGGED_FILL;
            case FLOODED -> LoadEvent.FLOODED_FILL;
        };
    }

    private static void kneeling(BoxFrame frame, LoadCase lasting, double kneelingN, List<LoadCase> cases) {
        EdgeLoad edge = new EdgeLoad(frame);
        List<SidePlan> sides = frame.box().plan().sides();
        for (int i = 0; i < sides.size(); i++) {
            if (!isOpen(sides.get(i).facing())) {
                continue;
            }
            for (Loads push : edge.on(i, SIDEWAYS_SHARE * kneelingN)) {
                cases.add(LoadCase.onEdge(i, lasting.lasting(), push));
            }
        }
    }

    /** Nobody kneels where a wall, a fence or a hedge stands close behind. */
    private static boolean isOpen(EdgeKind facing) {
        return facing.givesAccess();
    }
}
