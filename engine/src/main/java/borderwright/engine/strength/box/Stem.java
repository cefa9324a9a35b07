package borderwright.engine.strength.box;

import borderwright.engine.strength.timber.TimberSection;
import java.util.List;

/**
 * A post or brace as an upright bar.
 *
 * @param label as written on the piece
 * @param sectionName what it is cut from
 * @param section its cross-section on the plan
 * @param members its bars, from the bottom; none in a wall of one course
 */
public record Stem(String label, String sectionName, TimberSection section, List<Integer> members) {
    public Stem {
        members = List.copyOf(members);
    }
}
