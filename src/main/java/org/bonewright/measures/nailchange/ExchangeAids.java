package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Compression;
import org.bonewright.casefile.Nail;
import org.bonewright.casefile.Operation;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.nail.Nails;
import org.bonewright.measures.nailchange.Checklist.Kept;

/** How many of the steps that have made an exchange nail work in the humerus are left out. */
final class ExchangeAids implements Measure {

  private static final int STEPS = 5;

  @Override
  public Definition definition() {
    return new Definition(
        "exchange-aids-missed",
        "Steps beside the exchange nail left out",
        new Definition.Domain.Numbers("1", "", 0, STEPS, 1),
        "count of: line opened; pressed through the nail; locked statically; two bolts or more at"
            + " each end, in more than one plane; graft. None without an exchange",
        List.of(
            "operations/approach",
            "operations/compression/method",
            "nail-locking",
            "bolts-fewer-end",
            "operations/fixation/bolts/plane",
            "graft-makeup"),
        "Lin et al., J Trauma 2000; the list is our convention");
  }

  @Override
  public Reading take(Scene scene) {
    if (!scene.possibly(NailRevision.ID, NailRevision.EXCHANGED)) {
      return new Reading.None("no nail exchanged");
    }
    Checklist list = new Checklist();
    Optional<Operation.Approach> approach = scene.operation().approach();
    list.add(
        approach.map(a -> Kept.of(a != Operation.Approach.CLOSED)).orElse(Kept.OPEN),
        "line not opened",
        List.of(scene.missing("approach", "Is the line opened, and by which approach?")));
    Optional<Compression.Method> method = scene.operation().compression().map(Compression::method);
    boolean silent = method.isEmpty() && !scene.subject().planned();
    list.add(
        silent ? Kept.OPEN : Kept.of(method.equals(Optional.of(Compression.Method.NAIL_BACKSLAP))),
        "not pressed through the nail",
        List.of(scene.missing("compression/method", "Is the line pressed through the nail?")));
    list.add(
        Checklist.oneOf(scene, "nail-locking", Set.of("static")),
        "not locked statically",
        scene.read("nail-locking").missing());
    bolts(scene, list);
    list.add(
        Checklist.oneOf(scene, "graft-makeup", Set.of("substitute", "mixed", "living")),
        "no graft",
        scene.read("graft-makeup").missing());
    return list.reading();
  }

  private static void bolts(Scene scene, Checklist list) {
    Reading fewer = scene.read("bolts-fewer-end");
    Optional<Nail> nail = Nails.nail(scene);
    MissingFact missing =
        scene.missing(
            "fixation/" + nail.map(Nail::id).orElse("nail") + "/bolts/plane",
            "How many bolts has the nail at each end, and in which planes?");
    Kept planes = nail.flatMap(Nail::bolts).map(ExchangeAids::inMoreThanOnePlane).orElse(Kept.OPEN);
    list.add(
        Checklist.atLeast(fewer, 2).and(planes),
        "fewer than two bolts at one end, or all in one plane",
        List.of(missing));
  }

  private static Kept inMoreThanOnePlane(List<Bolt> bolts) {
    long different = bolts.stream().flatMap(bolt -> bolt.plane().stream()).distinct().count();
    boolean untold = bolts.stream().anyMatch(bolt -> bolt.plane().isEmpty());
    return different > 1 ? Kept.YES : untold ? Kept.OPEN : Kept.NO;
  }
}
