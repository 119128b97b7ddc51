package org.bonewright.measures.nailchange;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Bolt;
import org.bonewright.casefile.Film;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;
import org.bonewright.measures.nailchange.Checklist.Kept;

/** How many of the usual conditions for taking bolts out of a nail are not kept. */
final class DynamisationConditions implements Measure {

  private static final int CONDITIONS = 5;
  private static final double HALF = 50;
  private static final double FIRST_WEEK = 10;
  private static final double LAST_WEEK = 24;

  @Override
  public Definition definition() {
    return new Definition(
        "dynamisation-conditions-missed",
        "Conditions for dynamisation not kept",
        new Definition.Domain.Numbers("1", "", 0, CONDITIONS, 1),
        "count of: at least half of the circumference in contact; callus on the last films; a line"
            + " that cannot shorten or spin, or callus that bridges it; 10 to 24 weeks after nailing;"
            + " only bolts in the longer fragment come out. None where no bolt is taken out of a nail"
            + " that stays",
        List.of(
            "contact-percent",
            "findings/films/callus",
            "axially-unstable",
            WeeksSinceNailing.ID,
            "operations/removed/bolts",
            "bone/lengthMm"),
        "Vicenti et al., Int Orthop 2019, and Rupp et al. 2018, for callus and time; contact and side"
            + " from memory");
  }

  @Override
  public Reading take(Scene scene) {
    Optional<Reading> none = Dynamisation.noneHere(scene);
    if (none.isPresent()) {
      return none.get();
    }
    Checklist list = new Checklist();
    Reading contact = scene.read("contact-percent");
    list.add(
        Checklist.atLeast(contact, HALF),
        "only " + contact.shown() + " % in contact",
        contact.missing());
    Optional<Film.Callus> callus = Dynamisation.callus(scene);
    List<MissingFact> noFilm = List.of(Dynamisation.callusMissing(scene));
    list.add(
        callus.map(c -> Kept.of(c != Film.Callus.NONE)).orElse(Kept.OPEN), "no callus", noFilm);
    Kept bridged = Dynamisation.held(scene).map(Kept::of).orElse(Kept.OPEN);
    Reading unstable = scene.read("axially-unstable");
    list.add(
        Checklist.oneOf(scene, "axially-unstable", Set.of("no")).or(bridged),
        "the line can shorten or spin",
        unstable.missing().isEmpty() ? noFilm : unstable.missing());
    Reading weeks = scene.read(WeeksSinceNailing.ID);
    list.add(window(weeks), "after " + weeks.shown() + " weeks", weeks.missing());
    side(scene, Dynamisation.of(scene).orElseThrow(), list);
    return list.reading();
  }

  private static Kept window(Reading weeks) {
    Kept early = Checklist.below(weeks, FIRST_WEEK);
    Kept late = Checklist.below(weeks, Math.nextUp(LAST_WEEK));
    return early == Kept.NO ? late : early == Kept.YES ? Kept.NO : Kept.OPEN;
  }

  /** The longer fragment can spare its bolts; the shorter one needs them. */
  private static void side(Scene scene, Dynamisation here, Checklist list) {
    Optional<Bolt.End> longer = longer(scene);
    List<Bolt> taken = here.taken();
    boolean told = longer.isPresent() && !taken.isEmpty();
    list.add(
        told
            ? Kept.of(taken.stream().allMatch(bolt -> bolt.end() == longer.orElseThrow()))
            : Kept.OPEN,
        "bolts of the shorter fragment come out",
        List.of(
            scene.missingInCase(
                longer.isEmpty() ? "injury/zone" : here.nailing().id() + "/fixation/bolts",
                "Do the bolts that come out hold the longer fragment?")));
  }

  private static Optional<Bolt.End> longer(Scene scene) {
    Optional<Dimension> centre = scene.zone().centre();
    Dimension half = scene.bone().length();
    if (centre.isPresent() && centre.get().min() > half.max() / 2) {
      return Optional.of(Bolt.End.NEAR);
    }
    return centre.filter(c -> c.max() <= half.min() / 2).map(c -> Bolt.End.FAR);
  }
}
