package borderwright.app.document;

import static org.assertj.core.api.Assertions.assertThat;

import borderwright.engine.garden.given.GivenGarden;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RenamedKeysTest {
    private static final Set<RecordShape> GROUPS = groups(RecordShape.of(GivenGarden.class), new LinkedHashSet<>());

    static List<RenamedKeys.Renamed> renamed() {
        return RenamedKeys.ALL;
    }

    @ParameterizedTest
    @MethodSource("renamed")
    void aGroupHasTheNewNameAndNotTheOldOne(RenamedKeys.Renamed renamed) {
        assertThat(GROUPS)
                .anyMatch(group -> group.field(renamed.now()).isPresent()
                        && group.field(renamed.before()).isEmpty());
    }

    @Test
    void theNewNameIsOneOfTheGroupsOwn() {
        assertThat(RenamedKeys.now("from", List.of("item", "price", "price from count")))
                .hasValue("price from count");
        assertThat(RenamedKeys.now("from", List.of("item", "price"))).isEmpty();
        assertThat(RenamedKeys.now("price", List.of("item", "price from count")))
                .isEmpty();
    }

    private static Set<RecordShape> groups(RecordShape shape, Set<RecordShape> found) {
        if (found.add(shape)) {
            for (FieldShape field : shape.fields()) {
                if (field.kind() == FieldKind.RECORD) {
                    groups(RecordShape.of(field.type()), found);
                } else if (field.kind() == FieldKind.MEASURE) {
                    RecordShape.measures().values().forEach(measure -> groups(measure, found));
                }
            }
        }
        return found;
    }
}
