package org.bonewright.handbook.content;

import java.util.ArrayList;
import java.util.List;
import org.bonewright.handbook.model.Block;
import org.bonewright.handbook.model.Section;
import org.bonewright.handbook.model.Text;
import org.bonewright.principles.RuleChanges.Changed;

/** What a version changed in one principle. */
final class ChangedPart {

  private ChangedPart() {}

  /** Return the part of a section with this anchor. */
  static Section of(String anchor, Changed changed) {
    List<Block> blocks = new ArrayList<>();
    if (!changed.reads().isEmpty()) {
      blocks.add(Block.says("It " + String.join("; it ", changed.reads()) + "."));
    }
    if (!changed.limits().isEmpty()) {
      blocks.add(
          new Block.Table(
              "Limits that lie elsewhere: " + changed.title(),
              List.of("Limit of", "Was", "Is"),
              changed.limits().stream()
                  .map(
                      limit ->
                          Block.Row.of(
                              Text.of(limit.what()), Text.of(limit.was()), Text.of(limit.is())))
                  .toList()));
    }
    if (!changed.given().isEmpty()) {
      blocks.add(Block.says("In all of these:"));
      blocks.add(new Block.Bullets(changed.given().stream().map(Text::of).toList()));
    }
    blocks.add(
        new Block.Table(
            "Verdicts that are other ones: " + changed.title(),
            List.of("With", "Was", "Is"),
            changed.cells().stream()
                .map(
                    cell ->
                        Block.Row.of(
                            Text.of(cell.where()), Text.of(cell.was()), Text.of(cell.is())))
                .toList()));
    return new Section(
        anchor(anchor, changed.principle()), changed.title(), List.copyOf(blocks), List.of());
  }

  /** Return the anchor of what a version changed in a principle. */
  static String anchor(String version, String principle) {
    return version + "-" + principle;
  }
}
