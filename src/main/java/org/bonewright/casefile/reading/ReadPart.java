package org.bonewright.casefile.reading;

import java.util.Map;

/**
 * A record that a file holds whole. Where another part of the file is at fault, what can be said of
 * this one can still be said.
 *
 * @param pointer JSON pointer to it
 * @param value the record
 * @param places where its fields stand in the text, by name; under the empty name the record itself
 */
public record ReadPart(String pointer, Object value, Map<String, Place> places) {

  /** Keep the places as they are now. */
  public ReadPart {
    places = Map.copyOf(places);
  }

  /**
   * Return an error at a field of this record, or where the field would stand.
   *
   * @param field name of the field
   * @param found what was found, as words that follow "found"
   * @param allowed what is accepted, as words that follow "allowed"
   */
  public Problem error(String field, String found, String allowed) {
    Problem problem = Problem.error(Problem.pointer(pointer, field), found, allowed);
    Place place = places.getOrDefault(field, places.get(""));
    return place == null ? problem : problem.at(place);
  }
}
