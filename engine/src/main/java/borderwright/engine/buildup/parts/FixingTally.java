package borderwright.engine.buildup.parts;

import borderwright.engine.buildup.parts.Box.Hold;
import borderwright.engine.buildup.parts.ScrewRules.Screw;
import borderwright.engine.message.Message;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Counts fixings by kind and use, in the order in which they are first needed. */
public final class FixingTally {
    private final Map<Key, Integer> counts = new LinkedHashMap<>();

    private record Key(Screw screw, Hold hold, Message use) {}

    public void add(Screw screw, Hold hold, Message use, int count) {
        counts.merge(new Key(screw, hold, use), count, Integer::sum);
    }

    /** Something that is not a screw and needs no holes of its own. */
    public void addPlain(String item, Hold hold, Message use, int count) {
        counts.merge(new Key(new Screw(item, 0, 0), hold, use), count, Integer::sum);
    }

    public List<Box.Fixing> fixings() {
        List<Box.Fixing> list = new ArrayList<>();
        counts.values().removeIf(count -> count == 0);
        counts.forEach((key, count) -> list.add(Box.Fixing.builder()
                .item(key.screw.item())
                .hold(key.hold)
                .use(key.use)
                .count(count)
                .diameterMm(key.screw.diameterMm())
                .lengthMm(key.screw.lengthMm())
                .pilotMm(key.screw.pilotMm())
                .clearanceMm(key.screw.clearanceMm())
                .countersinkMm(key.screw.countersinkMm())
                .build()));
        return list;
    }
}
