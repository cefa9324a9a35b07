package borderwright.engine.settingout;

/** On which side of a line from one known point to another a corner lies, looking along it. */
public enum TapeSide {
    LEFT,
    RIGHT
}
