package org.bonewright.measures.care;

import java.util.List;
import org.bonewright.casefile.Plan;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Measure;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many entries a list of the plan has. */
final class PlanList implements Measure {

  /** Which list. */
  enum What {
    TRIGGERS("triggers-named", "Triggers for acting again", "plans/triggers"),
    ALTERNATIVES("alternatives-named", "Alternatives considered", "plans/alternatives");

    private final String id;
    private final String title;
    private final String input;

    What(String id, String title, String input) {
      this.id = id;
      this.title = title;
      this.input = input;
    }

    private List<String> of(Plan plan) {
      return switch (this) {
        case TRIGGERS -> plan.triggers();
        case ALTERNATIVES -> plan.alternatives();
      };
    }
  }

  private final What what;

  PlanList(What what) {
    this.what = what;
  }

  @Override
  public Definition definition() {
    return new Definition(
        what.id,
        what.title,
        Definition.count(1),
        "entries of the list in the plan; what they say is for people, not for rules",
        List.of(what.input),
        "bookkeeping");
  }

  @Override
  public Reading take(Scene scene) {
    return scene
        .subject()
        .plan()
        .<Reading>map(plan -> Reading.number(what.of(plan).size(), "as listed"))
        .orElseGet(() -> new Reading.None("not a plan"));
  }
}
