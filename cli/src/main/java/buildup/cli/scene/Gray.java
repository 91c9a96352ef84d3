package buildup.cli.scene;

/** A gray of a picture that is shaded; {@code light} is 0 for black to 1 for the paper. */
public record Gray(double light) implements Paint {
    public Gray {
        light = Math.max(0, Math.min(1, light));
    }

    @Override
    public int rgb() {
        int level = (int) Math.round(light * 255);
        return level << 16 | level << 8 | level;
    }
}
