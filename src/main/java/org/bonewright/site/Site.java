package org.bonewright.site;

import java.util.List;
import java.util.Optional;
import org.bonewright.casefile.Meaning;
import org.bonewright.casefile.Written;

/**
 * A site file as it was written.
 *
 * @param schema the format and its version
 * @param name short name of the site
 * @param provenance where the file comes from
 * @param limits limits set instead of published ones
 * @param severities severities set instead of published ones
 * @param loads loads of a bone set instead of those of the published table
 * @param shelf the implants that are kept, where the site lists them
 */
@Meaning("Limits, severities and loads that a site has set instead of published ones.")
public record Site(
    @Meaning("The format and its version.")
        @Written(regex = "bonewright/site/1", inWords = "bonewright/site/1")
        String schema,
    @Meaning("Short name of the site; it stands in every review.")
        @Written(
            regex = "[a-z0-9][a-z0-9-]{0,39}",
            inWords = "small letters, digits and hyphens, at most 40")
        String name,
    @Meaning("Where the file comes from.") Provenance provenance,
    @Meaning("Limits that hold here instead of the published ones.") List<LimitChange> limits,
    @Meaning("Severities that count here instead of the published ones.")
        List<SeverityChange> severities,
    @Meaning("What a bone bears here instead of what the published table says, each bone once.")
        List<LoadChange> loads,
    @Meaning("The implants that are kept here; without it the sizes that are usual.")
        Optional<ShelfList> shelf) {

  /** Where a site file comes from. */
  public enum Provenance {
    /** Made up for demonstration or teaching. */
    INVENTED,
    /** Agreed on at a hospital or in a department. */
    AGREED
  }
}
