/**
 * Measures of aftercare and of what a plan settles beforehand: load, motion, visits, triggers,
 * alternatives. Enters: a scene. Leaves: readings. May use casefile, bone, and the other measures
 * through the scene.
 */
@NullMarked
package org.bonewright.measures.care;

import org.jspecify.annotations.NullMarked;
