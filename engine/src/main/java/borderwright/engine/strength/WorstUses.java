package borderwright.engine.strength;

import borderwright.engine.strength.timber.RuleSet;
import borderwright.engine.strength.worked.Check;
import borderwright.engine.strength.worked.Working;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Keeps the worst of each kind of check, and works only those out in steps at the end. */
final class WorstUses {
    private final RuleSet rules;
    private final Map<Kind, Use> worst = new LinkedHashMap<>();

    WorstUses(RuleSet rules) {
        this.rules = rules;
    }

    /** A check that says its steps. */
    interface Rule {
        double use(Working working);
    }

    /** One kind of check on one kind of part. */
    private record Kind(String parts, Clauses clause) {}

    private record Use(String part, String loading, double use, Rule rule) {}

    /**
     * Works a check out silently and keeps it if it is the worst of its kind.
     *
     * @param parts kind of part, such as {@code wall boards}
     * @param part which one
     * @param loading under which case
     */
    void take(String parts, Clauses clause, String part, String loading, Rule rule) {
        double use = rule.use(Working.SILENT);
        Kind kind = new Kind(parts, clause);
        Use before = worst.get(kind);
        if (before == null || use > before.use) {
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
                    kind.parts + ": " + use.part,
                    kind.clause.what(),
                    kind.clause.in(rules),
                    use.loading,
                    again,
                    sheet.lines()));
        });
        checks.sort(Comparator.comparingDouble(Check::utilisation).reversed());
        return checks;
    }
}
