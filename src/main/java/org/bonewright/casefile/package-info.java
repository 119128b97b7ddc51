/**
 * What a case says: immutable records, one for each part of the case file.
 *
 * <p>Entry type: {@link org.bonewright.casefile.CaseFile}. The records hold what was written and
 * nothing else; reading and checking live in the packages below this one. An absent value is an
 * empty {@code Optional}: unknown in the past, "not planned" for an action of a plan. It is never
 * {@code null} and never a default.
 */
@NullMarked
package org.bonewright.casefile;

import org.jspecify.annotations.NullMarked;
