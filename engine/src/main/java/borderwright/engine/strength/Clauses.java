package borderwright.engine.strength;

import borderwright.engine.strength.timber.RuleSet;

/** Where each check stands in the rule set. */
enum Clauses {
    BENDING("bending", "EN 1995-1-1 6.1.6, 6.2", "NDS 3.3, 3.9"),
    SHEAR("shear", "EN 1995-1-1 6.1.7", "NDS 3.4"),
    PULL("tension", "EN 1995-1-1 6.1.2", "NDS 3.8"),
    POST("compression along the grain", "EN 1995-1-1 6.3.2", "NDS 3.7"),
    BEARING("compression across the grain", "EN 1995-1-1 6.1.5", "NDS 3.10"),
    SCREWS("screws", "EN 1995-1-1 8.2, 8.7", "NDS 12.2, 12.3, 12.4"),
    STRAP_SCREWS("screws through steel", "EN 1995-1-1 8.2.3", "NDS 12.3"),
    STRAP("strap", "declared by its maker", "declared by its maker"),
    GROUND("ground under the bed", "IBC 2012 table 1806.2", "IBC 2012 table 1806.2"),
    FOOTING("lateral bearing of the ground", "IBC 2012 1807.3.2.1", "IBC 2012 1807.3.2.1"),
    SLIDING("sliding", "IBC 2012 1807.2.3", "IBC 2012 1807.2.3"),
    TIPPING("tipping", "IBC 2012 1807.2.3", "IBC 2012 1807.2.3");

    private final String what;
    private final String eurocode;
    private final String nds;

    Clauses(String what, String eurocode, String nds) {
        this.what = what;
        this.eurocode = eurocode;
        this.nds = nds;
    }

    String what() {
        return what;
    }

    String in(RuleSet rules) {
        return rules == RuleSet.NDS ? nds : eurocode;
    }
}
