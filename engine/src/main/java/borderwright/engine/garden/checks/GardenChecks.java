package borderwright.engine.garden.checks;

import borderwright.engine.garden.GroundSpec.MembraneSpec;
import borderwright.engine.garden.given.GivenBuild;
import borderwright.engine.garden.given.GivenFirstPlanter;
import borderwright.engine.garden.given.GivenGarden;
import borderwright.engine.garden.given.GivenGround;
import borderwright.engine.garden.given.GivenNearby;
import borderwright.engine.garden.given.GivenReceipt;
import borderwright.engine.garden.given.GivenSaw;
import borderwright.engine.garden.given.GivenSection;
import borderwright.engine.garden.given.GivenSoil;
import borderwright.engine.garden.given.GivenSubstitute;
import borderwright.engine.garden.resolve.GroundResolver;
import borderwright.engine.garden.vocabulary.NearbyKind;
import borderwright.engine.problem.Problem;
import borderwright.engine.spelling.NearestName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.joda.money.CurrencyUnit;

/**
 * What no single record can know: names that must be found elsewhere in the document, keys that exclude or demand each
 * other, counts that must agree.
 *
 * <p>A blank name may be any name, because the reader puts it where it reports a fault of its own: not given of it,
 * and names of its kind are not looked up. See {@link KnownNames}.
 */
public final class GardenChecks {
    /** More faults than these help nobody, and each unknown name is compared with all known ones. */
    static final int MOST_FAULTS = 500;

    private final GivenGarden garden;
    private final List<Problem> found = new ArrayList<>();

    private GardenChecks(GivenGarden garden) {
        this.garden = garden;
    }

    /** All faults that span records, up to 500, part by part of the document; empty when there are none. */
    public static List<Problem> check(GivenGarden garden) {
        GardenChecks checks = new GardenChecks(garden);
        checks.all();
        return List.copyOf(checks.found.subList(0, Math.min(checks.found.size(), MOST_FAULTS)));
    }

    private void all() {
        KnownNames sections = KnownNames.of(
                "section", garden.sections().stream().map(GivenSection::name).toList());
        checkCurrency();
        found.addAll(SurveyChecks.check(garden.survey()));
        found.addAll(RunChecks.check(garden));
        sections.reportTwice("sections", found);
        checkBuild(sections);
        found.addAll(SupplierChecks.check(garden, sections));
        for (int i = 0; i < garden.owned().size(); i++) {
            sections.require(garden.owned().get(i).section(), "owned[" + i + "].section", found);
        }
        checkReceived(sections);
        checkSubstitutes(sections);
        checkGround();
        found.addAll(SoilChecks.check(garden));
        checkNear();
        KnownNames saws =
                KnownNames.of("saw", garden.saws().stream().map(GivenSaw::name).toList());
        saws.reportTwice("saws", found);
        checkFirst(saws);
    }

    private void checkFirst(KnownNames saws) {
        GivenFirstPlanter first = garden.firstPlanter();
        if (first == null) {
            return;
        }
        if (first.saw() != null) {
            saws.require(first.saw(), "first planter.saw", found);
        }
        if (first.unusable() != null && (first.boards() == null || first.unusable() > first.boards())) {
            found.add(new Problem("first planter.unusable", GardenMessage.FIRST_PLANTER_UNUSABLE.of()));
        }
    }

    private void checkSubstitutes(KnownNames sections) {
        for (int i = 0; i < garden.substitutes().size() && found.size() < MOST_FAULTS; i++) {
            GivenSubstitute substitute = garden.substitutes().get(i);
            String where = "substitutes[" + i + "]";
            sections.require(substitute.section(), where + ".section", found);
            sections.require(substitute.inPlaceOf(), where + ".in place of", found);
            Optional<GivenSection> one = section(substitute.section());
            Optional<GivenSection> other = section(substitute.inPlaceOf());
            if (one.isPresent()
                    && other.isPresent()
                    && !(one.get().thickness().equals(other.get().thickness())
                            && one.get().width().equals(other.get().width()))) {
                found.add(new Problem(
                        where,
                        GardenMessage.SUBSTITUTE_OF_OTHER_SIZE.of(substitute.section(), substitute.inPlaceOf())));
            }
        }
    }

    private Optional<GivenSection> section(String name) {
        return garden.sections().stream().filter(s -> s.name().equals(name)).findFirst();
    }

