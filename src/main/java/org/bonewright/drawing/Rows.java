package org.bonewright.drawing;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.bonewright.bone.Dimension;
import org.bonewright.drawing.words.Standing;

/**
 * Rows of signs above or below the bone, each exactly at its level: one row for each implant or
 * each set of old tracks. Texts that would run into each other move up a lane.
 */
final class Rows {

  static final double CAPTION = 10;
  private static final double TEXT = 10.5;
  private static final double LANE = 13;
  private static final double SIGN = 14;

  /**
   * One sign with its text.
   *
   * @param over signs that stand upon it
   * @param track the track that the sign stands for, where the view has no other mark of it
   */
  record Entry(
      Dimension level, Key key, String text, List<Key> over, Optional<Standing.Drilled> track) {

    Entry(Dimension level, Key key, String text) {
      this(level, key, text, List.of(), Optional.empty());
    }

    Entry(Dimension level, Key key, String text, List<Key> over) {
      this(level, key, text, over, Optional.empty());
    }
  }

  /** A row: whose signs these are, in two short lines, and the signs. */
  record Row(String caption, String under, List<Entry> entries) {}

  private final Scale scale;
  private final List<Mark> marks = new ArrayList<>();
  private final Set<Key> used = EnumSet.noneOf(Key.class);
  private double y;

  Rows(Scale scale, double top) {
    this.scale = scale;
    this.y = top;
  }

  void add(Row row) {
    List<Entry> entries =
        row.entries().stream().sorted(Comparator.comparingDouble(e -> e.level().middle())).toList();
    List<List<TextBox>> lanes = new ArrayList<>();
    List<Mark.Label> labels = new ArrayList<>();
    List<Integer> laneOf = new ArrayList<>();
    for (Entry entry : entries) {
      Mark.Label label = label(entry);
      int lane = lane(lanes, TextBox.of(label));
      labels.add(label);
      laneOf.add(lane);
    }
    double height = Math.max(2, lanes.size()) * LANE + SIGN;
    double sign = y + height - SIGN / 2;
    marks.add(Mark.Outline.line(Ink.GRID, scale.left() - 6, sign, scale.right() + 6, sign));
    caption(row, sign);
    for (int i = 0; i < entries.size(); i++) {
      Entry entry = entries.get(i);
      double x = scale.x(entry.level().middle());
      if (scale.units(entry.level().max() - entry.level().min()) > 3) {
        marks.addAll(Key.whisker(scale.x(entry.level().min()), scale.x(entry.level().max()), sign));
        used.add(Key.RANGE);
      }
      List<Mark> signs = new ArrayList<>(entry.key().at(x, sign));
      entry.over().forEach(key -> signs.addAll(key.at(x, sign)));
      entry
          .track()
          .ifPresentOrElse(
              track -> marks.add(MapTracks.thing(track, signs)), () -> marks.addAll(signs));
      used.add(entry.key());
      used.addAll(entry.over());
      Mark.Label label = labels.get(i);
      double base = sign - SIGN / 2 - 2 - laneOf.get(i) * LANE;
      if (laneOf.get(i) > 0) {
        marks.add(Mark.Outline.line(Ink.LEADER, x, sign - SIGN / 2, x, base + 2));
      }
      marks.add(new Mark.Label(label.x(), base, label.text(), TEXT, label.anchor(), label.bold()));
    }
    y += height + 3;
  }

  private Mark.Label label(Entry entry) {
    double x = scale.x(entry.level().middle());
    double half = TextBox.width(entry.text(), TEXT) / 2;
    double held = Math.min(Math.max(x, scale.left() + half - 10), scale.right() + 50 - half);
    return new Mark.Label(
        half * 2 > 18 ? held : x, 0, entry.text(), TEXT, Mark.Anchor.MIDDLE, false);
  }

  private static int lane(List<List<TextBox>> lanes, TextBox box) {
    TextBox wide = new TextBox(box.left() - 2, box.top(), box.right() + 2, box.bottom());
    for (int i = 0; i < lanes.size(); i++) {
      if (lanes.get(i).stream().noneMatch(wide::overlaps)) {
        lanes.get(i).add(wide);
        return i;
      }
    }
    lanes.add(new ArrayList<>(List.of(wide)));
    return lanes.size() - 1;
  }

  private void caption(Row row, double sign) {
    double room = scale.left() - 22;
    boolean two = !row.under().isEmpty();
    marks.add(
        new Mark.Label(
            8,
            two ? sign - 9 : sign + 3,
            Captions.shortened(row.caption(), CAPTION * 1.1, room),
            CAPTION,
            Mark.Anchor.START,
            true));
    if (two) {
      marks.add(
          new Mark.Label(
              8,
              sign + 4,
              Captions.shortened(row.under(), CAPTION, room),
              CAPTION,
              Mark.Anchor.START,
              false));
    }
  }

  double bottom() {
    return y;
  }

  List<Mark> marks() {
    return marks;
  }

  Set<Key> used() {
    return used;
  }
}
