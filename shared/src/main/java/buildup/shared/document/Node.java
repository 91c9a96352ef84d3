package buildup.shared.document;

import buildup.shared.notice.Mark;

/** A part of a document, with the place where it begins. */
public sealed interface Node permits Scalar, Sequence, Mapping {

    /** Where its first character stands. */
    Mark mark();
}
