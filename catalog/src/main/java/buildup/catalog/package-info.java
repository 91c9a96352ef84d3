/**
 * The shop's lists: profiles by family and size, boards by nominal size, woods, fasteners and the tools
 * that drive them.
 *
 * <p>A family is one shape in any size, said in profile words with its sizes as named lengths; an outline is drawn only
 * when a size is asked for. The built-in lists are the YAML files beside this package; a user's own file of the same
 * form adds to them and replaces entries of the same name.
 */
@NullMarked
package buildup.catalog;

import org.jspecify.annotations.NullMarked;
