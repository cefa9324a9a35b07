package borderwright.engine.strength.box;

import borderwright.engine.garden.SectionSpec;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.ScrewPull;
import borderwright.engine.strength.timber.Timber;
import java.util.List;

/**
 * Timber and screws of a box under one rule set.
 *
 * @param rules which rule set
 * @param sections the sections in question, as measured, with their grades where stamped
 * @param pull what the screws bear when they are pulled
 * @param axialStiffnessNPerMm declared stiffness of one screw pulled; 0 takes its slip modulus in shear, which is a
 *     careful default without source: approvals declare several times as much
 */
public record MemberMaterials(RuleSet rules, List<SectionSpec> sections, ScrewPull pull, double axialStiffnessNPerMm) {
    /** The thinnest strap that is asked for. */
    private static final double STRAP_MM = 1.5;

    public MemberMaterials {
        sections = List.copyOf(sections);
    }

    /** The section of that name. */
    public SectionSpec section(String name) {
        for (SectionSpec section : sections) {
            if (section.name().equals(name)) {
                return section;
            }
        }
        throw new IllegalArgumentException("no section is named " + name);
    }

    private Grade grade(String section) {
        SectionSpec note = section(section);
        return new Grade(note.grade().orElse(null), note.arrivesWet());
    }

    /** The timber of a section. */
    public Timber timber(String section) {
        return rules.timber(grade(section));
    }

    /** A screw of that size. */
    Fastener screw(double diameterMm, double lengthMm) {
        return Fastener.screw(diameterMm, lengthMm, pull);
    }

    FastenerJoint joint(Fastener screw, double fixedMm, String fixed, double receiverMm, String receiver) {
        return rules.joint(screw, fixedMm, grade(fixed), receiverMm, grade(receiver), DrivenInto.SIDE_GRAIN);
    }

    /** A screw through a strap of the thinnest steel asked for. */
    FastenerJoint plate(Fastener screw, double receiverMm, String receiver) {
        return rules.plate(screw, STRAP_MM, receiverMm, grade(receiver));
    }

    /** A screw along the grain of the receiver. */
    FastenerJoint endJoint(Fastener screw, double fixedMm, String fixed, double receiverMm, String receiver) {
        return rules.joint(screw, fixedMm, grade(fixed), receiverMm, grade(receiver), DrivenInto.END_GRAIN);
    }

    /** Whether a screw in the middle of a board's edge stands far enough from both faces to bear a load across it. */
    boolean staysInEdge(double diameterMm, double thicknessMm) {
        return thicknessMm / 2 >= rules.loadedEdgeMm(diameterMm);
    }

    /** Stiffness of one screw along itself at first; nothing where it counts for nothing. */
    double pullStiffness(FastenerJoint joint) {
        if (!joint.holdsPull()) {
            return 0;
        }
        return axialStiffnessNPerMm > 0 ? axialStiffnessNPerMm : joint.slipModulus();
    }
}
