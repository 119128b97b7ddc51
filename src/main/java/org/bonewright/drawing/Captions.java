package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.casefile.Bone;
import org.bonewright.casefile.CaseFile;
import org.bonewright.casefile.Side;
import org.bonewright.measures.Subject;
import org.bonewright.measures.Words;

/** The texts round a drawing. */
final class Captions {

  private static final String CAUTION =
      "Not to be used for measuring: drawn from the case file, which may be wrong or incomplete."
          + " Decision support, not a decision.";

  private Captions() {}

  /** Return what is drawn, in one line. */
  static String title(Subject subject, String view) {
    Bone bone = subject.caseFile().bone();
    return shortened(
        view
            + " of "
            + subject.id()
            + ": "
            + side(bone)
            + Words.written(bone.name())
            + ", "
            + subject.caseFile().reference(),
        15 * 1.1,
        1200);
  }

  private static String side(Bone bone) {
    return bone.side() == Side.NOT_STATED
        ? "side not stated, drawn as a right "
        : Words.written(bone.side()) + " ";
  }

  /** Return where the case comes from, as it must stand on every drawing. */
  static String provenance(CaseFile file) {
    return file.provenance() == CaseFile.Provenance.INVENTED
        ? "invented case"
        : Words.written(file.provenance()) + " case";
  }

  /** Return a text cut so that it fits a width. */
  static String shortened(String text, double size, double room) {
    if (TextBox.width(text, size) <= room) {
      return text;
    }
    int end = text.length();
    while (end > 1 && TextBox.width(text.substring(0, end) + "…", size) > room) {
      end--;
    }
    if (Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    return text.substring(0, end).stripTrailing() + "…";
  }

  /** Return a text in lines that fit a width. */
  static List<String> lines(String text, double size, double room) {
    List<String> lines = new ArrayList<>();
    String line = "";
    for (String word : text.strip().split("\\s+", -1)) {
      String longer = line.isEmpty() ? word : line + " " + word;
      if (!line.isEmpty() && TextBox.width(longer, size) > room) {
        lines.add(line);
        line = shortened(word, size, room);
      } else {
        line = shortened(longer, size, room);
      }
    }
    lines.add(line);
    return lines;
  }

  /** Return the small print. */
  static String smallPrint() {
    return CAUTION;
  }
}
