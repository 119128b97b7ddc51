package org.bonewright.cli;

import org.bonewright.principles.RuleSet;
import org.bonewright.shelf.Shelf;
import org.bonewright.shelf.UsualShelf;
import org.bonewright.site.SiteReader;
import org.bonewright.site.SiteReading;
import org.jspecify.annotations.Nullable;

/**
 * What holds where the program is used: what is published, or what a site file sets instead.
 *
 * @param rules the rules, with the local limits if there are any
 * @param shelf the implants that are kept: those that the site lists, else the usual sizes
 */
record Local(RuleSet rules, Shelf shelf) {

  /**
   * Return what holds.
   *
   * @param site name of a site file, or null for what is published
   * @throws Unusable if the site file cannot be used; the message lists every problem
   */
  static Local of(@Nullable String site) throws Unusable {
    RuleSet published = RuleSet.built();
    if (site == null) {
      return new Local(published, UsualShelf.shelf());
    }
    SiteReading reading = read(site, published);
    return new Local(
        reading.changes().map(published::with).orElse(published),
        reading.shelf().orElseGet(UsualShelf::shelf));
  }

  /**
   * Return what a site file sets.
   *
   * @throws Unusable if it cannot be used; the message lists every problem
   */
  static SiteReading read(String file, RuleSet published) throws Unusable {
    InputFile input = new InputFile(file);
    SiteReading reading = new SiteReader(published).read(input.bytes());
    if (reading.changes().isEmpty()) {
      throw input.unusable(
          reading.problems(),
          "Nothing was judged by it. The format is described by: bonewright schema site");
    }
    return reading;
  }
}
