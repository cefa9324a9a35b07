package borderwright.engine.strength.box;

import borderwright.engine.TestTerms;
import borderwright.engine.buildup.BoxBuilder;
import borderwright.engine.buildup.Footprints;
import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.BracingScheme;
import borderwright.engine.garden.vocabulary.CornerStyle;
import borderwright.engine.geometry.Ring;
import borderwright.engine.layout.plan.DividerLine;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.soil.Fill;
import java.util.List;
import java.util.Map;
import java.util.random.RandomGenerator;

/** Boxes for tests of strength, made up. */
public final class Planters {
    /** No braces, no ties. */
    public static final BracingScheme BARE = new BracingScheme(1e5, 0, 75, List.of());

    public static final Fill FILL = TestTerms.fill();
    public static final MemberMaterials MATERIALS = TestTerms.materials(RuleSet.EUROCODE, Footprints.SECTIONS);

    private Planters() {}

    /** Braces and ties no further apart than this; ties' tops this far below the rim. */
    public static BracingScheme scheme(double braceMm, double tieMm, double belowMm) {
        return new BracingScheme(braceMm, tieMm, belowMm, List.of());
    }

    /** A run of 25 x 150 boards on battens, its dividers at these distances from its left end. */
    public static Box run(BracingScheme scheme, double lengthMm, double heightMm, double... dividersAt) {
        return box(Footprints.run(lengthMm, 600, heightMm, dividersAt), scheme);
    }

    /** A box of these boards on any footprint. */
    public static Box box(FootprintPlan plan, BracingScheme scheme) {
        return BoxBuilder.build(
                plan,
                Footprints.rules("larch 25 x 150", "batten 47 x 50", CornerStyle.LAPPED),
                Footprints.means(45, Map.of("larch 25 x 150", 3000.0)),
                scheme);
    }

    /** A random box: any polygon that the builder takes, dividers where there is room, any bracing. */
    public static Box random(RandomGenerator random) {
        Ring ring = Footprints.random(random);
        List<DividerLine> dividers = random.nextInt(3) == 0 ? Footprints.dividers(ring, random) : List.of();
        FootprintPlan plan = Footprints.plan(ring, dividers, random.nextDouble(150, 650), 0, false);
        return box(
                plan,
                scheme(
                        random.nextDouble(300, 1500),
                        random.nextInt(3) == 0 ? 0 : random.nextDouble(400, 1500),
                        random.nextDouble(40, 400)));
    }
}
