/** How much a screw, or a row of screws, holds before its thread strips. Closed formulas. */
@NullMarked
package org.bonewright.mechanics.hold;

import org.jspecify.annotations.NullMarked;
