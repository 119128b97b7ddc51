package org.bonewright.measures.host;

import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** Whether a plan was discussed by a team. */
final class TeamReview implements Measure {

  @Override
  public Definition definition() {
    return new Definition(
        "team-review",
        "Plan discussed by a team",
        Definition.yesOrNo(),
        "yes when the plan says where and when it was discussed, else no; none in the past",
        List.of("plans/discussion"),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .plan()
        .map(Plan::discussion)
        .<Reading>map(
            where ->
                where.isPresent()
                    ? Reading.word("yes", "a discussion is on file")
                    : Reading.word("no", "no discussion on file"))
        .orElseGet(() -> new Reading.None("not a plan"));
  }
}
