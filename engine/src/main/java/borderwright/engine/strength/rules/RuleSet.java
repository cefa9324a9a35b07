package borderwright.engine.strength.rules;

import borderwright.engine.garden.vocabulary.TimberRules;
import borderwright.engine.message.Message;
import borderwright.engine.strength.timber.DrivenInto;
import borderwright.engine.strength.timber.Fastener;
import borderwright.engine.strength.timber.FastenerJoint;
import borderwright.engine.strength.timber.Grade;
import borderwright.engine.strength.timber.Timber;

/** A named set of rules for timber: which factors on loads, which strengths, which joints. */
public interface RuleSet {
    /** EN 1995-1-1 in service class 3. */
    RuleSet EUROCODE = new Eurocode5();

    /** NDS allowable stress design, wet service. */
    RuleSet NDS = new Nds();

    /** The rule set of that name. */
    static RuleSet of(TimberRules rules) {
        return switch (rules) {
            case EUROCODE -> EUROCODE;
            case NDS -> NDS;
        };
    }

    /** Its name as printed beside results. */
    Message name();

    /** Factor on permanent loads for strength. */
    double permanentFactor();

    /** Factor on passing loads for strength. */
    double passingFactor();

    Timber timber(Grade grade);

    /**
     * A fastener through one timber into another.
     *
     * @param fastener the fastener
     * @param fixedMm thickness of the timber under its head
     * @param fixed its quality
     * @param receiverMm depth of the timber that it ends in
     * @param receiver its quality
     * @param grain of the receiver
     */
    FastenerJoint joint(
            Fastener fastener, double fixedMm, Grade fixed, double receiverMm, Grade receiver, DrivenInto grain);

    /**
     * How far a predrilled screw must stand from a face that its load pushes it towards, mm.
     *
     * @param dMm diameter
     */
    double loadedEdgeMm(double dMm);

    /**
     * A screw through a thin steel plate into the side grain of a timber, loaded across itself; it counts for nothing
     * when pulled.
     *
     * @param fastener the screw
     * @param plateMm thickness of the plate, at most half the screw's diameter
     * @param receiverMm depth of the timber
     * @param receiver its quality
     */
    FastenerJoint plate(Fastener fastener, double plateMm, double receiverMm, Grade receiver);
}
