package borderwright.engine.settingout;

import borderwright.engine.garden.vocabulary.ground.GroundSurface;
import borderwright.engine.ground.GroundPlan;
import borderwright.engine.ground.GroundPlan.CornerMark;
import borderwright.engine.layout.plan.FootprintPlan;
import borderwright.engine.message.Message;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.checks.SurveyReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * Where the corners of all boxes go, and how they are marked.
 *
 * @param mark what marks a corner
 * @param next what is done to the ground once they are marked
 * @param pegs one mark for each corner of each box, in plan order
 * @param checks distances between them that must come out
 * @param strings along rows of boxes
 * @param known how the points from which they are set out are found again
 */
public record SettingOut(
        CornerMark mark,
        NextWork next,
        List<PegList.Peg> pegs,
        List<PegList.Check> checks,
        List<PegString> strings,
        KnownPoints known) {
    /** Of no boxes. */
    public static final SettingOut NONE =
            new SettingOut(CornerMark.PEG, NextWork.BUILD, List.of(), List.of(), List.of(), KnownPoints.NONE);

    /** The long tape that most people own, mm (common practice, no source). */
    private static final double TAPE_MM = 10_000;

    public SettingOut {
        pegs = List.copyOf(pegs);
        checks = List.copyOf(checks);
        strings = List.copyOf(strings);
    }

    /** What follows setting out. */
    public enum NextWork {
        DIG,
        BUILD
    }

    /**
     * The corners of some boxes.
     *
     * @param survey its points are the known ones; at least two of them
     * @param outline edges of the border
     * @param surface what the boxes stand on
     * @param ground made ready for the same boxes
     */
    public static SettingOut of(
            SurveyReport survey, Outline outline, List<FootprintPlan> boxes, GroundSurface surface, GroundPlan ground) {
        PegList list = PegList.of(survey, outline, boxes, TAPE_MM);
        return new SettingOut(
                CornerMark.on(surface),
                ground.spoil().movedM3() > 0 ? NextWork.DIG : NextWork.BUILD,
                list.pegs(),
                list.checks(),
                PegString.of(list, boxes),
                list.known());
    }

    /** Those that are set out from known points: all but those along a string. */
    public List<PegList.Peg> fromKnownPoints() {
        Set<Integer> along = new TreeSet<>();
        strings.forEach(string -> string.stops().forEach(stop -> along.add(stop.peg())));
        strings.forEach(string -> along.remove(string.last()));
        return pegs.stream().filter(peg -> !along.contains(peg.number())).toList();
    }

    /** Number of the mark at a box's first corner. */
    public int first(String box) {
        return pegs.stream()
                .filter(peg -> peg.box().equals(box))
                .mapToInt(PegList.Peg::number)
                .findFirst()
                .orElseThrow();
    }

    /** What one corner's mark is called. */
    public Message markName() {
        return SettingOutMessage.CORNER_MARK.of(mark);
    }

    /** What the list of all of them is called. */
    public Message listName() {
        return SettingOutMessage.MARK_LIST.of(mark);
    }

    /** What to do, in order. */
    public List<Message> instructions() {
        List<Message> steps = new ArrayList<>();
        if (!strings.isEmpty()) {
            steps.add(SettingOutMessage.SET_OUT_ROWS.of(mark));
        }
        steps.add(SettingOutMessage.CROSS_TAPES.of(mark));
        steps.add(SettingOutMessage.CHECK_DIAGONALS.of(next));
        return steps;
    }
}
