package borderwright.engine.settingout;

import borderwright.engine.settingout.PegList.Offset;
import borderwright.engine.survey.Outline;
import borderwright.engine.survey.checks.SurveyReport.SurveyedPoint;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * How the points at which tapes are hooked are found again when the marks of the survey are gone.
 *
 * @param lengths between corners of the border that follow each other round it
 * @param stations points that are no corners, each off a line between two corners
 */
public record KnownPoints(List<Length> lengths, List<Station> stations) {
    /** Of no pegs. */
    public static final KnownPoints NONE = new KnownPoints(List.of(), List.of());

    public KnownPoints {
        lengths = List.copyOf(lengths);
        stations = List.copyOf(stations);
    }

    /**
     * From one point to another.
     *
     * @param lengthMm as adjusted, mm
     */
    public record Length(String from, String to, double lengthMm) {}

    /**
     * A point off a line.
     *
     * @param name of the point
     * @param at where it lies
     */
    public record Station(String name, Offset at) {}

    /** Of the points from which these pegs are set out. */
    static KnownPoints of(List<PegList.Peg> pegs, List<SurveyedPoint> known, Outline outline) {
        Set<String> used = new HashSet<>();
        for (PegList.Peg peg : pegs) {
            peg.tapes().ifPresent(tapes -> used.addAll(List.of(tapes.first(), tapes.second())));
            peg.offset().ifPresent(offset -> used.addAll(List.of(offset.from(), offset.to())));
        }
        List<Station> stations = new ArrayList<>();
        for (SurveyedPoint point : known) {
            if (used.contains(point.name()) && !outline.cornerNames().contains(point.name())) {
                Optional<Offset> edge = PegList.nearestEdge(point.at(), known, outline);
                edge.ifPresent(offset -> {
                    stations.add(new Station(point.name(), offset));
                    used.addAll(List.of(offset.from(), offset.to()));
                });
            }
        }
        List<SurveyedPoint> corners = outline.cornerNames().stream()
                .filter(used::contains)
                .flatMap(name -> PegList.named(known, name).stream())
                .toList();
        int count = corners.size();
        List<Length> lengths = new ArrayList<>();
        for (int i = 0; i + 1 < count; i++) {
            lengths.add(length(corners.get(i), corners.get(i + 1)));
        }
        // From the first corner to all others: with those along the edges, what fixes a shape of so many corners.
        for (int i = 2; i < count; i++) {
            lengths.add(length(corners.get(0), corners.get(i)));
        }
        return new KnownPoints(lengths, stations);
    }

    private static Length length(SurveyedPoint from, SurveyedPoint to) {
        return new Length(from.name(), to.name(), from.at().distanceMm(to.at()));
    }
}
