package borderwright.engine.settingout;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.ground.GroundPlan.CornerMark;
import borderwright.engine.message.English;
import borderwright.engine.settingout.SettingOut.NextWork;
import java.util.List;
import org.junit.jupiter.api.Test;

class SettingOutTest {
    private static String steps(CornerMark mark, NextWork next, List<PegString> strings) {
        SettingOut out = new SettingOut(mark, next, List.of(), List.of(), strings, KnownPoints.NONE);
        return String.join(
                " ", out.instructions().stream().map(English.METRIC::text).toList());
    }

    private static final PegString STRING = new PegString(List.of("N1", "N2", "N3", "N4"), 1, 14, List.of());

    @Test
    void pegsAreDrivenAndCheckedBeforeDigging() {
        assertThat(steps(CornerMark.PEG, NextWork.DIG, List.of()))
                .isEqualTo("Hook one tape at each of the two known points, pull both level and tight, and drive a peg"
                        + " where they cross. Check the diagonals before you dig. Then drive two more pegs in line with each"
                        + " side, outside what is dug and clear of what is buried: strings between them give the corners back when the first pegs"
                        + " are gone. Where a wall is in the way, mark the line on the wall.");
        assertThat(steps(CornerMark.PEG, NextWork.DIG, List.of(STRING))).contains("drive the pegs between them");
    }

    @Test
    void onHardGroundNothingIsDrivenOrDug() {
        assertThat(steps(CornerMark.CHALK, NextWork.BUILD, List.of(STRING)))
                .contains("chalk the marks between them", "chalk a mark where they cross")
                .contains("Check the diagonals before you build.")
                .doesNotContain("peg", "drive", "dig");
    }

    @Test
    void theListIsNamedAfterWhatMarksACorner() {
        SettingOut hard =
                new SettingOut(CornerMark.CHALK, NextWork.BUILD, List.of(), List.of(), List.of(), KnownPoints.NONE);
        assertThat(English.METRIC.text(hard.listName())).isEqualTo("List of marks");
        assertThat(English.METRIC.text(hard.markName())).isEqualTo("mark");
        assertThat(English.METRIC.text(SettingOut.NONE.listName())).isEqualTo("Peg list");
    }
}
