package buildup.shared.document;

import buildup.shared.notice.Mark;

/** A text, as written; a value that was left out is the empty text. */
public record Scalar(String text, Mark mark) implements Node {}
