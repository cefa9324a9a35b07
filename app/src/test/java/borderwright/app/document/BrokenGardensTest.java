package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Every broken garden in the folder {@code broken}, with all that is said of it, as it is printed.
 *
 * <p>Most are {@code small.yaml} with one or a few faults put in; the file's name tells what.
 */
class BrokenGardensTest {
    private static final Path FOLDER =
            Documents.ROOT.resolve("app/src/test/resources/borderwright/app/document/broken");

    /** For what the records or the parser might refuse one day; nothing is known that they refuse so now. */
    private static final Set<String> KEPT_IN_RESERVE = Set.of("group-refused", "syntax-neither-yaml-nor-json");

    private static final String SAID = """
            angle-without-unit.yaml:8:29: survey.measures[1].reads: `127` has no unit. Write an angle with its unit, such as 127 deg, 126° 30' or 30 gon.
            bytes-escape-code.yaml:1:7: The character U+001B here cannot be printed. Take it out.
            bytes-image.yaml:1:1: A byte here does not belong to UTF-8. Save the document as UTF-8.
            bytes-latin1.yaml:1:10: A byte here does not belong to UTF-8. Save the document as UTF-8.
            bytes-mark-then-fault.yaml:2:11: currency: `GPB` is not a currency of ISO 4217. Write its three letters, such as `GBP`, `EUR` or `USD`. Perhaps you meant `GBP`.
            bytes-nul.yaml:1:9: The character U+0000 here cannot be printed. Take it out.
            bytes-utf16-without-mark.yaml:1:1: The document is written in UTF-16. Save it as UTF-8.
            bytes-utf16.yaml:1:1: The document is written in UTF-16. Save it as UTF-8.
            chain-count.yaml:8:33: survey.measures[1].lengths: A chain of 4 points has 3 lengths; 2 are given. Write one length between each two neighbours.
            choice-misspelt.yaml:10:37: build.corner joint: `laped` is not one of the choices. Write `lapped` or `mitred`. Perhaps you meant `lapped`.
            choice-unknown.yaml:9:49: runs[0].slope: `wavy` is not one of the choices. Write `level` or `stepped`.
            corner-unknown.yaml:9:24: runs[0].along: No corner is named `C`. The corners are A B.
            corners-too-few.yaml:4:12: survey.corners: A closed border has at least 3 corners; 2 are named. Name them all, or give `strip width` where the border lies along one line.
            currency-unknown.yaml:2:11: currency: `pounds` is not a currency of ISO 4217. Write its three letters, such as `GBP`, `EUR` or `USD`.
            date-far.yaml:15:13: suppliers[0].quoted: `0026-03-02` is not a date of a build. Write a date from 2000-01-01 to 2100-12-31.
            date.yaml:15:13: suppliers[0].quoted: `2026-02-30` is not a date. Write a date as year-month-day, such as `2026-03-02`.
            edge-unknown.yaml:7:14: survey.edges[0].edge: The border has no edge from `A` to `C`. Its edges join neighbours in A B C.
            edge-unknown.yaml:9:14: survey.edges[2].edge: The edge `A B` is described twice. Keep one of them.
            delivery-bands.yaml:17:7: suppliers[0].delivery bands: Delivery has bands, and also a charge of its own, a free value or `collection only: yes`. Keep the bands, or leave them out.
            delivery-bands.yaml:17:18: suppliers[0].delivery bands[0].within: The band holds within a distance, but the supplier's distance is not given. Write `distance` beside the supplier's name, in the same unit.
            delivery-bands.yaml:18:18: suppliers[0].delivery bands[1].within: The band holds within a distance, but the supplier's distance is not given. Write `distance` beside the supplier's name, in the same unit.
            delivery-bands.yaml:18:53: suppliers[0].delivery bands[1].charge: Delivery must not cost more for a larger order: it is 40 from 100 on, but 35 from 0 on. Give the larger order the lower charge.
            delivery-bands.yaml:19:24: suppliers[0].collection.cost: 4.505 has more decimals than GBP, which has 2. Round it to what is paid.
            delivery-bands.yaml:23:17: suppliers[1].collection: The order may be fetched, but no delivery charge is given. Write `delivery` or `delivery bands`, or `collection only: yes` where it can only be fetched.
            empty.yaml:1:1: The document is empty. Begin with `name: ` and the name of the garden.
            free-delivery-without-charge.yaml:15:16: suppliers[0].free over: Delivery is free over 250, but no delivery charge is given. Write the charge as `delivery`, or leave `free over` out.
            group-for-a-list.yaml:9:5: runs: A group of keys stands where a list belongs. Begin each item with `- ` on a line of its own, or write them in brackets: `[..., ...]`.
            json-comma-missing.json:3:2: The bracket opened at line 1, column 1 is not closed before this. Put a comma between its parts and `}` at its end.
            json-cut-off.json:1:51: The bracket opened at line 1, column 29 is not closed before this. Put a comma between its parts and `}` at its end.
            json-faults.json:3:47: survey.strip width: `600` has no unit. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            json-faults.json:4:56: runs[0].planters: `4` is in quotes, so it is a text, not a number. Write it without them.
            json-faults.json:4:98: runs[0].height: `height` is empty. Write `height: 450 mm`: height of the finished wall.
            json-faults.json:5:22: build.walls: No section is named `larch`. Describe it under `sections`.
            key-empty.yaml:2:10: currency: `currency` is empty. Write `currency: GBP`: currency of all prices, by its ISO 4217 code.
            key-in-another-spelling.yaml:16:5: suppliers[0].freeOver: `freeOver` is not a key of this group. Perhaps you meant `free over`.
            key-is-a-list.yaml:3:3: A key must be a word or words. Write `key: value`.
            key-missing.yaml:9:5: runs[0].front to back: `front to back` is missing. Write `front to back: 600 mm`: from front to back, outside.
            key-misspelt.yaml:2:1: curency: `curency` is not a key of this group. Perhaps you meant `currency`.
            key-twice.yaml:3:1: name: `name` is written twice in one group, first in line 1. Keep one of them.
            key-unknown.yaml:10:23: build.colour: `colour` is not a key of this group. Its keys are walls, braces, posts, ties, dividers, capping, bearers, slats, corner joint, brace spacing, tie spacing, slat gap, bearer spacing, capping overhang, face out, screws, post footing.
            keys-renamed.yaml:5:3: survey.strip: `strip` is not a key of this group. It is called `strip width` now.
            keys-renamed.yaml:7:19: survey.measures[0].is: `is` is not a key of this group. It is called `reads` now.
            keys-renamed.yaml:9:42: runs[0].depth: `depth` is not a key of this group. It is called `front to back` now.
            keys-renamed.yaml:17:11: cutting.hold back: `hold back` is not a key of this group. It is called `keep whole` now.
            length-beyond-ten-kilometres.yaml:7:26: survey.measures[0].reads: `4800000 m` is more than 10 km. Check the number and its unit.
            length-clock.yaml:7:26: survey.measures[0].reads: `1:30` is not understood. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            length-empty.yaml:5:16: survey.strip width: `` is not understood. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            length-exponent.yaml:5:16: survey.strip width: `1e999999999 mm` has the unit `e`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and ".
            length-is-a-list.yaml:5:16: survey.strip width: A list stands here. Write a length with its unit, such as `620 mm`.
            length-not-a-number.yaml:5:16: survey.strip width: `.nan` is not understood. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            length-in-wrong-unit.yaml:8:25: survey.measures[1].reads: `-474 m` is unusual here. Did you mean `-474 mm`? Usual is a length from -5000 mm to 5000 mm. If `-474 m` is right, write `-474 m yes really`.
            length-out-of-range-imperial.yaml:9:73: runs[0].height: `1 in` is out of range. Write a length from 50 mm (about 1-15/16") to 1500 mm (about 59-1/16").
            length-out-of-range.yaml:9:73: runs[0].height: `4.5 m` is out of range. Write a length from 50 mm to 1500 mm.
            length-thousands-comma.yaml:5:16: survey.strip width: The comma in `1,600 mm` may separate thousands or decimals. Write 1600 mm or 1.600 mm.
            length-unknown-unit.yaml:9:57: runs[0].front to back: `500 mn` has the unit `mn`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and ". Perhaps you meant `mm`.
            length-without-unit.yaml:9:57: runs[0].front to back: `500` has no unit. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            list-for-a-text.yaml:1:7: name: A list stands here. Write a text, such as `Fence to shed`.
            many-at-once.yaml:2:11: currency: `GPB` is not a currency of ISO 4217. Write its three letters, such as `GBP`, `EUR` or `USD`. Perhaps you meant `GBP`.
            many-at-once.yaml:3:9: budget: `42O` is not a number. Write a number without a unit or a currency sign, such as `420`.
            many-at-once.yaml:7:14: survey.edges[0].edge: The border has no edge from `A` to `C`. Its edges join neighbours in A B C D, and the last with the first.
            many-at-once.yaml:7:25: survey.edges[0].kind: `fense` is not one of the choices. Write one of `house`, `wall`, `fence`, `hedge`, `paving`, `lawn`, `open`. Perhaps you meant `fence`.
            many-at-once.yaml:9:26: survey.measures[0].reads: `9.605` has no unit. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            many-at-once.yaml:10:15: survey.measures[1].angle: An angle has three points; 2 names stand here. Write 3 names with a space between them.
            many-at-once.yaml:12:5: runs[0]: The run `run` gives neither the number of planters nor their length. Write `planters: 8` or `length: 1.2 m`.
            many-at-once.yaml:12:24: runs[0].along: No corner is named `E`. The corners are A B C D.
            many-at-once.yaml:12:52: runs[0].hight: `hight` is not a key of this group. Perhaps you meant `height`.
            many-at-once.yaml:13:16: build.walls: No section is named `larch 25 x 105`. Perhaps you meant `larch 25 x 150`.
            length-unusual.yaml:16:34: suppliers[0].boards[0].length: `36 m` is unusual here. Did you mean `3.6 m`? Usual is a length from 150 mm to 7500 mm. If `36 m` is right, write `36 m yes really`.
            many-at-once.yaml:15:53: sections[0].width: `150 inch` is out of range. Write a length from 15 mm (about 9/16") to 400 mm (about 15-3/4").
            many-at-once.yaml:18:16: suppliers[0].free over: Delivery is free over 250, but no delivery charge is given. Write the charge as `delivery`, or leave `free over` out.
            many-at-once.yaml:20:74: suppliers[0].boards[0].per metre: This board has more than one kind of price: price and per metre. Keep one of them.
            measure-is-a-text.yaml:7:7: survey.measures[0]: `A B 4.8 m` stands here. Write a measure, such as `{tape: A B, reads: 9.605 m}`.
            measure-misspelt.yaml:7:7: survey.measures[0]: This measure does not state what was measured. Begin it with one of `tape`, `angle`, `offset`, `chain`, `level`, `rise`, `lean`, `arc`. Perhaps you meant `tape`.
            measure-of-two-kinds.yaml:7:19: survey.measures[0].level: `tape` and `level` stand in one measure. Write two measures.
            measure-wrong-key.yaml:7:53: survey.measures[0].side: `side` is not a key of this group. Its keys are tape, reads, held, give or take, with.
            merge-key.yaml:10:23: build.<<: `<<` is not a key of this group. Its keys are walls, braces, posts, ties, dividers, capping, bearers, slats, corner joint, brace spacing, tie spacing, slat gap, bearer spacing, capping overhang, face out, screws, post footing.
            names-twice.yaml:13:12: sections[1].name: Two sections are named `larch`. Give each a name of its own.
            names-twice.yaml:18:11: suppliers[1].name: Two suppliers are named `Alder`. Give each a name of its own.
            names-twice.yaml:21:12: saws[1].name: Two saws are named `saw`. Give each a name of its own.
            nothing.yaml:1:1: The document is not a group of keys. Begin with `name: ` and the name of the garden.
            number-hexadecimal.yaml:9:39: runs[0].planters: `0x10` is not a number. Write a whole number, such as `8`.
            first-faults.yaml:19:36: first planter.saw: No saw is named `mitre saw`. The only one is `table saw`.
            first-faults.yaml:19:80: first planter.unusable: More boards were unusable than were looked over. Write how many were looked over, such as `boards: 12`, and how many of these were unusable.
            soil-weights.yaml:19:15: strength.moist soil: The moist soil weighs 18.9 kN/m3, more than the 18.0 kN/m3 of the soaked soil. Soil is no lighter when soaked: correct one of them.
            soil-weights.yaml:21:21: filling.soaked kg per m3: The soaked soil weighs 16.7 kN/m3 here and 18.0 kN/m3 in `strength.soaked soil`. Keep one of them: it holds for strength, filling and roof.
            near-faults.yaml:19:7: ground.keep clear of[0]: How far a tree's roots reach follows from its trunk, which is not given. Measure it 1.5 m above the ground, and write `trunk: 180 mm` across it, or `girth: 560 mm` round it.
            near-faults.yaml:20:7: ground.keep clear of[1]: Whether a planter stands in the way follows from its lower edge, which is not given. Write its height above the datum, such as `bottom: 160 mm`.
            near-faults.yaml:20:31: ground.keep clear of[1].edge: No corner is named `C`. The corners are A B.
            near-faults.yaml:21:51: ground.keep clear of[2].ends at: It ends before it begins. Name the edge from its other corner, or exchange `along` and `ends at`.
            near-faults.yaml:22:70: ground.keep clear of[3].trunk: How far a tree's roots reach follows from its trunk, which is given twice, across and round. Keep `trunk`, measured across it 1.5 m above the ground, or `girth`, round it.
            near-misspelt.yaml:19:14: ground.keep clear of[0].what: `telephon` is not one of the choices. Write one of `tree`, `gas`, `electricity`, `water`, `telephone`, `drain`, `air brick`, `cladding`. Perhaps you meant `telephone`.
            near-misspelt.yaml:19:54: ground.keep clear of[0].trunk: `2 mm` is out of range. Write a length from 10 mm to 3000 mm.
            number-huge-exponent.yaml:16:48: suppliers[0].boards[0].price: `1e999999999` is not a number. Write a number without a unit or a currency sign, such as `9.60`.
            number-in-quotes.yaml:16:48: suppliers[0].boards[0].price: `9.60` is in quotes, so it is a text, not a number. Write it without them.
            number-infinite.yaml:16:48: suppliers[0].boards[0].price: `.inf` is not a number. Write a number without a unit or a currency sign, such as `9.60`.
            number-many-digits.yaml:16:48: suppliers[0].boards[0].price: `999999999999999999999999999999999999999999999999999999999...` is too large or has too many decimals. Write a number up to 1000000000 with at most 6 decimals.
            number-negative.yaml:16:48: suppliers[0].boards[0].price: `-9.60` is out of range. Write a number of at least 0.
            number-not-whole.yaml:9:39: runs[0].planters: `4.5` is not whole. Write a whole number, such as `8`.
            number-two-digit-exponent.yaml:16:48: suppliers[0].boards[0].price: `1e99` is too large or has too many decimals. Write a number up to 1000000000 with at most 6 decimals.
            number-with-comma.yaml:18:16: suppliers[0].boards[0].price: `9,60` is not a number. Write a number without a unit or a currency sign, such as `9.60`.
            number-with-comma-in-brackets.yaml:16:50: suppliers[0].boards[0].60: `60` is not a key of this group. A comma in brackets separates items: write decimals with a point.
            number-with-sign.yaml:16:48: suppliers[0].boards[0].price: `£9.60` is not a number. Write a number without a unit or a currency sign, such as `9.60`.
            only-comments.yaml:1:1: The document is empty. Begin with `name: ` and the name of the garden.
            platform-above-walls.yaml:9:94: runs[0].false floor: The false floor of the run `run` is as high as its walls or higher. Write a height below that of the walls, so that there is room for soil.
            point-name-with-comma.yaml:4:12: survey.corners: `A,` is not the name of a point. A name is one word of letters and digits. Write names of points, a space between them, such as `A B C D`.
            overlap-too-wide.yaml:17:30: ground.membrane.overlap: The overlap is more than half a roll's width or length. Write an overlap such as `150 mm`, or the roll's own `width` and `length`.
            point-named-once.yaml:8:14: survey.measures[1].tape: The point `Q` is named only here, so nothing fixes its place. Measure it from two other points, or by an offset.
            point-named-once.yaml:9:15: survey.measures[2].level: The point `B1` is named only here, so nothing fixes its place. Measure it from two other points, or by an offset.
            points-count.yaml:7:14: survey.measures[0].tape: A tape length has two points; 3 names stand here. Write 2 names with a space between them.
            price-in-tenths-of-a-penny.yaml:16:48: suppliers[0].boards[0].price: 9.605 has more decimals than GBP, which has 2. Round it to what is paid.
            price-of-two-kinds.yaml:16:65: suppliers[0].boards[0].per metre: This board has more than one kind of price: price and per metre. Keep one of them.
            price-without-length.yaml:16:9: suppliers[0].boards[0]: The price is for a whole board, but its length is missing. Write `length: 3.6 m`.
            price-without-length.yaml:17:9: suppliers[0].boards[1]: With `per metre` the lengths in which the board is sold are missing. Write `lengths: [3.0 m, 3.6 m]`.
            price-without-length.yaml:18:34: suppliers[0].boards[2].length: With `per metre` the board is sold by length. Write the lengths in which it is sold as `lengths: [3.0 m, 3.6 m]`.
            price-without-length.yaml:19:9: suppliers[0].boards[3]: This board has no price. Write `price` for a whole board, or `per metre`, `per foot` or `per board foot`.
            range-backwards.yaml:9:57: runs[0].front to back: This range runs from the greater length to the smaller. Write the smaller one as `from`.
            range-half.yaml:9:57: runs[0].front to back: `to` is missing in this range. Write `{from: 1.2 m, to: 2.4 m}`, or one length.
            range-wrong-key.yaml:9:57: runs[0].front to back: `to` is missing in this range. Write `{from: 1.2 m, to: 2.4 m}`, or one length.
            range-wrong-key.yaml:9:72: runs[0].front to back.till: `till` is not a key of this group. Its keys are from, to.
            received-faults.yaml:20:46: received.boards[0].count: A board that has been cut is one board; this line counts 2. Give each its own line.
            received-faults.yaml:21:59: received.boards[1].unusable: 3 of 2 boards cannot be unusable. Write how many arrived as `count`.
            run-size-not-said.yaml:9:5: runs[0]: The run `run` gives neither the number of planters nor their length. Write `planters: 8` or `length: 1.2 m`.
            run-size-said-twice.yaml:9:50: runs[0].length: The run `run` gives both the number of planters and the length of one. Keep `planters` or `length`; the other follows.
            run-turns-nowhere.yaml:9:65: runs[0].other turns[0].corner: The run does not turn at `B`. It follows one edge and turns nowhere.
            section-unknown-in-price.yaml:16:19: suppliers[0].boards[0].section: No section is named `spruce`. The only one is `larch`.
            section-unknown-in-price.yaml:18:15: owned[0].section: No section is named `larsh`. Perhaps you meant `larch`.
            section-unknown.yaml:10:16: build.walls: No section is named `lurch`. Perhaps you meant `larch`.
            substitute-and-footing.yaml:10:37: build.post footing: Posts cannot be let into paving or a roof. Leave `post footing` out, or give another `ground.surface`.
            substitute-and-footing.yaml:20:5: substitutes[0]: `oak` is not as thick and wide as `larch`, so pieces would not fit. Name a section of the same size; for another size write a variant.
            text-empty.yaml:1:7: name: This text is empty. Write a text, such as `Fence to shed`.
            text-for-a-group.yaml:10:8: build: `larch` stands here. Write a group of keys: walls, braces, posts, ties, dividers, capping, bearers, slats, corner joint, brace spacing, tie spacing, slat gap, bearer spacing, capping overhang, face out, screws, post footing.
            text-for-a-list.yaml:13:12: suppliers: `Alder` stands where a list belongs. Begin each item with `- ` on a line of its own, or write them in brackets: `[..., ...]`.
            variant-faults.yaml:20:22: variants[0].changes.build.walls: No section is named `oak`. The only one is `larch`.
            variant-faults.yaml:24:31: variants[1].changes.runs[0].height: `600` has no unit. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            variant-faults.yaml:25:7: variants[1].changes.survay: `survay` is not a key of this group. Perhaps you meant `survey`.
            variant-faults.yaml:26:5: variants[2]: This variant changes nothing. Write under `changes` the part of the garden that differs, such as `changes: {build: {walls: treated 22 x 150}}`.
            variant-faults.yaml:26:11: variants[2].name: Two variants are named `taller`. Give each a name of its own.
            variant-faults.yaml:27:5: variants[2].change: `change` is not a key of a variant. Its keys are name, changes; what differs stands under `changes`. Perhaps you meant `changes`.
            variant-takes-away-what-is-needed.yaml:20:15: variants[0].changes.build.walls: `walls` is missing. Write `walls: larch`: section of the wall boards.
            variant-takes-away-what-is-needed.yaml:23:7: variants[1].changes: With these changes `runs[0].along` in line 9 is at fault. No corner is named `B`. The corners are A X.
            yaml-alias-bomb.yaml:1:1: a: `a` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:1:1: name: `name` is missing. Write `name: Fence to shed`: name of the garden.
            yaml-alias-bomb.yaml:1:1: currency: `currency` is missing. Write `currency: GBP`: currency of all prices, by its ISO 4217 code.
            yaml-alias-bomb.yaml:1:1: survey: `survey` is missing. Write `survey: ...`: what was measured on site.
            yaml-alias-bomb.yaml:1:1: build: `build` is missing. Write `build: ...`: how boxes are put together.
            yaml-alias-bomb.yaml:1:4: a: Anchors (`&`) and aliases (`*`) are not read, here or further on. Write the value out in each place, or put a text that begins so in quotes.
            yaml-alias-bomb.yaml:2:1: b: `b` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:3:1: c: `c` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:4:1: d: `d` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:5:1: e: `e` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:6:1: f: `f` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:7:1: g: `g` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:8:1: h: `h` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-alias-bomb.yaml:9:1: i: `i` is not a key of this group. Its keys are name, about, invented, units, currency, budget, usual prices, survey, runs, build, sections, suppliers, owned, saws, cutting, soil, strength, ground, filling, planting, days, first planter, received, substitutes, variants.
            yaml-anchor-and-alias.yaml:7:7: survey.measures[0]: Anchors (`&`) and aliases (`*`) are not read, here or further on. Write the value out in each place, or put a text that begins so in quotes.
            yaml-bracket-open.yaml:11:9: The bracket opened at line 10, column 8 is not closed before this. Put a comma between its parts and `}` at its end.
            yaml-escape.yaml:1:11: A backslash in double quotes begins an escape, and this is none. Write two backslashes for one, or use single quotes.
            yaml-forbidden-start.yaml:1:7: A text cannot begin with `@`. Put the whole text in double quotes.
            yaml-indentation.yaml:5:16: A key with a colon cannot stand here. Line up the keys of a group, put a space after each colon, and put a text that holds `: ` in double quotes.
            yaml-list-at-the-top.yaml:1:1: The document is not a group of keys. Begin with `name: ` and the name of the garden.
            yaml-list-open.yaml:5:14: The bracket opened at line 4, column 12 is not closed before this. Put a comma between its parts and `]` at its end.
            yaml-no-space-after-colon.yaml:2:1: This line has no colon after its key. Write `key: value`.
            yaml-quote-inside.yaml:5:20: This does not belong to the group that begins at line 4, column 3. Line up the keys of a group; put a text that begins with a quote, such as 5' 3" in quotes, wholly in the other kind of quotes.
            yaml-quotes-open.yaml:1:7: The quotes opened here are not closed. Put the same quote at the end.
            yaml-tab.yaml:4:1: A tab stands where only spaces may. Indent with spaces.
            yaml-tag.yaml:2:11: currency: Tags (`!`) are not read, here or further on. Leave it out, or put a text that begins so in quotes.
            yaml-text-at-the-top.yaml:1:1: The document is not a group of keys. Begin with `name: ` and the name of the garden.
            yaml-two-documents.yaml:17:1: A second document begins here. Write one garden to a file; variants go under `variants`.
            lengths-and-angles.yaml:5:16: survey.strip width: `1000 km` has the unit `km`, which is not a unit of length. Units are mm, cm, m, in, ft, yd, ' and ". Perhaps you meant `mm`.
            lengths-and-angles.yaml:7:26: survey.measures[0].reads: `6-1-1/8"` leaves out the mark for feet. Write 6' 1-1/8", 6'-1-1/8" or 6 ft 1-1/8 in.
            lengths-and-angles.yaml:8:26: survey.measures[1].reads: `99999999999999 m` has too many digits. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:9:26: survey.measures[2].reads: `1/0 in` divides by 0. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:10:26: survey.measures[3].reads: `1,850.5 mm` has more than one point or comma in a number. Write it without thousands separators, such as 1850.5 mm.
            lengths-and-angles.yaml:11:26: survey.measures[4].reads: `1'850 mm` adds units that do not go together. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:12:26: survey.measures[5].reads: The last part of `5' 14"` is as large as one unit of the part before it, or larger. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:13:26: survey.measures[6].reads: `5.5' 3"` has a fraction before its last part. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:14:26: survey.measures[7].reads: A text of 65 characters is too long for a length or an angle. Write a length with its unit, such as 1850 mm, 1.85 m or 6' 4 1/2".
            lengths-and-angles.yaml:15:29: survey.measures[8].reads: `126d 30m` shortens the units of an angle to d, m or s. Write deg, min and sec, such as 126 deg 30 min, or 126° 30'.
            lengths-and-angles.yaml:16:29: survey.measures[9].reads: `127 dge` does not begin with degrees. Write an angle with its unit, such as 127 deg, 126° 30' or 30 gon. Perhaps you meant `deg`.
            lengths-and-angles.yaml:17:29: survey.measures[10].reads: `400 deg` is more than a full turn. Write an angle with its unit, such as 127 deg, 126° 30' or 30 gon.
            runs-misuse.yaml:8:24: runs[0].along: A run follows at least one edge, so it names two corners or more; one is named. Write the corners that it follows, such as `A B`.
            runs-misuse.yaml:9:24: runs[1].along: The run follows the edge `B A` twice. Follow each edge once.
            runs-misuse.yaml:10:26: runs[2].along: The rows of the run `three` are to be parallel to more than one edge. Name the two corners of one edge, and write a run for each direction.
            runs-misuse.yaml:10:54: runs[2].length: The run `three` gives the number of planters and a range for their length. Give one length, or leave out one of the two.
            runs-misuse.yaml:10:122: runs[2].back gap: The run `three` gives both a back gap and where its first row stands. Keep `starts at` of `rows`; a back gap is for a run along an edge.
            runs-misuse.yaml:11:107: runs[3].other turns[0].corner: The run does not turn at `C`. It turns at B.
            runs-misuse.yaml:12:138: runs[4].other turns[1].corner: The corner `C` is treated twice. Keep one of them.
            sections-many.yaml:10:16: build.walls: No section is named `beech`. Known are `one`, `two`.
            sections-many.yaml:10:30: build.posts: No section is named `elm`. Known are `one`, `two`.
            strip-of-one-corner.yaml:4:12: survey.corners: A strip has at least 2 corners; 1 is named. Name both ends of the line.
            strip-of-one-corner.yaml:7:14: survey.measures[0].tape: The point `B` is named only here, so nothing fixes its place. Measure it from two other points, or by an offset.
            strip-of-one-corner.yaml:15:35: suppliers[0].boards[0].lengths: The price is for one whole board, so it has one length. Write `length`, and a line for each length that has a price of its own.
            strip-of-one-corner.yaml:16:36: suppliers[0].boards[1].lengths[0]: A board is not shorter than 50 mm. Write the length in which it is sold, such as `3.6 m`.
            survey-misuse.yaml:4:12: survey.corners: The corner `A` is named twice. Name each corner once.
            survey-misuse.yaml:6:14: survey.edges[0].edge: An edge has two corners; 1 name stands here. Write the two corners, such as `A B`.
            survey-misuse.yaml:8:14: survey.measures[0].tape: The point `A` stands twice in one tape length. Name each point once.
            survey-misuse.yaml:9:16: survey.measures[1].offset: `A` is an end of its own baseline. Measure it from a baseline between two other points.
            survey-misuse.yaml:10:15: survey.measures[2].chain: A chain has two points or more; one is named. Name them all.
            survey-misuse.yaml:11:32: survey.measures[3].lengths[0]: A length of a chain is not more than 0. Leave the point out, or write its true length.
            variant-not-a-group.yaml:18:5: variants[0]: A variant is a group of keys. Write `- {name: treated boards, changes: {build: {walls: treated 22 x 150}}}`.
            variant-not-a-group.yaml:19:5: variants[1]: This variant has no name. Write `name: ` and what you call it.
            variants-not-a-list.yaml:17:11: variants: Variants are a list. Write `- {name: treated boards, changes: {build: {walls: treated 22 x 150}}}`.
            yaml-after-end.yaml:18:1: The document is over before this. Line up the keys of a group; write one document to a file.
            yaml-directive.yaml:1:11: This is neither YAML nor JSON from here on. Look at this line and the one before it.
            yes-or-no.yaml:12:61: sections[0].treated: `maybe` is neither yes nor no. Write `yes` or `no`.
            """;

