package buildup.cli.drawing.sheet;

/** A size of paper, upright; inches. */
public record PaperSize(String name, double width, double height) {
    private static final double MILLIMETERS_PER_INCH = 25.4;

    static PaperSize millimeters(String name, double width, double height) {
        return new PaperSize(name, width / MILLIMETERS_PER_INCH, height / MILLIMETERS_PER_INCH);
    }

    /** The same sheet, lying on its side. */
    public PaperSize turned() {
        return new PaperSize(name, /* width= */ height, /* height= */ width);
    }

    boolean holds(double wide, double high) {
        return wide <= width && high <= height;
    }
}
