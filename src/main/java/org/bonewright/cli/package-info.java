/**
 * The command line.
 *
 * <p>Entry: {@link org.bonewright.cli.Main}. It reads files, calls the reviewer and the renderers,
 * and turns what happened into an exit code. It starts no server and no application context, so
 * that an answer takes less than a second.
 */
@NullMarked
package org.bonewright.cli;

import org.jspecify.annotations.NullMarked;
