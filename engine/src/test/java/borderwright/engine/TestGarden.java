package borderwright.engine;

import borderwright.engine.garden.BuildRules;
import borderwright.engine.garden.DaysWish;
import borderwright.engine.garden.FillingWish;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.GroundWish;
import borderwright.engine.garden.ReceivedNote;
import borderwright.engine.garden.SawNote;
import borderwright.engine.garden.SurveyNotes;
import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.garden.vocabulary.Names;
import borderwright.engine.geometry.Ring;
import borderwright.engine.survey.GroundHeights;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.OutlineEdge;
import java.util.ArrayList;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** A made-up garden round {@link TestBoxes}, for tests of the stages after build-up. */
public final class TestGarden {
    private TestGarden() {}

    public static Garden with(@Nullable FillingWish filling, @Nullable GroundWish ground) {
        return with(filling, ground, null);
    }

    public static Garden received(ReceivedNote received) {
        return with(null, null, null, received);
    }

    public static Garden with(@Nullable FillingWish filling, @Nullable GroundWish ground, @Nullable DaysWish days) {
        return with(filling, ground, days, null);
    }

    private static Garden with(
            @Nullable FillingWish filling,
            @Nullable GroundWish ground,
            @Nullable DaysWish days,
            @Nullable ReceivedNote received) {
        return new Garden(
                "Test",
                null,
                null,
                "GBP",
                null,
                new SurveyNotes(Names.of("A", "B", "C", "D"), null, null, List.of(), List.of(), null),
                List.of(),
                BuildRules.of(TestBoxes.LARCH.name(), TestBoxes.BATTEN.name()),
                List.of(TestBoxes.LARCH, TestBoxes.BATTEN),
                List.of(),
                List.of(),
                List.of(),
                null,
                null,
                null,
                ground,
                filling,
                null,
                days,
                null,
                received,
                List.of());
    }

    /** The same garden after its first planter. */
    public static Garden taught(Garden garden, FirstPlanter first) {
        return taught(garden, first, garden.saws());
    }

    /** The same with saws. */
    public static Garden taught(Garden garden, FirstPlanter first, List<SawNote> saws) {
        return new Garden(
                garden.name(),
                garden.about(),
                garden.units(),
                garden.currency(),
                garden.budget(),
                garden.survey(),
                garden.runs(),
                garden.build(),
                garden.sections(),
                garden.suppliers(),
                garden.owned(),
                saws,
                garden.cutting(),
                garden.soil(),
                garden.strength(),
                garden.ground(),
                garden.filling(),
                garden.planting(),
                garden.days(),
                first,
                garden.received(),
                garden.substitutes());
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
