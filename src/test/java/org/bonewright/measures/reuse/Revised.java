package org.bonewright.measures.reuse;

import org.bonewright.casefile.CaseText;

/**
 * A tibia of 24 mm with a cortex of 7 mm. Its plate, medial, had screws of 4.5 mm at 108, 140, 172,
 * 188, 220 and 252 mm and bent; the plan puts in a plate of ten holes, 16 mm apart, again.
 */
final class Revised {

  static final String PLATE = "/plans/0/stages/0/fixation/0";
  static final String OLD_PLATE = "/operations/0/fixation/0";

  private Revised() {}

  /** Return the case with the very same plate planned again, its screws in the old holes. */
  static CaseText same() {
    return CaseText.plated()
        .with(
            "{bone: {sections: [{atMm: 60, outerMm: 24, canalMm: 10},"
                + " {atMm: 300, outerMm: 24, canalMm: 10}]}}")
        .at("/operations/0/fixation/0", "{place: {firstHoleMm: 108}}")
        .redone("plate-bent");
  }

  /** Return the case with the new plate shifted along the bone by some mm, on the same surface. */
  static CaseText shifted(int by) {
    return same().at(PLATE, "{place: {firstHoleMm: " + (108 + by) + "}}");
  }

  /** Return the case with the new plate on the anterior surface, at the same levels. */
  static CaseText turned() {
    return same().at(PLATE, "{surface: 'anterior'}");
  }

  /** Return the case with a short anterior plate: six holes, from 132 to 228 mm. */
  static CaseText shortened() {
    return turned()
        .at(
            PLATE,
            "{holes: 6, lengthMm: 96, place: {zoneBetweenHoles: [3, 4], firstHoleMm: 140},"
                + " screws: [{at: [1, 3, 4, 6], type: 'cortical', cortices: 2}]}");
  }

  /** Return the case with a plan that takes the plate out and puts nothing in. */
  static CaseText takenOut() {
    return same()
        .at("/plans/0/stages/0", "{fixation: [], removed: [{of: 'op-1/plate-1', holes: []}]}");
  }

  /** Return the case with the level of the old plate not recorded. */
  static CaseText unmapped() {
    return turned().at(OLD_PLATE, "{place: null}");
  }
}
