package org.bonewright.bone.ledger;

import java.util.List;
import org.bonewright.casefile.CaseText;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Taken;

/** Histories of a tibia of 24 mm for tests; the zone of 179 to 181 mm. */
final class Histories {

  private Histories() {}

  static final String SCREWS = "screws: [{at: [1, 2], type: 'cortical', cortices: 2}]";

  /** Holes 1 and 2 at 100 and 116 mm. */
  static final String PLATE = plate("plate-1", "{firstHoleMm: 100}");

  static final String NAIL =
      "{id: 'nail-1', kind: 'nail', bolts: [{end: 'near', atMm: 40}, {end: 'far', atMm: 310},"
          + " {end: 'far', atMm: 310}]}";
  static final String FRAME =
      "{id: 'frame', kind: 'external-fixator', pins: [{atMm: 60}, {atMm: 80}, {atMm: 300}]}";

  static String plate(String id, String place) {
    return "{id: '"
        + id
        + "', kind: 'plate', family: 'large-fragment-narrow', surface: 'medial', holes: 10, place: "
        + place
        + ", "
        + SCREWS
        + "}";
  }

  static Ledger ledger(String... operations) {
    return ledger(CaseText.plated(), operations);
  }

  static Ledger ledger(CaseText text, String... operations) {
    StringBuilder all = new StringBuilder();
    for (int i = 0; i < operations.length; i++) {
      all.append(i == 0 ? "" : ", ")
          .append("{id: 'op-" + (i + 1) + "', day: " + (100 * i + 2))
          .append(", " + operations[i] + "}");
    }
    List<Subject> subjects = Subject.of(text.with("{operations: [" + all + "]}").file());
    return new Scene(subjects.get(subjects.size() - 1), Taken.CATALOGUE).ledger();
  }

  static String put(String... implants) {
    return "fixation: [" + String.join(", ", implants) + "]";
  }

  /** Where old tracks lie and whether metal lies in them, such as {@code op-1/frame pin 1 60+}. */
  static List<String> told(List<OldTrack> old) {
    return old.stream()
        .map(
            one ->
                one.track().name()
                    + one.track().level().map(l -> " " + l.numbers()).orElse(" ?")
                    + (one.filled() ? "+" : ""))
        .toList();
  }

  static List<String> metal(List<InsideMetal> inside) {
    return inside.stream().map(InsideMetal::path).toList();
  }
}
