package borderwright.engine.strength;

import borderwright.engine.message.Message;
import borderwright.engine.strength.rules.RuleSet;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Supplier;

/** Keeps the worst of each kind of check, and works only those out in steps at the end. */
final class WorstUses {
    private final RuleSet rules;
    /** Parts alike are used alike but for rounding: the first of them is named. */
    private static final double ROUNDING = 1e-9;

    private final Map<Kind, Use> worst = new LinkedHashMap<>();

    WorstUses(RuleSet rules) {
        this.rules = rules;
    }

    /** A check that writes its steps. */
    interface Rule {
        double use(Working working);
    }

    /** One kind of check on one kind of part. */
    private record Kind(PartKind parts, CheckKind check) {}

    private record Use(Supplier<Message> part, Supplier<Message> loading, double use, Rule rule) {}

    /**
     * Works a check out silently and keeps it if it is the worst of its kind.
     *
     * @param part which one of its kind; asked only of the worst
     * @param loading under which case; asked only of the worst
     */
    void take(PartKind parts, CheckKind check, Supplier<Message> part, Supplier<Message> loading, Rule rule) {
        double use = rule.use(Working.SILENT);
        Kind kind = new Kind(parts, check);
        Use before = worst.get(kind);
        if (before == null || use > before.use * (1 + ROUNDING)) {
            worst.put(kind, new Use(part, loading, use, rule));
        }
    }

    double greatest() {
        return worst.values().stream().mapToDouble(Use::use).max().orElse(0);
    }

    /** The worst of each kind, most used first, with its steps. */
    List<Check> checks() {
        List<Check> checks = new ArrayList<>();
        worst.forEach((kind, use) -> {
            Working sheet = Working.sheet();
            double again = use.rule.use(sheet);
            checks.add(new Check(
                    PartMessage.CHECKED.of(kind.parts.of(), use.part.get()),
                    kind.check.of(),
                    kind.check.clause(rules),
                    use.loading.get(),
                    again,
                    sheet.lines()));
        });
        checks.sort(Comparator.comparingDouble(Check::utilisation).reversed());
        return checks;
    }
}
