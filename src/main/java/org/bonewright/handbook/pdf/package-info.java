/**
 * The handbook as one document to print. Enters: a handbook. Leaves: a PDF with marks for those who
 * do not see it, and its fonts within. It adds a cover, contents and page numbers, and nothing
 * else.
 */
@NullMarked
package org.bonewright.handbook.pdf;

import org.jspecify.annotations.NullMarked;
