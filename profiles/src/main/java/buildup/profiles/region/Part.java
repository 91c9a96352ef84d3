package buildup.profiles.region;

import java.util.List;

/** One connected part of a union: its outer ring and the rings of the holes in it. */
public record Part(Ring outer, List<Ring> holes) {
    public Part {
        holes = List.copyOf(holes);
    }

    /** Area of the wood in square inches, holes taken off. */
    public double area() {
        return outer.area() - holes.stream().mapToDouble(Ring::area).sum();
    }

    /** Length of all boundaries, in. */
    public double perimeter() {
        return outer.length() + holes.stream().mapToDouble(Ring::length).sum();
    }
}
