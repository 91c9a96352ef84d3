/** Orders and rules of proportion as books give them, as data: each with its book, its place there and what is from memory. */
@NullMarked
package buildup.catalog.book;

import org.jspecify.annotations.NullMarked;
