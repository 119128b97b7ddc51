package org.bonewright.measures.healing;

import org.bonewright.casefile.CaseText;

/** A plated tibia, operated on day 2, of which something was found since. */
final class Found {

  private Found() {}

  /** Return it without a plan: what is asked is how the one operation went. */
  static CaseText since(String findings) {
    return CaseText.plated().with("{findings: [" + findings + "]}");
  }

  /** Return it failed in some way, with a plan. */
  static CaseText planned(String mode, String findings) {
    return CaseText.plated().redone(mode).with("{findings: [" + findings + "]}");
  }

  /** Return a finding with one film. */
  static String film(int day, String film) {
    return "{day: " + day + ", films: [{view: 'ap-lateral', " + film + "}]}";
  }
}
