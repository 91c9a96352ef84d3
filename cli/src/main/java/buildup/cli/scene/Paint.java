package buildup.cli.scene;

/** What an area is filled with. */
public sealed interface Paint permits Tone, Gray {
    /** 0xRRGGBB. */
    int rgb();
}
