package borderwright.engine.garden.resolve;

import borderwright.engine.garden.CuttingSpec;
import borderwright.engine.garden.SawSpec;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.garden.given.GivenCutting;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.vocabulary.BoardMoisture;
import borderwright.engine.garden.vocabulary.BoardSurface;
import borderwright.engine.garden.vocabulary.SawKind;
import borderwright.engine.garden.vocabulary.TiltSide;
import borderwright.engine.measure.Length;
import borderwright.engine.measure.UnitSystem;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/** Boards, the saws that cut them, and how they are cut up. */
public final class WoodResolver {
    private static final Length SIXTEENTH_OF_AN_INCH = new Length(Length.TICKS_PER_INCH / 16);

    private WoodResolver() {}

    /** A section of which only name and size are known. */
    public static SectionSpec section(String name, Length thickness, Length width) {
        return section(GivenSection.builder(name, thickness, width).build());
    }

    /** A section alone. */
    public static SectionSpec section(GivenSection given) {
        return section(given, Ledger.empty());
    }

    static SectionSpec section(GivenSection g, Ledger in) {
        BoardSurface surface = in.or("surface", g.surface(), BoardSurface.ROUGH, "as it leaves the saw");
        boolean planed = surface == BoardSurface.PLANED;
        BoardMoisture moisture = in.or("moisture", g.moisture(), BoardMoisture.WET, "the weaker case");
        boolean wet = moisture == BoardMoisture.WET;
        return new SectionSpec(
                g.name(),
                g.thickness(),
                g.width(),
                in.or(
                                "tolerance",
                                g.tolerance(),
                                Length.ofMm(planed ? 1 : 3),
                                "3 mm rough, 1 mm planed: " + Ledger.PRACTICE)
                        .mm(),
                surface,
                in.or("both faces good", g.bothFacesGood(), true, "either face may go out")
                        ? SectionSpec.Faces.EITHER
                        : SectionSpec.Faces.ONE,
                new SectionSpec.Wood(
                        Optional.ofNullable(g.species()),
                        Optional.ofNullable(g.grade()),
                        in.or("treated", g.treated(), false, "untreated")
                                ? SectionSpec.Treatment.TREATED
                                : SectionSpec.Treatment.UNTREATED,
                        moisture,
                        in.or("density", g.density(), wet ? 700.0 : 550.0, "700 wet, 550 dry: " + Ledger.PRACTICE)));
    }

    /** A saw alone. */
    public static SawSpec saw(GivenSaw given) {
        return saw(given, Ledger.empty());
    }

    static SawSpec saw(GivenSaw g, Ledger in) {
        boolean hand = g.kind() == SawKind.HANDSAW;
        return new SawSpec(
                g.name(),
                g.kind(),
                in.or("kerf", g.kerf(), Length.ofMm(3), Ledger.PRACTICE),
                new SawSpec.Range(
                        in.degrees("tilt", g.tilt(), hand ? 0 : 45, "none for a handsaw guide: " + Ledger.PRACTICE),
                        in.or("tilts", g.tilts(), TiltSide.LEFT, Ledger.PRACTICE),
                        in.degrees("mitre", g.mitre(), 50, Ledger.PRACTICE),
                        in.or("widest board", g.widestBoard(), Length.ofMm(300), Ledger.PRACTICE)
                                .mm(),
                        in.or("thickest board", g.thickestBoard(), Length.ofMm(60), Ledger.PRACTICE)
                                .mm(),
                        in.degrees("angle steps", g.angleSteps(), SawSpec.USUAL_ANGLE_STEP_DEG, Ledger.PRACTICE)),
                holds(g, in),
                abilities(g, in));
    }

    /** A sled and a mitre saw with two supports carry the piece; the other saws go to the board, which lies on trestles. */
    private static SawSpec.Holds holds(GivenSaw g, Ledger in) {
        SawSpec.Holds usual = switch (g.kind()) {
            case TABLE_SAW -> new SawSpec.Holds(150, 1500, 10, 1200);
            case MITRE_SAW -> new SawSpec.Holds(150, 4000, 25, 2500);
            case CIRCULAR_SAW, HANDSAW -> new SawSpec.Holds(150, 20_000, 1000, 2500);
        };
        return new SawSpec.Holds(
                in.or("shortest piece", g.shortestPiece(), Length.ofMm(usual.shortestPieceMm()), Ledger.PRACTICE)
                        .mm(),
                in.or("longest piece", g.longestPiece(), Length.ofMm(usual.longestPieceMm()), Ledger.PRACTICE)
                        .mm(),
                in.or("heaviest piece", g.heaviestPiece(), usual.heaviestPieceKg(), Ledger.PRACTICE),
                in.or("stop reaches", g.stopReaches(), Length.ofMm(usual.stopReachesMm()), Ledger.PRACTICE)
                        .mm());
    }

    private static List<SawSpec.Ability> abilities(GivenSaw g, Ledger in) {
        List<SawSpec.Ability> abilities = new ArrayList<>();
        if (in.or("length stop", g.lengthStop(), false, "none")) {
            abilities.add(SawSpec.Ability.STOP);
        }
        if (in.or("rips", g.rips(), g.kind() == SawKind.TABLE_SAW, "table saws only")) {
            abilities.add(SawSpec.Ability.RIP);
        }
        return abilities;
    }

    /** Cutting of which nothing is given. */
    public static CuttingSpec usualCutting() {
        return cutting(null);
    }

    /** Cutting alone, in millimetres. */
    public static CuttingSpec cutting(@Nullable GivenCutting given) {
        return cutting(given, UnitSystem.METRIC, Ledger.empty());
    }

    static CuttingSpec cutting(@Nullable GivenCutting given, UnitSystem units, Ledger ledger) {
        Ledger in = ledger.in("cutting", given);
        GivenCutting g = given == null ? GivenCutting.builder().build() : given;
        Length step = units == UnitSystem.IMPERIAL ? SIXTEENTH_OF_AN_INCH : Length.ofMm(1);
        return new CuttingSpec(
                in.or("trim", g.trim(), Length.ofMm(10), Ledger.PRACTICE),
                in.or("rejects percent", g.rejectsPercent(), 0.0, "every board is taken to be usable"),
                in.or("keep whole", g.keepWhole(), 0, "none"),
                in.or("extra for fitting", g.extraForFitting(), Length.ofMm(10), Ledger.PRACTICE),
                in.or("shortest offcut", g.shortestOffcut(), Length.ofMm(400), Ledger.PRACTICE),
                in.or("offcut per metre", g.offcutPerMetre(), BigDecimal.ZERO, "nothing"),
                in.or("lengths to", g.lengthsTo(), step, "what a tape shows: " + Ledger.PRACTICE));
    }
}
