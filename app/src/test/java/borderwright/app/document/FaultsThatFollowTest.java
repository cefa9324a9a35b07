package borderwright.app.document;

import static borderwright.app.document.GardenReaderTest.SMALL;
import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Nested;
import org.junit.jupiter.api.Test;

/** A part that cannot be read hides no other fault, and makes none. */
class FaultsThatFollowTest {
    @Nested
    class WhatFollowsFromAFault {
        @Test
        void aSectionWhoseNameCannotBeReadLeavesOtherNamesAlone() {
            assertThat(Documents.faults(SMALL.replace("name: larch,", "name: [larch],")))
                    .singleElement()
                    .asString()
                    .contains("sections[0].name: A list stands here.");
        }

        @Test
        void aPriceThatCannotBeReadIsStillAPrice() {
            assertThat(Documents.faults(SMALL.replace("9.60", "9.60 GBP")))
                    .singleElement()
                    .asString()
                    .contains("is not a number");
        }

        @Test
        void cornersThatCannotBeReadLeaveTheirNamesAlone() {
            assertThat(Documents.faults(SMALL.replace("corners: A B", "corners: {a: b}")))
                    .singleElement()
                    .asString()
                    .contains("survey.corners: A group of keys stands here.");
        }

        @Test
        void aFaultInOnePartDoesNotHideAFaultBetweenOthers() {
            String faulty = SMALL.replace("front to back: 500 mm", "front to back: 500")
                    .replace("{walls: larch}", "{walls: lurch}");
            assertThat(Documents.faults(faulty)).hasSize(2);
        }
    }
}
