/**
 * The review of a whole history: what each operation got right and wrong, what the plan must
 * achieve and whether it does, what must be found out first.
 *
 * <p>Enters: a judged case. Leaves: a {@link org.bonewright.review.Review}, complete and in order,
 * so that a renderer has nothing left to compute. The same case gives the same review.
 */
@NullMarked
package org.bonewright.review;

import org.jspecify.annotations.NullMarked;
