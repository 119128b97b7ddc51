package org.bonewright.measures.force;

/**
 * What the model has to assume, or what a film tells only within bounds. Each is one dimension of
 * the sampling. What matters most stands first: low-discrepancy points are evenest in their first
 * dimensions.
 */
enum Assumption {
  LOAD("how large the load is"),
  SIDE("the side under tension"),
  GAP("how wide the gap is"),
  BONE("how stiff and strong the bone is"),
  PLATE("how thick plate or nail is"),
  METAL("what the metal bears"),
  PLACE("where the metal lies along the bone"),
  THREAD("how much of the threads holds"),
  CORTEX("how thick the cortex is"),
  WIDTH("how wide the bone is"),
  CYCLES("how often the load comes"),
  COMPRESSION("how hard the ends are pressed together"),
  CLAMP("how hard the screws press the plate"),
  STAND_OFF("how far the plate stands off the bone"),
  FRICTION("how rough the surfaces are"),
  TWIST("which way round the load twists"),
  CANAL("how the nail fits its canal"),
  FRAME("how far the bars lie from the bone"),
  PINS("how thick pins and bars are"),
  LAG("where lag screws cross the line");

  private final String words;

  Assumption(String words) {
    this.words = words;
  }

  /** Return it in words that follow "most depends on". */
  String words() {
    return words;
  }
}
