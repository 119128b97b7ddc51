package org.bonewright.server.rest;

import org.bonewright.principles.Profile;
import org.bonewright.principles.RuleSet;
import org.bonewright.shelf.Shelf;
import org.bonewright.shelf.UsualShelf;

/**
 * By what a service judges.
 *
 * @param rules the rules, with a site's local limits where it was started with them
 * @param shelf where new implants of another drawing come from
 * @param profile the profile that is shown where a request names none
 */
public record Rulebook(RuleSet rules, Shelf shelf, Profile profile) {

  /** Return the published rules, and the profile that is usual. */
  public static Rulebook published() {
    RuleSet rules = RuleSet.built();
    return new Rulebook(rules, UsualShelf.shelf(), rules.usual());
  }
}
