package buildup.cli.command;

import buildup.cli.command.files.FileNotices;
import buildup.engine.FrontNotices;
import buildup.engine.room.stock.StickNotices;
import buildup.engine.section.stack.StackNotices;
import buildup.shared.document.DocumentCodes;
import buildup.shared.notice.Code;
import buildup.shared.notice.Kind;

/** What commands have to say of their own words and files. */
final class CommandNotices {
    private static final Code PICTURE_TOO_LARGE =
            Code.of("picture-too-large", "A picture of dots would hold more of them than can be shown.");
    private static final Code ENDED_BY_TIME =
            Code.of("ended-by-time", "A search was ended by its time, and may end elsewhere the next time.");
    private static final Code NO_PROFILE =
            Code.of("no-profile", "What is asked for needs one profile, or another one.");
    private static final Code NO_KNIFE =
            Code.of("no-knife", "The template of a knife is asked for where there is no knife.");
    private static final Code UNKNOWN_PORT = Code.of("unknown-port", "The port for the page does not exist.");
    private static final Code NO_SUCH_VIEW =
            Code.of("option-of-another-view", "An option is given that changes nothing in the view that is drawn.");
    private static final Code PORT_TAKEN = Code.of("port-taken", "A page should be served at a port that is taken.");

    static final Kind OTHER_VIEW = NO_SUCH_VIEW.refusal(
            "{option} has no meaning in the view of {view}.", "Leave it out, or take --view {other}.");

    static final Kind INPUT_TWICE =
            FileNotices.NO_STACK.refusal("Standard input cannot be both stacks.", "Give one of them as a file.");
    static final Kind INPUT_FOLLOWED =
            FileNotices.NO_STACK.refusal("Standard input cannot be followed.", "Name a stack document.");

    static final Kind MANY_PIXELS = PICTURE_TOO_LARGE.refusal(
            "The picture would hold {pixels} million pixels; a PNG holds at most {most} million.",
            "Take svg or pdf, or look at the sizes and their unit.");

    static final Kind FEWER_PIXELS = PICTURE_TOO_LARGE.note(
            "The picture is large: it is drawn with {dots} dots an inch, not {usual}, so that it holds no more than {most}"
                    + " million.",
            "Take svg or pdf for finer lines.");

    static final Kind UNUSABLE_NAME = DocumentCodes.UNUSABLE_NAME.refusal(
            "'{name}' cannot name a profile.", "Take small letters, digits and hyphens.");
    static final Kind UNKNOWN_UNIT =
            DocumentCodes.UNKNOWN_NAME.refusal("There is no unit '{word}'.", "Take in, mm, cm or ft.");
    static final Kind UNKNOWN_EYE = DocumentCodes.UNKNOWN_NAME.refusal("The stack has no eye '{name}'.", "");
    static final Kind UNKNOWN_SIDE =
            DocumentCodes.UNKNOWN_NAME.refusal("There is no side '{word}'.", "Take left, right, up or down.");
    static final Kind NO_MEASURE = DocumentCodes.NOT_A_SIZE.refusal(
            "--measure '{text}' is not a size of a member.",
            "Write it as 'face height = 2-1/2', 'bottom to cove width = 1-1/4' or 'cove radius = 1/2'.");
    static final Kind NO_SIZE = DocumentCodes.NOT_A_SIZE.refusal(
            "{option} must be more than 0, not {text}.", "Give it a size, or leave it out.");
    static final Kind UNKNOWN_KIND = DocumentCodes.UNKNOWN_NAME.note("No profile of the catalog is a '{kind}'.", "");
    static final Kind UNKNOWN_STARTER = DocumentCodes.UNKNOWN_NAME.refusal("There is no '{name}' to start from.", "");
    static final Kind UNKNOWN_SCHEMA = DocumentCodes.UNKNOWN_NAME.refusal("There is no schema '{name}'.", "");

    static final Kind OUT_OF_TIME = ENDED_BY_TIME.note(
            "The search was ended after {seconds} s: another run may give other sticks.",
            "Limit it with --steps for the same answer every time.");
    static final Kind INTERRUPTED = ENDED_BY_TIME.note(
            "The search was interrupted: this is the best that it had.", "Let it run for a better answer or a proof.");
    static final Kind NO_STEPS =
            DocumentCodes.NOT_A_NUMBER.refusal("A search of {steps} steps finds nothing.", Words.LIMITS);
    static final Kind NO_SECONDS =
            DocumentCodes.NOT_A_NUMBER.refusal("A search cannot end after {seconds} s.", Words.LIMITS);

