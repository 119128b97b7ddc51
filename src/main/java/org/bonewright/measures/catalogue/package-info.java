/**
 * The list of all measures.
 *
 * <p>Enters: the lists of the packages beside. Leaves: the {@link
 * org.bonewright.measures.MeasureCatalogue} that everything after uses. Nothing else happens here,
 * so that a measure may know the packages before its own and no circle arises.
 */
@NullMarked
package org.bonewright.measures.catalogue;

import org.jspecify.annotations.NullMarked;
