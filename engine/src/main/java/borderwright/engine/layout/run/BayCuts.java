package borderwright.engine.layout.run;

import borderwright.engine.garden.vocabulary.LengthRange;
import borderwright.engine.layout.room.FreeRoom;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Where the planters of a fitted run end.
 *
 * <p>Legs that follow each other round slight bends share one row of equal planters, measured along their middle line; a
 * corner, a gap or an end closes the row. Dividers stand square to their leg and keep the least edge from every bend.
 */
public final class BayCuts {
    private final RunChain chain;
    private final RunTerms terms;
    private final Findings findings;
    private final List<Stretch> stretches = new ArrayList<>();
    private final List<BayLengths> rows = new ArrayList<>();
    private final List<SquareCut> cuts = new ArrayList<>();
    private @Nullable SquareCut start;

    private BayCuts(RunChain chain, RunTerms terms, Findings findings) {
        this.chain = chain;
        this.terms = terms;
        this.findings = findings;
    }

    public static List<Stretch> of(RunChain chain, RunTerms terms, Findings findings) {
        BayCuts bays = new BayCuts(chain, terms, findings);
        int leg = 0;
        int noted = 0;
        while (leg < chain.legs().size()) {
            int last = leg;
            while (chain.kindAfter(last) == JointKind.BEND) {
                last++;
            }
            if (chain.isPlanted(leg)) {
                bays.row(leg, last);
            }
            leg = last + 1;
            boolean edgeEnds = leg == chain.legs().size()
                    || chain.leg(leg).edge() != chain.leg(last).edge();
            if (edgeEnds && bays.rows.size() > noted) {
                findings.note(
                        findings.noteMaker().bays(chain.leg(last), bays.rows.subList(noted, bays.rows.size()), terms));
                noted = bays.rows.size();
            }
        }
        return bays.stretches;
    }

    /** Planters along the legs from {@code first} to {@code last}, which bend into each other. */
    private void row(int first, int last) {
        boolean wingBefore = chain.kindAfter(first - 1) == JointKind.MITRED;
        boolean wingAfter = chain.kindAfter(last) == JointKind.MITRED;
        List<BayLengths.Wing> wings = wings(first, last);
        MiddleLine middle = new MiddleLine(chain, first, last, terms.rules().leastEdgeMm() + terms.gapMm() / 2);
        BayLengths.Share share = new BayLengths.Share(middle.lengthMm(), wings, terms.gapMm(), terms.rules());
        BayLengths lengths = chosen(share, first, last);
        rows.add(lengths);
        if (lengths.planters() > 0 && lengths.planterMm() > terms.rules().longestBoardMm()) {
            findings.note(findings.noteMaker().longerThanBoards(chain.leg(first), lengths.planterMm(), terms));
        }
        SquareCut open = start;
        if (open == null || !wingBefore) {
            open = new SquareCut(first, chain.freeOn(first).fromMm());
        }
        // Rows of a given length start at the place given and leave what is over at their end.
        double over = terms.isFree() ? Math.max(0, share.freeMm() - lengths.usedMm(terms.gapMm())) : 0;
        double lead = chain.isReversed() ? over : 0;
        if (lead > 0) {
            open = middle.cutAt(lead);
        }
        start = open;
        List<SquareCut> row = cuts(lengths, wingBefore, middle, lead);
        int lost = lengths.planters() + wings.size() - 1 - row.size();
        if (lost > 0) {
            findings.unmet(findings.problemMaker().dividersLost(chain.leg(first), lost, terms));
        }
        cuts.addAll(row);
        if (!wingAfter) {
            SquareCut end = over > lead
                    ? middle.cutAt(middle.lengthMm() - over + lead)
                    : new SquareCut(last, chain.freeOn(last).toMm());
            stretches.add(new Stretch(open, end, cuts));
            cuts.clear();
            start = null;
        }
    }

    /** The wings of planters that go round a mitred corner at either end of the legs. */
    private List<BayLengths.Wing> wings(int first, int last) {
        List<BayLengths.Wing> wings = new ArrayList<>();
        for (int joint : List.of(first - 1, last)) {
            if (chain.kindAfter(joint) == JointKind.MITRED) {
                wings.add(BayLengths.Wing.of(chain.joint(joint), terms.rules()));
            }
        }
        return wings;
    }

    private BayLengths chosen(BayLengths.Share share, int first, int last) {
        double requested = 0;
        for (int i = first; i <= last; i++) {
            requested += chain.leg(i).planters();
        }
        Optional<LengthRange> wanted = terms.length();
        int planters = (int) Math.round(requested);
        if (terms.isFree() && wanted.isPresent() && planters > 0) {
            return ofFixedLength(
                    share, new BayLengths(planters, wanted.get().from().mm(), List.of()), first);
        }
        Optional<BayLengths> fit = planters > 0
                ? share.among(planters).or(share::most)
                : wanted.isPresent() ? share.nearest(wanted.get()) : share.most();
        BayLengths lengths = fitted(fit, share);
        if (planters > 0 && lengths.planters() < planters) {
            findings.unmet(findings.problemMaker().fewerPlanters(chain.leg(first), planters, lengths, share, terms));
        } else if (wanted.isPresent() && !wanted.get().isFixed() && !lengths.within(wanted.get())) {
            findings.unmet(findings.problemMaker().lengthOutOfRange(chain.leg(first), lengths, wanted.get(), terms));
        }
        return lengths;
    }

    /** Planters of exactly the length requested: as many as requested, or as there is room for. */
    private BayLengths ofFixedLength(BayLengths.Share share, BayLengths requested, int leg) {
        double gap = terms.gapMm();
        double lengthMm = requested.planterMm();
        int room = (int) Math.floor((share.freeMm() + gap + FreeRoom.TOLERANCE_MM) / (lengthMm + gap));
        if (room >= requested.planters()) {
            return requested;
        }
        findings.unmet(findings.problemMaker().fewerOfLength(chain.leg(leg), requested, room, share.freeMm(), terms));
        return room > 0 ? new BayLengths(room, lengthMm, List.of()) : fitted(share.most(), share);
    }

    private static BayLengths fitted(Optional<BayLengths> fit, BayLengths.Share share) {
        return fit.orElseThrow(
                () -> new IllegalStateException("a leg of " + share.freeMm() + " mm was kept without room"));
    }

    private List<SquareCut> cuts(BayLengths lengths, boolean wingBefore, MiddleLine middle, double lead) {
        int count = lengths.planters() + lengths.wingsMm().size() - 1;
        double gap = terms.gapMm();
        double at = lead + (wingBefore ? lengths.wingsMm().get(0) : lengths.planterMm()) + gap / 2;
        double least = terms.rules().leastEdgeMm() + gap - 1e-6;
        double before = lead - gap / 2;
        List<SquareCut> row = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            SquareCut cut = middle.cutAt(at);
            double along = middle.alongMm(cut);
            if (along - before >= least && middle.lengthMm() + gap / 2 - along >= least) {
                row.add(cut);
                before = along;
            }
            at += lengths.planterMm() + gap;
        }
        return row;
    }
}
