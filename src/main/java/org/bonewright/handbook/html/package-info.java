/**
 * The handbook as HTML. Enters: a handbook. Leaves: files that need no server, no network and no
 * script. It adds nothing to what the pages say but the way from one to the other.
 */
@NullMarked
package org.bonewright.handbook.html;

import org.jspecify.annotations.NullMarked;
