package buildup.engine.room.run;

import buildup.engine.room.plan.WallCorner;
import buildup.engine.room.run.Saw.Hand;
import buildup.profiles.outline.Point;
import java.util.List;
import java.util.Optional;

/**
 * One course on one stretch of wall: the stick between two cuts. Lengths in inches along the stick.
 *
 * @param run number of the run in the plan
 * @param stretch as the plan calls it, with the side of an opening or the end where it is a part or a return
 * @param frame of its stretch
 * @param start where its wall begins on the stretch, in
 * @param wall length of its wall, in
 * @param grainGroup names the pieces whose grain runs on round their corners
 * @param selfReturn whether it is the short piece that turns a course back to its own wall
 */
public record Fit(
        int run,
        String stretch,
        Course course,
        Frame frame,
        double start,
        double wall,
        Meeting leftMeeting,
        Meeting rightMeeting,
        Optional<String> grainGroup,
        boolean selfReturn) {
    /** Length at a projection. */
    public double at(double projection) {
        return wall + leftMeeting.past(projection) + rightMeeting.past(projection);
    }

    /** How far it goes on past the left end of its wall at a projection. */
    public double past(double projection) {
        return leftMeeting.past(projection);
    }

    /**
     * How far its face is seen past an end of its wall at a projection: at an inside corner to the line in which the two
     * faces meet, also where one stick runs on behind the other.
     */
    public double seenPast(Hand hand, double projection) {
        return meeting(hand).seenPast(projection);
    }

    /** Length along its outermost arris. */
    public double faceLength() {
        return at(course.face());
    }

    /** Length along its back: what the wall behind it must offer. */
    public double backLength() {
        return at(back());
    }

    /** The wood of a return ends at the wall, whatever lies behind it. */
    private double back() {
        return selfReturn ? Math.max(0, course.back()) : course.back();
    }

    /** Long point to long point: what the stick must hold. */
    public double longPoint() {
        return wall + longest(leftMeeting) + longest(rightMeeting);
    }

    /** Where its left long point lies along its stretch, in. */
    public double from() {
        return start - longest(leftMeeting);
    }

    /** Short point to short point. */
    public double shortPoint() {
        return wall + shortest(leftMeeting) + shortest(rightMeeting);
    }

    private double longest(Meeting meeting) {
        return Math.max(meeting.past(back()), meeting.past(course.face()));
    }

    private double shortest(Meeting meeting) {
        return Math.min(meeting.past(back()), meeting.past(course.face()));
    }

    /** From the long point of a cut back to the heel, its other end in plan, along the stick. */
    public double heel(Hand hand) {
        Meeting meeting = meeting(hand);
        return longest(meeting) - shortest(meeting);
    }

    /** How that end of the piece is cut. */
    public EndCut cut(Hand hand) {
        return meeting(hand).cut(course, hand);
    }

    Meeting meeting(Hand hand) {
        return hand == Hand.LEFT ? leftMeeting : rightMeeting;
    }

    /** The easiest position on the saw for the cut at an end; none when it is square. */
    public Optional<Saw.Setting> setting(Hand hand) {
        return meeting(hand).setting(course, hand);
    }

    /** What the cut at an end takes flat on the table at another spring than its own; none when it is square. */
    public Optional<Saw.Flat> flat(Hand hand, double spring) {
        Meeting meeting = meeting(hand);
        return meeting.isSquare() ? Optional.empty() : Optional.of(Saw.flat(meeting.plane(), spring));
    }

    /** A sprung stick held against the fence as it stands on the wall, upside down; none for others or a square cut. */
    public Optional<Saw.Setting> nested(Hand hand) {
        Meeting meeting = meeting(hand);
        return course.sprung() && !meeting.isSquare()
                ? Optional.of(Saw.nested(meeting.plane(), course.spring(), hand))
                : Optional.empty();
    }

    /** Whether an end is to be fitted to a wall that may not be true. */
    public boolean meetsWall(Hand hand) {
        return meeting(hand).meetsWall();
    }

    /** What of its face length is there because a corner is out of square. */
    public double fromSquare() {
        return leftMeeting.pastSquare(course.face()) + rightMeeting.pastSquare(course.face());
    }

    /** What of its length is there because a wall is out of plumb. */
    public double fromPlumb() {
        return leftMeeting.lean() + rightMeeting.lean();
    }

    /**
     * How wide the miter at an end would stand open if both sticks were cut for a square corner: the two cuts, as long as
     * the miter in plan, part by the angle that the corner is off; 0 where it is square or no miter.
     */
    public double gape(Hand hand) {
        Meeting meeting = meeting(hand);
        if (meeting.kind() != EndCut.Kind.MITER || !new WallCorner(false, meeting.corner()).outOfSquare()) {
            return 0;
        }
        double miter = (course.face() - course.back()) * Math.sqrt(2);
        return 2 * miter * Math.sin(Math.toRadians(Math.abs(meeting.corner() - 90)) / 2);
    }

    /** The course in plan: back left, face left, face right, back right. */
    public List<Point> outline() {
        double back = back();
        double face = course.face();
        return List.of(left(back), left(face), right(face), right(back));
    }

    Point left(double projection) {
        return frame.at(start - leftMeeting.past(projection), projection);
    }

    Point right(double projection) {
        return frame.at(start + wall + rightMeeting.past(projection), projection);
    }

    /** The stick to be cut for it. */
    public Cut toCut() {
        return new Cut(
                course.name(),
                stretch,
                course.body(),
                longPoint(),
                course.stock(),
                course.thickness(),
                course.width(),
                cut(Hand.LEFT),
                cut(Hand.RIGHT),
                grainGroup,
                selfReturn);
    }
}
