package borderwright.engine.strength;

import borderwright.engine.message.Message;
import borderwright.engine.message.MessageCode;
import borderwright.engine.message.Slot;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.worked.StepMessage;
import java.util.List;
import org.jspecify.annotations.Nullable;

/** What is checked, with the clause of each rule set; null where the maker's declaration is the rule. */
public enum CheckKind implements MessageCode {
    BENDING("EN 1995-1-1 6.1.6, 6.2", "NDS 3.3, 3.9"),
    SHEAR("EN 1995-1-1 6.1.7", "NDS 3.4"),
    TENSION("EN 1995-1-1 6.1.2", "NDS 3.8"),
    COMPRESSION("EN 1995-1-1 6.3.2", "NDS 3.7"),
    /** Compression across the grain. */
    BEARING("EN 1995-1-1 6.1.5", "NDS 3.10"),
    SCREWS("EN 1995-1-1 8.2, 8.7", "NDS 12.2, 12.3, 12.4"),
    STRAP_SCREWS("EN 1995-1-1 8.2.3", "NDS 12.3"),
    STRAP(null, null),
    GROUND("IBC 2012 table 1806.2", "IBC 2012 table 1806.2"),
    FOOTING("IBC 2012 1807.3.2.1", "IBC 2012 1807.3.2.1"),
    SLIDING("IBC 2012 1807.2.3", "IBC 2012 1807.2.3"),
    OVERTURNING("IBC 2012 1807.2.3", "IBC 2012 1807.2.3");

    private static final String CODE = "check-";

    private final @Nullable String eurocode;
    private final @Nullable String nds;

    CheckKind(@Nullable String eurocode, @Nullable String nds) {
        this.eurocode = eurocode;
        this.nds = nds;
    }

    Message clause(RuleSet rules) {
        String clause = rules == RuleSet.NDS ? nds : eurocode;
        return clause == null ? StepMessage.DECLARED_BY_ITS_MAKER.of() : StepMessage.REFERENCE.of(clause);
    }

    @Override
    public List<Slot> slots() {
        return List.of();
    }

    @Override
    public String key() {
        return CODE + MessageCode.super.key();
    }
}
