package borderwright.engine.plan;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.garden.FirstPlanter;
import borderwright.engine.garden.Garden;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.problem.Problem;
import borderwright.engine.sequence.Prototype;
import borderwright.engine.strength.StrengthReport;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * What the first planter taught, in sentences, and what follows from how far it bows.
 *
 * <p>A bow measured is compared with the final one reckoned of the same box. Less says nothing, for wood goes on creeping. More says
 * that this wood, soil or building gives way more than was reckoned, and then every other box is taken to give way more at the same
 * rate.
 *
 * @param garden as the person said it, before what was measured took the place of anything
 * @param format how lengths are written
 */
record Taught(Garden garden, LengthFormat format) {

    List<String> sentences(List<Box> boxes, List<StrengthReport> strength) {
        if (garden.firstPlanter().isEmpty()) {
            return List.of();
        }
        FirstPlanter first = garden.firstPlanter().get();
        List<String> said = new ArrayList<>();
        first.kerf()
                .ifPresent(
                        kerf -> said.add("Boards are cut up with the kerf measured, " + format.piece(kerf.mm()) + "."));
        if (first.boards().isPresent()) {
            double before = garden.cutting().rejectsPercent();
            said.add(String.format(
                    Locale.ROOT,
                    "%d of %d boards were of no use: %.1f %% are reckoned to be, not %.1f %%.",
                    first.boards().get().unusable(),
                    first.boards().get().count(),
                    first.rejects(before),
                    before));
        }
        bow(boxes, strength).ifPresent(bow -> said.add(bow.sentence(format)));
        return said;
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
        String which = beyond.size() == 1
                ? beyond.get(0) + " would bulge"
                : beyond.size() + " boxes, " + beyond.get(0) + " first, would bulge";
        return List.of(new Problem(
                "first-planter-bows",
                "first planter.bulge",
                bow.get().sentence(format) + " At that rate " + which + " more than "
                        + format.length(strength.get(0).bowLimitMm()) + ".",
                "Set braces or ties closer, or take thicker walls, before the rest is cut."));
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

    private record Bow(String box, double measuredMm, double reckonedMm) {
        double rate() {
            return measuredMm / reckonedMm;
        }

        String sentence(LengthFormat format) {
            return "The first planter, of box " + box + ", bulges " + format.piece(measuredMm) + "; "
                    + format.piece(reckonedMm) + " was reckoned as the end of it"
                    + (rate() > 1 ? "." : ", so nothing speaks against the reckoning yet.");
        }
    }
}
