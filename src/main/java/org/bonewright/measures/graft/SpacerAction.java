package org.bonewright.measures.graft;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Construct;
import org.bonewright.bone.Dimension;
import org.bonewright.casefile.Operation;
import org.bonewright.casefile.Quantity;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** What becomes of a cement spacer: whether one is used, how it is held, when graft follows. */
final class SpacerAction implements Measure {

  /** What is asked of the spacer. */
  enum Question {
    /** Whether there is one. */
    USED,
    /** Whether a plate, nail or fixator holds the bone while it is in. */
    HELD,
    /** Whether graft follows. */
    GRAFTED,
    /** Days until graft follows. */
    DAYS
  }

  private final Question question;

  SpacerAction(Question question) {
    this.question = question;
  }

  @Override
  public Definition definition() {
    return switch (question) {
      case USED ->
          new Definition(
              "spacer-used",
              "Cement spacer",
              Definition.yesOrNo(),
              "yes when one goes in, in any stage or in a done stage right before; where a step does"
                  + " not tell its graft, no, unless the injury or the nonunion is a defect, or a"
                  + " spacer or membrane is named up to here",
              List.of(
                  "operations/biology/kind",
                  "operations/outcome/result",
                  "injury/pattern",
                  "findings/vitality"),
              "bookkeeping; that a history would name a spacer is our convention");
      case HELD ->
          new Definition(
              "spacer-held",
              "Bone held while the spacer is in",
              Definition.yesOrNo(),
              "yes when a plate, nail or fixator holds the bone after the stage that puts the"
                  + " spacer in",
              List.of("operations/fixation", "operations/removed"),
              "bookkeeping");
      case GRAFTED ->
          new Definition(
              "spacer-grafted",
              "Graft after the spacer",
              Definition.yesOrNo(),
              "yes when a later stage brings graft; no when a plan names none; an operation that puts"
                  + " the spacer in is not asked, the one that grafts is",
              List.of("operations/biology/kind"),
              "bookkeeping");
      case DAYS ->
          new Definition(
              "spacer-days",
              "Days from spacer to graft",
              new Definition.Domain.Numbers("d", "days", 0, Double.POSITIVE_INFINITY, 0),
              "from the stage that puts the spacer in to the one that grafts: by their days, in a"
                  + " plan by the intervals between the stages",
              List.of("operations/day", "plans/stages/daysAfterStageBefore"),
              "the case file");
    };
  }

  @Override
  public Reading take(Scene scene) {
    List<Operation> course = Spacers.course(scene);
    Optional<Integer> place = Spacers.lastIn(course);
    if (place.isEmpty()) {
      boolean told = course.stream().allMatch(step -> step.biology().isPresent());
      if (!told && Spacers.lieNear(scene)) {
        return Reading.unknown(Biology.asked(scene));
      }
      String none = told ? "no spacer" : "no spacer mentioned";
      return question == Question.USED ? Reading.word("no", none) : new Reading.None(none);
    }
    Optional<Integer> graft = Spacers.graftAfter(course, place.get());
    return switch (question) {
      case USED -> Reading.word("yes", course.get(place.get()).id());
      case HELD -> held(scene, course.get(place.get()));
      case GRAFTED -> grafted(scene, course, graft);
      case DAYS -> days(scene, course, place.get(), graft);
    };
  }

  private static Reading held(Scene scene, Operation spacer) {
    List<Operation> all = scene.subject().upToHere();
    Construct then = Construct.after(all.subList(0, all.indexOf(spacer) + 1));
    if (then.implants().stream().anyMatch(h -> h.implant().isMain())) {
      return Reading.word("yes", "held after " + spacer.id());
    }
    return then.known()
        ? Reading.word("no", "neither plate nor nail nor fixator after " + spacer.id())
        : Reading.words(
            Set.of("yes", "no"),
            Kind.FACT,
            "the implants are not stated",
            scene.missing("fixation", "What holds the bone while the spacer is in?"));
  }

  private static Reading grafted(Scene scene, List<Operation> course, Optional<Integer> graft) {
    if (graft.isPresent()) {
      return Reading.word("yes", course.get(graft.get()).id());
    }
    return scene.subject().planned()
        ? Reading.word("no", "no later stage brings graft")
        : new Reading.None("judged where graft follows");
  }

  private static Reading days(
      Scene scene, List<Operation> course, int place, Optional<Integer> graft) {
    MissingFact asked =
        scene.missing(
            "daysAfterStageBefore", "How many days after the spacer does the graft follow?");
    if (graft.isEmpty()) {
      return new Reading.None("no graft follows here");
    }
    Optional<Dimension> sum = Optional.of(new Dimension(0, 0, false, ""));
    for (int i = place + 1; i <= graft.get(); i++) {
      Optional<Dimension> step = between(course.get(i - 1), course.get(i));
      sum = sum.flatMap(s -> step.map(d -> s.plus(d).because("")));
    }
    return sum.map(d -> Reading.number(d, "from stage to stage", asked))
        .orElseGet(() -> Reading.unknown(asked));
  }

  private static Optional<Dimension> between(Operation earlier, Operation later) {
    Optional<Quantity> interval = later.daysAfterStageBefore();
    if (interval.isPresent()) {
      return interval.map(q -> Dimension.stated(q, ""));
    }
    return earlier
        .day()
        .flatMap(
            from ->
                later
                    .day()
                    .map(
                        to ->
                            new Dimension(
                                Math.max(0, to.min() - from.max()),
                                Math.max(0, to.max() - from.min()),
                                false,
                                "")));
  }
}
