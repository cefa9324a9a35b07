package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.measure.Length;
import borderwright.engine.message.Message;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.Prototype;
import borderwright.engine.strength.StrengthReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * What the first planter taught, and what follows from how far it bows.
 *
 * <p>A bow measured is compared with the final one predicted of the same box. Less shows nothing, for wood goes on creeping. More
 * shows that this wood, soil or building gives way more than predicted, and then every other box is taken to give way more at the
 * same rate.
 *
 * @param garden as given, before what was measured took the place of anything
 */
record Taught(Garden garden) {

    List<Message> notes(List<Box> boxes, List<StrengthReport> strength) {
        if (garden.firstPlanter().isEmpty()) {
            return List.of();
        }
        FirstPlanter first = garden.firstPlanter().get();
        List<Message> notes = new ArrayList<>();
        first.kerf().ifPresent(kerf -> notes.add(TaughtMessage.KERF_MEASURED.of(kerf.mm())));
        if (first.boards().isPresent()) {
            double before = garden.cutting().rejectsPercent();
            notes.add(TaughtMessage.REJECTS_MEASURED.of(
                    first.boards().get().unusable(),
                    first.boards().get().count(),
                    first.rejects(before) / 100,
                    before / 100));
        }
        bow(boxes, strength).ifPresent(bow -> notes.add(bow.finding()));
        return notes;
    }

    /** Boxes that bow beyond the limit at the rate of the first. */
    List<Problem> unmet(List<Box> boxes, List<StrengthReport> strength) {
        Optional<Bow> bow = bow(boxes, strength);
        if (bow.isEmpty() || bow.get().rate() <= 1) {
            return List.of();
        }
        List<String> beyond = strength.stream()
                .filter(report -> report.worstBowMm() * bow.get().rate() > report.bowLimitMm())
                .map(StrengthReport::box)
                .toList();
        if (beyond.isEmpty()) {
            return List.of();
        }
        return List.of(new Problem(
                "first planter.bulge",
                TaughtMessage.FIRST_PLANTER_BULGES.of(
                        bow.get().finding(),
                        beyond.size(),
                        beyond.get(0),
                        strength.get(0).bowLimitMm())));
    }

    private Optional<Bow> bow(List<Box> boxes, List<StrengthReport> strength) {
        Optional<Length> measured = garden.firstPlanter().flatMap(FirstPlanter::bulge);
        if (measured.isEmpty() || strength.size() != boxes.size()) {
            return Optional.empty();
        }
        StrengthReport report = strength.get(Prototype.of(boxes).box());
        return report.worstBowMm() <= 0
                ? Optional.empty()
                : Optional.of(new Bow(report.box(), measured.get().mm(), report.worstBowMm()));
    }

    private record Bow(String box, double measuredMm, double predictedMm) {
        double rate() {
            return measuredMm / predictedMm;
        }

        Message finding() {
            TaughtMessage code =
                    rate() > 1 ? TaughtMessage.BULGES_MORE_THAN_PREDICTED : TaughtMessage.PREDICTION_STANDS;
            return code.of(box, measuredMm, predictedMm);
        }
    }
}
