package org.bonewright.principles;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Which principles a review shows and counts. All are judged whatever the profile, so that it never
 * changes a verdict or a severity; what it leaves out is only not shown.
 *
 * @param id its name
 * @param title what it is, in a few words
 * @param purpose what it is for, as a sentence
 * @param byFamily the ids of its principles, in order, by the id of their family
 */
public record Profile(String id, String title, String purpose, Map<String, List<String>> byFamily) {

  /** The profile that is taken where none is named. */
  public static final String DEFAULT = "default";

  /** Return the ids of its principles. */
  public Set<String> principles() {
    Set<String> ids = new LinkedHashSet<>();
    byFamily.values().forEach(ids::addAll);
    return ids;
  }

  /** Return whether it is the one that is taken where none is named. */
  public boolean isDefault() {
    return id.equals(DEFAULT);
  }

  /** Return a judged case with no verdicts but those that this profile shows. */
  public JudgedCase shown(JudgedCase judged) {
    Set<String> shown = principles();
    Map<String, List<Judgement>> kept = new LinkedHashMap<>();
    judged
        .judgements()
        .forEach(
            (subject, judgements) ->
                kept.put(
                    subject,
                    judgements.stream().filter(j -> shown.contains(j.card().id())).toList()));
    return new JudgedCase(judged.caseFile(), judged.subjects(), judged.scenes(), kept);
  }

  /**
   * Read the profiles, in the order of their file.
   *
   * @throws IllegalStateException if a field is missing or unknown
   */
  static List<Profile> read(String yaml) {
    CardText text = CardText.of(yaml, "profiles");
    List<Profile> profiles = new ArrayList<>();
    text.parts("profiles").forEach(part -> profiles.add(one(part)));
    text.done();
    return List.copyOf(profiles);
  }

  private static Profile one(CardText part) {
    Map<String, List<String>> byFamily = new LinkedHashMap<>();
    CardText lists =
        part.part("principles")
            .orElseThrow(() -> new IllegalStateException("a profile without principles"));
    lists.fields().forEach(family -> byFamily.put(family, lists.texts(family)));
    lists.done();
    Profile profile = new Profile(part.text("id"), part.text("title"), part.text("for"), byFamily);
    part.done();
    return profile;
  }
}
