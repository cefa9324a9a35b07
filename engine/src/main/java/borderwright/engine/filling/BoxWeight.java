package borderwright.engine.filling;

/**
 * What a box weighs.
 *
 * @param box its name
 * @param woodKg its wood as it arrives, kg
 * @param heaviestPiece label of its heaviest piece; empty when it has none
 * @param heaviestKg weight of that piece, kg
 * @param fillKg its filling soaked, kg
 * @param kgPerM2 wood and soaked filling over the area it stands on, kg/m2
 * @param carriers people to carry the empty box at the given lift each; 1 for none needed besides oneself
 */
public record BoxWeight(
        String box,
        double woodKg,
        String heaviestPiece,
        double heaviestKg,
        double fillKg,
        double kgPerM2,
        int carriers) {
    public double filledKg() {
        return woodKg + fillKg;
    }
}
