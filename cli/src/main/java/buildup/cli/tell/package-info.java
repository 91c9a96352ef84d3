/**
 * Sheets become what people and programs read: tables (for text, HTML and CSV), JSON, its schema, and two answers beside
 * each other. Each renderer knows columns alone and no question, so a new figure needs no change here.
 */
@NullMarked
package buildup.cli.tell;

import org.jspecify.annotations.NullMarked;
