package buildup.engine.buy;

import buildup.shared.figure.Phrase;
import java.util.OptionalLong;

/**
 * One size of box, can or stick.
 *
 * @param words as it is asked for
 * @param size what it holds: things, cubic inches or inches; more than 0
 * @param price hundredths; absent when none is given
 */
record Pack(Phrase words, double size, OptionalLong price) {}
