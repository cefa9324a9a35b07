package borderwright.pack.sheets.site;

import borderwright.engine.garden.vocabulary.EdgeKind;
import borderwright.engine.settingout.PegList;
import borderwright.engine.settingout.PegString;
import borderwright.engine.settingout.SettingOut;
import borderwright.pack.alike.Alike;
import borderwright.pack.figures.PrintedFigures;
import borderwright.pack.paper.Drawing;
import borderwright.pack.sheets.Part;
import borderwright.pack.sheets.Sheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * Where the corners of the boxes go: pegs, or chalk marks on hard ground.
 *
 * @param title in words
 * @param settingOut every corner
 * @param drawing which is which
 * @param edges what stands along the border
 */
public record PegSheet(String title, SettingOut settingOut, Drawing drawing, List<EdgeKind> edges) implements Sheet {
    /** So many distances can still be ticked one by one. */
    private static final int MOST_CHECKS = 24;

    @Override
    public Part part() {
        return Part.GARDEN;
    }

    public boolean hasOpenEdges() {
        return edges.contains(EdgeKind.OPEN);
    }

    /** Strings on which the tape is read at the same places. */
    public List<List<PegString>> alikeStrings(PrintedFigures f) {
        Map<String, List<PegString>> alike = new LinkedHashMap<>();
        settingOut
                .strings()
                .forEach(string -> alike.computeIfAbsent(readings(string, f), k -> new ArrayList<>())
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
        return settingOut.checks().size() > MOST_CHECKS;
    }

    /** Distances to check that read the same, with their boxes. */
    public List<Alike<PegList.Check>> checks(PrintedFigures f) {
        return Alike.group(settingOut.checks(), PegList.Check::box, check -> f.length(check.distanceMm()));
    }
}
