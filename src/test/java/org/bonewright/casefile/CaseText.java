package org.bonewright.casefile;

import static java.nio.charset.StandardCharsets.UTF_8;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.reading.CaseReader;
import org.bonewright.casefile.reading.Reading;
import tools.jackson.core.json.JsonReadFeature;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ObjectNode;

/**
 * A small case file for a test, changed by merge patches (RFC 7396): what a patch names replaces
 * what is there, {@code null} takes it out. Names may stand bare and texts in single quotes.
 */
public final class CaseText {

  private static final JsonMapper MAPPER =
      JsonMapper.builder()
          .enable(JsonReadFeature.ALLOW_UNQUOTED_PROPERTY_NAMES)
          .enable(JsonReadFeature.ALLOW_SINGLE_QUOTES)
          .build();
  private static final CaseReader READER = new CaseReader();

  /** Transverse tibia, compressed by a plate of ten holes with six cortices each side. */
  private static final CaseText PLATED =
      of(
          """
          { schema: 'bonewright/case/1', reference: 'test', provenance: 'invented',
            patient: {ageYears: 40, sex: 'male'},
            bone: {name: 'tibia', side: 'left', lengthMm: 360,
              sections: [{atMm: 180, outerMm: 24, canalMm: 10}],
              quality: [{method: 'cortical-thickness', value: 5}]},
            injury: {pattern: 'transverse', zone: {fromMm: 179, toMm: 181},
              openGrade: 'none', energy: 'high'},
            operations: [{ id: 'op-1', day: 2, concept: 'absolute',
              reduction: {gapNearMm: 0, gapFarMm: 1, contactPercent: 80, farDefectPercent: 0,
                translationMm: 1, coronalDeg: 5, sagittalDeg: -3},
              compression: {method: 'eccentric-screws'},
              fixation: [{ id: 'plate-1', kind: 'plate', family: 'large-fragment-narrow',
                surface: 'medial', holes: 10, lengthMm: 160, place: {zoneBetweenHoles: [5, 6]},
                screws: [{at: [1, 3, 5, 6, 8, 10], type: 'cortical', cortices: 2}]}],
              biology: [], aftercare: {load: [{untilDay: 42, limitKg: 30}]} }] }
          """);

  /** The same bone on a locked nail. */
  private static final String NAIL =
      """
      { concept: 'relative', compression: null,
        fixation: [{ id: 'nail-1', kind: 'nail', outerMm: 10, reamedMm: 11, locking: 'static',
          bolts: [{end: 'near', atMm: 40, diameterMm: 5}, {end: 'near', atMm: 60, diameterMm: 5},
            {end: 'far', atMm: 310, diameterMm: 5}, {end: 'far', atMm: 330, diameterMm: 5}]}] }
      """;

  private final ObjectNode root;

  private CaseText(ObjectNode root) {
    this.root = root;
  }

  /** Return a case of its own. */
  public static CaseText of(String json) {
    return new CaseText((ObjectNode) MAPPER.readTree(json));
  }

  /** Return a case with one operation and nothing that may be left out. */
  public static CaseText bare() {
    return of(
        """
        { schema: 'bonewright/case/1', reference: 'test', provenance: 'invented', patient: {},
          bone: {name: 'tibia', side: 'left'}, injury: {}, operations: [{id: 'op-1'}] }
        """);
  }

  /** Return a plated tibia: one operation, {@code op-1}, with everything stated. */
  public static CaseText plated() {
    return PLATED;
  }

  /** Return a nailed tibia: one operation, {@code op-1}, with everything stated. */
  public static CaseText nailed() {
    return PLATED.at("/operations/0", NAIL);
  }

  /** Return this case with its one operation failed, and a plan that does the same once more. */
  public CaseText redone(String mode) {
    ObjectNode stage = root.withArray("/operations").get(0).deepCopy().asObject();
    stage.put("id", "stage-1").remove("day");
    ObjectNode changed = root.deepCopy();
    changed.putArray("plans").addObject().put("id", "plan-a").putArray("stages").add(stage);
    return new CaseText(changed)
        .at("/operations/0", "{outcome: {result: 'failed', day: 200, mode: '" + mode + "'}}");
  }

  /** Return this case with a patch applied to all of it. */
  public CaseText with(String patch) {
    return at("", patch);
  }

  /** Return this case with a patch applied to the group at a JSON pointer. */
  public CaseText at(String pointer, String patch) {
    ObjectNode changed = root.deepCopy();
    merge(changed.at(pointer).asObject(), MAPPER.readTree(patch).asObject());
    return new CaseText(changed);
  }

  private static void merge(ObjectNode target, ObjectNode patch) {
    patch.forEachEntry(
        (name, value) -> {
          if (value.isNull()) {
            target.remove(name);
          } else if (value.isObject() && target.path(name).isObject()) {
            merge(target.get(name).asObject(), value.asObject());
          } else {
            target.set(name, value);
          }
        });
  }

  /** Return the case with what stands at a JSON pointer taken out, a list element included. */
  public CaseText without(String pointer) {
    ObjectNode changed = root.deepCopy();
    int last = pointer.lastIndexOf('/');
    JsonNode parent = changed.at(pointer.substring(0, last));
    String name = pointer.substring(last + 1);
    if (parent.isArray()) {
      parent.asArray().remove(Integer.parseInt(name));
    } else {
      parent.asObject().remove(name);
    }
    return new CaseText(changed);
  }

  /** Return the text as a tree, for a test that changes it at random. */
  public ObjectNode tree() {
    return root.deepCopy();
  }

  /** Return where every named field of every group stands, the outermost first. */
  public List<String> pointers() {
    List<String> pointers = new ArrayList<>();
    collect(root, "", pointers);
    return pointers;
  }

  private static void collect(JsonNode node, String at, List<String> pointers) {
    if (node.isObject()) {
      node.forEachEntry(
          (name, value) -> {
            pointers.add(at + "/" + name);
            collect(value, at + "/" + name, pointers);
          });
    }
    for (int i = 0; node.isArray() && i < node.size(); i++) {
      collect(node.get(i), at + "/" + i, pointers);
    }
  }

  /** Return what reading the text gives. */
  public Reading read() {
    return READER.read(root.toString().getBytes(UTF_8));
  }

  /**
   * Return the case.
   *
   * @throws IllegalStateException if the text is no case
   */
  public CaseFile file() {
    Reading reading = read();
    return reading
        .caseFile()
        .orElseThrow(() -> new IllegalStateException(reading.problems().toString()));
  }

  /** Return the first operation. */
  public Operation operation() {
    return file().operations().get(0);
  }

  /** Return the first implant of the first operation, which must be a plate. */
  public Plate plate() {
    return (Plate) operation().fixation().orElseThrow().get(0);
  }

  @Override
  public String toString() {
    return root.toString();
  }
}
