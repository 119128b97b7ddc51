/**
 * Changes to a plan: what a surgeon could draw otherwise, tried out one by one and judged anew.
 * Nothing but the plan is ever changed.
 */
@NullMarked
package org.bonewright.change;

import org.jspecify.annotations.NullMarked;
