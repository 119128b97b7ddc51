package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import org.bonewright.drawing.words.InWords;
import org.bonewright.drawing.words.Levels;
import org.bonewright.drawing.words.Standing;
import org.bonewright.measures.Scene;
import org.bonewright.measures.Words;

/** Draws the bone as it stands at the end of a subject. */
public final class Drawing {

  private Drawing() {}

  /** Return the drawing of a scene's subject in one view. */
  public static Picture of(Scene scene, View view) {
    Standing standing = new Standing(scene);
    return view == View.STRIP
        ? new SideStrip(standing).picture()
        : new CortexMap(standing).picture();
  }

  /** Return a word for the ids of a drawing: letters, digits and hyphens. */
  static String id(Standing standing, View view) {
    String name = Words.written(view) + "-" + standing.scene().subject().id();
    return name.codePoints()
        .map(c -> Character.isLetterOrDigit(c) && c < 128 ? c : '-')
        .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append)
        .toString();
  }

  /** Return from where levels are counted, as a sentence without its end. */
  static String origin(Standing standing) {
    Levels levels = standing.levels();
    return "levels in mm from " + levels.origin(standing.scene());
  }

  /** Return the whole drawing in words. */
  static String words(Standing standing, String view, List<String> more) {
    InWords words = new InWords(standing);
    List<String> sentences = new ArrayList<>();
    sentences.add(view);
    sentences.add(words.zone());
    List<String> metal = words.metal();
    sentences.add(metal.isEmpty() ? "No metal in the bone" : "In the bone: " + join(metal));
    List<String> old = words.oldTracks();
    sentences.add(old.isEmpty() ? "No old tracks" : "Old tracks: " + join(old));
    List<String> cuts = words.cuts();
    if (!cuts.isEmpty()) {
      sentences.add("Cut out: " + join(cuts));
    }
    sentences.addAll(more);
    return sentences.stream().map(Drawing::sentence).collect(Collectors.joining(" "));
  }

  /** Return a sentence with its capital and full stop; the name of an implant keeps its letter. */
  private static String sentence(String words) {
    String first = words.split(" ", 2)[0];
    String begun =
        first.contains("/")
            ? words
            : words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    return begun.endsWith(".") ? begun : begun + ".";
  }

  private static String join(List<String> parts) {
    return String.join(". ", parts);
  }
}
