package borderwright.engine.buildup;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BuildMeans;
import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.measure.Length;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.SplittableRandom;

/** Random boxes of every shape and make-up, for tests of the stages after build-up. */
public final class SeededBoxes {
    private SeededBoxes() {}

    /** That many boxes; those whose walls meet are left out. */
    public static List<Box> of(long seed, int count) {
        SplittableRandom random = new SplittableRandom(seed);
        List<Box> boxes = new ArrayList<>();
        while (boxes.size() < count) {
            Ring ring = Footprints.random(random);
            Box box = BoxBuilder.build(plan(ring, random), rules(random), means(random));
            if (!box.pieces().isEmpty()) {
                boxes.add(box);
            }
        }
        return boxes;
    }

    private static FootprintPlan plan(Ring ring, SplittableRandom random) {
        List<DividerLine> dividers = random.nextInt(3) == 0 ? List.of() : Footprints.dividers(ring, random);
        double platform = random.nextInt(3) == 0 ? random.nextDouble(60, 250) : 0;
        return Footprints.plan(ring, dividers, random.nextDouble(140, 700), platform, random.nextInt(3) == 0);
    }

    private static BuildSpec rules(SplittableRandom random) {
        CornerStyle style = random.nextBoolean() ? CornerStyle.LAPPED : CornerStyle.MITRED;
        Length ties = Length.ofMm(random.nextInt(500, 1500));
        return switch (random.nextInt(4)) {
            case 0 -> Footprints.rules(Footprints.LARCH.name(), Footprints.POST.name(), style, ties);
            case 1 -> Footprints.rules(Footprints.LARCH.name(), null, style, ties);
            case 2 -> Footprints.rules(Footprints.TREATED.name(), Footprints.TREATED_BATTEN.name(), style, ties);
            default -> Footprints.rules(Footprints.LARCH.name(), Footprints.BATTEN.name(), style, ties);
        };
    }

    private static BuildMeans means(SplittableRandom random) {
        double tilt = random.nextInt(4) == 0 ? random.nextDouble(0, 60) : 45;
        double longest = random.nextDouble(1700, 4800);
        return Footprints.means(tilt, Map.of(Footprints.LARCH.name(), longest, Footprints.TREATED.name(), longest));
    }
}
