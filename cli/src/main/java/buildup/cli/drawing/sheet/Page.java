package buildup.cli.drawing.sheet;

/** A size of paper, upright; inches. */
public record Page(String name, double width, double height) {
    private static final double MILLIMETRES_PER_INCH = 25.4;

    static Page millimetres(String name, double width, double height) {
        return new Page(name, width / MILLIMETRES_PER_INCH, height / MILLIMETRES_PER_INCH);
    }

    /** The same sheet, lying on its side. */
    public Page turned() {
        return new Page(name, /* width= */ height, /* height= */ width);
    }

    boolean holds(double wide, double high) {
        return wide <= width && high <= height;
    }
}
