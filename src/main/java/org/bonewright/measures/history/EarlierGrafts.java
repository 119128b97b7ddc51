package org.bonewright.measures.history;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.bonewright.measures.Definition;
import org.bonewright.measures.Kind;
import org.bonewright.measures.Measure;
import org.bonewright.measures.MissingFact;
import org.bonewright.measures.Reading;
import org.bonewright.measures.Scene;

/** How many operations before put in graft: all of them, or those that left the mechanics as is. */
final class EarlierGrafts implements Measure {

  /** Which of them count. */
  enum Which {
    ALL,
    ON_UNCHANGED_MECHANICS
  }

  private final Which which;

  EarlierGrafts(Which which) {
    this.which = which;
  }

  @Override
  public Definition definition() {
    return switch (which) {
      case ALL ->
          new Definition(
              "grafts-before",
              "Grafts before",
              Definition.count(1),
              "operations before that put in graft, and were meant to unite the bone; one that does"
                  + " not tell may have",
              List.of("graft-makeup"),
              "bookkeeping");
      case ON_UNCHANGED_MECHANICS ->
          new Definition(
              "grafts-without-mechanics-before",
              "Earlier grafts on unchanged mechanics",
              Definition.count(1),
              "earlier operations after the first that put in graft and changed none of concept,"
                  + " hold, length, gap and nail",
              List.of("operations/biology", "mechanics-changed", "graft-makeup"),
              "what counts as a change is our convention");
    };
  }

  @Override
  public Reading take(Scene scene) {
    List<String> certain = new ArrayList<>();
    List<MissingFact> open = new ArrayList<>();
    Optional<Scene> earlier = scene.failedBefore();
    while (earlier.isPresent()) {
      Scene then = earlier.get();
      String id = then.operation().id();
      if (!then.possibly("graft-makeup", "nothing") && counts(then)) {
        certain.add(id);
      } else if (!then.certainly("graft-makeup", "nothing") && mayCount(then)) {
        open.add(scene.missingInCase(id + "/biology", question(id)));
      }
      earlier = then.failedBefore();
    }
    return new Reading.Amount(
        certain.size(),
        certain.size() + open.size(),
        Kind.FACT,
        certain.isEmpty() ? "none" : String.join(", ", certain),
        open);
  }

  private boolean counts(Scene then) {
    return which == Which.ALL || then.certainly("mechanics-changed", "no");
  }

  private boolean mayCount(Scene then) {
    return which == Which.ALL || then.possibly("mechanics-changed", "no");
  }

  private String question(String id) {
    return switch (which) {
      case ALL -> "Did " + id + " add graft?";
      case ON_UNCHANGED_MECHANICS ->
          "Did " + id + " add graft, and change nothing of the fixation?";
    };
  }
}
