/** How long metal lasts under a load that comes again and again. Closed formulas. */
@NullMarked
package org.bonewright.mechanics.fatigue;

import org.jspecify.annotations.NullMarked;
