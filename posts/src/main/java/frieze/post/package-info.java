/**
 * Writes programs in the dialect of one controller; the place to plug in another.
 *
 * <p>In: a {@link frieze.lower.Program}, whose numbers are on the controller's grid and which asks
 * for nothing that the controller lacks. Out: a {@link frieze.post.ProgramText}. A post is an
 * implementation of {@link frieze.post.Post} named in {@code META-INF/services/frieze.post.Post}.
 * Most need no code of their own: a {@link frieze.post.Dialect} holds what a controller understands
 * and the lines that it wants, and {@link frieze.post.DialectPost} writes it. Read {@link
 * frieze.post.Post}, {@link frieze.post.Posts}, {@link frieze.post.Dialect}, {@link
 * frieze.post.NumberText}, {@link frieze.post.Posting} and {@link frieze.post.Rescuer}.
 */
@NullMarked
package frieze.post;

import org.jspecify.annotations.NullMarked;
