/**
 * Measures of the limb around the bone: nerves, skin and old incisions, stripping, blood flow.
 * Enters: a scene. Leaves: readings. May use casefile, bone, and the other measures through the
 * scene.
 */
@NullMarked
package org.bonewright.measures.limb;

import org.jspecify.annotations.NullMarked;
