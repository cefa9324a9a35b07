package borderwright.pack.figures;

import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import borderwright.engine.message.Sentences;
import borderwright.engine.problem.Problem;
import borderwright.engine.shopping.ShoppingItem;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.SheetLine;
import borderwright.pack.language.Language;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import org.joda.money.Money;

/**
 * How the pack writes figures and names: one place, so that the same thing reads the same on every sheet.
 *
 * @param lengths lengths, areas, volumes and weights in the garden's units
 * @param sentences makes words of messages
 */
public record PrintedFigures(LengthFormat lengths, Sentences sentences) {
    private static final double LITRES_PER_M3 = 1000;
    private static final double LEAST_SHOWN = 5e-5;

    public static PrintedFigures in(UnitSystem units) {
        return new PrintedFigures(new LengthFormat(units), Language.english().in(units));
    }

    /** A message in words. */
    public String text(Message message) {
        return sentences.text(message);
    }

    /** What is wrong and what would be right, in words. */
    public String sentence(Problem problem) {
        return problem.sentence(sentences);
    }

    public UnitSystem units() {
        return lengths.units();
    }

    public String length(double mm) {
        return lengths.length(mm);
    }

    /** The length of a piece or board as it is cut. */
    public String piece(Length length) {
        return lengths.piece(length.mm());
    }

    /** A length as suppliers write it, such as of a board to buy. */
    public String site(double mm) {
        return lengths.site(mm);
    }

    /** A depth to dig or fill: to 5 mm, or a quarter of an inch. No spade does better. */
    public String dig(double mm) {
        double step = units() == UnitSystem.IMPERIAL ? UnitFactors.MM_PER_INCH / 4 : 5;
        return length(Math.rint(mm / step) * step);
    }

    /** A volume to 10 litres, or half a cubic foot. */
    public String roughVolume(double m3) {
        double step = units() == UnitSystem.IMPERIAL ? UnitFactors.M3_PER_CUBIC_FOOT / 2 : 0.01;
        return lengths.volume(Math.rint(m3 / step) * step);
    }

    /** A weight to 20 kg, or 50 lb. */
    public String roughWeight(double kg) {
        double step = units() == UnitSystem.IMPERIAL ? 50 * UnitFactors.KG_PER_POUND : 20;
        return lengths.weight(Math.rint(kg / step) * step);
    }

    /** Of a piece: to a tenth of a kilogram, or half a pound. */
    public String pieceWeight(double kg) {
        return units() == UnitSystem.IMPERIAL
                ? decimal(Math.rint(kg / UnitFactors.KG_PER_POUND * 2) / 2, 1) + " lb"
                : decimal(kg, 1) + " kg";
    }

    public String metres(double m) {
        return lengths.site(m * 1000);
    }

    /** A small length that is an error or its likely size: tenths of a mm, or hundredths of an inch. */
    public String error(double mm) {
        return units() == UnitSystem.IMPERIAL
                ? decimal(mm / UnitFactors.MM_PER_INCH, 2) + "\""
                : decimal(mm, 1) + " mm";
    }

    public String degrees(double degrees) {
        return lengths.angle(Angle.ofDegrees(degrees));
    }

    public String crossing(double radians) {
        return lengths.angle(new Angle(radians));
    }

    /** A survey reading's value in its own unit. */
    public String reading(double value, String unit) {
        if (unit.equals("deg")) {
            return decimal(value, 2) + "°";
        }
        return units() == UnitSystem.IMPERIAL ? lengths.site(value) : lengths.piece(value);
    }

    /** A survey reading's standard deviation in its own unit. */
    public String readingError(double value, String unit) {
        return unit.equals("deg") ? decimal(value, 2) + "°" : error(value);
    }

    /** A survey reading's residual in its own unit, with its sign. */
    public String signedReadingError(double value, String unit) {
        return signed(readingError(value, unit));
    }

    public String money(Money money) {
        return money.getCurrencyUnit().getCode() + " " + money.getAmount().toPlainString();
    }

    /** A number of something, with its word in the singular or plural. */
    public String count(int count, String one, String many) {
        return count + " " + (count == 1 ? one : many);
    }

    /** A number of that many decimal places. */
    public String decimal(double value, int places) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(places, RoundingMode.HALF_UP);
        return (rounded.signum() == 0 ? rounded.abs() : rounded).toPlainString();
    }

    /** A sentence begun with a capital letter and ended with a stop. */
    public String sentence(String text) {
        String begun = text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return begun.isEmpty() || begun.endsWith(".") ? begun : begun + ".";
    }

    /** How much of what a part bears is used. */
    public String use(Check check) {
        return check.utilisation() > 9.99 ? "over 999 %" : decimal(check.utilisation() * 100, 0) + " %";
    }

    /** The value of a line of a worked sheet, to four figures, with its unit; empty for a remark. */
    public String worked(SheetLine line) {
        return line.value()
                .map(value -> figures(value) + (line.unit().isEmpty() ? "" : " " + line.unit()))
                .orElse("");
    }

    private static String figures(double value) {
        // What is left of a force that is none is not worth its zeros.
        if (StrictMath.abs(value) < LEAST_SHOWN) {
            return "0";
        }
        BigDecimal rounded = BigDecimal.valueOf(value).round(new MathContext(4));
        return (rounded.scale() < 0 ? rounded.setScale(0) : rounded.stripTrailingZeros()).toPlainString();
    }

    /** A drill's size: tenths of a mm, or the nearest 64th of an inch, as drills are sold. */
    public String drill(double mm) {
        if (mm <= 0) {
            return "none";
        }
        if (units() != UnitSystem.IMPERIAL) {
            return decimal(mm, 1) + " mm";
        }
        long parts = StrictMath.round(mm / UnitFactors.MM_PER_INCH * 64);
        long of = 64;
        while (parts % 2 == 0 && of > 1) {
            parts /= 2;
            of /= 2;
        }
        return (of == 1 ? Long.toString(parts) : parts + "/" + of) + "\"";
    }

    /** The volume of a barrow or another vessel that is known by its litres. */
    public String litres(double litres) {
        return lengths.volume(litres / LITRES_PER_M3);
    }

    /** A liquid to buy, rounded up to the tenth as on the shopping list: litres, and US quarts beside them for imperial gardens. */
    public String liquid(double litres) {
        String metric = ShoppingItem.upToTenth(litres).toPlainString();
        return text(
                units() == UnitSystem.IMPERIAL
                        ? FigureMessage.LIQUID_IN_QUARTS.of(
                                ShoppingItem.upToTenth(litres / UnitFactors.LITRES_PER_QUART)
                                        .toPlainString(),
                                metric)
                        : FigureMessage.LIQUID_IN_LITRES.of(metric));
    }

    /** A plus before what is neither negative nor nought. */
    private static String signed(String text) {
        return text.startsWith("-") || text.chars().noneMatch(c -> c >= '1' && c <= '9') ? text : "+" + text;
    }
}
