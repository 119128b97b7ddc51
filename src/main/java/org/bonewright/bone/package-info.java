/**
 * The bone as a tube along one axis, and what lies on and in it.
 *
 * <p>Enters: the records of a case file. Leaves: dimensions with their basis, placed plates, the
 * construct at the end of an operation, earlier screw tracks. Levels are mm along the axis,
 * directions degrees around it. Missing dimensions come from a table as ranges and stay marked as
 * assumed. It judges nothing.
 */
@NullMarked
package org.bonewright.bone;

import org.jspecify.annotations.NullMarked;
