package borderwright.engine.garden.resolve;

import borderwright.engine.garden.NearbyThing;
import borderwright.engine.garden.NearbyThing.Place;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.measure.Length;
import java.util.Optional;

/** What planters keep clear of. */
public final class NearbyResolver {
    /** Across an air brick: the usual one of two courses (common practice, no source). */
    private static final Length AIR_BRICK = Length.ofMm(225);

    private NearbyResolver() {}

    /** One thing alone. */
    public static NearbyThing thing(GivenNearby given) {
        return thing(given, Ledger.empty());
    }

    static NearbyThing thing(GivenNearby g, Ledger in) {
        boolean brick = g.what() == NearbyKind.AIR_BRICK;
        Length end = in.or(
                "ends at",
                g.endsAt(),
                brick ? new Length(g.along().ticks() + AIR_BRICK.ticks()) : g.along(),
                brick ? "across a usual air brick: " + Ledger.PRACTICE : "where it begins");
        Length into = in.or("in from edge", g.inFromEdge(), Length.ZERO, "on the edge");
        Length endInto = in.or("in at end", g.inAtEnd(), into, "as where it begins");
        return new NearbyThing(
                g.what(),
                g.edge(),
                new Place(g.along().mm(), into.mm()),
                new Place(end.mm(), endInto.mm()),
                trunkMm(g),
                Optional.ofNullable(g.depth()),
                Optional.ofNullable(g.bottom()));
    }

    private static double trunkMm(GivenNearby g) {
        Length trunk = g.trunk();
        Length girth = g.girth();
        return trunk != null ? trunk.mm() : girth != null ? girth.mm() / Math.PI : 0;
    }
}
