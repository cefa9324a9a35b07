package borderwright.engine;

import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.Receipt;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenDays;
import borderwright.engine.garden.given.GivenFilling;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenSurvey;
import borderwright.engine.garden.resolve.GardenResolver;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** A made-up garden round {@link TestBoxes}, for tests of the stages after build-up. */
public final class TestGarden {
    private TestGarden() {}

    public static Garden with(@Nullable GivenFilling filling, @Nullable GivenGround ground) {
        return with(filling, ground, null);
    }

    public static Garden with(@Nullable GivenFilling filling, @Nullable GivenGround ground, @Nullable GivenDays days) {
        return GardenResolver.resolve(GivenGarden.builder(
                        "Test",
                        "GBP",
                        GivenSurvey.builder(Names.of("A", "B", "C", "D")).build(),
                        GivenBuild.of(TestBoxes.LARCH.name(), TestBoxes.BATTEN.name()))
                .sections(TestBoxes.GIVEN_LARCH, TestBoxes.GIVEN_BATTEN)
                .ground(ground)
                .filling(filling)
                .days(days)
                .build());
    }

    /** A garden of which this has arrived. */
    public static Garden received(Receipt received) {
        Garden garden = with(null, null);
        Garden.Supply supply = garden.supply();
        return new Garden(
                garden.heading(),
                garden.survey(),
                garden.design(),
                new Garden.Supply(supply.suppliers(), supply.owned(), supply.substitutes(), Optional.of(received)),
                garden.workshop(),
                garden.site(),
                garden.origins());
    }

    /** The same garden after its first planter. */
    public static Garden taught(Garden garden, FirstPlanter first) {
        return taught(garden, first, garden.saws());
    }

    /** The same with saws. */
    public static Garden taught(Garden garden, FirstPlanter first, List<SawSpec> saws) {
        return garden.withWorkshop(new Garden.Workshop(saws, garden.cutting(), garden.work(), Optional.of(first)));
    }

    /** Level ground at the datum, 20 m square about the origin. */
    public static Outline outline() {
        List<OutlineEdge> edges = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            edges.add(new OutlineEdge(EdgeKind.OPEN, 0, 0, 0));
        }
        return new Outline(
                Ring.rectangle(-10_000, -10_000, 10_000, 10_000),
                List.of("A", "B", "C", "D"),
                edges,
                GroundHeights.LEVEL);
    }
}
