/**
 * Asks the program what nobody would: documents, catalogs, orders and tracings, mutated by grammar, by tokens and by
 * bytes, in every command, view and format, within one JVM. Each capability adds what it reads: its keys reach the
 * tokens through {@code guide/keys.md}, its commands stand in {@link buildup.cli.fuzz.Questions}.
 */
package buildup.cli.fuzz;
