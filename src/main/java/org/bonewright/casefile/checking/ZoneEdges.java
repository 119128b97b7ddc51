package org.bonewright.casefile.checking;

import java.util.DoubleSummaryStatistics;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.DoubleStream;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;
import org.bonewright.casefile.checking.Procedure.Scene;

/**
 * Where the zone that an operation met begins and ends, in mm.
 *
 * @param beginsAtLeast the lowest level at which it may begin
 * @param beginsAtMost the highest level at which it may begin
 * @param endsAtLeast the lowest level at which it may end
 * @param endsAtMost the highest level at which it may end
 */
record ZoneEdges(double beginsAtLeast, double beginsAtMost, double endsAtLeast, double endsAtMost) {

  /**
   * Return the edges; absent unless the zone of the injury, and each zone found later, has both its
   * levels, because any of them may be the one that was met.
   */
  static Optional<ZoneEdges> of(CaseFile file, Scene scene) {
    boolean companion = scene == Scene.COMPANION;
    List<Zone> zones =
        (companion ? Zones.ofCompanion(file) : Zones.ofBone(file)).map(Located::value).toList();
    boolean gaps = zones.stream().anyMatch(z -> z.fromMm().isEmpty() || z.toMm().isEmpty());
    if (zones.isEmpty() || gaps || !(companion || file.injury().zone().isPresent())) {
      return Optional.empty();
    }
    DoubleSummaryStatistics begins = bounds(zones, Zone::fromMm);
    DoubleSummaryStatistics ends = bounds(zones, Zone::toMm);
    return Optional.of(
        new ZoneEdges(begins.getMin(), begins.getMax(), ends.getMin(), ends.getMax()));
  }

  private static DoubleSummaryStatistics bounds(
      List<Zone> zones, Function<Zone, Optional<Quantity>> edge) {
    return zones.stream()
        .flatMap(zone -> edge.apply(zone).stream())
        .flatMapToDouble(level -> DoubleStream.of(level.min(), level.max()))
        .summaryStatistics();
  }

  /** Return the zone in words. */
  String inWords() {
    return "zone of " + Wording.number(beginsAtLeast) + " to " + Wording.mm(endsAtMost);
  }
}
