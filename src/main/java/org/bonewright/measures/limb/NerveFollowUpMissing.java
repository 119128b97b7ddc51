package org.bonewright.measures.limb;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Aftercare;
import org.bonewright.casefile.NerveFollowUp;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many parts of the follow-up of a palsy have no date. */
final class NerveFollowUpMissing implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "nerve-follow-up-missing",
        "Parts of the follow-up of a palsy without a date",
        Definition.count(1),
        "of an electrical test, examinations and a week of exploration those without a week; of a"
            + " nerve that recovers only the examinations. Not in a plan: all",
        List.of("operations/aftercare/nerveFollowUp", "nerve-palsy"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    if (scene.certainly("nerve-palsy", "none")) {
      return new Reading.None("no palsy");
    }
    List<NerveFollowUp> told =
        scene.subject().steps().stream()
            .flatMap(step -> step.aftercare().flatMap(Aftercare::nerveFollowUp).stream())
            .toList();
    boolean examined =
        any(told, care -> care.examinedWeeks().map(weeks -> !weeks.isEmpty()).orElse(false));
    List<Boolean> parts = new ArrayList<>(List.of(examined));
    if (!scene.certainly("nerve-palsy", "recovering")) {
      parts.add(any(told, care -> care.electricalTestWeek().isPresent()));
      parts.add(any(told, care -> care.exploredByWeek().isPresent()));
    }
    int missing = (int) parts.stream().filter(part -> !part).count();
    int certain = scene.possibly("nerve-palsy", "recovering") ? (examined ? 0 : 1) : missing;
    return Reading.number(
        new Dimension(scene.subject().planned() ? certain : 0, missing, false, ""),
        "of " + parts.size() + " parts",
        scene.missing(
            "aftercare/nerveFollowUp",
            "In which weeks is the nerve examined, tested and, if nothing comes back,"
                + " explored?"));
  }

  private static boolean any(List<NerveFollowUp> told, Predicate<NerveFollowUp> part) {
    return told.stream().anyMatch(part);
  }
}
