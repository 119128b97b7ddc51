package org.bonewright.site;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.casefile.BoneLoad;
import org.bonewright.casefile.reading.Problem;
import org.bonewright.casefile.reading.ReadPart;
import org.bonewright.measures.load.UsualLoad;
import org.bonewright.measures.load.UsualLoads;
import org.bonewright.principles.LocalLoads;

/** Whether the loads that a site sets for a bone can take the place of the table's. */
final class LoadCheck {

  private final ReadPart part;
  private final LoadChange change;
  private final List<Problem> problems = new ArrayList<>();

  LoadCheck(ReadPart part, LoadChange change) {
    this.part = part;
    this.change = change;
  }

  /** Return every problem found by {@link #loads}. */
  List<Problem> problems() {
    return problems;
  }

  /** Return the local loads, if nothing speaks against them. */
  Optional<LocalLoads> loads() {
    problems.addAll(GroundsCheck.problems(part, change));
    int number = change.loads().size();
    if (number == 0 || number > BoneLoad.MOST) {
      refuse(
          number == 0 ? "no load" : number + " loads",
          "one load at least, at most " + BoneLoad.MOST + ", one of each activity");
    }
    Set<String> seen = new HashSet<>();
    for (BoneLoad load : change.loads()) {
      String activity = load.activity().strip();
      if (!seen.add(activity)) {
        refuse("the activity \"" + activity + "\" twice", "one load of each activity");
      }
      if (load.isNothing()) {
        refuse(
            "a load of nothing but zeros, \"" + activity + "\"",
            "a force, a bending moment or a torsion above zero");
      }
    }
    boolean leg = UsualLoads.isOfTheLeg(change.bone());
    return problems.isEmpty()
        ? Optional.of(
            new LocalLoads(
                change.bone(),
                change.loads().stream().map(load -> UsualLoad.ofSite(load, leg)).toList(),
                change.grounds()))
        : Optional.empty();
  }

  private void refuse(String found, String allowed) {
    problems.add(part.error("loads", found, allowed));
  }
}
