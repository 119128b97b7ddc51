package org.bonewright.casefile.checking;

import java.util.Optional;
import java.util.stream.Stream;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Quantity;
import org.bonewright.casefile.Zone;
import org.bonewright.casefile.checking.Procedure.Scene;
import org.bonewright.casefile.reading.Problem.Severity;

/**
 * Every level is one that the bone has: sections, zones, cuts, and each piece of metal. Pins of a
 * frame across a joint, and bolts of a nail across one, may sit in the next bone.
 */
final class LevelsLieOnTheBone implements Check {

  @Override
  public void look(Contents contents, Objections objections) {
    CaseFile file = contents.file();
    BoneReach bone = BoneReach.of(file, Scene.BONE);
    Stream.concat(ofBone(file.bone()), Zones.ofBone(file).flatMap(LevelsLieOnTheBone::ofZone))
        .forEach(level -> look(level, bone, objections));
    BoneReach companion = BoneReach.of(file, Scene.COMPANION);
    Zones.ofCompanion(file)
        .flatMap(LevelsLieOnTheBone::ofZone)
        .forEach(level -> look(level, companion, objections));
    for (Procedure procedure : contents.procedures()) {
      BoneReach reach = procedure.sequence().scene() == Scene.COMPANION ? companion : bone;
      Levels.onTheBone(procedure).forEach(level -> look(level, reach, objections));
      Levels.perhapsBeyondAJoint(procedure)
          .forEach(level -> look(level, reach.withoutCertainty(), objections));
    }
  }

  private static Stream<Located<Quantity>> ofBone(Bone bone) {
    At at = At.FILE.field("bone");
    return Stream.concat(
        Located.each(bone.sections(), at.field("sections"))
            .map(section -> new Located<>(section.value().atMm(), section.at().field("atMm"))),
        Located.each(bone.otherImplants(), at.field("otherImplants"))
            .map(other -> new Located<>(other.value().fromMm(), other.at().field("fromMm"))));
  }

  private static Stream<Located<Quantity>> ofZone(Located<Zone> zone) {
    return Stream.concat(
        Located.maybe(zone.value().fromMm(), zone.at().field("fromMm")),
        Located.maybe(zone.value().toMm(), zone.at().field("toMm")));
  }

  private static void look(Located<Quantity> level, BoneReach reach, Objections objections) {
    Optional<Severity> beyond = reach.beyondFarEnd(level.value().min());
    Optional<Severity> before = reach.beforeNearEnd(level.value().max());
    String side = beyond.isPresent() ? "beyond the far end of " : "before the near end of ";
    beyond
        .or(() -> before)
        .ifPresent(
            severity ->
                objections.note(
                    severity,
                    level.at(),
                    "a level of " + Wording.mm(level.value()) + ", " + side + reach.inWords(),
                    reach.levels()));
  }
}
