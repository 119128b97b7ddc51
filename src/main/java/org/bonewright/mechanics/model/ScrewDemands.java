package org.bonewright.mechanics.model;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.construct.PlateScrew;
import org.bonewright.mechanics.construct.Shaft;
import org.bonewright.mechanics.frame.Six;

/** Reads what each screw carries, its patch on the bone included. */
final class ScrewDemands {

  private ScrewDemands() {}

  static List<ScrewDemand> of(Answer answer) {
    List<ScrewColumn> columns = answer.joined().screws();
    Six[] patches = new Six[columns.size()];
    Change[] states = new Change[columns.size()];
    Arrays.fill(patches, Six.NONE);
    Arrays.fill(states, Change.STICK);
    List<Joined.Spot> spots = answer.joined().spots();
    for (int i = 0; i < spots.size(); i++) {
      if (answer.response().stands().get(i) instanceof PatchStand stand
          && spots.get(i).screw().isPresent()) {
        int screw = spots.get(i).screw().getAsInt();
        states[screw] = stand.state();
        patches[screw] = stand.kept().plus(answer.carried().get(i));
      }
    }
    List<ScrewDemand> demands = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      demands.add(demand(columns.get(i), answer, patches[i], states[i]));
    }
    return demands;
  }

  private static ScrewDemand demand(ScrewColumn column, Answer answer, Six patch, Change state) {
    PlateScrew screw = column.screw();
    Shaft shaft = answer.response().reduced().fixed().shaft();
    Six neck = Six.NONE;
    double length = 0;
    if (column.neck().isPresent()) {
      neck = answer.force(column.neck().getAsInt());
      length = column.free();
    }
    double atPlate =
        Math.hypot(
            neck.aboutAway() - length * neck.across(), neck.aboutAcross() + length * neck.away());
    double atBone = Math.hypot(neck.aboutAway(), neck.aboutAcross());
    double moment = Math.max(atPlate, atBone);
    double area = Math.PI * screw.core() * screw.core() / 4;
    return new ScrewDemand(
        screw.plate(),
        screw.at(),
        neck.along() + patch.along(),
        // The screw points inward and the patch outward: across counts the other way round.
        Math.hypot(patch.away() - neck.away(), patch.across() + neck.across()),
        moment,
        32 * moment / (Math.PI * screw.core() * screw.core() * screw.core())
            + Math.abs(neck.along()) / area,
        capacity(screw, shaft),
        state.word(),
        Math.hypot(neck.away(), neck.across()) / (screw.major() * shaft.section().wall()),
        shaft.compressiveStrength());
  }

  /** Return the pull in N that a thread bears; empty where the bone's strength is not given. */
  static OptionalDouble capacity(PlateScrew screw, Shaft shaft) {
    return HeldThread.capacity(
        screw.major(), screw.core(), screw.pitch(), shaft, screw.near() + screw.far());
  }
}
