package buildup.engine.judge.proportion;

import buildup.shared.figure.Phrase;

/** What is remarked on a rhythm. */
final class ProportionWords {
    static final Phrase THIN = Phrase.of("under {least}: reads as a mistake");

    static final Phrase EQUAL = Phrase.of("about as high as {other} beside it");

    static final Phrase ALIKE = Phrase.of("{shape} on {other}");

    static final Phrase NEARLY = Phrase.of("{by} off that of {other}: meant to be alike?");

    private ProportionWords() {}
}
