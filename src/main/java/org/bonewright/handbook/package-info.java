/**
 * The handbook: every principle, measure, source and term on pages of its own, and as one document
 * to print. Enters: a rule set. Leaves: files. It knows principles and measures, and nothing of
 * cases or reviews; only the command line and the server know it.
 */
@NullMarked
package org.bonewright.handbook;

import org.jspecify.annotations.NullMarked;
