package borderwright.engine.strength.frame;

/**
 * How stiff a member is.
 *
 * @param axial EA, N
 * @param aboutY E I about the member's own y axis (it then bends towards z), N mm2
 * @param aboutZ E I about its own z axis (it then bends towards y), N mm2
 * @param torsion G J, N mm2
 */
public record JointRigidity(double axial, double aboutY, double aboutZ, double torsion) {
    public JointRigidity {
        if (!(axial >= 0 && aboutY >= 0 && aboutZ >= 0 && torsion >= 0)) {
            throw new IllegalArgumentException(
                    "rigidities are 0 or more, got " + axial + ", " + aboutY + ", " + aboutZ + ", " + torsion);
        }
    }
}
