package buildup.engine.look.light;

import buildup.engine.section.stack.StackNotices;
import buildup.shared.notice.Kind;

/** What the lights give cause to say. */
final class LightNotices {
    static final Kind LAMP_IN_WOOD = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            "Lamp '{light}' is inside the {body}.",
            "Hang it in the room: 'at: {{ distance: {distance}, height: floor + {height} }'.");
    static final Kind UNDER_THE_HORIZON = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.READ + " is under the horizon.", "Give an altitude from 0 to 90, or a lamp.");
    static final Kind PAST_THE_ZENITH = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.READ + " is past the zenith.", "Give an altitude from 0 to 90.");
    static final Kind BEHIND_THE_WALL = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.READ + " comes from behind the wall and makes no shadow.",
            "Give an azimuth between -90 and 90, measured from square to the wall.");
    static final Kind ALONG_THE_WALL = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.READ + " is upright in section: it runs along the wall and lights none of it.",
            "Bring it off the wall: an azimuth under 90 and an altitude under 90.");
    static final Kind SUN_IS_DOWN = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.SUN + " is {under} under the horizon.", "Take an hour of the day.");
    static final Kind NOT_BY_THIS_WINDOW = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.problem(
            Words.SUN + " stands at bearing {bearing} and does not come in by a window that looks to {window}.",
            "Take another hour, or another window.");

    private static final class Words {
        private static final String READ = "Light '{light}' (altitude {altitude}, azimuth {azimuth})";
        private static final String SUN = "The sun of light '{light}' ({day}, hour {hour})";
    }

    private LightNotices() {}
}
