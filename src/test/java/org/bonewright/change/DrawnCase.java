package org.bonewright.change;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.function.Consumer;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** A case file whose plan is drawn worse than it was. */
record DrawnCase(ObjectNode root) {

  private static ObjectNode read(String file) {
    try {
      return (ObjectNode) JsonMapper.shared().readTree(Files.readAllBytes(Path.of(file)));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Return a base case. */
  static DrawnCase base(String name) {
    return new DrawnCase(read("cases/bases/" + name + ".json"));
  }

  /** Return a demo case. */
  static DrawnCase demo(String name) {
    return new DrawnCase(read("cases/demo/" + name + "/case.json"));
  }

  /** Return it with its first plan changed. */
  DrawnCase plan(Consumer<ObjectNode> change) {
    ObjectNode copy = root.deepCopy();
    change.accept((ObjectNode) copy.at("/plans/0"));
    return new DrawnCase(copy);
  }

  /** Return it with the first stage of its first plan changed. */
  DrawnCase stage(Consumer<ObjectNode> change) {
    return plan(plan -> change.accept((ObjectNode) plan.at("/stages/0")));
  }

  /** Return it with the first implant of that stage changed. */
  DrawnCase implant(Consumer<ObjectNode> change) {
    return stage(stage -> change.accept((ObjectNode) stage.at("/fixation/0")));
  }

  /** Return that stage. */
  ObjectNode stage() {
    return (ObjectNode) root.at("/plans/0/stages/0");
  }

  byte[] bytes() {
    return root.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** A nail too thin, and two samples where five are asked for: two steps. */
  static DrawnCase thinNailFewSamples() {
    return base("femur-nail-nonunion-plan")
        .stage(stage -> stage.putObject("samples").put("deepSamples", 2))
        .implant(nail -> nail.put("outerMm", 9).put("reamedMm", 10.5));
  }

  /** A bent bone, a plate that is not bent beforehand, two samples: three steps, a way each. */
  static DrawnCase threeSlips() {
    return base("femur-plate-revision-plan")
        .stage(
            stage -> {
              stage.putObject("samples").put("deepSamples", 2);
              stage.withObjectProperty("reduction").put("coronalDeg", 12);
              stage.withObjectProperty("compression").put("prebent", "no");
            });
  }

  /** A plate too weak and too short, with a screw too few on each side: one step. */
  static DrawnCase weakShortPlate() {
    return base("femur-plate-revision-plan")
        .implant(
            plate -> {
              plate.put("family", "large-fragment-narrow").put("holes", 8).put("lengthMm", 128);
              ObjectNode place = plate.putObject("place").put("firstHoleMm", 154);
              place.putArray("zoneBetweenHoles").add(4).add(5);
              ArrayNode at = ((ObjectNode) plate.at("/screws/0")).putArray("at");
              at.add(1).add(3).add(4).add(5).add(6).add(8);
            });
  }
}
