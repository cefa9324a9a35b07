package borderwright.pack.paper;

/** The few tones of every sheet: black on white, greys, and one accent that stays dark in a grey print. */
public enum Tone {
    WHITE(255, 255, 255),
    PALE(241, 241, 238),
    LIGHT(216, 216, 212),
    GREY(140, 140, 136),
    BLACK(17, 17, 17),
    ACCENT(150, 48, 16);

    private final int red;
    private final int green;
    private final int blue;

    Tone(int red, int green, int blue) {
        this.red = red;
        this.green = green;
        this.blue = blue;
    }

    /** Share of red, 0 to 1. */
    public float red() {
        return red / 255f;
    }

    /** Share of green, 0 to 1. */
    public float green() {
        return green / 255f;
    }

    /** Share of blue, 0 to 1. */
    public float blue() {
        return blue / 255f;
    }

    /** As SVG and CSS write it. */
    public String hex() {
        return String.format("#%02x%02x%02x", red, green, blue);
    }
}
