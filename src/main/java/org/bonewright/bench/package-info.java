/**
 * The door for bare constructs: a file with numbers in, mechanics out. No patient, no rules. For
 * checking the model against other programs and for teaching.
 */
@NullMarked
package org.bonewright.bench;

import org.jspecify.annotations.NullMarked;
