/**
 * What the frame model says of a construct, as measures: movement and strain at the line, stress in
 * the plate, how long it lasts, how hard the screws are pulled, how stiff the construct is.
 *
 * <p>Enters: a scene. {@link org.bonewright.measures.force.SketchMaker} gathers what the case file
 * tells and what has to be assumed, each as a range; {@link org.bonewright.measures.force.Draws}
 * gives 200 sets of places within these ranges, always the same; each is built and solved. Leaves:
 * {@link org.bonewright.measures.Reading.Sampled}, one number for each set; unknown where a fact is
 * missing that has no usual range, or where the model finds no answer.
 */
@NullMarked
package org.bonewright.measures.force;

import org.jspecify.annotations.NullMarked;
