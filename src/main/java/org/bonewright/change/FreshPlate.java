package org.bonewright.change;

import java.util.List;
import java.util.OptionalDouble;
import java.util.SortedSet;
import java.util.TreeSet;
import org.bonewright.casefile.Plate;
import org.bonewright.measures.Words;
import org.bonewright.shelf.PlateSizes;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;

/**
 * A plate from the shelf, laid with its middle over the line. Four holes on each side hold a screw:
 * the outermost, the one next to the line, two between; all of them where there are fewer. Screws
 * cross both cortices. Where a screw finds an old track, the file's ledger tells; nothing is said
 * of it here.
 *
 * @param sizes the size, from the shelf
 * @param holes its number of holes
 * @param surface the surface as a file writes it: a word, or degrees
 * @param locking whether its screws lock
 */
record FreshPlate(PlateSizes sizes, int holes, JsonNode surface, boolean locking) {

  private static final JsonMapper JSON = JsonMapper.builder().build();
  private static final int SCREWS_A_SIDE = 4;

  /** Return its length in mm. */
  double lengthMm() {
    return holes * sizes.family().spacingMm();
  }

  /** Return the last hole before the line. */
  private int before() {
    return holes / 2;
  }

  /** Return the first hole beyond the line; with an odd number one hole lies over it, open. */
  private int beyond() {
    return holes - before() + 1;
  }

  /**
   * Return it as a file has it.
   *
   * @param id its name within the stage
   * @param middle level in mm of the line, where it is known
   */
  ObjectNode drawn(String id, OptionalDouble middle) {
    ObjectNode plate =
        JSON.createObjectNode()
            .put("id", id)
            .put("kind", "plate")
            .put("family", Words.written(sizes.family()))
            .put("material", Words.written(sizes.material()));
    plate.set("surface", surface);
    plate.put("holes", holes).put("lengthMm", lengthMm());
    ObjectNode place = plate.putObject("place");
    place.putArray("zoneBetweenHoles").add(before()).add(beyond());
    middle.ifPresent(
        level -> place.put("firstHoleMm", level - (holes - 1) * sizes.family().spacingMm() / 2));
    ObjectNode row = plate.putArray("screws").addObject();
    ArrayNode at = row.putArray("at");
    side(before()).forEach(at::add);
    side(before()).stream().map(hole -> holes + 1 - hole).sorted().forEach(at::add);
    row.put("type", locking ? "locking" : "cortical")
        .put("diameterMm", screwMm(sizes.family(), locking))
        .put("cortices", 2);
    plate.putArray("plugged");
    return plate;
  }

  /** Return the holes with a screw on the near side: of {@code last} holes, spread evenly. */
  private static List<Integer> side(int last) {
    SortedSet<Integer> holes = new TreeSet<>();
    for (int i = 0; i < SCREWS_A_SIDE; i++) {
      holes.add(1 + (int) Math.round(i * (last - 1) / (SCREWS_A_SIDE - 1.0)));
    }
    return List.copyOf(holes);
  }

  /** Return the usual screw of a size in mm; from memory. */
  private static double screwMm(Plate.Family family, boolean locking) {
    return switch (family) {
      case LARGE_FRAGMENT_BROAD, LARGE_FRAGMENT_NARROW, SEMI_TUBULAR -> 4.5;
      case LARGE_FRAGMENT_BROAD_LOCKING, LARGE_FRAGMENT_NARROW_LOCKING -> locking ? 5 : 4.5;
      case SHAFT_STRENGTH_2_7 -> 2.7;
      default -> 3.5;
    };
  }

  /** Return it in words. */
  String inWords() {
    return holes
        + "-hole "
        + Words.of(sizes.family())
        + " plate ("
        + FileWords.number(lengthMm())
        + " mm) on the "
        + Plates.surface(surface)
        + " surface";
  }
}
