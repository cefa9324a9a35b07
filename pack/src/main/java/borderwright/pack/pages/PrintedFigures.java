package borderwright.pack.pages;

import borderwright.engine.buildup.parts.Box;
import borderwright.engine.buildup.parts.EndCut;
import borderwright.engine.buildup.parts.Piece;
import borderwright.engine.buying.why.Basket;
import borderwright.engine.cutting.CuttingPlan;
import borderwright.engine.garden.Garden;
import borderwright.engine.layout.plan.SidePlan;
import borderwright.engine.measure.Angle;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.LengthFormat;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.plan.Comparison;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.SheetLine;
import borderwright.engine.survey.checks.SurveyReport;
import borderwright.pack.drawings.Words;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import org.joda.money.Money;

/**
 * How the pack writes figures and names: one place, so that the same thing reads the same on every sheet.
 *
 * @param lengths lengths, areas, volumes and weights in the garden's units
 */
public record PrintedFigures(LengthFormat lengths) {
    private static final double LEAST_SHOWN = 5e-5;

    public static PrintedFigures in(UnitSystem units) {
        return new PrintedFigures(new LengthFormat(units));
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

    /** A length that need not be known better than a finger's width: to 10 mm, or half an inch. */
    public String roughLength(double mm) {
        double step = units() == UnitSystem.IMPERIAL ? 12.7 : 10;
        return length(Math.rint(mm / step) * step);
    }

    /** A depth to dig or fill: to 5 mm, or a quarter of an inch. No spade does better. */
    public String dig(double mm) {
        double step = units() == UnitSystem.IMPERIAL ? 6.35 : 5;
        return length(Math.rint(mm / step) * step);
    }

    /** A volume to 10 litres, or half a cubic foot. */
    public String roughVolume(double m3) {
        double step = units() == UnitSystem.IMPERIAL ? 0.014158423296 : 0.01;
        return lengths.volume(Math.rint(m3 / step) * step);
    }

    /** A weight to 20 kg, or 50 lb. */
    public String roughWeight(double kg) {
        double step = units() == UnitSystem.IMPERIAL ? 22.6796185 : 20;
        return lengths.weight(Math.rint(kg / step) * step);
    }

    /** Of a piece: to a tenth of a kilogram, or half a pound. */
    public String pieceWeight(double kg) {
        return units() == UnitSystem.IMPERIAL
                ? decimal(Math.rint(kg / 0.45359237 * 2) / 2, 1) + " lb"
                : decimal(kg, 1) + " kg";
    }

    public String metres(double m) {
        return lengths.site(m * 1000);
    }

    /** A small length that is an error or its likely size: tenths of a mm, or hundredths of an inch. */
    public String error(double mm) {
        return units() == UnitSystem.IMPERIAL ? decimal(mm / 25.4, 2) + " in" : decimal(mm, 1) + " mm";
    }

    /** The same with its sign. */
    public String signedError(double mm) {
        return signed(error(mm));
    }

    public String degrees(double degrees) {
        return lengths.angle(Angle.ofDegrees(degrees));
    }

    public String crossing(double radians) {
        return lengths.angle(new Angle(radians));
    }

    /** A survey reading's value in its own unit. */
    public String reading(double value, String unit) {
        return unit.equals("deg") ? decimal(value, 2) + "°" : lengths.piece(value);
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

    public String role(Piece.Role role) {
        return Words.role(role);
    }

    /** An end cut in a few words; its angle is from square, and which end it is stands at the head of its column. */
    public String cut(Piece piece, EndCut cut) {
        if (cut.isSquare()) {
            return "square";
        }
        boolean bevel = cut.tiltDeg() > 0;
        return (bevel ? "bevel " + degrees(cut.tiltDeg()) : "mitre " + degrees(cut.fenceDeg())) + ", long point "
                + Words.longPoint(piece.role(), cut.longPoint()) + ", short point " + length(cut.offsetMm()) + " back";
    }

    /** An angle setting of a saw, from square. */
    public String tilt(double degrees) {
        return decimal(degrees, 1).equals("0.0") ? "square" : degrees(degrees);
    }

    /** The number of a set-up; empty when there is none of that index. */
    public String setUp(List<CuttingPlan.SetUp> setUps, int index) {
        return index < 0 || index >= setUps.size()
                ? ""
                : Integer.toString(setUps.get(index).number());
    }

    /** How far a total is over or under the budget. */
    public String budget(Money over) {
        if (over.isZero()) {
            return "Just on the budget.";
        }
        return money(over.abs()) + (over.isPositive() ? " over the budget." : " under the budget.");
    }

    /** How much less a design costs than another; more when negative. */
    public String less(Money less) {
        return money(less.abs()) + (less.isNegative() ? " more" : " less");
    }

    /** How many shortfalls a design has, and how many of them the garden as said does not have. */
    public String shortfallsAgainst(Comparison.Row row, Comparison.Row asSaid) {
        int all = row.unmet().size();
        int more = moreShortfalls(row, asSaid).size();
        if (all == 0) {
            return "nothing";
        }
        return row.equals(asSaid) ? all + ", see above" : more == 0 ? all + ", as above" : all + ", " + more + " below";
    }

    /** Shortfalls of a design that the garden as said does not have; what would be right stands in plan.json. */
    public List<String> moreShortfalls(Comparison.Row row, Comparison.Row asSaid) {
        return row.unmet().stream()
                .filter(s -> !asSaid.unmet().contains(s))
                .map(PrintedFigures::firstSentence)
                .toList();
    }

    private static String firstSentence(String text) {
        int end = text.indexOf(". ");
        return end < 0 ? text : text.substring(0, end + 1);
    }

    /** A sentence begun with a capital letter and ended with a stop. */
    public String sentence(String text) {
        String begun = text.isEmpty() ? text : Character.toUpperCase(text.charAt(0)) + text.substring(1);
        return begun.isEmpty() || begun.endsWith(".") ? begun : begun + ".";
    }

    /** What is known of whether a basket could be cheaper. */
    public String proof(Basket basket) {
        return basket.proven()
                ? "Proven: no basket from these price lists that serves the whole list costs less."
                : "The best found. Nothing can cost less than " + money(basket.bound()) + ".";
    }

    /** What the survey's readings say of each other, in a sentence. */
    public String verdict(SurveyReport survey) {
        if (survey.globalTest().isEmpty()) {
            return "Not shown to hold: every reading is needed, so nothing checks them. Best next: "
                    + survey.next().what() + ".";
        }
        SurveyReport.GlobalTest test = survey.globalTest().get();
        String figures = "test figure " + decimal(test.statistic(), 2) + ", limit " + decimal(test.limit(), 2) + " at "
                + decimal(test.risk() * 100, 1) + " % risk, "
                + count(survey.redundancy(), "reading to spare", "readings to spare");
        return test.agrees()
                ? "Holds: the readings agree (" + figures + ")."
                : "Does not hold: the readings disagree by more than chance (" + figures + ").";
    }

    /** Lengths of a box's fronts. */
    public String fronts(Box box) {
        List<String> fronts = new ArrayList<>();
        for (int i = 0; i < box.plan().sides().size(); i++) {
            if (box.plan().sides().get(i).role() == SidePlan.Role.FRONT) {
                fronts.add(length(box.plan().outline().sideMm(i)));
            }
        }
        return String.join(" + ", fronts);
    }

    /** What else is to be known of a piece. */
    public String pieceNotes(Piece piece) {
        List<String> notes = new ArrayList<>();
        if (piece.rip() != null) {
            notes.add("rip along: " + piece.rip().words());
        }
        for (Piece.Notch notch : piece.notches()) {
            notes.add("notch " + piece(notch.width()) + " wide, " + piece(notch.depth()) + " deep, "
                    + piece(notch.fromLeft()) + " from the left, from " + notch.edge());
        }
        if (piece.touchesGround()) {
            notes.add("touches the ground");
        }
        return String.join("; ", notes);
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
        long parts = StrictMath.round(mm / 25.4 * 64);
        long of = 64;
        while (parts % 2 == 0 && of > 1) {
            parts /= 2;
            of /= 2;
        }
        return (of == 1 ? Long.toString(parts) : parts + "/" + of) + " in";
    }

    /** A liquid: litres, and US quarts beside them for imperial gardens. */
    public String liquid(double litres) {
        String metric = decimal(litres, litres < 1 ? 2 : 1) + " litres";
        return units() == UnitSystem.IMPERIAL
                ? decimal(litres / LengthFormat.LITRES_PER_QUART, 1) + " US quarts (" + metric + ")"
                : metric;
    }

    /** A weight that is a rule of thumb: whole kilograms or pounds. */
    public String wholeWeight(double kg) {
        return units() == UnitSystem.IMPERIAL ? decimal(kg / 0.45359237, 0) + " lb" : decimal(kg, 0) + " kg";
    }

    /** A supplier's terms in a sentence. */
    public String terms(Garden garden, Basket.Order order) {
        return garden.suppliers().stream()
                .filter(s -> s.name().equals(order.supplier()))
                .map(s -> (s.isTaxIncluded() ? "Prices include tax." : "Prices without tax; it is added below.")
                        + (s.quoted() == null
                                ? ""
                                : " Quoted " + s.quoted() + ": ask again if that is over two weeks ago."))
                .findFirst()
                .orElse("");
    }

    /** A plus before what is neither negative nor nought. */
    private static String signed(String text) {
        return text.startsWith("-") || text.chars().noneMatch(c -> c >= '1' && c <= '9') ? text : "+" + text;
    }
}
