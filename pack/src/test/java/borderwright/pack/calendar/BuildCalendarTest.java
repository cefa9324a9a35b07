package borderwright.pack.calendar;

import static org.assertj.core.api.Assertions.assertThat;

import biweekly.Biweekly;
import biweekly.ICalendar;
import biweekly.component.VEvent;
import borderwright.engine.plan.Plan;
import borderwright.pack.SamplePlan;
import java.nio.charset.StandardCharsets;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.DisplayName;
import org.junit.jupiter.api.Test;

class BuildCalendarTest {
    private static final Plan PLAN = SamplePlan.metric();

    @Test
    void eachDayOfWorkIsOneEventOnItsDate() {
        ICalendar calendar = Biweekly.parse(new String(BuildCalendar.write(PLAN), StandardCharsets.UTF_8))
                .first();
        List<VEvent> events = calendar.getEvents();
        assertThat(events).hasSameSizeAs(PLAN.work().days()).isNotEmpty();
        Set<String> uids = new HashSet<>();
        for (int i = 0; i < events.size(); i++) {
            assertThat(events.get(i)
                            .getDateStart()
                            .getValue()
                            .getRawComponents()
                            .toString())
                    .startsWith(PLAN.work().days().get(i).date().toString().replace("-", ""));
            assertThat(events.get(i).getDateStart().getValue().hasTime()).isFalse();
            uids.add(events.get(i).getUid().getValue());
        }
        assertThat(uids).hasSameSizeAs(events);
    }

    @Test
    @DisplayName(
            "RFC 5545: lines end in CRLF and hold at most 75 octets (section 3.1); VERSION, PRODID, UID, DTSTAMP are there")
    void linesAreFolded() {
        String text = new String(BuildCalendar.write(PLAN), StandardCharsets.UTF_8);
        assertThat(text.replace("\r\n", "")).doesNotContain("\n").doesNotContain("\r");
        for (String line : text.split("\r\n")) {
            assertThat(line.getBytes(StandardCharsets.UTF_8).length).as(line).isLessThanOrEqualTo(75);
        }
        assertThat(text).contains("VERSION:2.0", "PRODID:", "UID:", "DTSTAMP:", "DTSTART;VALUE=DATE:");
    }

    @Test
    void theSamePlanGivesTheSameBytes() {
        assertThat(BuildCalendar.write(PLAN)).isEqualTo(BuildCalendar.write(PLAN));
    }
}
