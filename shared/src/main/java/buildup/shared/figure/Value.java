package buildup.shared.figure;

/** What a sentence has a place for: a figure, words as they stand, a phrase with places of its own, or several of them. */
public sealed interface Value permits Figure, Text, Phrase, Listing {}