    static List<String> files() throws IOException {
        try (Stream<Path> files = Files.list(FOLDER)) {
            return files.map(f -> f.getFileName().toString()).sorted().toList();
        }
    }

    @ParameterizedTest
    @MethodSource("files")
    void allFaultsAreSaidTogetherEachInItsPlace(String file) throws IOException {
        List<String> expected =
                SAID.lines().filter(line -> line.startsWith(file + ":")).toList();
        List<String> said =
                GardenReader.read(Files.readAllBytes(FOLDER.resolve(file))) instanceof DocumentAnswer.Faulty faulty
                        ? faulty.faults().stream().map(f -> f.print(file)).toList()
                        : List.of(file + " is sound");
        assertThat(said).isEqualTo(expected).isNotEmpty();
    }

    @Test
    void theGardenThatTheyBreakIsSound() {
        assertThat(Documents.faults(Documents.resource("small.yaml"))).isEmpty();
    }

    /** A kind that no broken garden shows is not known to work. */
    @Test
    void everyKindOfFaultIsShown() throws IOException {
        Set<String> shown = new TreeSet<>(HostileDocumentsTest.KINDS_SHOWN_THERE);
        for (String file : files()) {
            if (GardenReader.read(Files.readAllBytes(FOLDER.resolve(file))) instanceof DocumentAnswer.Faulty faulty) {
                faulty.faults().forEach(f -> shown.add(f.problem().code()));
            }
        }
        String page = Files.readString(Documents.ROOT.resolve("docs/problems.md"), StandardCharsets.UTF_8);
        String sections = page.substring(page.indexOf("## The garden document"), page.indexOf("## Survey"));
        Set<String> listed = new TreeSet<>();
        sections.lines()
                .filter(line -> line.startsWith("| `"))
                .forEach(line -> listed.add(line.substring(3, line.indexOf('`', 3))));
        listed.removeAll(KEPT_IN_RESERVE);
        assertThat(shown).isEqualTo(listed);
    }
}
