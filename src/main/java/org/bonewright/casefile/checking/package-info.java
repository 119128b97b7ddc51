/**
 * Whether the fields of a case file agree with each other.
 *
 * <p>Entry type: {@link org.bonewright.casefile.checking.Consistency}. A bound {@link
 * org.bonewright.casefile.CaseFile} enters; every contradiction leaves, each as a problem with its
 * JSON pointer, what was found and what is allowed. An error is a contradiction that holds whatever
 * the unknown values turn out to be; what is merely improbable is a warning. A sparse but sound
 * file gives neither. Nothing is repaired here, no value is filled in, and no surgery is judged.
 */
@NullMarked
package org.bonewright.casefile.checking;

import org.jspecify.annotations.NullMarked;
