/**
 * What the pages of the handbook say, apart from any markup: pages, sections, blocks, texts with
 * links. It knows nothing of principles, and nothing of how a page is shown.
 */
@NullMarked
package org.bonewright.handbook.model;

import org.jspecify.annotations.NullMarked;
