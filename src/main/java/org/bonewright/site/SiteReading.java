package org.bonewright.site;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.principles.SiteChanges;
import org.bonewright.shelf.Shelf;

/**
 * What reading a site file gave.
 *
 * @param changes what the site has set; present exactly when there is no problem
 * @param shelf the implants that the site keeps, where there is no problem and it lists them
 * @param problems every problem, in the order of the file
 */
public record SiteReading(
    Optional<SiteChanges> changes, Optional<Shelf> shelf, List<Problem> problems) {

  /** Keep the problems as they are now. */
  public SiteReading {
    problems = List.copyOf(problems);
    if (changes.isPresent() != problems.isEmpty()) {
      throw new IllegalArgumentException("either changes or a problem");
    }
  }
}
