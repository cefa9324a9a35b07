package borderwright.pack.sheets;

import borderwright.engine.settingout.PegList;
import borderwright.engine.settingout.PegString;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the pegs go.
 *
 * @param list every peg
 * @param strings along rows of boxes
 * @param drawing which is which
 */
public record PegSheet(PegList list, List<PegString> strings, Drawing drawing) implements Sheet {
    /** So many distances can still be ticked one by one. */
    private static final int MOST_CHECKS = 24;

    public PegSheet {
        strings = List.copyOf(strings);
    }

    @Override
    public String title() {
        return "Peg list";
    }

    /** Pegs that are set out from known points: all but those along a string. */
    public List<PegList.Peg> fromKnownPoints() {
        Set<Integer> along = new TreeSet<>();
        strings.forEach(string -> string.stops().forEach(stop -> along.add(stop.peg())));
        strings.forEach(string -> along.remove(string.last()));
        return list.pegs().stream().filter(peg -> !along.contains(peg.number())).toList();
    }

    /** Strings on which the tape is read at the same places. */
    public List<List<PegString>> alikeStrings(PrintedFigures f) {
        Map<String, List<PegString>> alike = new LinkedHashMap<>();
        strings.forEach(string -> alike.computeIfAbsent(readings(string, f), k -> new ArrayList<>())
                .add(string));
        return List.copyOf(alike.values());
    }

    /** Where the tape is read along a string. */
    public String readings(PegString string, PrintedFigures f) {
        return String.join(
                ", ",
                string.stops().stream().map(stop -> f.length(stop.alongMm())).toList());
    }

    /** Boxes along a string, in short. */
    public String names(PegString string) {
        return Alike.inShort(string.boxes());
    }

    public boolean groupsChecks() {
        return list.checks().size() > MOST_CHECKS;
    }

    /** Distances to check that read the same, with their boxes. */
    public List<Alike<PegList.Check>> checks(PrintedFigures f) {
        return Alike.group(list.checks(), PegList.Check::box, check -> f.length(check.distanceMm()));
    }
}