    static final Kind NO_PROPORTION = DocumentCodes.MISSING_KEY.refusal(
            "The stack does not ask for its proportions, or nothing of it is seen.",
            "Ask for them, as 'proportion: {{}'.");

    static final Kind NO_CLEARANCE = DocumentCodes.MISSING_KEY.refusal(
            "The stack holds neither a firebox nor a place to keep clear.",
            "Add one, as 'firebox: {{ top: {top}, left: {left}, right: {right} }'.");

    static final Kind NO_SEASONS = DocumentCodes.MISSING_KEY.refusal(
            "The stack holds no two seasons: nothing moves.",
            "Add them, as 'seasons: [{{ name: built, moisture: 8 % }, {{ name: winter, temperature: 68 F, humidity: 25 % }]'.");
    static final Kind NOT_SO_MANY_TIMES = DocumentCodes.NOT_A_NUMBER.refusal(
            "Movement cannot be drawn {times} times as large.", "Give --times 1 to {most}; 10 shows it well.");
    static final Kind NO_CORNER = FrontNotices.NO_PLAN.refusal(
            "The stack holds no plan: there is no corner to draw.",
            "Add one, as 'plan: [{{ left: return, right: return, stretches: [{{ length: 96 }] }]'.");
    static final Kind NO_STICKS = StickNotices.NO_STOCK.refusal(
            "No stock is given that the pieces are cut from: there are no sticks to draw.",
            "Add it, as 'stock: {{ sticks: [{{ of: 1x6, buy: [8', 12'] }] }'.");
    private static final Code COPED_NOWHERE =
            Code.of("nothing-coped", "The templates of copes were asked for, and no molding is coped.");
    static final Kind NOTHING_COPED = COPED_NOWHERE.refusal(
            "No molding of this stack is coped at a corner of the plan: there is no template to draw.",
            "Write 'inside: cope' on a run with an inside corner; plain boards are cut square there.");
    private static final Code MEASURED_NOWHERE =
            Code.of("nothing-measured", "The picture along the walls was asked for, and nothing was measured there.");
    static final Kind NOTHING_MEASURED = MEASURED_NOWHERE.refusal(
            "No stretch says how its ceiling, floor or wall runs near the stack: there is no gap to draw.",
            "Add it to a stretch, as 'ceiling: [[0, {high}], [{along}, {low}]]'.");
    static final Kind NO_LIGHT = StackNotices.IMPOSSIBLE_LIGHT_OR_EYE.refusal(
            "No light shines on the stack: nothing to shade.", "Give one that does, as --light 35.264,45.");
    static final Kind NO_TWO_ANGLES = DocumentCodes.NOT_AN_ANGLE.refusal(
            "'{text}' is not an altitude and an azimuth.", "Write two angles in degrees, as --light 35.264,45.");

    static final Kind NEAREST_TO_WHAT =
            NO_PROFILE.refusal("What comes nearest is asked of one profile.", Words.NAME_A_PROFILE);
    static final Kind PICTURE_OF_WHAT = NO_PROFILE.refusal("A picture is drawn of one profile.", Words.NAME_A_PROFILE);
    static final Kind NO_OTHER_PROFILE =
            NO_PROFILE.refusal("The catalog holds no other profile.", "Give one more with --catalog.");
    static final Kind PLANED =
            NO_KNIFE.refusal("A board is planed: there is no knife to draw.", "Take --view milling.");
    static final Kind NO_HEAD =
            NO_KNIFE.refusal("No listed head holds a knife for it: there is none to draw.", "Take --view milling.");

    static final Kind NO_PORT =
            UNKNOWN_PORT.refusal("There is no port {port}.", "Leave --port out, or give one from 1024 to {last}.");
    static final Kind TAKEN =
            PORT_TAKEN.refusal("Port {port} is taken, or may not be used.", "Leave --port out, or give another.");

    private static final class Words {
        private static final String LIMITS = "Give --steps 1 or more, --seconds 0 or more, or leave them out.";
        private static final String NAME_A_PROFILE = "Name it, with its sizes.";
    }

    private CommandNotices() {}
}
