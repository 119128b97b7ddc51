package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Companion;
import org.bonewright.casefile.Finding;
import org.bonewright.casefile.Zone;

/** The zones that a file names. */
final class Zones {

  private Zones() {}

  /** Return the zones of the broken bone, that of the injury first. */
  static Stream<Located<Zone>> ofBone(CaseFile file) {
    At injury = At.FILE.field("injury").field("zone");
    return Stream.concat(
        Located.maybe(file.injury().zone(), injury),
        Located.each(file.findings(), At.FILE.field("findings")).flatMap(Zones::ofFinding));
  }

  private static Stream<Located<Zone>> ofFinding(Located<Finding> finding) {
    return Located.maybe(finding.value().zone(), finding.at().field("zone"));
  }

  /** Return the zone of the bone beside. */
  static Stream<Located<Zone>> ofCompanion(CaseFile file) {
    Optional<Zone> zone = file.companion().flatMap(Companion::zone);
    return Located.maybe(zone, At.FILE.field("companion").field("zone"));
  }
}
