/**
 * The page that follows a stack. {@link buildup.cli.watch.Follower} waits until the content of the followed files
 * changes, has them read again and hands on what came of it; {@link buildup.cli.watch.LatestPicture} holds the newest page;
 * {@link buildup.cli.watch.PageServer} shows it to a browser on this machine, and to nobody else.
 */
@NullMarked
package buildup.cli.watch;

import org.jspecify.annotations.NullMarked;
