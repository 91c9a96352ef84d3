package buildup.profiles.outline;

/** A true segment of an outline with the name of the member that it belongs to. */
public record Stroke(Segment segment, String member) {
    /** The same member moved. */
    public Stroke moved(Motion motion) {
        return new Stroke(segment.moved(motion), member);
    }

    /** The same member walked the other way. */
    public Stroke reversed() {
        return new Stroke(segment.reversed(), member);
    }

    /** The same segment as part of another member. */
    public Stroke named(String name) {
        return new Stroke(segment, name);
    }
}
