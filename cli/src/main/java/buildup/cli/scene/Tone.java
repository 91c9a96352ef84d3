package buildup.cli.scene;

/** The few tones of a picture. None says anything that hatch, line or label does not say too. */
public enum Tone implements Paint {
    INK(0x000000),
    GRID(0xC8D6DE),
    GRID_INCH(0x93ABB8),
    PAPER(0xFFFFFF),
    TRIM(0xFBF3E4),
    NAILER(0xF1E7D3),
    STANDING(0xEEEEEC);

    private final int rgb;

    Tone(int rgb) {
        this.rgb = rgb;
    }

    @Override
    public int rgb() {
        return rgb;
    }
}
