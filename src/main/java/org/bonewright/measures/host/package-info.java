/**
 * Measures of the patient as a host for bone: smoking, diabetes, laboratory values, drugs, earlier
 * radiation. Enters: a scene. Leaves: readings of what was known when the subject began. May use
 * casefile, bone, and the other measures through the scene.
 */
@NullMarked
package org.bonewright.measures.host;

import org.jspecify.annotations.NullMarked;
