/**
 * What a site has set instead of published limits, severities and loads.
 *
 * <p>Entry type: {@link org.bonewright.site.SiteReader}. Enters: the bytes of a site file, and the
 * rule set whose cards it changes. Leaves: {@link org.bonewright.principles.SiteChanges} that were
 * held against every card, or the complete list of problems. It is read by the same means as a case
 * file. Nothing before {@code cli} and {@code server} knows this package: what judges gets a rule
 * set that already carries the changes.
 */
@NullMarked
package org.bonewright.site;

import org.jspecify.annotations.NullMarked;
