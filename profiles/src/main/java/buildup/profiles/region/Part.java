package buildup.profiles.region;

import java.util.List;

/** One connected part of a union: its outer ring and the holes in it. */
public record Part(Ring outer, List<Hole> holes) {
    /** An enclosed hole; {@code wide} when a disc of the touching distance fits into it. */
    public record Hole(Ring ring, boolean wide) {}

    public Part {
        holes = List.copyOf(holes);
    }

    /** Area of the wood in square inches, holes taken off. */
    public double area() {
        return outer.area()
                - holes.stream().mapToDouble(hole -> hole.ring().area()).sum();
    }

    /** Length of all boundaries, in. */
    public double perimeter() {
        return outer.length()
                + holes.stream().mapToDouble(hole -> hole.ring().length()).sum();
    }
}
