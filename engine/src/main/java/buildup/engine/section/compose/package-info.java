/**
 * Joins the placed pieces into a section and holds what a union throws away: who shows where on the room side, what
 * touches what, what is enclosed, what carries what. All figures come from true segments; their meaning is written
 * beside each record.
 */
@NullMarked
package buildup.engine.section.compose;

import org.jspecify.annotations.NullMarked;
