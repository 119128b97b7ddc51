/**
 * Cross-sections of bones, plates, screws and nails: areas, second moments, stress concentration at
 * the holes of a plate. Closed formulas only.
 */
@NullMarked
package org.bonewright.mechanics.section;

import org.jspecify.annotations.NullMarked;