    private void checkReceived(KnownNames sections) {
        List<GivenReceipt.GivenReceivedBoard> boards =
                garden.received() == null ? List.of() : garden.received().boards();
        for (int i = 0; i < boards.size() && found.size() < MOST_FAULTS; i++) {
            GivenReceipt.GivenReceivedBoard board = boards.get(i);
            String where = "received.boards[" + i + "]";
            sections.require(board.section(), where + ".section", found);
            int count = board.count() == null ? 1 : board.count();
            if (count > 1 && (!board.cut().isEmpty() || board.left() != null)) {
                found.add(new Problem(where + ".count", GardenMessage.CUT_BOARD_COUNT.of(count)));
            }
            if (board.unusable() != null && board.unusable() > count) {
                found.add(
                        new Problem(where + ".unusable", GardenMessage.UNUSABLE_TOO_MANY.of(board.unusable(), count)));
            }
        }
    }

    private void checkNear() {
        BorderEdges edges = new BorderEdges(garden.survey());
        GivenGround ground = garden.ground();
        List<GivenNearby> near = ground == null ? List.of() : ground.keepClearOf();
        for (int i = 0; i < near.size() && found.size() < MOST_FAULTS; i++) {
            GivenNearby thing = near.get(i);
            String where = "ground.keep clear of[" + i + "]";
            edges.requireEdge(thing.edge(), where + ".edge", found);
            boolean needsBottom = thing.what() == NearbyKind.AIR_BRICK || thing.what() == NearbyKind.CLADDING;
            if (thing.what() == NearbyKind.TREE && (thing.trunk() == null) == (thing.girth() == null)) {
                found.add(new Problem(
                        where + ".trunk",
                        (thing.trunk() == null ? GardenMessage.TREE_WITHOUT_TRUNK : GardenMessage.TREE_TRUNK_TWICE)
                                .of()));
            }
            if (needsBottom && thing.bottom() == null) {
                found.add(new Problem(where + ".bottom", GardenMessage.LOWER_EDGE_MISSING.of()));
            }
            if (thing.endsAt() != null && thing.endsAt().compareTo(thing.along()) < 0) {
                found.add(new Problem(where + ".ends at", GardenMessage.NEARBY_ENDS_FIRST.of()));
            }
        }
    }

    private void checkGround() {
        GivenGround ground = garden.ground();
        if (garden.build().postFooting() != null
                && ground != null
                && ground.surface() != null
                && ground.surface().isHard()) {
            found.add(new Problem("build.post footing", GardenMessage.FOOTING_IN_HARD_GROUND.of()));
        }
        Optional<MembraneSpec> sheet = GroundResolver.membrane(ground == null ? null : ground.membrane());
        if (sheet.isPresent()
                && 2 * sheet.get().overlapMm()
                        > Math.min(sheet.get().widthMm(), sheet.get().lengthMm())) {
            found.add(new Problem("ground.membrane.overlap", GardenMessage.OVERLAP_TOO_WIDE.of()));
        }
    }

    private void checkCurrency() {
        if (garden.currency().isBlank()) {
            return;
        }
        List<String> codes = CurrencyUnit.registeredCurrencies().stream()
                .filter(unit -> !unit.isPseudoCurrency())
                .map(CurrencyUnit::getCode)
                .toList();
        if (!codes.contains(garden.currency())) {
            found.add(new Problem(
                    "currency",
                    GardenMessage.CURRENCY_UNKNOWN.of(
                            garden.currency(), NearestName.perhaps(garden.currency(), codes))));
            return;
        }
        CurrencyUnit currency = CurrencyUnit.of(garden.currency());
        SupplierChecks.checkMinorUnits("budget", Optional.ofNullable(garden.budget()), currency, found);
        Optional<BigDecimal> soil = Optional.ofNullable(garden.soil()).map(GivenSoil::perCubicMetre);
        SupplierChecks.checkMinorUnits("soil.per cubic metre", soil, currency, found);
    }

    private void checkBuild(KnownNames sections) {
        GivenBuild build = garden.build();
        sections.require(build.walls(), "build.walls", found);
        Map<String, Optional<String>> others = new TreeMap<>();
        others.put("braces", Optional.ofNullable(build.braces()));
        others.put("posts", Optional.ofNullable(build.posts()));
        others.put("ties", Optional.ofNullable(build.ties()));
        others.put("dividers", Optional.ofNullable(build.dividers()));
        others.put("capping", Optional.ofNullable(build.capping()));
        others.put("bearers", Optional.ofNullable(build.bearers()));
        others.put("slats", Optional.ofNullable(build.slats()));
        others.forEach((key, name) -> name.ifPresent(n -> sections.require(n, "build." + key, found)));
    }
}
