package org.bonewright.drawing.words;

import java.util.List;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Direction;
import org.bonewright.casefile.Side;
import org.bonewright.measures.Words;

/** What is in a bone and where it is free, as text for a terminal. */
public final class BoneText {

  private static final int WIDTH = 96;

  /** What must be said below every account. */
  static final String CAUTION =
      "Not to be used for measuring: read from the case file, which may be wrong or incomplete."
          + " Decision support, not a decision.";

  private final StringBuilder text = new StringBuilder();

  /** Return the text. */
  public static String render(Standing standing, FreeBone free) {
    return new BoneText().whole(standing, free);
  }

  private String whole(Standing standing, FreeBone free) {
    CaseFile file = standing.scene().subject().caseFile();
    Bone bone = file.bone();
    line(
        "Bone of "
            + file.reference()
            + " ("
            + Words.written(file.provenance())
            + " case), "
            + standing.scene().subject().id());
    line(
        (bone.side() == Side.NOT_STATED
                ? Words.written(bone.name()) + ", side not stated"
                : Words.written(bone.side()) + " " + Words.written(bone.name()))
            + ", "
            + standing.scene().bone().length().numbers()
            + " mm long; levels in mm from "
            + standing.levels().origin(standing.scene()));
    InWords words = new InWords(standing);
    part("ZONE", List.of(words.zone()));
    part("IN THE BONE", orNone(words.metal(), "no metal"));
    part(
        standing.pieces().isEmpty()
            ? "OLD TRACKS, EMPTY"
            : "OLD TRACKS, EMPTY BUT FOR PIECES LEFT BEHIND",
        orNone(words.oldTracks(), "none known"));
    if (!words.cuts().isEmpty()) {
      part("BONE CUT OUT", words.cuts());
    }
    if (!words.unplaced().isEmpty()) {
      part("LEVEL NOT KNOWN", words.unplaced());
    }
    free(standing, free);
    line("");
    wrapped("", CAUTION);
    return text.toString();
  }

  private void free(Standing standing, FreeBone free) {
    line("");
    line("FREE OF OLD TRACKS");
    wrapped("  ", "for " + free.screws() + "; levels of their middles, either side of the zone");
    if (free.unknown().isPresent()) {
      wrapped("  ", "cannot be told: " + free.unknown().get());
      return;
    }
    FreeText words = new FreeText(free, standing);
    for (Direction surface : Surfaces.all()) {
      wrapped("  ", words.on(surface));
    }
    wrapped("  ", FreeText.LIMITS);
  }

  private static List<String> orNone(List<String> all, String none) {
    return all.isEmpty() ? List.of(none) : all;
  }

  private void part(String title, List<String> sentences) {
    line("");
    line(title);
    sentences.forEach(sentence -> wrapped("  ", sentence));
  }

  private void line(String line) {
    text.append(line).append('\n');
  }

  private void wrapped(String indent, String sentence) {
    StringBuilder line = new StringBuilder(indent);
    boolean fresh = true;
    for (String word : sentence.split(" ", -1)) {
      if (!fresh && line.length() + 1 + word.length() > WIDTH) {
        line(line.toString());
        line = new StringBuilder(indent.isEmpty() ? "" : indent + "  ");
        fresh = true;
      }
      line.append(fresh ? "" : " ").append(word);
      fresh = false;
    }
    line(line.toString());
  }
}
