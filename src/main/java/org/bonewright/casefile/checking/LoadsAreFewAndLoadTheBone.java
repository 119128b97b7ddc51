package org.bonewright.casefile.checking;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.bonewright.casefile.BoneLoad;

/** Loads of the bone are few, each of another activity, and each of them loads it. */
final class LoadsAreFewAndLoadTheBone implements Check {

  private static final At LOADS = At.FILE.field("loads");

  @Override
  public void look(Contents contents, Objections objections) {
    List<BoneLoad> loads = contents.file().loads();
    if (loads.size() > BoneLoad.MOST) {
      objections.refuse(
          LOADS, loads.size() + " loads", "at most " + BoneLoad.MOST + ", one of each activity");
    }
    Map<String, At> seen = new HashMap<>();
    Located.each(loads, LOADS).forEach(load -> look(load, seen, objections));
  }

  private static void look(Located<BoneLoad> load, Map<String, At> seen, Objections objections) {
    At before = seen.putIfAbsent(load.value().activity().strip(), load.at());
    if (before != null) {
      objections.refuse(
          load.at().field("activity"),
          "the activity \"" + load.value().activity().strip() + "\" once more",
          "one load of each activity",
          "The first stands at " + before.pointer() + ".");
    }
    if (load.value().isNothing()) {
      objections.refuse(
          load.at(),
          "a load of nothing but zeros",
          "a force, a bending moment or a torsion above zero");
    }
  }
}
