package borderwright.engine.strength;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buildup.parts.Piece.Role;
import borderwright.engine.garden.vocabulary.ground.FoundationSoil;
import borderwright.engine.geometry.Point;
import borderwright.engine.geometry.Ring;
import borderwright.engine.message.Message;
import borderwright.engine.strength.timber.Effects;
import borderwright.engine.strength.timber.LoadDuration;
import borderwright.engine.strength.timber.Timber;
import borderwright.engine.strength.timber.TimberSection;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The false floor: soaked fill, and what is trodden on it, down slats, bearers and legs to the gravel.
 *
 * <p>Every span is taken as one on its own between its supports, which no continuous piece exceeds.
 */
final class PlatformUses {
    private static final double N_PER_MM2 = 1e-3;
    private static final double MM_PER_M = 1000;

    private final Box box;
    private final StrengthTerms terms;
    private final WorstUses worst;
    private final double pressureNPerMm2;
    private double legN;

    PlatformUses(Box box, StrengthTerms terms, WorstUses worst) {
        this.box = box;
        this.terms = terms;
        this.worst = worst;
        double depthM = Math.max(
                        0,
                        box.soilDepthMm()
                                - terms.fill().belowRimMm()
                                + terms.fill().heapedMm())
                / MM_PER_M;
        double soil = terms.rules().permanentFactor() * terms.fill().saturatedKnPerM3() * depthM;
        double treading = terms.rules().passingFactor() * terms.fill().treadingKnPerM2();
        pressureNPerMm2 = (soil + treading) * N_PER_MM2;
    }

    void take() {
        List<Piece> slats = pieces(Role.SLAT);
        List<Piece> bearers = pieces(Role.BEARER);
        if (slats.isEmpty() || bearers.isEmpty()) {
            return;
        }
        double slatMm2 =
                slats.stream().mapToDouble(p -> p.place().plan().areaMm2()).sum();
        double floorMm2 = box.inside().stream().mapToDouble(Ring::areaMm2).sum();
        double widestBayMm = 0;
        for (Piece slat : slats) {
            double bayMm = widestGap(slat, bearers);
            widestBayMm = Math.max(widestBayMm, bayMm);
            double perMm = pressureNPerMm2 * Math.max(1, floorMm2 / slatMm2) * across(slat);
            bend(PartKind.SLATS, slat, perMm, bayMm);
        }
        List<Piece> legs = pieces(Role.LEG);
        for (Piece bearer : bearers) {
            double perMm = pressureNPerMm2 * widestBayMm;
            double bayMm = legs.isEmpty() ? 0 : widestGap(bearer, legs);
            if (bayMm > 0) {
                bend(PartKind.BEARERS, bearer, perMm, bayMm);
                stand(bearer, legs, perMm * bayMm);
            }
        }
    }

    /** What each leg must stand on; nothing where there are none. */
    Optional<Message> pads() {
        if (legN == 0) {
            return Optional.empty();
        }
        double served = legN / Math.max(1, terms.rules().permanentFactor());
        double padMm = Math.sqrt(served / (FoundationSoil.GRAVEL.bearingKnPerM2() * N_PER_MM2));
        double roundMm = 10 * Math.ceil(padMm / 10);
        return Optional.of(StrengthMessage.LEG_PADS.of(served, roundMm));
    }

    private void bend(PartKind parts, Piece piece, double perMm, double spanMm) {
        Timber timber = terms.materials().timber(piece.section());
        double heightMm = piece.place().heightMm();
        double widthMm = across(piece);
        TimberSection section = new TimberSection(Math.min(heightMm, widthMm), Math.max(heightMm, widthMm));
        double moment = perMm * spanMm * spanMm / 8;
        Effects effects = heightMm <= widthMm ? new Effects(moment, 0, 0) : new Effects(0, moment, 0);
        worst.take(
                parts,
                CheckKind.BENDING,
                () -> PartMessage.PIECE.of(piece.label()),
                PartMessage.SOAKED_AND_TRODDEN_FILL::of,
                working -> {
                    working.step("w", StrengthStep.FLOOR_LOAD, perMm, "N/mm", "");
                    working.step("L", StrengthStep.WIDEST_SPAN, spanMm, "mm", "");
                    working.step("M", "w L^2 / 8", moment, "Nmm", "");
                    return timber.bending(section, effects, LoadDuration.PERMANENT, working);
                });
        worst.take(
                parts,
                CheckKind.SHEAR,
                () -> PartMessage.PIECE.of(piece.label()),
                PartMessage.SOAKED_AND_TRODDEN_FILL::of,
                working -> timber.shear(section, perMm * spanMm / 2, LoadDuration.PERMANENT, working));
    }

    private void stand(Piece bearer, List<Piece> legs, double forceN) {
        Piece leg = legs.get(0);
        Timber timber = terms.materials().timber(leg.section());
        double areaMm2 = leg.place().plan().areaMm2();
        double thinMm = across(leg);
        TimberSection section =
                new TimberSection(Math.min(thinMm, areaMm2 / thinMm), Math.max(thinMm, areaMm2 / thinMm));
        double heightMm = leg.place().heightMm();
        legN = Math.max(legN, forceN);
        worst.take(
                PartKind.LEGS,
                CheckKind.COMPRESSION,
                () -> PartMessage.PIECE.of(leg.label()),
                PartMessage.SOAKED_AND_TRODDEN_FILL::of,
                working -> timber.post(section, heightMm, forceN, LoadDuration.PERMANENT, working));
        Timber under = terms.materials().timber(bearer.section());
        worst.take(
                PartKind.BEARERS,
                CheckKind.BEARING,
                () -> PartMessage.PIECE.of(bearer.label()),
                PartMessage.SOAKED_AND_TRODDEN_FILL::of,
                working -> under.bearing(areaMm2, forceN, LoadDuration.PERMANENT, working));
    }

    private List<Piece> pieces(Role role) {
        return box.pieces().stream().filter(piece -> piece.role() == role).toList();
    }

    /** Width of a piece on the plan, square to its length. */
    private static double across(Piece piece) {
        return extent(piece.place().plan(), axis(piece).left());
    }

    private static Point axis(Piece piece) {
        Point level = piece.alongMm().level();
        return level.lengthMm() > 0.5 ? level : piece.place().plan().direction(0);
    }

    private static double extent(Ring ring, Point along) {
        double from =
                ring.corners().stream().mapToDouble(p -> p.dot(along)).min().orElse(0);
        double to = ring.corners().stream().mapToDouble(p -> p.dot(along)).max().orElse(0);
        return to - from;
    }

    /** Greatest distance between the middles of neighbouring supports of a piece; 0 where it has fewer than two. */
    private static double widestGap(Piece piece, List<Piece> supports) {
        Point along = axis(piece);
        List<Double> at = new ArrayList<>();
        for (Piece support : supports) {
            if (piece.place().plan().toJts().intersects(support.place().plan().toJts())) {
                at.add(support.place().plan().meanCorner().dot(along));
            }
        }
        at.sort(null);
        double widest = 0;
        for (int i = 1; i < at.size(); i++) {
            widest = Math.max(widest, at.get(i) - at.get(i - 1));
        }
        return widest;
    }
}
