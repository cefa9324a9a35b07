package borderwright.app.document;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;

/** Keys that had another name in an earlier version, so that an old document is told the new name. */
final class RenamedKeys {
    /** A key's earlier name and its name now. One earlier name may have become several: a group has at most one of them. */
    record Renamed(String before, String now) {}

    static final List<Renamed> ALL = Stream.of(
                    "bow = bulge limit",
                    "bow = bulge",
                    "by = with",
                    "is = reads",
                    "sure = give or take",
                    "from = baseline",
                    "from = order value from",
                    "from = price from count",
                    "from = season from",
                    "from = sent by",
                    "to = season to",
                    "to = ends at",
                    "into = in from edge",
                    "end into = in at end",
                    "round = going round",
                    "strip = strip width",
                    "risk = false alarm",
                    "first = first planter",
                    "first = starts at",
                    "corners = other turns",
                    "corners = corner joint",
                    "sag = off the curve",
                    "platform = false floor",
                    "depth = front to back",
                    "depth = thickest board",
                    "crosscut = widest board",
                    "shortest = shortest piece",
                    "stop = length stop",
                    "rejects = rejects percent",
                    "hold back = keep whole",
                    "wait allowance = extra for fitting",
                    "keep = shortest offcut",
                    "settles = settles percent",
                    "below = below rim",
                    "soil = kind",
                    "beyond = gravel beyond walls",
                    "loose gravel = loose gravel percent",
                    "near = keep clear of",
                    "least = lowest",
                    "apart = spacing",
                    "base = coarse layer",
                    "reuse = reuse percent",
                    "wet = soaked kg per m3",
                    "gate = narrowest way in",
                    "spreads = coverage",
                    "facing = bearing",
                    "free = work days",
                    "longest = longest board",
                    "collect = collection only")
            .map(line -> line.split(" = "))
            .map(names -> new Renamed(names[0], names[1]))
            .toList();

    private RenamedKeys() {}

    /** What an earlier key is called now, of a group's keys; nothing where it never was one of them. */
    static Optional<String> now(String before, List<String> known) {
        return ALL.stream()
                .filter(renamed -> renamed.before().equals(before) && known.contains(renamed.now()))
                .map(Renamed::now)
                .findFirst();
    }
}
