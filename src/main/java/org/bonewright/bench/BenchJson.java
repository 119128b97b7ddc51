package org.bonewright.bench;

import java.util.List;
import java.util.OptionalDouble;
import org.bonewright.bench.BenchAnswer.AnsweredLoad;
import org.bonewright.bench.BenchAnswer.OfConstruct;
import org.bonewright.bench.BenchAnswer.OfQuestion;
import org.bonewright.mechanics.answer.ConstructHoldOut;
import org.bonewright.mechanics.answer.FixatorAnswer;
import org.bonewright.mechanics.answer.LagDemand;
import org.bonewright.mechanics.answer.LoadAnswer;
import org.bonewright.mechanics.answer.NailAnswer;
import org.bonewright.mechanics.answer.PlateCut;
import org.bonewright.mechanics.answer.ScrewDemand;
import org.bonewright.mechanics.answer.TubeCut;
import org.bonewright.mechanics.construct.Load;
import org.bonewright.mechanics.model.Outcome;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/** Shows an answer as JSON: N, mm, MPa and rad; stiffness in N/mm and N·m/deg. */
public final class BenchJson {

  private static final JsonMapper MAPPER = JsonMapper.shared();

  private BenchJson() {}

  /** Return the answer as a tree, to which a caller may add. */
  public static ObjectNode tree(BenchAnswer answer) {
    ObjectNode root = MAPPER.createObjectNode();
    if (answer instanceof OfConstruct construct) {
      ArrayNode loads = root.putArray("loads");
      construct.loads().forEach(load -> load(loads.addObject(), load));
      construct
          .stiffness()
          .ifPresent(
              s ->
                  root.putObject("stiffness")
                      .put("axial", s.axial())
                      .put("bendingWeakPlus", s.bendingWeakPlus())
                      .put("bendingWeakMinus", s.bendingWeakMinus())
                      .put("bendingStrong", s.bendingStrong())
                      .put("torsion", s.torsion()));
      construct.openingMoment().ifPresent(moment -> root.put("openingMoment", moment));
      construct.limits().forEach(root.putArray("limits")::add);
    } else if (answer instanceof OfQuestion question) {
      question.parts().forEach(part -> part(root, part));
    }
    return root;
  }

  private static void part(ObjectNode node, BenchAnswer.Part part) {
    if (part instanceof BenchAnswer.Figure one) {
      node.put(one.name(), one.value());
    } else if (part instanceof BenchAnswer.Flag flag) {
      node.put(flag.name(), flag.value());
    } else if (part instanceof BenchAnswer.Row row) {
      ArrayNode values = node.putArray(row.name());
      row.values().forEach(values::add);
    } else if (part instanceof BenchAnswer.Group group) {
      ObjectNode inner = node.putObject(group.name());
      group.parts().forEach(below -> part(inner, below));
    }
  }

  private static void load(ObjectNode node, AnsweredLoad answered) {
    Load load = answered.load();
    node.putObject("load")
        .put("N", load.axial())
        .put("Vx", load.shearX())
        .put("Vy", load.shearY())
        .put("Mx", load.bendingX())
        .put("My", load.bendingY())
        .put("T", load.torque());
    if (answered.outcome() instanceof Outcome.None none) {
      node.put("noAnswer", none.why());
    } else if (answered.outcome() instanceof Outcome.Answered found) {
      answer(node, found.answer());
      answered.holdOut().ifPresent(holdOut -> holdOut(node.putObject("holdOut"), holdOut));
    }
  }

  private static void holdOut(ObjectNode node, ConstructHoldOut holdOut) {
    put(node, "first", holdOut.loadShareAtFirst());
    put(node, "most", holdOut.holdOutShare());
    node.put("unzips", holdOut.unzips());
    ArrayNode screws = node.putArray("pulledOut");
    holdOut
        .screws()
        .forEach(
            screw ->
                screws
                    .addObject()
                    .put("plate", screw.plate())
                    .put("at", screw.at())
                    .put("load", screw.loadShare()));
  }

