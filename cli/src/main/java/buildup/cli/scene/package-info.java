/**
 * A picture in true inches, before any file format: x to the right, y up, the sheet's lower left corner at (0, 0). A
 * {@link buildup.cli.scene.Scene} holds areas, lines, hatches and labels in the order in which they are laid on; the
 * writers know nothing else. Every line has a meaning ({@link buildup.cli.scene.LineStyle}), and each meaning differs
 * from the others in width or dash, so that a photocopy tells as much as the screen.
 */
@NullMarked
package buildup.cli.scene;

import org.jspecify.annotations.NullMarked;
