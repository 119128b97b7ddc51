/**
 * What the bone bears at the fracture: the table of usual loads, and what weight and aftercare make
 * of it.
 *
 * <p>Entry types: {@link org.bonewright.measures.load.UsualLoads}, the table, which a site may
 * change and which is handed on as an object; {@link org.bonewright.measures.load.PermittedLoads},
 * the loads of a scene. May use casefile, bone and the other measures.
 */
@NullMarked
package org.bonewright.measures.load;

import org.jspecify.annotations.NullMarked;
