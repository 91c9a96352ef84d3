package buildup.engine.judge.verdict;

import java.util.Arrays;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;

/** A question of the verdict, in the order in which a mistake hurts, and the codes of the notices that belong to it. */
public enum Topic {
    /** Does it stand, loads included? */
    STANDS(
            "floating-piece",
            "touches-on-a-corner-only",
            "load-beyond-the-stack",
            "load-too-much",
            "tips",
            "gap-that-closes",
            "needs-holding",
            "support-that-only-hangs",
            "hangs-on-its-fastenings"),
    /** Is every piece held by something that bites? */
    HELD(
            "no-backing",
            "misses-the-framing",
            "nail-in-air",
            "nail-too-short",
            "nail-breaks-out",
            "nail-at-the-far-face",
            "nail-off-its-piece",
            "nail-in-end-grain-or-near-an-edge",
            "no-published-value",
            "tool-cannot-reach",
            "nails-that-cross",
            "upper-edge-not-held",
            "unknown-length"),
    /** Does it fit under the ceiling and within its projection? */
    FITS(
            "too-tall",
            "short-of-the-ceiling",
            "projects-too-far",
            "outside-the-room",
            "ceiling-too-low",
            "floor-too-high",
            "heights-disagree",
            "in-the-way"),
    /** Can the wood be had and joined? */
    WOOD("overlap", "upside-down", "mm-read-as-inches", "board-too-small", "reveal-larger-than-its-piece"),
    /** Is raw wood or an open joint seen? */
    SEEN("nailer-shows", "open-joint", "trim-that-no-eye-sees"),
    /** Where do the shadows fall? */
    LIGHT("impossible-light-or-eye"),
    /** Are the reveals those wanted? */
    REVEALS(),
    /** Can it be put up in this order? */
    ORDER("cannot-go-in", "nail-hidden-by-its-unit", "bench-unit-wrong"),
    /** Does it stay right through the year? */
    SEASON(
            "joint-opens",
            "reveal-closes",
            "bearing-falls-short",
            "lap-fails",
            "nails-hold-against-movement",
            "no-room-to-swell"),
    /** Does the saw's error matter? */
    TOLERANCE("error-adds-up"),
    /** How does it compare with the books? */
    PROPORTION("parts-do-not-fit"),
    /** Is it clear of fire? */
    FIRE("too-near-fire", "opening-above-the-stack"),
    /** Does it fit the room along the walls? */
    ROOM(
            "no-plan",
            "no-stock",
            "plan-does-not-close",
            "return-longer-than-its-wall",
            "returns-collide",
            "self-return-shorter-than-its-thickness",
            "grain-broken",
            "longer-than-any-stick",
            "too-little-stock",
            "price-missing",
            "too-little-left-to-clamp"),
    /** Can its profiles be made? */
    MADE("undercut", "inside-corner", "thin-web", "kerf-through", "knife-too-wide", "profile-too-deep"),
    /** Does it meet what the document says it must? */
    MUST("must-not-met", "nothing-meets", "none-found", "answers-bring-faults");

    private final Set<String> codes;

    Topic(String... codes) {
        this.codes = Set.of(codes);
    }

    /** Its word in the report and in JSON. */
    public String word() {
        return name().toLowerCase(Locale.ROOT);
    }

    /** The question that a notice of that code belongs to; a code of no other belongs to the wood. */
    public static Topic of(String code) {
        return Arrays.stream(values())
                .filter(topic -> topic.codes.contains(code))
                .findFirst()
                .orElse(WOOD);
    }

    /** Every code for which a question is named. */
    public static Set<String> codes() {
        return Arrays.stream(values()).flatMap(topic -> topic.codes.stream()).collect(Collectors.toUnmodifiableSet());
    }
}
