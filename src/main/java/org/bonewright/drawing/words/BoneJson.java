package org.bonewright.drawing.words;

import java.util.List;
import org.bonewright.bone.Dimension;
import org.bonewright.bone.ledger.Corridor;
import org.bonewright.bone.ledger.Cuts;
import org.bonewright.bone.ledger.OldTrack;
import org.bonewright.bone.ledger.Track;
import org.bonewright.casefile.CaseFile;
import org.bonewright.measures.Words;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * What is in a bone and where it is free, as JSON, format {@code bonewright/bone/1}. Absent values
 * are left out. Levels, lengths and diameters are mm, each as a range.
 */
public final class BoneJson {

  private static final JsonMapper JSON = JsonMapper.builder().build();

  private BoneJson() {}

  /** Return the text, indented, with a newline at its end. */
  public static String render(Standing standing, FreeBone free) {
    CaseFile file = standing.scene().subject().caseFile();
    ObjectNode root = JSON.createObjectNode();
    root.put("schema", "bonewright/bone/1");
    root.put("reference", file.reference());
    root.put("provenance", Words.written(file.provenance()));
    root.put("moment", standing.scene().subject().id());
    ObjectNode bone = root.putObject("bone");
    bone.put("name", Words.written(file.bone().name()));
    bone.put("side", Words.written(file.bone().side()));
    range(bone, "lengthMm", standing.scene().bone().length());
    root.put("levelsFrom", standing.levels().fromLandmark() ? "landmark" : "middle-of-zone");
    ObjectNode zone = root.putObject("zone");
    standing.zone().length().ifPresent(length -> range(zone, "lengthMm", length));
    if (standing.levels().fromLandmark()) {
      standing.zone().centre().ifPresent(centre -> range(zone, "centreMm", centre));
    }
    InWords words = new InWords(standing);
    texts(root, "inTheBone", words.metal());
    ArrayNode tracks = root.putArray("tracks");
    standing.tracks().forEach(drilled -> track(tracks.addObject(), standing, drilled.old()));
    ArrayNode cuts = root.putArray("boneCutOut");
    standing
        .scene()
        .ledger()
        .cuts()
        .before(standing.scene().ledger().rounds())
        .forEach(cut -> cut(cuts.addObject(), cut));
    texts(root, "levelNotKnown", words.unplaced());
    free(root.putObject("free"), standing, free);
    root.put("caution", BoneText.CAUTION);
    return JSON.writerWithDefaultPrettyPrinter()
            .writeValueAsString(root)
            .replace(System.lineSeparator(), "\n")
        + "\n";
  }

  private static void track(ObjectNode node, Standing standing, OldTrack old) {
    Track track = old.track();
    node.put("name", track.name());
    node.put("kind", Words.written(track.kind()));
    node.put("operation", old.operation());
    track.level().ifPresent(level -> range(node, "levelMm", level));
    if (standing.levels().fromLandmark()) {
      old.asInjured().ifPresent(level -> range(node, "asInjuredMm", level));
    }
    track
        .direction()
        .ifPresent(
            direction ->
                node.put("surface", standing.surfaces().name(direction))
                    .put("degrees", direction.degrees()));
    if (track.tilt() != 0) {
      node.put("tiltDeg", rounded(track.tilt()));
    }
    range(node, "diameterMm", track.diameter());
    node.put("crosses", Words.written(track.reach()));
    track.state().ifPresent(state -> node.put("state", Words.written(state)));
    node.put("metalInIt", old.filled());
  }

  private static void cut(ObjectNode node, Cuts.Cut cut) {
    range(node, "fromMm", cut.from());
    range(node, "toMm", cut.to());
    range(node, "closedByMm", cut.closed());
  }

  private static void free(ObjectNode node, Standing standing, FreeBone free) {
    node.put("family", free.familyName());
    node.put("why", free.chosenFor());
    node.put("screws", free.row().screws());
    node.put("spacingMm", free.row().spacing());
    node.put("diameterMm", free.row().diameter());
    free.unknown().ifPresent(why -> node.put("unknown", why));
    ArrayNode corridors = node.putArray("corridors");
    for (Corridor corridor : free.corridors()) {
      corridors
          .addObject()
          .put("surface", standing.surfaces().name(corridor.surface()))
          .put("degrees", corridor.surface().degrees())
          .put("fromMm", rounded(corridor.from()))
          .put("toMm", rounded(corridor.to()));
    }
  }

  private static void range(ObjectNode node, String name, Dimension value) {
    node.putObject(name).put("min", rounded(value.min())).put("max", rounded(value.max()));
  }

  private static double rounded(double value) {
    return Math.rint(value * 100) / 100 + 0.0;
  }

  private static void texts(ObjectNode node, String name, List<String> all) {
    ArrayNode array = node.putArray(name);
    all.forEach(array::add);
  }
}
