package borderwright.engine.plan;

import borderwright.engine.garden.BuildSpec;
import borderwright.engine.garden.BuildSpec.BoxPart;
import borderwright.engine.garden.Garden;
import borderwright.engine.garden.SectionSpec;
import borderwright.engine.measure.UnitFactors;
import borderwright.engine.measure.UnitSystem;
import borderwright.engine.message.Message;
import java.util.Optional;
import java.util.stream.Stream;

/** Posts and braces that have to be cut from the boards of the walls, and what to add so that they need not be. */
final class WallBoardUprights {
    /** Uprights are at least this thick (common practice, no source). */
    private static final double THINNEST_MM = 35;

    /** Battens that are commonly sold and suit most planters (common practice, no source), mm. */
    private static final double[] METRIC_MM = {47, 50};

    private static final double[] IMPERIAL_MM = {1.5 * UnitFactors.MM_PER_INCH, 3.5 * UnitFactors.MM_PER_INCH};

    private WallBoardUprights() {}

    /** What to add; nothing where posts or braces have a section of their own. */
    static Optional<Message> advice(Garden garden) {
        BuildSpec build = garden.build();
        if (!build.section(BoxPart.POSTS).equals(build.walls())
                || !build.section(BoxPart.BRACES).equals(build.walls())) {
            return Optional.empty();
        }
        double[] size = garden.units() == UnitSystem.IMPERIAL ? IMPERIAL_MM : METRIC_MM;
        return garden.section(build.walls())
                .map(walls -> garden.sections().stream()
                        .filter(section -> isBatten(section, walls) && canBeHad(section, garden))
                        .findFirst()
                        .map(batten -> StrengthStageMessage.BATTEN_NOT_NAMED.of(walls.name(), batten.name()))
                        .orElseGet(() -> StrengthStageMessage.NO_BATTEN_ON_SALE.of(walls.name(), size[0], size[1])));
    }

    private static boolean isBatten(SectionSpec section, SectionSpec walls) {
        return section.thickness().mm() >= THINNEST_MM
                && section.width().mm() < walls.width().mm();
    }

    private static boolean canBeHad(SectionSpec section, Garden garden) {
        Stream<String> sold = garden.suppliers().stream()
                .flatMap(supplier -> supplier.boards().stream())
                .map(board -> board.section());
        Stream<String> owned = garden.owned().stream().map(board -> board.section());
        return Stream.concat(sold, owned).anyMatch(section.name()::equals);
    }
}
