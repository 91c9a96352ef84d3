/**
 * The pieces of a stack for all choices of its free sizes at once: each read by itself, with every choice on which its entry
 * hangs, and placed by its rules, so that the place of each edge is a constant and a function of each free size added up.
 */
@NullMarked
package buildup.engine.judge.bound.form;

import org.jspecify.annotations.NullMarked;