  private static void answer(ObjectNode node, LoadAnswer answer) {
    node.putObject("end")
        .put("dx", answer.end().dx())
        .put("dy", answer.end().dy())
        .put("dz", answer.end().dz())
        .put("rx", answer.end().rx())
        .put("ry", answer.end().ry())
        .put("rz", answer.end().rz());
    ObjectNode gap =
        node.putObject("gap")
            .put("near", answer.gap().near())
            .put("far", answer.gap().far())
            .put("min", answer.gap().min())
            .put("max", answer.gap().max())
            .put("shear", answer.gap().shear());
    put(gap, "nearStrain", answer.gap().nearStrain());
    put(gap, "farStrain", answer.gap().farStrain());
    answer
        .contact()
        .ifPresent(
            contact ->
                node.putObject("contact")
                    .put("force", contact.force())
                    .put("closedFraction", contact.closed())
                    .put("state", contact.state()));
    ArrayNode plates = node.putArray("plates");
    answer.plates().forEach(cuts -> plate(plates.addObject(), cuts));
    ArrayNode screws = node.putArray("screws");
    answer.screws().forEach(screw -> screw(screws.addObject(), screw));
    answer.nail().ifPresent(nail -> nail(node.putObject("nail"), nail));
    answer.fixator().ifPresent(fixator -> fixator(node.putObject("fixator"), fixator));
    lags(node, answer.lags());
    answer
        .strut()
        .ifPresent(
            cut ->
                node.putObject("strut")
                    .put("N", cut.axial())
                    .put("Mx", cut.bendingX())
                    .put("My", cut.bendingY())
                    .put("T", cut.torque()));
    answer.onlay().ifPresent(cut -> section(node.putObject("strut"), cut));
    ArrayNode events = node.putArray("events");
    answer
        .events()
        .forEach(
            event ->
                events
                    .addObject()
                    .put("load", event.load())
                    .put("at", event.at())
                    .put("event", event.what()));
    put(node, "slipLoadCautious", answer.slipCautious());
    if (answer.reached() < 1) {
      node.put("heldUpTo", answer.reached());
    }
  }

  private static void plate(ObjectNode node, List<PlateCut> cuts) {
    ArrayNode sections = node.putArray("sections");
    cuts.forEach(
        cut ->
            section(sections.addObject(), cut)
                .put("Vx", cut.away())
                .put("Vy", cut.across())
                .put("holeEdge", cut.edge())
                .put("equivalent", cut.equivalent()));
    PlateCut.peak(cuts)
        .ifPresent(
            peak ->
                node.putObject("peak")
                    .put("z", peak.z())
                    .put("nominal", peak.nominal())
                    .put("holeEdge", peak.edge())
                    .put("equivalent", peak.equivalent()));
  }

  private static void nail(ObjectNode node, NailAnswer nail) {
    sections(node, nail.cuts());
    ArrayNode bolts = node.putArray("bolts");
    nail.bolts()
        .forEach(
            bolt ->
                bolts
                    .addObject()
                    .put("at", bolt.at())
                    .put("shear", bolt.shear())
                    .put("moment", bolt.moment())
                    .put("bendingStress", bolt.bendingStress()));
  }

  private static void fixator(ObjectNode node, FixatorAnswer fixator) {
    ArrayNode bars = node.putArray("bars");
    fixator.bars().forEach(cuts -> sections(bars.addObject(), cuts));
    ArrayNode pins = node.putArray("pins");
    fixator
        .pins()
        .forEach(
            pin ->
                pins.addObject()
                    .put("at", pin.at())
                    .put("pull", pin.pull())
                    .put("shear", pin.shear())
                    .put("momentAtBone", pin.momentAtBone())
                    .put("momentAtClamp", pin.momentAtClamp())
                    .put("bendingStress", pin.bendingStress()));
  }

  private static ObjectNode section(ObjectNode node, PlateCut cut) {
    return node.put("z", cut.z())
        .put("N", cut.axial())
        .put("Mweak", cut.weak())
        .put("Mstrong", cut.strong())
        .put("T", cut.torque())
        .put("nominal", cut.nominal());
  }

  private static void lags(ObjectNode node, List<LagDemand> lags) {
    if (lags.isEmpty()) {
      return;
    }
    ArrayNode screws = node.putArray("lagScrews");
    for (LagDemand lag : lags) {
      ObjectNode screw =
          screws
              .addObject()
              .put("at", lag.at())
              .put("tension", lag.tension())
              .put("shear", lag.shear())
              .put("moment", lag.moment())
              .put("bendingStress", lag.bendingStress());
      put(screw, "capacity", lag.capacity());
      put(screw, "margin", lag.margin());
      screw.put("state", lag.loose() ? "loose" : "tight");
    }
  }

  private static void sections(ObjectNode node, List<TubeCut> cuts) {
    ArrayNode sections = node.putArray("sections");
    cuts.forEach(
        cut ->
            sections
                .addObject()
                .put("z", cut.z())
                .put("N", cut.axial())
                .put("Mx", cut.bendingX())
                .put("My", cut.bendingY())
                .put("T", cut.torque()));
  }

  private static void screw(ObjectNode node, ScrewDemand screw) {
    node.put("plate", screw.plate())
        .put("at", screw.at())
        .put("pullOff", screw.pullOff())
        .put("shear", screw.shear())
        .put("moment", screw.moment())
        .put("bendingStress", screw.bendingStress());
    put(node, "capacity", screw.capacity());
    put(node, "margin", screw.margin());
    node.put("bearing", screw.bearing());
    put(node, "crushed", screw.crushed());
    node.put("state", screw.state());
  }

  private static void put(ObjectNode node, String name, OptionalDouble value) {
    value.ifPresent(known -> node.put(name, known));
  }
}
