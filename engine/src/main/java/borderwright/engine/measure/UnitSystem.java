package borderwright.engine.measure;

/** How lengths, areas, volumes and weights are written for the reader. Input may use any unit in either. */
public enum UnitSystem {
    METRIC,
    IMPERIAL
}
