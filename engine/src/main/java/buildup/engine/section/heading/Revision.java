package buildup.engine.section.heading;

import java.util.Optional;

/**
 * A revision of the drawings, in the document's own words.
 *
 * @param letter by which it is called
 * @param change what it changed
 */
public record Revision(String letter, Optional<String> date, Optional<String> change) {}
