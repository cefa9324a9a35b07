package borderwright.engine.strength.box;

import borderwright.engine.garden.SectionNote;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.Joint;
import borderwright.engine.strength.timber.RuleSet;
import borderwright.engine.strength.timber.Timber;
import java.util.List;

/**
 * Timber and screws of a box under one rule set.
 *
 * @param rules which rule set
 * @param sections the sections in question, as measured, with their grades where stamped
 * @param withdrawalNPerMm2 declared withdrawal parameter of the screws; 0 where none is declared
 * @param pullThroughNPerMm2 declared head pull-through parameter; 0 where none is declared
 * @param axialStiffnessNPerMm declared stiffness of one screw pulled; 0 takes its slip modulus in shear, which is a
 *     careful default without source: approvals declare several times as much
 */
public record Materials(
        RuleSet rules,
        List<SectionNote> sections,
        double withdrawalNPerMm2,
        double pullThroughNPerMm2,
        double axialStiffnessNPerMm) {
    /** The strap's own screws are not bought by name: two of 4 x 30 in each leg (careful default, no source). */
    static final Fastener STRAP_SCREW = Fastener.screw(4, 30);

    /** Steel under a strap screw's head, taken as a wood plate as thin as the yield formulas allow, mm. */
    static final double STRAP_MM = 2;

    static final int STRAP_SCREWS = 2;

    public Materials {
        sections = List.copyOf(sections);
    }

    /** Nothing declared of the screws. */
    public static Materials of(RuleSet rules, List<SectionNote> sections) {
        return new Materials(rules, sections, 0, 0, 0);
    }

    SectionNote section(String name) {
        for (SectionNote section : sections) {
            if (section.name().equals(name)) {
                return section;
            }
        }
        throw new IllegalArgumentException("no section is named " + name);
    }

    private Grade grade(String section) {
        SectionNote note = section(section);
        return new Grade(note.grade(), note.arrivesWet());
    }

    /** The timber of a section. */
    public Timber timber(String section) {
        return rules.timber(grade(section));
    }

    /** A screw of that size with what is declared of it. */
    Fastener screw(double diameterMm, double lengthMm) {
        Fastener plain = Fastener.screw(diameterMm, lengthMm);
        return new Fastener(
                plain.kind(),
                plain.diameterMm(),
                plain.rootMm(),
                plain.lengthMm(),
                plain.threadMm(),
                plain.headMm(),
                plain.fuNPerMm2(),
                plain.predrilled(),
                withdrawalNPerMm2,
                pullThroughNPerMm2,
                plain.declaredRhoKgPerM3());
    }

    Joint joint(Fastener screw, double fixedMm, String fixed, double receiverMm, String receiver) {
        return rules.joint(screw, fixedMm, grade(fixed), receiverMm, grade(receiver), false);
    }

    /** Stiffness of one screw along itself at first; nothing where it counts for nothing. */
    double pullStiffness(Joint joint) {
        if (!joint.holdsPull()) {
            return 0;
        }
        return axialStiffnessNPerMm > 0 ? axialStiffnessNPerMm : joint.slipModulus();
    }
}
