/** What stands at the head of shop drawings, as the document gives it. */
@NullMarked
package buildup.engine.section.heading;

import org.jspecify.annotations.NullMarked;
